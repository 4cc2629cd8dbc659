/** Where a key stands for the second time in one object. */
export interface RepeatedKey {
  readonly key: string;
  /** Line of the second one, from 1. */
  readonly line: number;
  readonly column: number;
}

/** Line and column, both from 1, of an offset in a text. */
export function lineAndColumn(
  text: string,
  offset: number,
): { readonly line: number; readonly column: number } {
  const before = text.slice(0, offset);
  const lastBreak = before.lastIndexOf("\n");
  return { line: before.split("\n").length, column: offset - lastBreak };
}

/**
 * Keys that stand more than once in the same object of a JSON text. `JSON.parse` keeps the last one and says
 * nothing, which in a dose is not acceptable.
 *
 * @param text JSON that `JSON.parse` accepts; on other text the result has no meaning.
 */
export function repeatedKeys(text: string): RepeatedKey[] {
  const found: RepeatedKey[] = [];
  // One entry per open bracket: the keys met so far in an object, null in a list.
  const open: (Set<string> | null)[] = [];
  let at = 0;
  while (at < text.length) {
    const sign = text[at];
    if (sign === "{") open.push(new Set());
    else if (sign === "[") open.push(null);
    else if (sign === "}" || sign === "]") open.pop();
    else if (sign === '"') {
      const start = at;
      at = endOfString(text, at);
      const keys = open.at(-1);
      if (keys && isKey(text, at + 1)) {
        const key = JSON.parse(text.slice(start, at + 1)) as string;
        if (keys.has(key)) found.push({ key, ...lineAndColumn(text, start) });
        keys.add(key);
      }
    }
    at += 1;
  }
  return found;
}

/** Offset of the quote that closes the string opened at `start`. */
function endOfString(text: string, start: number): number {
  let at = start + 1;
  while (at < text.length && text[at] !== '"') at += text[at] === "\\" ? 2 : 1;
  return at;
}

function isKey(text: string, from: number): boolean {
  let at = from;
  while (at < text.length && " \t\r\n".includes(text[at] ?? "")) at += 1;
  return text[at] === ":";
}
