import type { DecimalMark, Issue, Parameter } from "../../units/index.ts";

/** What became of a line or cell of a sheet. Nothing on a sheet is dropped without one of these. */
export type EntryStatus =
  /** Name, value and unit are clear. */
  | "understood"
  /** Something has two meanings or is missing: `choices` or `issues` say what to ask. */
  | "asked"
  /** The same thing stands on the sheet a second time; the other one was taken. */
  | "second"
  /** No value was measured. */
  | "blank"
  /** A measurement that a spray water needs no account of, or that is not known here. */
  | "not used";

/** A way to understand an entry that the person may pick. */
export interface EntryChoice {
  readonly parameter: Parameter;
  readonly value: string;
  readonly unit: string;
}

/** One reading found on a sheet, with what stands there and how it is understood. */
export interface SheetEntry {
  /** What stands on the sheet, cells parted by " | ". */
  readonly raw: string;
  /** Line of the sheet, from 1. */
  readonly line: number;
  readonly status: EntryStatus;
  readonly parameter: Parameter | null;
  /** Value as it stands on the sheet, and the unit with its basis, ready for a reading of a job. */
  readonly value: string;
  readonly unit: string;
  /** "total" or "dissolved" when the sheet says so. */
  readonly fraction: "total" | "dissolved" | null;
  /** Likely ways to understand it, first the likeliest; empty when the value itself has to be mended. */
  readonly choices: readonly EntryChoice[];
  readonly issues: readonly Issue[];
  /** One sentence on what is asked or why it is not used; null when there is nothing to say. */
  readonly why: string | null;
}

/** The readings of one sample. */
export interface SheetSample {
  /** Name on the sheet; null when it has none. */
  readonly label: string | null;
  /** ISO date when the sheet gives one that can be read in one way only. */
  readonly sampled: string | null;
  readonly entries: readonly SheetEntry[];
}

/** Text that is no reading: headings, addresses, remarks. */
export interface SheetText {
  readonly line: number;
  readonly text: string;
}

/** How the readings are laid out. */
export type SheetLayout = "one line a reading" | "one line a sample" | "one line a result";

/** A sheet as read. */
export interface SheetRead {
  readonly layout: SheetLayout;
  /** Decimal mark that the sheet as a whole shows; null when no number tells. */
  readonly decimal: DecimalMark | null;
  readonly samples: readonly SheetSample[];
  readonly other: readonly SheetText[];
}

/** What the person said about the sheet as a whole. */
export interface SheetOptions {
  /** Settles numbers such as 1,250. */
  readonly decimal?: DecimalMark;
  /** Unit of concentrations that stand without one, e.g. "mg/L". */
  readonly bareUnit?: string;
}
