/** How much an issue matters: an error blocks the answer, a warning or a note stands beside it. */
export type Severity = "error" | "warning" | "note";

/**
 * Something a person or a file supplied that needs their attention. A record, not a sentence: the words are
 * chosen by the shells, so that every language and every shell can say it in its own way.
 */
export interface Issue {
  /** Stable kebab-case name of the kind of issue, e.g. "unit-unknown". */
  readonly code: string;
  /** Where in the document, e.g. "water.readings[2].unit". */
  readonly path: string;
  /** What was received, as text, exactly as typed where possible. */
  readonly received?: string;
  /** What would have been accepted, in words or as a list. */
  readonly expected?: string;
  /** The likeliest slip or the step that mends it. */
  readonly hint?: string;
  readonly severity: Severity;
}

/** A value read from what a person supplied, or the issues that prevented it; warnings may come with a value. */
export type Read<T> =
  | { readonly ok: true; readonly value: T; readonly issues: readonly Issue[] }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** Misuse by a programmer: never shown to a person as it is. */
export class HardstandError extends Error {
  readonly code: string;
  readonly where: string;
  readonly details: Readonly<Record<string, unknown>>;

  constructor(code: string, where: string, details: Readonly<Record<string, unknown>> = {}) {
    super(`${code} in ${where}: ${JSON.stringify(details)}`);
    this.name = "HardstandError";
    this.code = code;
    this.where = where;
    this.details = details;
  }
}
