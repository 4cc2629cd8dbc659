import type { SheetRow } from "./cells.ts";
import { looksLikeValue } from "./entry.ts";
import { roleAsListed, roleOf } from "./column-roles.ts";
import { isKnownName, isUnit, plainName, readName } from "./names.ts";
import type { ColumnRole } from "./column-roles.ts";

/** A column of figures. */
export interface ValueColumn {
  readonly at: number;
  readonly label: string;
  /** Unit in the heading, as in "Result (mg/L)"; "" when there is none. */
  readonly unit: string;
  /** Columns that hold the same figures in another unit, as "meq/L" beside "mg/L" does. */
  readonly others: readonly Omit<ValueColumn, "others">[];
}

/** Columns of a list, from its heading line. */
export interface Columns {
  readonly name: number;
  /** Column of the symbol or formula of what is named. */
  readonly symbol: number | null;
  readonly values: readonly ValueColumn[];
  readonly unit: number | null;
  readonly basis: number | null;
  /** Column of a sign or a letter that tells a figure that was not detected. */
  readonly qualifier: number | null;
  /** Columns of limits, methods and the like, where no result stands. */
  readonly ignored: readonly number[];
  /** Columns without a heading, where the result stands if its own column is empty. */
  readonly unheaded: readonly number[];
}

/** A heading line and what its columns are. */
export interface ListHeading {
  readonly row: SheetRow;
  readonly columns: Columns;
}

/**
 * A line that heads a list, by the words of its columns or by the names of samples over them; null when it is none.
 *
 * @param below the lines under it
 */
export function listHeading(row: SheetRow, below: readonly SheetRow[]): ListHeading | null {
  const columns = headingOf(row, below);
  if (columns !== null) return { row, columns };
  const [next] = below;
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
function headingOf({ cells: given }: SheetRow, below: readonly SheetRow[]): Columns | null {
  const { cells, isTorn } = headingsApart(given);
  const roles = cells.map((cell) => roleOf(cell));
  const at = (role: ColumnRole): number => roles.indexOf(role);
  const name = at("parameter");
  // A word of a line of its own, such as "Cations", heads the lines below it but no columns.
  if (name < 0 || cells.filter((cell) => cell !== "").length < 2) return null;
  const placeOf = (role: ColumnRole): number | null => (at(role) < 0 ? null : at(role));
  const [basis, qualifier, symbol] = [placeOf("basis"), placeOf("qualifier"), placeOf("symbol")];
  const unit = placeOf("unit") ?? unheadedUnits(cells, roles, below);
  const columnsWhere = (holds: (cell: string, i: number) => boolean): readonly Bare[] =>
    cells.flatMap((cell, i) => (holds(cell, i) ? [{ at: i, label: cell, unit: unitIn(cell) }] : []));
  let values = inOtherUnits(columnsWhere((_, i) => roles[i] === "value"));
  if (values.length === 0)
    values = inOtherUnits(columnsWhere((cell, i) => roles[i] === null && isUnit(cell)));
  if (values.length === 0) {
    // A column a sample, headed by the sample's name.
    const named = columnsWhere((cell, i) => i > name && i !== unit && roles[i] === null && cell !== "");
    values = named.map((column) => ({ ...column, others: [] }));
  }
  const ignored = roles.flatMap((role, i) => (role === "ignored" ? [i] : []));
  const columns = { name, symbol, unit, basis, qualifier };
  const isNamed = values.length > 0 && values.every(({ at }) => roles[at] === null);
  if (isTorn || (isNamed && hasUnheadedFigures(cells, name, below)))
    return { ...columns, values: [], ignored: [], unheaded: [] };
  const unheaded =
    values.length !== 1 ? [] : cells.flatMap((cell, i) => (cell === "" && i > name ? [i] : []));
  return values.length === 0 && unit === null ? null : { ...columns, values, ignored, unheaded };
}

/**
 * Headings that ran together in a narrow table, "ResultUnit", each in the column it belongs to where as many empty ones
 * follow; torn where nothing tells which column is whose.
 */
function headingsApart(cells: readonly string[]): {
  readonly cells: readonly string[];
  readonly isTorn: boolean;
} {
  const apart = [...cells];
  let isTorn = false;
  cells.forEach((cell, i) => {
    const parts = cell.split(/(?<=\p{Ll})(?=\p{Lu})|(?<=\p{Lu})(?=\p{Lu}\p{Ll})/u);
    if (parts.length < 2 || roleAsListed(cell) !== null || isUnit(cell) || isKnownName(cell)) return;
    if (parts.filter((part) => roleOf(part) !== null).length < 2) return;
    const behind = cells.slice(i + 1);
    const free = behind.findIndex((other) => other !== "");
    if (free === parts.length - 1) parts.forEach((part, k) => (apart[i + k] = part));
    else isTorn = true;
  });
  return { cells: apart, isTorn };
}

type Bare = Omit<ValueColumn, "others">;

const unitIn = (heading: string): string => (isUnit(heading) ? heading.trim() : readName(heading).unit);

/** Value columns, those that differ by their unit alone put to the first of them. */
function inOtherUnits(columns: readonly Bare[]): readonly ValueColumn[] {
  const alike = new Map<string, Bare[]>();
  for (const column of columns) {
    const { label, unit } = column;
    const key = unit === "" ? label : plainName(label.replace(unit, " "));
    alike.set(key, [...(alike.get(key) ?? []), column]);
  }
  return [...alike.values()].flatMap(([first, ...others]) =>
    first === undefined ? [] : [{ ...first, others }],
  );
}

/** Lines under a heading that are looked at for what its columns hold. */
const LINES_SEEN = 12;

/** Whether figures stand in columns with nothing over them: names of samples that are there may be those of others. */
function hasUnheadedFigures(cells: readonly string[], name: number, below: readonly SheetRow[]): boolean {
  const lines = below.slice(0, LINES_SEEN).filter((row) => isKnownName(row.cells[name] ?? ""));
  return cells.some((cell, i) => {
    const figures = lines.filter((row) => looksLikeValue(row.cells[i] ?? ""));
    return i > name && cell === "" && figures.length >= 2;
  });
}

/** A column under a heading that is not known, which holds units in most of the lines where it holds anything. */
function unheadedUnits(
  cells: readonly string[],
  roles: readonly (ColumnRole | null)[],
  below: readonly SheetRow[],
): number | null {
  const lines = below.slice(0, LINES_SEEN).filter((row) => row.cells.length <= cells.length);
  const found = cells.findIndex((_, i) => {
    if (roles[i] !== null) return false;
    const held = lines.flatMap((row) => (row.cells[i] ?? "") || []);
    const units = held.filter((cell) => isUnit(cell) && !looksLikeValue(cell));
    return units.length >= 2 && units.length * 2 > held.length;
  });
  return found < 0 ? null : found;
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
  const limits = columns.flatMap(({ label, at }) => (roleOf(label) === "ignored" ? [at] : []));
  const values = columns.filter(({ label }) => roleOf(label) === null && !looksLikeValue(label));
  if (units.length + values.length + limits.length < columns.length || units.length > 1 || values.length < 2)
    return null;
  const figures = values.map(({ at }) => rest[at - 1] ?? "");
  if (!figures.every((figure) => looksLikeValue(figure))) return null;
  const others = rest.filter((cell, i) => looksLikeValue(cell) && !limits.includes(i + 1));
  if (others.length > values.length) return null;
  return {
    name: 0,
    symbol: null,
    values: values.map(({ label, at }) => ({ at, label, unit: readName(label).unit, others: [] })),
    unit: units[0]?.at ?? null,
    basis: null,
    qualifier: null,
    ignored: limits,
    unheaded: [],
  };
}

/** "Calcium 0" as well: a reading that was parted, no name of a sample. */
function beginsWithName(cell: string): boolean {
  return isKnownName(cell) || isKnownName(cell.replace(/[\s\d.,<>≤≥]+$/, ""));
}
