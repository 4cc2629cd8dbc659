import type { SheetRow } from "./cells.ts";
import { looksLikeValue } from "./entry.ts";
import { isKnownName, readName, roleOf } from "./names.ts";
import type { ColumnRole } from "./names.ts";

/** A column of figures. */
export interface ValueColumn {
  readonly at: number;
  readonly label: string;
  /** Unit in the heading, as in "Result (mg/L)"; "" when there is none. */
  readonly unit: string;
}

/** Columns of a list, from its heading line. */
export interface Columns {
  readonly name: number;
  readonly values: readonly ValueColumn[];
  readonly unit: number | null;
  readonly basis: number | null;
  /** Column of a sign or a letter that tells a figure that was not detected. */
  readonly qualifier: number | null;
}

/** A heading line and what its columns are. */
export interface ListHeading {
  readonly row: SheetRow;
  readonly columns: Columns;
}

/** A line that heads a list, by the words of its columns or by the names of samples over them; null when it is none. */
export function listHeading(row: SheetRow, next: SheetRow | undefined): ListHeading | null {
  const columns = headingOf(row);
  if (columns !== null) return { row, columns };
  const cornered = withCorner(row, next);
  const samples = samplesHeading(cornered, next);
  return samples === null ? null : { row: cornered, columns: samples };
}

/** A heading line with its empty corner, which leaves no cell where the line is set by blanks. */
function withCorner(row: SheetRow, next: SheetRow | undefined): SheetRow {
  const [first, ...others] = row.spans ?? [];
  if (first === undefined || row.cells.length + 1 !== next?.cells.length) return row;
  return { ...row, cells: ["", ...row.cells], spans: [[0, Math.max(0, first[0] - 1)], first, ...others] };
}

/** The columns of a heading line; null when the line is none. */
function headingOf({ cells }: SheetRow): Columns | null {
  const roles = cells.map((cell) => roleOf(cell));
  const at = (role: ColumnRole): number => roles.indexOf(role);
  const name = at("parameter");
  if (name < 0) return null;
  const placeOf = (role: ColumnRole): number | null => (at(role) < 0 ? null : at(role));
  const [unit, basis, qualifier] = [placeOf("unit"), placeOf("basis"), placeOf("qualifier")];
  let values = cells.flatMap((cell, i) =>
    roles[i] === "value" ? [{ at: i, label: cell, unit: readName(cell).unit }] : [],
  );
  if (values.length === 0) {
    // A column a sample, headed by the sample's name.
    values = cells.flatMap((cell, i) =>
      i > name && roles[i] === null && cell !== "" ? [{ at: i, label: cell, unit: "" }] : [],
    );
  }
  return values.length === 0 && unit === null ? null : { name, values, unit, basis, qualifier };
}

/**
 * A line that names two samples or more, each over the figures of a column of its own, with nothing over the names of
 * the readings; null when the line is none. The next line tells.
 */
function samplesHeading({ cells }: SheetRow, next: SheetRow | undefined): Columns | null {
  const labels = cells.flatMap((cell, i) => (cell === "" ? [] : [{ label: cell, i }]));
  const [name = "", ...rest] = next?.cells ?? [];
  if (labels.length < 2 || !isKnownName(name) || labels.some(({ label }) => beginsWithName(label)))
    return null;
  if (cells[0] !== "") return null;
  const columns = labels.map(({ label, i }) => ({ label, at: i }));
  const units = columns.filter(({ label }) => roleOf(label) === "unit");
  const values = columns.filter(({ label }) => roleOf(label) === null && !looksLikeValue(label));
  if (units.length + values.length < columns.length || units.length > 1 || values.length < 2) return null;
  const figures = values.map(({ at }) => rest[at - 1] ?? "");
  if (!figures.every((figure) => looksLikeValue(figure))) return null;
  if (rest.filter((cell) => looksLikeValue(cell)).length > values.length) return null;
  return {
    name: 0,
    values: values.map(({ label, at }) => ({ at, label, unit: readName(label).unit })),
    unit: units[0]?.at ?? null,
    basis: null,
    qualifier: null,
  };
}

/** "Calcium 0" as well: a reading that was parted, no name of a sample. */
function beginsWithName(cell: string): boolean {
  return isKnownName(cell) || isKnownName(cell.replace(/[\s\d.,<>≤≥]+$/, ""));
}
