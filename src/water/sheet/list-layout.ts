import { NOT_DETECTED as NOT_DETECTED_WORDS } from "../../units/index.ts";
import type { DecimalMark } from "../../units/index.ts";
import { alignedTo } from "./align.ts";
import { aboutSample, plainDate } from "./about-sample.ts";
import type { SheetRow } from "./cells.ts";
import { entryOf, looksLikeValue } from "./entry.ts";
import { listHeading } from "./list-heading.ts";
import type { Columns, ListHeading, ValueColumn } from "./list-heading.ts";
import { isKnownName, isUnit, readName } from "./names.ts";
import type { NameRead } from "./names.ts";
import type { SheetEntry, SheetOptions, SheetSample, SheetText } from "./types.ts";

/** Reads a sheet with one line a reading: name, value, unit, in any order of columns, or as plain lines of text. */
export function readList(
  rows: readonly SheetRow[],
  decimal: DecimalMark | null,
  options: SheetOptions,
): { readonly samples: readonly SheetSample[]; readonly other: readonly SheetText[] } {
  const samples: { label: string | null; entries: SheetEntry[] }[] = [{ label: null, entries: [] }];
  const other: SheetText[] = [];
  let under: ListHeading | null = null;
  let label: string | null = null;
  let sampled: string | null = null;
  for (const [r, row] of rows.entries()) {
    const text = row.cells.filter((cell) => cell !== "").join(" | ");
    const heading = listHeading(row, rows.slice(r + 1));
    if (heading !== null) {
      under = heading;
      const { values } = heading.columns;
      values.forEach((column, i) => {
        samples[i] ??= { label: null, entries: [] };
        samples[i].label = values.length > 1 ? column.label : null;
      });
      other.push({ line: row.line, text });
      continue;
    }
    const readings =
      (under === null ? null : underHeading(row, under)) ?? byLooks(row) ?? byLooks(partedAlone(row));
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

/** The readings of a line under a heading; null where it is none, or where its figures cannot be told apart. */
function underHeading(row: SheetRow, { row: heading, columns }: ListHeading): readonly Reading[] | null {
  const width = heading.cells.length;
  // In a line of fewer cells columns ran together, or some are empty.
  const isShort = row.cells.length < width;
  const full = isShort ? alignedTo(heading, nameApart(row)) : row;
  const found = full === null ? null : byColumns(full, columns, width);
  const runTogether = isShort && found?.every(({ value }) => value === "") === true;
  const readings = (runTogether ? byLooks(row) : null) ?? found;
  return isShort && readings !== null ? readings.map(withParts) : readings;
}

/** "31 250" where a line lacks a cell: one figure, or two that ran together. */
function withParts(reading: Reading): Reading {
  const parts = /^\d{1,3}(?: \d{3})+$/.test(reading.value.trim()) ? reading.value.trim().split(" ") : [];
  return parts.length < 2 ? reading : { ...reading, figures: [reading.value, ...parts] };
}

/** A line whose name ran together with the figure behind it, parted. */
function nameApart(row: SheetRow): SheetRow {
  const [lead = "", ...behind] = row.cells;
  const [name = "", figure] = isKnownName(lead) ? [lead] : nameAndFigure(lead);
  if (figure === undefined) return row;
  const cells = [name, figure, ...behind];
  const [[from, to] = [0, 0], ...others] = row.spans ?? [];
  if (row.spans === undefined) return { ...row, cells };
  return { ...row, cells, spans: [[from, from + name.length], [to - figure.length, to], ...others] };
}

interface Reading {
  readonly name: NameRead;
  readonly value: string;
  readonly unit: string;
  /** Figures of which any may be the reading, where no heading says which. */
  readonly figures?: readonly string[];
}

function byColumns(
  { cells: given, byCommas }: SheetRow,
  columns: Columns,
  width: number,
): readonly Reading[] | null {
  const cells = byCommas === true ? given : pushedBack(given, columns, width);
  const cellAt = (at: number | null): string => (at === null ? "" : (cells[at] ?? ""));
  const name = nameOrSymbol(cellAt(columns.name), cellAt(columns.symbol));
  // A line with more cells than the heading: a decimal comma parted its figures.
  const isParted = byCommas === true && cells.length > width;
  const unitAt = isParted ? cells.findIndex((cell) => isUnit(cell)) : columns.unit;
  const unitCell = cellAt(unitAt);
  const known = name.parameter !== null || name.choices.length > 0;
  const headed = columns.values.map(filled(cells));
  const isEmpty = headed.length === 1 && headed[0]?.value === "";
  const strays = isEmpty ? soleFigure(cells, (i) => columns.unheaded.includes(i) || i >= width) : null;
  const values =
    headed.length === 0
      ? [soleFigure(cells, (i) => i > columns.name && !columns.ignored.includes(i))]
      : strays !== null && strays.value !== ""
        ? [strays]
        : headed;
  if (!known && !values.some(({ value }) => looksLikeValue(value))) return null;
  if (cellAt(columns.name) === "" && !known) return null;
  const basis = basisOf(cellAt(columns.basis));
  const withBasis = name.basis === "" && basis !== "" ? { ...name, basis } : name;
  const isBelow = columns.qualifier !== null && NOT_DETECTED.test(cellAt(columns.qualifier));
  return values.map(({ at, value, unit, figures = [] }) => ({
    name: withBasis,
    value: isBelow && /^\s*[\d.,]/.test(value) ? `<${value.trim()}` : value,
    unit: unitCell === "" ? unit : unitCell,
    figures: isParted && at > 0 ? figuresAt(cells, at, true) : figures,
  }));
}

/** Cells that a long name pushed on, so that none stands under the results, in their order where there is one for each heading. */
function pushedBack(cells: readonly string[], { values }: Columns, width: number): readonly string[] {
  const isPushed = cells.slice(width).some((cell) => cell !== "") && values.length > 0;
  if (!isPushed || values.some(({ at }) => (cells[at] ?? "") !== "")) return cells;
  const filled = cells.filter((cell) => cell !== "");
  return filled.length === width ? filled : cells;
}

/** The name of a line, its symbol in the place of a name that is not known, and as the basis of one that has none. */
function nameOrSymbol(name: string, symbol: string): NameRead {
  const read = readName(name);
  if (symbol === "") return read;
  const bySymbol = readName(symbol);
  if (read.parameter === null && read.choices.length === 0) return bySymbol;
  return read.basis === "" ? { ...read, basis: readName(`${name} (${symbol})`).basis } : read;
}

interface Figure {
  readonly at: number;
  readonly value: string;
  readonly unit: string;
  readonly figures?: readonly string[];
}

/** What stands in a column of figures, or else in one beside it with the same in another unit. */
const filled =
  (cells: readonly string[]) =>
  (column: ValueColumn): Figure => {
    const { at, unit } = [column, ...column.others].find((one) => (cells[one.at] ?? "") !== "") ?? column;
    return { at, unit, value: cells[at] ?? "" };
  };

/** "611)", "61 Pass": what may be a figure with something behind it. */
const beginsAsFigure = (cell: string): boolean => /^[<>≤≥]?\s*[.,]?\d/.test(cell);

/** The figure of a line that does not stand under a heading of figures: the only one there, or one of several. */
function soleFigure(cells: readonly string[], isPlace: (at: number) => boolean): Figure {
  const held = cells.filter((cell, i) => isPlace(i) && (looksLikeValue(cell) || beginsAsFigure(cell)));
  const [value = "", ...more] = held;
  return { at: -1, value, unit: "", figures: more.length === 0 ? [] : held };
}

/**
 * Qualifiers of a figure that was not detected, which is then the limit: "<", "U", "ND".
 * @source U and UJ: US EPA, Contract Laboratory Program National Functional Guidelines, from memory
 */
const NOT_DETECTED = /^(?:<|≤|UJ?|ND|N\.D\.)$/i;

function basisOf(cell: string): string {
  return /^(?:as\s+)?([A-Za-z0-9]{1,6})$/.exec(cell.trim())?.[1] ?? "";
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
  if (NOT_DETECTED.test(behind[0] ?? "") && /^\d/.test(value)) return [`<${value}`, value];
  const end = behind.findIndex((cell) => !isBareFigure(cell));
  const further = end < 0 ? behind : behind.slice(0, end);
  const passed = behind[further.length] ?? "";
  // "0.31 Fail" behind a figure may be the result, and the figure its limit.
  if (/^[<>≤≥]?\s*\d[\d.,]*\s+\p{L}+$/u.test(passed) && !looksLikeValue(passed))
    return [value, ...further, passed.replace(/\s+\p{L}+$/u, "")];
  const [next = ""] = behind;
  const parted = /^[<>≤≥]?\s*\d+$/.test(value) && /^\d/.test(next) ? [`${value},${next}`] : [];
  return parted.length + further.length === 0 ? [] : [...parted, value, ...further];
}

/** A line that is parted by a sign of its own, unlike the sheet around it. */
function partedAlone(row: SheetRow): SheetRow {
  const [text = ""] = row.cells;
  const sign = [";", "|", ","].find((one) => text.includes(one));
  if (row.cells.length !== 1 || sign === undefined) return row;
  const cells = text.split(sign).map((cell) => cell.trim());
  return { line: row.line, cells, ...(sign === "," ? { byCommas: true as const } : {}) };
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
    const unclear = rest.slice(0, Math.max(at, 0)).filter(beginsAsFigure);
    const figures =
      unclear.length > 0 ? [...unclear, value] : figuresAt(cells.slice(i), at + 1, byCommas === true);
    return [{ name, value, unit, figures }];
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

/** A figure, a limit, a range or words for "not detected" in a line, the longest of these words first. */
const VALUE_IN_LINE = new RegExp(
  String.raw`[\s:=]+((?:[<>≤≥]\s*)?[.,]?\d[\d.,]*(?:\s?[–-]\s?\d[\d.,]*)?|${[...NOT_DETECTED_WORDS]
    .sort((a, b) => b.length - a.length)
    .map((word) => word.replace(/\./g, String.raw`\.`))
    .join("|")})(?=$|[\s*]|[^\d\s.,])`,
  "giu",
);

/** Splits "Total hardness as CaCO3: 357 mg/L" at the number that leaves the longest known name before it. */
function bySplitting(text: string): readonly Reading[] | null {
  let best: Reading | null = null;
  for (const match of text.matchAll(VALUE_IN_LINE)) {
    const name = readName(text.slice(0, match.index).trim());
    if (name.parameter === null && name.choices.length === 0) continue;
    const tail = text.slice(match.index + match[0].length).trim();
    best = { name, value: (match[1] ?? "").trim(), unit: unitAtStart(tail) };
  }
  return best === null ? unknownLine(text) : [best];
}

/** "Arsenic <1 µg/L": a measurement that is not known here is kept in view as one. */
function unknownLine(text: string): readonly Reading[] | null {
  const match = /^(\p{L}[^:=]*?)[\s:=]+((?:[<>≤≥]\s*)?[.,]?\d[\d.,]*)\s*(.+)$/u.exec(text);
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
