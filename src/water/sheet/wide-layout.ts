import type { DecimalMark } from "../../units/index.ts";
import { alignedTo } from "./align.ts";
import type { SheetRow } from "./cells.ts";
import { entryOf, looksLikeValue } from "./entry.ts";
import { plainDate } from "./about-sample.ts";
import { roleOf } from "./column-roles.ts";
import { isUnit, readName } from "./names.ts";
import type { NameRead } from "./names.ts";
import type { SheetOptions, SheetSample, SheetText } from "./types.ts";

/** A column of a wide table that names a reading. */
interface ReadingColumn {
  readonly at: number;
  readonly heading: string;
  readonly name: NameRead;
}

/** The heading line of a wide table: at least three columns that name different readings; null when there is none. */
export function wideHeading(rows: readonly SheetRow[]): number | null {
  for (let i = 0; i < Math.min(rows.length - 1, 30); i++) {
    const columns = readingColumns(rows[i]!);
    const different = new Set(columns.map((column) => column.name.parameter ?? column.name.choices[0]));
    if (different.size >= 3) return i;
  }
  return null;
}

function readingColumns(row: SheetRow): readonly ReadingColumn[] {
  return row.cells.flatMap((heading, at) => {
    if (heading === "" || (roleOf(heading) !== null && heading.length > 2)) return [];
    const name = readName(heading);
    return name.parameter === null && name.choices.length === 0 ? [] : [{ at, heading, name }];
  });
}

/** Reads a sheet with one line a sample and a heading line, which may have a line of units under it. */
export function readWide(
  rows: readonly SheetRow[],
  headingAt: number,
  decimal: DecimalMark | null,
  options: SheetOptions,
): { readonly samples: readonly SheetSample[]; readonly other: readonly SheetText[] } {
  const heading = rows[headingAt]!;
  const columns = readingColumns(heading);
  const below = rows[headingAt + 1];
  const next = below === undefined ? undefined : (alignedTo(heading, below) ?? below);
  const units = next !== undefined && isUnitLine(next, columns) ? next.cells : null;
  const labelAt = columnOf(heading, "sample");
  const dateAt = columnOf(heading, "date");
  // Lines in which nothing tells what stands under which heading stay text, as do headings said again and page numbers.
  const isSample = ({ cells }: SheetRow): boolean => {
    const under = columns.flatMap(({ at }) => (cells[at] ?? "") || []);
    return under.length === 0
      ? labelAt !== null && (cells[labelAt] ?? "") !== ""
      : under.some((cell) => looksLikeValue(cell));
  };
  const body = rows.slice(headingAt + (units === null ? 1 : 2)).flatMap((row): readonly SheetRow[] => {
    const under = underHeadings(heading, row);
    return under !== null && isSample(under) ? [under] : [];
  });
  const samples = body.map((row): SheetSample => ({
    label: labelAt === null ? null : row.cells[labelAt] || null,
    sampled: dateAt === null ? null : plainDate(row.cells[dateAt] ?? ""),
    entries: columns.map(({ at, heading: head, name }) => {
      const value = row.cells[at] ?? "";
      const unit = units?.[at] ?? "";
      const found = {
        raw: `${head} | ${value}`,
        line: row.line,
        name,
        value,
        unit: isUnit(unit) ? unit : "",
      };
      return entryOf(found, decimal, options);
    }),
  }));
  const used = new Set(columns.map((column) => column.at));
  const unread = heading.cells.filter((cell, at) => cell !== "" && !used.has(at));
  const taken = new Set(body.map(({ line }) => line));
  if (units !== null) taken.add(below!.line);
  const textOf = ({ line, cells }: SheetRow): SheetText => ({ line, text: cells.join(" | ") });
  const other = rows.filter((row) => row !== heading && !taken.has(row.line)).map(textOf);
  if (unread.length > 0) other.push({ line: heading.line, text: unread.join(" | ") });
  return { samples, other };
}

/**
 * A line with each cell under its heading; null where nothing tells which is which. Cells behind the last heading say
 * that a cell pushed the others on: they are taken in their order where there is one for each heading.
 */
function underHeadings(heading: SheetRow, row: SheetRow): SheetRow | null {
  const under = alignedTo(heading, row);
  if (under === null) return null;
  const width = heading.cells.findLastIndex((cell) => cell !== "") + 1;
  if (!under.cells.slice(width).some((cell) => cell !== "")) return under;
  const filled = under.cells.filter((cell) => cell !== "");
  const isWhole = filled.length === width && heading.cells.slice(0, width).every((cell) => cell !== "");
  return isWhole ? { ...under, cells: filled } : null;
}

function isUnitLine(row: SheetRow, columns: readonly ReadingColumn[]): boolean {
  const filled = columns.filter(({ at }) => (row.cells[at] ?? "") !== "");
  const units = filled.filter(({ at }) => isUnit(row.cells[at] ?? ""));
  return units.length >= 2 && units.length * 2 > filled.length;
}

function columnOf(heading: SheetRow, role: "sample" | "date"): number | null {
  const at = heading.cells.findIndex((cell) => roleOf(cell) === role);
  return at < 0 ? null : at;
}
