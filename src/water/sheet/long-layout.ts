import type { DecimalMark } from "../../units/index.ts";
import type { SheetRow } from "./cells.ts";
import { entryOf } from "./entry.ts";
import { plainDate } from "./about-sample.ts";
import { roleOf } from "./column-roles.ts";
import { readName } from "./names.ts";
import type { ColumnRole } from "./column-roles.ts";
import type { SheetEntry, SheetOptions, SheetSample, SheetText } from "./types.ts";

type Columns = Readonly<Partial<Record<ColumnRole, number>>>;

/** The columns of a table with one line a result of many samples; null when the sheet is no such table. */
export function longColumns(heading: SheetRow): Columns | null {
  const columns: Partial<Record<ColumnRole, number>> = {};
  heading.cells.forEach((cell, at) => {
    const role = roleOf(cell);
    if (role !== null && columns[role] === undefined) columns[role] = at;
  });
  const whole = [columns.parameter, columns.value, columns.unit, columns.sample, columns.date];
  return whole.every((at) => at !== undefined) ? columns : null;
}

/**
 * Reads a table with one line a result, many samples below one another, as public water data come. Metals and anions
 * of one visit may be separate activities, so a sample is all results of one place and day.
 */
export function readLong(
  rows: readonly SheetRow[],
  columns: Columns,
  decimal: DecimalMark | null,
  options: SheetOptions,
): { readonly samples: readonly SheetSample[]; readonly other: readonly SheetText[] } {
  const samples = new Map<string, { label: string; sampled: string | null; entries: SheetEntry[] }>();
  const other: SheetText[] = [];
  for (const row of rows) {
    const cell = (role: ColumnRole): string => {
      const at = columns[role];
      return at === undefined ? "" : (row.cells[at] ?? "");
    };
    const raw = [
      cell("parameter"),
      cell("fraction"),
      cell("value"),
      cell("unit"),
      cell("basis"),
      cell("condition"),
    ]
      .filter((text) => text !== "")
      .join(" | ");
    const key = `${cell("sample")}\n${cell("date")}`;
    let sample = samples.get(key);
    if (sample === undefined) {
      sample = { label: cell("sample"), sampled: plainDate(cell("date")), entries: [] };
      samples.set(key, sample);
    }
    if (cell("parameter") === "") {
      other.push({ line: row.line, text: row.cells.join(" | ").slice(0, 200) });
      continue;
    }
    sample.entries.push(entryOf({ raw, line: row.line, ...partsOf(cell) }, decimal, options));
  }
  return { samples: [...samples.values()], other };
}

function partsOf(
  cell: (role: ColumnRole) => string,
): Pick<Parameters<typeof entryOf>[0], "name" | "value" | "unit"> {
  const named = readName(cell("parameter"));
  const basis = /^(?:as\s+)?([A-Za-z0-9]{1,6})$/.exec(cell("basis"))?.[1] ?? "";
  const fraction = readName(`iron (${cell("fraction").split(",")[0] ?? ""})`).fraction;
  const name = {
    ...named,
    basis: named.basis === "" ? basis : named.basis,
    fraction: fraction ?? named.fraction,
  };
  const limit = cell("limitValue");
  const undetected = cell("value") === "" && /not detected|below|nondetect|between/i.test(cell("condition"));
  const value = !undetected ? cell("value") : limit === "" ? "not detected" : `<${limit}`;
  const unit = undetected && limit !== "" ? cell("limitUnit") : cell("unit");
  return { name, value, unit };
}
