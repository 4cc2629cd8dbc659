/** A blank at which no line ends. */
const NO_BREAK = "\u00a0";

type Texts = string | { readonly [key: string]: Texts };

function spaced(text: string): string {
  return text.replace(/ (?=[:;?!»%])/g, NO_BREAK).replace(/« /g, `«${NO_BREAK}`);
}

/**
 * Texts as French sets them: no line ends before a sign that stands apart from its word, or after « (Imprimerie
 * nationale, Lexique des règles typographiques, “Ponctuation”; from memory). Their keys stay as they are.
 */
export function unbroken<T extends Texts>(texts: T): T {
  const set = (value: Texts): Texts =>
    typeof value === "string"
      ? spaced(value)
      : Object.fromEntries(Object.entries(value).map(([key, one]) => [key, set(one)]));
  return set(texts) as T;
}
