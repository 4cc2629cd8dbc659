import { done, failed } from "./issue-helpers.ts";
import type { Issue, Read } from "./issue.ts";
import { readNumberText } from "./number-text.ts";
import type { DecimalMark } from "./number-text.ts";
import { QUANTITY_TABLES, QUANTITY_UNITS, foldUnit } from "./quantity-units.ts";
import { nearestName, shownValue } from "./text.ts";

/** How a quantity may be written. */
export interface QuantityOptions {
  /** The decimal mark in use, when it is known. */
  readonly decimal?: DecimalMark;
  /** Unit of a bare number; without it a bare number is an issue (except for a share). */
  readonly unit?: string;
  /** Accept zero where only more than zero would be accepted. */
  readonly allowZero?: boolean;
}

/** What is left of a quantity once its number and unit are known. */
export interface Parts {
  readonly number: number;
  readonly unit: string;
}

/** Parts a text into its number and its unit, both as typed. */
export function splitQuantity(
  value: unknown,
  path: string,
  expected: string,
  options: QuantityOptions,
): Read<Parts> {
  const received = shownValue(value);
  if (value === null || value === undefined || value === "") {
    return failed("quantity-missing", path, { received: "", expected });
  }
  if (typeof value === "number") {
    if (!Number.isFinite(value)) return failed("number-unreadable", path, { received, expected });
    if (options.unit !== undefined) return done({ number: value, unit: options.unit });
    return failed("unit-missing", path, { received, expected, hint: "Write the unit after the number." });
  }
  if (typeof value !== "string") return failed("number-expected", path, { received, expected });
  const text = splitNumberAndUnit(value);
  if (text === null) return failed("quantity-unreadable", path, { received, expected });
  if (/^[<>≤≥~]/.test(value.trim()) || /^[-‒–—]\s*\d/.test(text.unit) || /^to \d/i.test(text.unit)) {
    return failed("range-not-allowed", path, {
      received,
      expected,
      hint: "Give the one number the card is to be written for.",
    });
  }
  const number = readNumberText(
    text.number,
    path,
    options.decimal === undefined ? {} : { decimal: options.decimal },
  );
  if (!number.ok) return { ok: false, issues: number.issues.map((issue) => ({ ...issue, received })) };
  const unit = text.unit === "" ? options.unit : text.unit;
  if (unit === undefined) {
    return failed("unit-missing", path, { received, expected, hint: "Write the unit after the number." });
  }
  return done({ number: number.value, unit });
}

/**
 * A typed text parted into its number and its unit, both as typed; null when it does not begin with a number. The
 * unit is "" when there is none.
 */
export function splitNumberAndUnit(text: string): { readonly number: string; readonly unit: string } | null {
  const match = /^\s*([<>≤≥]?\s*[+\-−]?\s*[\d.,](?:[\d.,'’\s]*\d)?(?:[eE][+\-−]?\d+)?)\s*(.*)$/s.exec(text);
  return match === null ? null : { number: (match[1] ?? "").trim(), unit: (match[2] ?? "").trim() };
}

/** The likeliest slip behind a unit that does not fit. */
export function failedUnit(
  dimension: keyof typeof QUANTITY_TABLES,
  value: unknown,
  unit: string,
  path: string,
): { readonly ok: false; readonly issues: readonly Issue[] } {
  const received = shownValue(value);
  const units: readonly string[] = QUANTITY_UNITS[dimension];
  const expected = `a number with ${units.join(", ")}`;
  const folded = foldUnit(unit);
  if (folded === "%" && (dimension === "content" || dimension === "dose")) {
    const kinds = dimension === "content" ? "% w/w (g per 100 g) or % w/v (g per 100 mL)" : "% w/v or % v/v";
    return failed("unit-ambiguous", path, { received, expected: kinds, hint: "The label says which." });
  }
  if (dimension === "liquid rate" && /^oz\/ac/.test(folded)) {
    const hint = "An ounce is a weight. Did you mean fl oz/ac?";
    return failed("unit-ambiguous", path, { received, expected, hint });
  }
  const elsewhere = dimensionsOf(folded).filter((other) => other !== dimension);
  const near = units.find((known) => foldUnit(known).startsWith(`${folded}/`)) ?? nearestName(unit, units);
  if (elsewhere.length > 0) {
    const hint = near === null ? `${unit} is a unit of ${elsewhere[0] ?? ""}.` : `Did you mean ${near}?`;
    return failed("unit-wrong-kind", path, { received, expected, hint });
  }
  return failed("unit-unknown", path, {
    received,
    expected,
    ...(near === null ? {} : { hint: `Did you mean ${near}?` }),
  });
}

function dimensionsOf(folded: string): readonly string[] {
  return Object.entries(QUANTITY_TABLES)
    .filter(([, table]) => table(folded) !== null)
    .map(([name]) => name);
}
