import type { Language } from "./language.ts";
import { fill } from "./message.ts";
import type { Holes, Message } from "./message.ts";

/** Values for the holes of a text; nothing for a text without holes. */
type Values<Text extends string> = [Holes<Text>] extends [never]
  ? []
  : [values: Readonly<Record<Holes<Text>, string | number>>];

/** Says a text of the page, given in English, in its language. */
export type Say = <Text extends string>(english: Text, ...values: Values<Text>) => string;

/** How a language says the texts that are looked up by their English wording. What it has no words for stays English. */
export function sayIn(language: Language): Say {
  return (english, ...[values]) => fill(language.page(english) as Message<string>, values ?? {});
}
