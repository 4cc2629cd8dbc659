import { decimalMarkOf, rowsOf } from "./cells.ts";
import type { SheetRow } from "./cells.ts";
import { longColumns, readLong } from "./long-layout.ts";
import { readList } from "./list-layout.ts";
import { inOneList } from "./panels.ts";
import { readWide, wideHeading } from "./wide-layout.ts";
import type { EntryStatus, SheetEntry, SheetOptions, SheetRead, SheetSample } from "./types.ts";

/**
 * Reads a laboratory sheet from its text: pasted lines, or a table parted by tabs, semicolons, bars or commas, with
 * one line a reading, one line a sample or one line a result.
 *
 * Every line is accounted for: as a reading that is understood, as one that has to be asked about, as a second reading
 * of the same thing, as one that is not used, or as other text. Nothing is guessed: an ambiguous number, a missing
 * unit and a name with two meanings in use are asked.
 */
export function readSheet(text: string, options: SheetOptions = {}): SheetRead {
  return readSheetRows(rowsOf(text), options);
}

/** Reads a sheet whose cells are known already, as from a spreadsheet file. Blank rows keep their line number. */
export function readSheetCells(cells: readonly (readonly string[])[], options: SheetOptions = {}): SheetRead {
  const rows = cells.map((row, index): SheetRow => ({
    line: index + 1,
    cells: row.map((cell) => cell.trim()),
  }));
  return readSheetRows(
    rows.filter((row) => row.cells.some((cell) => cell !== "")),
    options,
  );
}

function readSheetRows(rows: readonly SheetRow[], options: SheetOptions): SheetRead {
  const decimal = options.decimal ?? decimalMarkOf(rows);
  const [first] = rows;
  const long = first === undefined ? null : longColumns(first);
  if (long !== null) {
    const read = readLong(rows.slice(1), long, decimal, options);
    return { layout: "one line a result", decimal, samples: withSeconds(read.samples), other: read.other };
  }
  const listed = inOneList(rows);
  const heading = wideHeading(listed);
  if (heading !== null) {
    const read = readWide(listed, heading, decimal, options);
    return { layout: "one line a sample", decimal, samples: withSeconds(read.samples), other: read.other };
  }
  const read = readList(listed, decimal, options);
  return { layout: "one line a reading", decimal, samples: withSeconds(read.samples), other: read.other };
}

/** Samples with every reading but the best of its parameter marked as a second one, and unknown ones as not used. */
function withSeconds(samples: readonly SheetSample[]): readonly SheetSample[] {
  return samples
    .map((sample) => {
      const best = new Map<string, SheetEntry>();
      for (const entry of sample.entries) {
        if (entry.parameter === null || entry.status === "blank") continue;
        const before = best.get(entry.parameter);
        if (before === undefined || standing(entry) > standing(before)) best.set(entry.parameter, entry);
      }
      const entries = sample.entries.map((entry): SheetEntry => {
        if (entry.parameter === null) {
          if (entry.choices.length > 0 || entry.status === "blank") return entry;
          return { ...entry, status: "not used", why: "No reading of this name takes part in the answer." };
        }
        if (entry.status === "blank" || best.get(entry.parameter) === entry) return entry;
        return { ...entry, status: "second", why: "The sheet gives this twice; the other one was taken." };
      });
      return { ...sample, entries };
    })
    .filter((sample) => sample.entries.length > 0);
}

/** Which of two readings of one thing is taken: a clear one before a doubtful one, then by what the tank gets. */
function standing(entry: SheetEntry): number {
  const clear: Readonly<Record<EntryStatus, number>> = {
    understood: 4,
    asked: 2,
    second: 0,
    blank: 0,
    "not used": 0,
  };
  // Dissolved ions are what binds; iron goes into the tank with its rust.
  const wanted = entry.parameter === "iron" ? "total" : "dissolved";
  return clear[entry.status] + (entry.fraction === wanted ? 1 : 0);
}

/** The readings of a sample that are understood, as a job holds them. */
export function readingsOfSample(
  sample: SheetSample,
): readonly { readonly parameter: string; readonly value: string; readonly unit: string }[] {
  return sample.entries.flatMap(({ status, parameter, value, unit }) =>
    status === "understood" && parameter !== null ? [{ parameter, value, unit }] : [],
  );
}
