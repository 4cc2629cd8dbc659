/**
 * A typed text in one spelling: compatibility forms folded (µ, ₃, ℃, full-width digits), every kind of space made
 * plain and single, ends trimmed. Case is kept.
 */
export function foldText(text: string): string {
  return (
    text
      .normalize("NFKC")
      // Dashes that stand for a minus in exponents and units; ranges are told apart before folding.
      .replace(/[\u2212\u2010\u2011]/g, "-")
      .replace(/\s+/g, " ")
      .trim()
  );
}

/** Number of single-character edits (insert, delete, replace, swap of neighbours) between two texts. */
export function editDistance(a: string, b: string): number {
  const rows = a.length + 1;
  const columns = b.length + 1;
  const table = Array.from({ length: rows }, (_, i) => {
    const row = new Array<number>(columns).fill(0);
    row[0] = i;
    return row;
  });
  for (let j = 0; j < columns; j += 1) table[0]![j] = j;
  for (let i = 1; i < rows; i += 1) {
    for (let j = 1; j < columns; j += 1) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(table[i - 1]![j]! + 1, table[i]![j - 1]! + 1, table[i - 1]![j - 1]! + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, table[i - 2]![j - 2]! + 1);
      }
      table[i]![j] = best;
    }
  }
  return table[a.length]![b.length]!;
}

/** Longest text compared for a suggestion; nobody types a longer name. */
const LONGEST_COMPARED = 60;

/**
 * The known name a typed one was probably meant to be, or null when none is near: at most a third of its letters may
 * differ. Case and outer spaces do not count.
 */
export function nearestName(typed: string, known: readonly string[]): string | null {
  const wanted = foldText(typed).toLowerCase();
  if (wanted === "" || wanted.length > LONGEST_COMPARED) return null;
  let best: string | null = null;
  let bestDistance = Infinity;
  for (const name of known) {
    const candidate = foldText(name).toLowerCase();
    const distance = editDistance(wanted, candidate);
    const allowed = Math.max(1, Math.floor(Math.max(wanted.length, candidate.length) / 3));
    if (distance <= allowed && distance < bestDistance) {
      best = name;
      bestDistance = distance;
    }
  }
  return best;
}

/** What was received, as short text for an issue. */
export function shownValue(value: unknown): string {
  if (typeof value === "string") return value.length > 80 ? `${value.slice(0, 77)}…` : value;
  if (value === null) return "null";
  if (typeof value === "number" || typeof value === "boolean" || typeof value === "bigint")
    return String(value);
  if (Array.isArray(value)) return "a list";
  return value === undefined ? "nothing" : `a ${typeof value}`;
}

/** An entry of a table by a typed key; undefined when the table has none of its own (never an inherited one). */
export function lookUp<T>(table: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}
