/** Names of the holes in a text: "pH" and "date" in "{date}: pH {pH}". */
export type Holes<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | Holes<Rest>
  : never;

/** A text shown to a person, with named holes. The type carries the names, so that none is forgotten. */
export type Message<Name extends string = never> = string & { readonly holes?: Name };

/** The messages of one area, typed by their English text. */
export type Area<Texts> = {
  readonly [Key in keyof Texts]: Texts[Key] extends string ? Message<Holes<Texts[Key]>> : never;
};

/** One piece of a message: a text that stands as it is, or a hole. */
export type MessagePart<Name extends string> = { readonly text: string } | { readonly hole: Name };

const HOLE = /\{(\w+)\}/;

/** Takes a message apart, for those who put more than text into its holes. */
export function messageParts<Name extends string>(message: Message<Name>): readonly MessagePart<Name>[] {
  // Splitting by a pattern with a group gives text and name in turn.
  return message
    .split(HOLE)
    .map((piece, i) => (i % 2 === 0 ? { text: piece } : { hole: piece as Name }))
    .filter((part) => "hole" in part || part.text !== "");
}

/** Names of the holes of a text, in their order. */
export function holesOf(text: string): readonly string[] {
  return messageParts(text as Message<string>).flatMap((part) => ("hole" in part ? [part.hole] : []));
}

/** A message with its holes filled. A hole without a value stays, so that the slip is seen. */
export function fill<Name extends string>(
  message: Message<Name>,
  values: Readonly<Record<NoInfer<Name>, string | number>>,
): string {
  return messageParts(message)
    .map((part) => ("hole" in part ? String(values[part.hole] ?? `{${part.hole}}`) : part.text))
    .join("");
}
