import type { DecimalMark } from "../../units/index.ts";
import type { SheetRow } from "./cells.ts";
import { entryOf, looksLikeValue } from "./entry.ts";
import { isUnit, readName, roleOf } from "./names.ts";
import type { ColumnRole, NameRead } from "./names.ts";
import type { SheetEntry, SheetOptions, SheetSample, SheetText } from "./types.ts";

interface ValueColumn {
  readonly at: number;
  readonly label: string;
  /** Unit in the heading, as in "Result (mg/L)"; "" when there is none. */
  readonly unit: string;
}

/** Columns of a list, from its heading line. */
interface Columns {
  readonly name: number;
  readonly values: readonly ValueColumn[];
  readonly unit: number | null;
  readonly basis: number | null;
}

/** Reads a sheet with one line a reading: name, value, unit, in any order of columns, or as plain lines of text. */
export function readList(
  rows: readonly SheetRow[],
  decimal: DecimalMark | null,
  options: SheetOptions,
): { readonly samples: readonly SheetSample[]; readonly other: readonly SheetText[] } {
  const samples: { label: string | null; entries: SheetEntry[] }[] = [{ label: null, entries: [] }];
  const other: SheetText[] = [];
  let columns: Columns | null = null;
  let width = 0;
  let label: string | null = null;
  let sampled: string | null = null;
  for (const [r, row] of rows.entries()) {
    const text = row.cells.filter((cell) => cell !== "").join(" | ");
    const heading = headingOf(row) ?? samplesHeading(row, rows[r + 1]);
    if (heading !== null) {
      columns = heading;
      width = Math.max(row.cells.length, ...heading.values.map((column) => column.at + 1));
      heading.values.forEach((column, i) => {
        samples[i] ??= { label: null, entries: [] };
        samples[i].label = heading.values.length > 1 ? column.label : null;
      });
      other.push({ line: row.line, text });
      continue;
    }
    // In a line of fewer cells than the heading columns ran together.
    const isShort = row.cells.length < width;
    const [lead = "", ...behind] = row.cells;
    const cells = isShort && !isKnownName(lead) ? [...nameAndFigure(lead), ...behind] : row.cells;
    const found = columns === null ? null : byColumns({ ...row, cells }, columns, width);
    const runTogether = isShort && found?.every(({ value }) => value === "") === true;
    const readings = (runTogether ? byLooks(row) : null) ?? found ?? byLooks(row);
    if (readings === null) {
      for (const about of aboutSample(row)) {
        if (about.role === "sample") label ??= about.value;
        if (about.role === "date") sampled ??= plainDate(about.value);
      }
      other.push({ line: row.line, text });
      continue;
    }
    readings.forEach((reading, i) => {
      const sample = (samples[i] ??= { label: null, entries: [] });
      sample.entries.push(entryOf({ raw: text, line: row.line, ...reading }, decimal, options));
    });
  }
  return {
    samples: samples.map((sample) => ({ label: sample.label ?? label, sampled, entries: sample.entries })),
    other,
  };
}

interface Reading {
  readonly name: NameRead;
  readonly value: string;
  readonly unit: string;
  /** Figures of which any may be the reading, where no heading says which. */
  readonly figures?: readonly string[];
}

/** The columns of a heading line; null when the line is none. */
function headingOf({ cells }: SheetRow): Columns | null {
  const roles = cells.map((cell) => roleOf(cell));
  const at = (role: ColumnRole): number => roles.indexOf(role);
  const name = at("parameter");
  if (name < 0) return null;
  const unit = at("unit") < 0 ? null : at("unit");
  const basis = at("basis") < 0 ? null : at("basis");
  let values = cells.flatMap((cell, i) =>
    roles[i] === "value" ? [{ at: i, label: cell, unit: readName(cell).unit }] : [],
  );
  if (values.length === 0) {
    // A column a sample, headed by the sample's name.
    values = cells.flatMap((cell, i) =>
      i > name && roles[i] === null && cell !== "" ? [{ at: i, label: cell, unit: "" }] : [],
    );
  }
  return values.length === 0 && unit === null ? null : { name, values, unit, basis };
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
  // Set by blanks, the empty corner leaves no cell.
  const shift = cells[0] === "" ? 0 : 1;
  const columns = labels.map(({ label, i }) => ({ label, at: i + shift }));
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
  };
}

/** "Calcium 0" as well: a reading that was parted, no name of a sample. */
function beginsWithName(cell: string): boolean {
  return isKnownName(cell) || isKnownName(cell.replace(/[\s\d.,<>≤≥]+$/, ""));
}

function isKnownName(cell: string): boolean {
  const { parameter, choices } = readName(cell);
  return parameter !== null || choices.length > 0;
}

function byColumns(
  { cells, byCommas }: SheetRow,
  columns: Columns,
  width: number,
): readonly Reading[] | null {
  const name = readName(cells[columns.name] ?? "");
  // A line with more cells than the heading: a decimal comma parted its figures.
  const isParted = byCommas === true && cells.length > width;
  const unitAt = isParted ? cells.findIndex((cell) => isUnit(cell)) : columns.unit;
  const unitCell = unitAt === null ? "" : (cells[unitAt] ?? "");
  const known = isKnownName(cells[columns.name] ?? "");
  const values =
    columns.values.length > 0
      ? columns.values.map((column) => ({ at: column.at, value: cells[column.at] ?? "", unit: column.unit }))
      : [{ at: -1, value: firstValue(cells, columns.name), unit: "" }];
  if (!known && !values.some(({ value }) => looksLikeValue(value))) return null;
  if ((cells[columns.name] ?? "") === "") return null;
  const basis = columns.basis === null ? "" : basisOf(cells[columns.basis] ?? "");
  const withBasis = name.basis === "" && basis !== "" ? { ...name, basis } : name;
  return values.map(({ at, value, unit }) => ({
    name: withBasis,
    value,
    unit: unitCell === "" ? unit : unitCell,
    ...(isParted && at > 0 ? { figures: figuresAt(cells, at, true) } : {}),
  }));
}

function basisOf(cell: string): string {
  return /^(?:as\s+)?([A-Za-z0-9]{1,6})$/.exec(cell.trim())?.[1] ?? "";
}

function firstValue(cells: readonly string[], name: number): string {
  return cells.find((cell, i) => i > name && looksLikeValue(cell)) ?? "";
}

/**
 * The figures a line may mean where more than one stand side by side, or where a decimal comma may have been taken for
 * what parts the cells; none where the value is clear.
 */
function figuresAt(cells: readonly string[], at: number, byCommas: boolean): readonly string[] {
  const value = cells[at] ?? "";
  const cut = byCommas ? /(?:^|[^\p{L}\d.,])(\d+)$/u.exec(cells[at - 1] ?? "")?.[1] : undefined;
  if (cut !== undefined && /^\d/.test(value)) return [`${cut},${value}`, value];
  if (!isBareFigure(value)) return [];
  const behind = cells.slice(at + 1);
  const end = behind.findIndex((cell) => !isBareFigure(cell));
  const further = end < 0 ? behind : behind.slice(0, end);
  const [next = ""] = behind;
  const parted = /^[<>≤≥]?\s*\d+$/.test(value) && /^\d/.test(next) ? [`${value},${next}`] : [];
  return parted.length + further.length === 0 ? [] : [...parted, value, ...further];
}

/** A number, a limit or a range with no unit in its cell. */
function isBareFigure(cell: string): boolean {
  return looksLikeValue(cell) && !/\p{L}/u.test(cell);
}

/** Finds name, value and unit in a line without a heading over it. */
function byLooks({ cells: given, byCommas }: SheetRow): readonly Reading[] | null {
  const [lead = "", ...behindLead] = given;
  if (given.length === 1) return bySplitting(lead);
  const cells = isKnownName(lead) ? given : [...nameAndFigure(lead), ...behindLead];
  for (let i = 0; i < cells.length; i++) {
    const cell = cells[i] ?? "";
    if (cell === "" || looksLikeValue(cell)) continue;
    const name = readName(cell);
    const rest = cells.slice(i + 1);
    if (name.parameter === null && name.choices.length === 0) continue;
    const at = rest.findIndex((c) => looksLikeValue(c));
    const value = rest[at] ?? rest.find((c) => !isUnit(c)) ?? "";
    const unit = rest.find((c) => c !== value && isUnit(c)) ?? "";
    return [{ name, value, unit, figures: figuresAt(cells.slice(i), at + 1, byCommas === true) }];
  }
  const [first = "", ...rest] = cells;
  // A measurement with a unit that is not known here: kept in view, not dropped.
  const value = rest.find((c) => looksLikeValue(c));
  if (value !== undefined && first !== "" && !looksLikeValue(first) && rest.some((c) => isUnit(c))) {
    return [{ name: readName(first), value, unit: rest.find((c) => isUnit(c)) ?? "" }];
  }
  return cells.length <= 2 ? bySplitting(cells.join(" ")) : null;
}

/** "Magnesium 20.6": a name whose figure stands a single blank behind it, as two cells; anything else as it is. */
function nameAndFigure(cell: string): readonly string[] {
  const match = /^(.*\S)\s+(\S+)$/.exec(cell);
  const [, name = "", figure = ""] = match ?? [];
  return isKnownName(name) && isBareFigure(figure) ? [name, figure] : [cell];
}

/** Splits "Total hardness as CaCO3: 357 mg/L" at the number that leaves the longest known name before it. */
function bySplitting(text: string): readonly Reading[] | null {
  let best: Reading | null = null;
  for (const match of text.matchAll(
    /[\s:=]+((?:[<>≤≥]\s*)?\d[\d.,]*(?:\s?[–-]\s?\d[\d.,]*)?|n\.?d\.?|bdl|not detected)(?=$|[\s*]|[^\d\s.,])/giu,
  )) {
    const name = readName(text.slice(0, match.index).trim());
    if (name.parameter === null && name.choices.length === 0) continue;
    const tail = text.slice(match.index + match[0].length).trim();
    best = { name, value: (match[1] ?? "").trim(), unit: unitAtStart(tail) };
  }
  return best === null ? unknownLine(text) : [best];
}

/** "Arsenic <1 µg/L": a measurement that is not known here is kept in view as one. */
function unknownLine(text: string): readonly Reading[] | null {
  const match = /^(\p{L}[^:=]*?)[\s:=]+((?:[<>≤≥]\s*)?\d[\d.,]*)\s*(.+)$/u.exec(text);
  const unit = unitAtStart(match?.[3] ?? "");
  return match === null || unit === ""
    ? null
    : [{ name: readName(match[1] ?? ""), value: match[2] ?? "", unit }];
}

/** The longest unit a text begins with; "" when it begins with none. */
function unitAtStart(text: string): string {
  const words = text.split(/\s+/);
  for (let n = Math.min(4, words.length); n > 0; n--) {
    const unit = words.slice(0, n).join(" ").replace(/[,;]$/, "");
    if (isUnit(unit)) return unit;
  }
  return "";
}

interface About {
  readonly role: ColumnRole;
  readonly value: string;
}

/** "Sample: Top bore", "Date sampled: 2026-03-02", in a cell of its own or parted over two, several in a line. */
function aboutSample({ cells }: SheetRow): readonly About[] {
  return cells.flatMap((cell, i): readonly About[] => {
    const split = /^([^:]{2,40}):\s*(.+)$/.exec(cell);
    const heading = split?.[1] ?? cell.replace(/:$/, "");
    // Without a colon only the first cell of a line is taken as what the next one is about.
    const value = split?.[2] ?? (i === 0 || cell.endsWith(":") ? (cells[i + 1] ?? "") : "");
    const role = roleOf(heading);
    return role === null || value === "" ? [] : [{ role, value }];
  });
}

/** An ISO date, or a day that can be read in one way only ("14.03.2026", "25/3/2026"); null otherwise. */
export function plainDate(text: string): string | null {
  const iso = /^(\d{4})-(\d{2})-(\d{2})/.exec(text.trim());
  if (iso !== null) return iso[0];
  const parts = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/.exec(text.trim());
  if (parts === null) return null;
  const [, a = "", mark = "", b = "", year = ""] = parts;
  const [first, second] = [Number(a), Number(b)];
  const iso8601 = (month: number, day: number): string =>
    `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  if (first > 12 && second <= 12) return iso8601(second, first);
  if (second > 12 && first <= 12) return iso8601(first, second);
  // A point parts day from month wherever it is used in dates.
  return mark === "." && second <= 12 ? iso8601(second, first) : null;
}
