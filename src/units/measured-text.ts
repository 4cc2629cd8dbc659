import { done, failed } from "./issue-helpers.ts";
import type { Read } from "./issue.ts";
import { readNumberText } from "./number-text.ts";
import type { NumberTextOptions } from "./number-text.ts";
import { foldText, shownValue } from "./text.ts";

/** What a reading says. A blank is "not measured", never zero. */
export type MeasuredText =
  | { readonly kind: "value"; readonly value: number }
  | { readonly kind: "below"; readonly limit: number }
  | { readonly kind: "above"; readonly limit: number }
  | { readonly kind: "range"; readonly low: number; readonly high: number }
  | { readonly kind: "not measured" };

const NOT_MEASURED = new Set([
  "",
  "-",
  "--",
  "—",
  "–",
  "not measured",
  "not tested",
  "not determined",
  "not analysed",
  "not analyzed",
  "n.m.",
  "n.m",
  "nm",
  "n.t.",
  "n/a",
  "na",
  "n.a.",
  "unknown",
  "?",
]);

/**
 * Not found by the laboratory, in the languages sheets are printed in. "n.d." is among them: it may also mean "not
 * determined", so it has to be asked.
 */
export const NOT_DETECTED: readonly string[] = [
  ...["nd", "n.d.", "n.d", "n. d.", "n/d", "not detected", "none detected", "non-detect", "nondetect"],
  ...["bdl", "b.d.l.", "bd", "below detection", "below detection limit", "n.q.", "nq", "not quantifiable"],
  ...["n.n.", "n. n.", "nn", "nicht nachweisbar", "nicht nachgewiesen", "nicht bestimmbar", "n.b.", "n. b."],
  ...["u.d.b.", "u.b.", "unter bestimmungsgrenze", "unter nachweisgrenze"],
  ...["non détecté", "non détectée", "non décelé", "non quantifié"],
  ...["no detectado", "no detectada", "no detectable", "non rilevato", "non rilevabile", "n.r."],
  ...["dl", "lod", "loq", "mdl", "rl", "lor", "pql", "bg", "nwg", "ld", "lq", "lc"].flatMap((limit) => [
    `<${limit}`,
    `< ${limit}`,
  ]),
  ...["trace", "traces", "nil", "none"],
];

const IS_NOT_DETECTED: ReadonlySet<string> = new Set(NOT_DETECTED);

const BELOW = /^(?:<=?|≤|less than|below|under)\s*(.+)$/i;
const ABOVE = /^(?:>=?|≥|more than|over|above|at least)\s*(.+)$/i;
const PLUS = /^([\d.,' ]+)\+$/;
const DASH_RANGE = /^(.*?\d)\s*[-‐‑‒–—−]\s*([+-]?[\d.,].*)$/;
const WORD_RANGE = /^(.*?\d)\s*(?:…|\.\.\.?|\bto\b)\s*([+-]?[\d.,].*)$/i;

/**
 * Reads what a water test says for one parameter: a number, "<0.05", ">425", "20–30", or that it was not measured.
 *
 * "ND" and its like are an issue that asks for the detection limit: neither zero nor half a limit nobody stated.
 *
 * @param value a number, a text, null or undefined (the last two are "not measured")
 */
export function readMeasured(
  value: unknown,
  path: string,
  options: NumberTextOptions = {},
): Read<MeasuredText> {
  if (value === null || value === undefined) return done({ kind: "not measured" });
  if (typeof value === "number") {
    return Number.isFinite(value)
      ? done({ kind: "value", value })
      : failed("number-unreadable", path, { received: String(value), expected: "a number" });
  }
  if (typeof value !== "string") {
    const expected = "a number, a limit such as <0.05, a range such as 20–30, or nothing";
    return failed("number-expected", path, { received: shownValue(value), expected });
  }
  const text = foldKeepingDashes(value);
  const word = text.toLowerCase();
  if (NOT_MEASURED.has(word)) return done({ kind: "not measured" });
  if (IS_NOT_DETECTED.has(word)) {
    return failed("limit-missing", path, {
      received: shownValue(value),
      expected: "the detection limit, such as <0.05, or nothing if it was not measured",
      hint: "Look for the reporting limit on the report and write it with a < in front.",
    });
  }
  return readText(text, path, options);
}

function foldKeepingDashes(value: string): string {
  return value.replace(/[\u2009\u202f\u00a0\s]+/g, " ").trim();
}

function readText(text: string, path: string, options: NumberTextOptions): Read<MeasuredText> {
  const below = BELOW.exec(text);
  if (below !== null) return limit("below", below[1] ?? "", path, options);
  const above = ABOVE.exec(text) ?? PLUS.exec(text);
  if (above !== null) return limit("above", above[1] ?? "", path, options);
  const single = readNumberText(text, path, options);
  if (single.ok) return done({ kind: "value", value: single.value }, single.issues);
  // An exponent such as 2e-3 was read above, so that a dash left over parts two numbers.
  const range = WORD_RANGE.exec(text) ?? DASH_RANGE.exec(foldText(text).includes("e-") ? "" : text);
  return range === null ? single : readRange(range[1] ?? "", range[2] ?? "", path, options);
}

function limit(
  kind: "below" | "above",
  text: string,
  path: string,
  options: NumberTextOptions,
): Read<MeasuredText> {
  const read = readNumberText(text, path, options);
  return read.ok ? done({ kind, limit: read.value }, read.issues) : read;
}

function readRange(
  lowText: string,
  highText: string,
  path: string,
  options: NumberTextOptions,
): Read<MeasuredText> {
  const low = readNumberText(lowText, path, options);
  const high = readNumberText(highText, path, options);
  if (!low.ok) return low;
  if (!high.ok) return high;
  if (low.value === high.value) return done({ kind: "value", value: low.value });
  if (low.value > high.value) {
    const received = `${lowText}–${highText}`;
    return failed("range-reversed", path, { received, expected: "the lower end first" });
  }
  return done({ kind: "range", low: low.value, high: high.value });
}

/**
 * A measured text with every number in it changed by the same increasing function, e.g. into another unit.
 *
 * @param change must be increasing, so that limits and ranges keep their sense
 */
export function mapMeasured(measured: MeasuredText, change: (value: number) => number): MeasuredText {
  switch (measured.kind) {
    case "value":
      return { kind: "value", value: change(measured.value) };
    case "below":
    case "above":
      return { kind: measured.kind, limit: change(measured.limit) };
    case "range":
      return { kind: "range", low: change(measured.low), high: change(measured.high) };
    case "not measured":
      return measured;
  }
}
