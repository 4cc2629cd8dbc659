import type { SheetRow } from "./cells.ts";

/** Where a cell stands in its line: first character, and the one behind the last. */
export type Span = readonly [from: number, to: number];

/** The cells of a line set by blanks, a single blank being part of a cell, and where each stands. */
export function cellsByBlanks(line: string): {
  readonly cells: readonly string[];
  readonly spans: readonly Span[];
} {
  const found = [...line.matchAll(/\S+(?:[^\S\t]\S+)*/gu)];
  return {
    cells: found.map(([cell]) => cell),
    spans: found.map(({ 0: cell, index }) => [index, index + cell.length]),
  };
}

/**
 * A line set by blanks with each cell under its heading, so that a figure that is left out moves no other one. The row
 * as it is where it has as many cells as the heading or was not set by blanks; null where two cells stand under one
 * heading, so that nothing tells which is which.
 */
export function alignedTo(heading: SheetRow, row: SheetRow): SheetRow | null {
  const { spans: over } = heading;
  const { spans } = row;
  if (over === undefined || spans === undefined || row.cells.length === heading.cells.length) return row;
  const at = spans.map((span) => nearest(over, span));
  if (at.some((column, i) => i > 0 && column <= at[i - 1]!)) return null;
  const cells = heading.cells.map((_, column) => row.cells[at.indexOf(column)] ?? "");
  return { ...row, cells };
}

/** The heading that a cell stands under: by what they share of the line, else by how near they are. */
function nearest(over: readonly Span[], [from, to]: Span): number {
  const shared = over.map(([start, end]) => Math.min(end, to) - Math.max(start, from));
  return shared.indexOf(Math.max(...shared));
}
