import { done, failed } from "./issue-helpers.ts";
import type { Read } from "./issue.ts";
import { foldText, shownValue } from "./text.ts";

/** A decimal mark. */
export type DecimalMark = "." | ",";

/** How numbers are written in the text at hand. */
export interface NumberTextOptions {
  /** The decimal mark in use, when it is known; the other mark then parts groups of three digits. */
  readonly decimal?: DecimalMark;
}

/** Longest text taken for a number. */
const LONGEST_NUMBER = 64;

/** Anything else is refused before folding, so that a raised or a circled digit never becomes a plain one. */
const ALLOWED = /^[\s\d.,'’+\-−‐‑eE]*$/;
const SHAPE = /^([+-]?)([\d.,]+)(?:[eE]([+-]?\d{1,4}))?$/;
/** A space, or the apostrophe used for groups in Switzerland, between digits. */
const GROUP_GAP = /[ '’]/;

/**
 * Reads a number from typed text, strictly: whole or decimal with point or comma, minus sign or hyphen, an exponent,
 * groups of three digits parted by spaces, apostrophes or the other mark.
 *
 * One mark with exactly three digits after it ("1.250", "1,250") has two readings and is an issue that names both,
 * unless `options.decimal` says which mark is in use. A leading zero ("0.125"), four digits before the mark, an
 * exponent or groups parted otherwise leave only one reading.
 *
 * @param path where the text stands, for the issues
 */
export function readNumberText(text: string, path: string, options: NumberTextOptions = {}): Read<number> {
  const received = shownValue(text);
  if (text.length > LONGEST_NUMBER || !ALLOWED.test(text)) {
    return failed("number-unreadable", path, { received, expected: "a number such as 12.5" });
  }
  const folded = foldText(text).replace(/’/g, "'");
  const ungrouped = withoutGaps(folded);
  if (ungrouped === null) {
    return failed("number-groups-malformed", path, {
      received,
      expected: "groups of three digits, such as 1 250",
    });
  }
  const match = SHAPE.exec(ungrouped.text);
  if (match === null)
    return failed("number-unreadable", path, { received, expected: "a number such as 12.5" });
  const [, sign = "", body = "", exponent] = match;
  const evidence = ungrouped.hadGaps || exponent !== undefined;
  const plain = plainDecimal(body, options.decimal ?? null, evidence);
  if (plain.kind !== "one") return refused(plain, sign, received, path);
  const value = Number(`${sign}${plain.text}${exponent === undefined ? "" : `e${exponent}`}`);
  if (!Number.isFinite(value))
    return failed("number-too-large", path, { received, expected: "a smaller number" });
  // "-0" is zero.
  return done(value === 0 ? 0 : value);
}

/** Takes out the gaps between groups; null when a gap does not part groups of three digits. */
function withoutGaps(text: string): { readonly text: string; readonly hadGaps: boolean } | null {
  const body = text.replace(/^([+-]) /, "$1");
  if (!GROUP_GAP.test(body)) return { text: body, hadGaps: false };
  const whole = /^([+-]?)(\d{1,3}(?:[ ']\d{3})+)((?:[.,]\d+)?(?:[eE][+-]?\d+)?)$/.exec(body);
  if (whole === null) return /^[+-]?[\d., ']+$/.test(body) ? null : { text: body, hadGaps: false };
  return {
    text: `${whole[1] ?? ""}${(whole[2] ?? "").replace(/[ ']/g, "")}${whole[3] ?? ""}`,
    hadGaps: true,
  };
}

type Plain =
  | { readonly kind: "one"; readonly text: string }
  | { readonly kind: "two"; readonly readings: readonly [string, string] }
  | { readonly kind: "unreadable" | "groups" | "contradicts" };

/** The digits with a point as decimal mark, or why there is not exactly one reading. */
function plainDecimal(body: string, decimal: DecimalMark | null, evidence: boolean): Plain {
  const marks = body.replace(/\d/g, "");
  if (marks === "") return { kind: "one", text: body };
  if (!/\d$/.test(body)) return { kind: "unreadable" };
  const last = marks.at(-1) as DecimalMark;
  const other = marks.split("").find((mark) => mark !== last) ?? null;
  if (other !== null) return withBothMarks(body, last, other as DecimalMark, decimal);
  if (marks.length > 1) {
    if (decimal === last) return { kind: "contradicts" };
    return isGrouped(body, last) ? { kind: "one", text: body.replaceAll(last, "") } : { kind: "groups" };
  }
  const [whole = "", part = ""] = body.split(last);
  const asDecimal = `${whole === "" ? "0" : whole}.${part}`;
  if (decimal === last) return { kind: "one", text: asDecimal };
  const couldGroup = isGrouped(body, last) && !evidence;
  if (decimal !== null) {
    return couldGroup ? { kind: "one", text: whole + part } : { kind: "contradicts" };
  }
  return couldGroup
    ? { kind: "two", readings: [whole + part, withOneReading(asDecimal)] }
    : { kind: "one", text: asDecimal };
}

/** A decimal of three figures, written so that it is not asked about again: "1.25" for 1.250, "1.1250" for 1.125. */
function withOneReading(decimal: string): string {
  const shortest = String(Number(decimal));
  return /\.\d{3}$/.test(shortest) ? `${shortest}0` : shortest;
}

/** Both marks are present: the last one is the decimal mark, the other parts the groups before it. */
function withBothMarks(
  body: string,
  last: DecimalMark,
  group: DecimalMark,
  decimal: DecimalMark | null,
): Plain {
  if (decimal !== null && decimal !== last) return { kind: "contradicts" };
  const pieces = body.split(last);
  const [whole = "", part = ""] = pieces;
  if (pieces.length !== 2 || part.includes(group) || !isGrouped(whole, group)) return { kind: "groups" };
  return { kind: "one", text: `${whole.replaceAll(group, "")}.${part}` };
}

function isGrouped(body: string, mark: DecimalMark): boolean {
  const [first = "", ...rest] = body.split(mark);
  return /^[1-9]\d{0,2}$/.test(first) && rest.length > 0 && rest.every((group) => /^\d{3}$/.test(group));
}

function refused(plain: Plain, sign: string, received: string, path: string): Read<number> {
  if (plain.kind === "two") {
    const [grouped, small] = plain.readings.map((reading) => `${sign}${reading}`);
    return failed("number-ambiguous", path, {
      received,
      expected: `${grouped ?? ""} or ${small ?? ""}`,
      hint: `Write it as ${grouped ?? ""} or ${small ?? ""}, whichever is meant.`,
    });
  }
  if (plain.kind === "contradicts") {
    const hint = "The mark used here is not the decimal mark the report uses.";
    return failed("number-mark-contradicts", path, { received, hint });
  }
  if (plain.kind === "groups") {
    return failed("number-groups-malformed", path, {
      received,
      expected: "groups of three digits, such as 1,250.5",
    });
  }
  return failed("number-unreadable", path, { received, expected: "a number such as 12.5" });
}

/**
 * Significant figures of a typed number, or null when the text is not a plain number. Zeros at the end of a whole
 * number count, since a report that prints 250 rarely means 2 figures.
 */
export function significantFigures(text: string): number | null {
  const folded = foldText(text).replace(/[ '’]/g, "");
  const match = /^[+-]?(\d*)[.,]?(\d*)(?:[eE][+-]?\d+)?$/.exec(folded);
  if (match === null) return null;
  const digits = `${match[1] ?? ""}${match[2] ?? ""}`;
  if (digits === "") return null;
  const significant = digits.replace(/^0+/, "");
  return significant === "" ? 1 : significant.length;
}
