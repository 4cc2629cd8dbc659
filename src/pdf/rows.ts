import { cellsOf } from "./cells.ts";
import type { Cell } from "./cells.ts";
import type { Line } from "./lines.ts";

/** A row of a page: its cells from left to right. */
export type Row = readonly Cell[];

/** Lines nearer than this share of their letters cannot stand below one another: they are parts of one row. */
const ONE_ROW = 0.8;
/** A further line of the same cell is at most so far below [letters], and clearly nearer than rows usually are. */
const WRAPPED = 1.4;
const NEARER = 0.93;

/** The rows of a page: lines that stand side by side joined, and cells that go on in the next line put together. */
export function rowsOf(lines: readonly Line[]): readonly Row[] {
  const rows: Row[] = [];
  for (const line of lines) {
    const cells = cellsOf(line);
    const before = rows.at(-1);
    if (before !== undefined && besides(before, cells)) {
      rows[rows.length - 1] = [...before, ...cells].sort((a, b) => a.x - b.x);
    } else rows.push(cells);
  }
  return withWrapped(rows);
}

const bottomOf = (row: Row): number => Math.max(...row.map(({ bottom }) => bottom));
const topOf = (row: Row): number => Math.min(...row.map(({ top }) => top));
const overlaps = (a: Cell, b: Cell): boolean => a.x < b.right && b.x < a.right;

/** Whether cells belong into the row above: hardly lower, and with room between its cells. */
function besides(row: Row, cells: Row): boolean {
  const size = Math.min(...row.map((cell) => cell.size), ...cells.map((cell) => cell.size));
  return (
    topOf(cells) - bottomOf(row) < ONE_ROW * size &&
    !cells.some((cell) => row.some((one) => overlaps(one, cell)))
  );
}

/** Rows whose cells were broken into several lines, such as a long name, put together again. */
function withWrapped(rows: readonly Row[]): readonly Row[] {
  const pitch = usualPitch(rows);
  const whole: Row[] = [];
  for (const row of rows) {
    const before = whole.at(-1);
    const joined = before === undefined ? null : joinedRow(before, row, pitch);
    if (joined === null) whole.push(row);
    else whole[whole.length - 1] = joined;
  }
  return whole;
}

/** The usual distance of two rows of a table that follow one another; 0 where there is no table. */
function usualPitch(rows: readonly Row[]): number {
  const pitches = rows.flatMap((row, i) => {
    const next = rows[i + 1];
    return next !== undefined && row.length > 1 && next.length > 1 ? [topOf(next) - topOf(row)] : [];
  });
  return pitches.sort((a, b) => a - b)[Math.floor(pitches.length / 2)] ?? 0;
}

/** Two rows as one, when one of them only carries on cells of the other; else null. */
function joinedRow(upper: Row, lower: Row, pitch: number): Row | null {
  const [full, part] = upper.length >= lower.length ? [upper, lower] : [lower, upper];
  if (full.length < 2 || full.length === part.length || part.some(({ text }) => isFigure(text))) return null;
  const pairs = new Map<Cell, Cell>();
  for (const cell of part) {
    const under = full.filter((one) => overlaps(one, cell));
    const [only] = under;
    if (only === undefined || under.length > 1 || isFigure(only.text)) return null;
    const [above, below] = part === lower ? [only, cell] : [cell, only];
    const step = below.top - above.bottom;
    if (step > WRAPPED * Math.max(above.size, below.size) || step > NEARER * pitch) return null;
    pairs.set(only, cell);
  }
  return full.map((cell) => {
    const other = pairs.get(cell);
    if (other === undefined) return cell;
    return part === lower ? stacked(cell, other) : stacked(other, cell);
  });
}

const isFigure = (text: string): boolean => /^[<>≤≥]?\s*[-+−]?\d[\d.,\s]*$/.test(text);

/** A cell and its next line as one; a word parted by a hyphen is whole again. */
function stacked(above: Cell, below: Cell): Cell {
  const hyphen = /\p{L}-$/u.test(above.text);
  const text = !hyphen
    ? `${above.text} ${below.text}`
    : /^\p{Ll}/u.test(below.text)
      ? `${above.text.slice(0, -1)}${below.text}`
      : `${above.text}${below.text}`;
  return {
    ...above,
    text,
    x: Math.min(above.x, below.x),
    right: Math.max(above.right, below.right),
    bottom: below.bottom,
  };
}
