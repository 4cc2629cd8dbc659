import type { Cell } from "./cells.ts";
import type { Row } from "./rows.ts";

interface Column {
  x: number;
  right: number;
  /** Numbers of the rows that have a cell in it. */
  readonly rows: Set<number>;
  /** Cells in it that are no figures. */
  words: number;
}

const isFigure = (text: string): boolean => /^(?:[<>≤≥]\s*)?[-+−]?\d[\d.,'\s]*$/.test(text);

/**
 * Rows of all pages as a grid: each cell at the number of its column, so that a row without a unit has an empty cell
 * there. A row of one cell stays one cell. A row that does not fit the columns of the others keeps its cells in their
 * order.
 */
export function gridOf(rows: readonly Row[]): readonly (readonly string[])[] {
  const columns = columnsOf(rows);
  return rows.map((row) => {
    const texts = row.map(({ text }) => text);
    if (row.length < 2) return texts;
    const places = row.map((cell) => columns.findIndex((column) => overlaps(column, cell)));
    const fits = places.every((place, i) => place >= 0 && place > (places[i - 1] ?? -1));
    if (!fits) return texts;
    const cells = Array.from({ length: places.at(-1)! + 1 }, () => "");
    places.forEach((place, i) => (cells[place] = texts[i] ?? ""));
    return cells;
  });
}

const overlaps = (a: { x: number; right: number }, b: { x: number; right: number }): boolean =>
  a.x < b.right && b.x < a.right;

/**
 * The columns in which cells stand above one another, from left to right. Narrow cells speak first. A cell over two
 * columns makes them one unless some row has a cell in each: then it is a heading over both.
 */
function columnsOf(rows: readonly Row[]): readonly Column[] {
  const cells: { cell: Cell; row: number }[] = rows.flatMap((row, i) =>
    row.length < 2 ? [] : row.map((cell) => ({ cell, row: i })),
  );
  cells.sort((a, b) => a.cell.right - a.cell.x - (b.cell.right - b.cell.x));
  let columns: Column[] = [];
  for (const { cell, row } of cells) {
    const over = columns.filter((column) => overlaps(column, cell));
    const apart = new Set(over.flatMap((column) => [...column.rows]));
    const shared = sum(over, ({ rows: held }) => held.size) !== apart.size;
    if (shared || apart.has(row)) continue;
    const joined: Column = {
      x: Math.min(cell.x, ...over.map(({ x }) => x)),
      right: Math.max(cell.right, ...over.map(({ right }) => right)),
      rows: apart.add(row),
      words: sum(over, ({ words }) => words) + (isFigure(cell.text) ? 0 : 1),
    };
    columns = [...columns.filter((column) => !over.includes(column)), joined];
  }
  return withHeadings(columns.sort((a, b) => a.x - b.x));
}

/**
 * Columns, each heading with the figures under it where they do not stand above one another: in most spreadsheets words
 * begin at the left of a column and figures end at its right. Words with figures to their right are one column if no line
 * has both; from the left on, since the next column has a heading of its own.
 */
function withHeadings(columns: readonly Column[]): readonly Column[] {
  const whole: Column[] = [];
  for (const column of columns) {
    const before = whole.at(-1);
    const isOne =
      before !== undefined &&
      before.words > 0 &&
      column.words === 0 &&
      ![...column.rows].some((row) => before.rows.has(row));
    if (!isOne) {
      whole.push(column);
      continue;
    }
    const rows = new Set([...before.rows, ...column.rows]);
    whole[whole.length - 1] = { ...before, right: column.right, rows };
  }
  return whole;
}

const sum = (columns: readonly Column[], of: (column: Column) => number): number =>
  columns.reduce((total, column) => total + of(column), 0);
