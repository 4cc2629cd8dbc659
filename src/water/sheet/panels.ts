import type { SheetRow } from "./cells.ts";
import { looksLikeValue } from "./entry.ts";
import { roleOf } from "./column-roles.ts";
import { readName } from "./names.ts";

/**
 * Puts lists that stand side by side below one another, each row with the line it came from: read as one list, the
 * second would be lost, or taken for a second sample of the first.
 *
 * A second list is told by a second heading of names, or, where nothing is headed, by two rows or more that name
 * another reading behind the first one's value, at the same place, with a value behind it.
 */
export function inOneList(rows: readonly SheetRow[]): readonly SheetRow[] {
  const starts = headedStarts(rows) ?? bareStarts(rows);
  const [second] = starts;
  if (second === undefined) return rows;
  // What stands above and below the lists is not cut.
  const beside = ({ cells }: SheetRow): boolean =>
    cells.slice(second).some((cell) => roleOf(cell) === "parameter") || furtherNames(cells).length > 0;
  const from = rows.findIndex(beside);
  const to = rows.findLastIndex(beside) + 1;
  const bounds = [0, ...starts];
  const parts = bounds.map((start, i) =>
    rows.slice(from, to).map((row): SheetRow => ({
      ...row,
      cells: row.cells.slice(start, bounds[i + 1]),
      ...(row.spans === undefined ? {} : { spans: row.spans.slice(start, bounds[i + 1]) }),
    })),
  );
  const listed = parts.flat().filter(({ cells }) => cells.some((cell) => cell !== ""));
  return [...rows.slice(0, from), ...listed, ...rows.slice(to)];
}

/** Where further headings of names stand in a heading line; null when no line is a heading of names. */
function headedStarts(rows: readonly SheetRow[]): readonly number[] | null {
  const headings = rows.map(({ cells }) =>
    cells.flatMap((cell, i) => (roleOf(cell) === "parameter" ? [i] : [])),
  );
  const heading = headings.find((names) => names.length > 0);
  return heading === undefined ? null : heading.slice(1);
}

function bareStarts(rows: readonly SheetRow[]): readonly number[] {
  const found = new Map<number, number>();
  for (const { cells } of rows) for (const at of furtherNames(cells)) found.set(at, (found.get(at) ?? 0) + 1);
  return [...found]
    .filter(([, times]) => times >= 2)
    .map(([at]) => at)
    .sort((a, b) => a - b);
}

/** Places of names in a row, each behind the name and value of another reading, and with its own value behind it. */
function furtherNames(cells: readonly string[]): readonly number[] {
  const known = cells.map((cell) => (cell === "" || looksLikeValue(cell) ? null : readingNamed(cell)));
  const names = known.flatMap((name, i) => (name === null ? [] : [i]));
  return names.slice(1).filter((at, i) => {
    const before = names[i]!;
    const next = names[i + 2] ?? cells.length;
    const hasValue = (from: number, to: number): boolean => cells.slice(from + 1, to).some(looksLikeValue);
    return known[before] !== known[at] && hasValue(before, at) && hasValue(at, next);
  });
}

function readingNamed(cell: string): string | null {
  const { parameter, choices } = readName(cell);
  return parameter ?? choices[0] ?? null;
}
