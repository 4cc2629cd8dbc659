import { readNumberText } from "../../units/index.ts";
import type { DecimalMark } from "../../units/index.ts";

/**
 * A number with one mark and three digits behind it, which has two readings, and what stands before it: no part of a
 * longer number.
 */
const AMBIGUOUS = /(^|[^\d.,])([1-9]\d{0,2}[.,]\d{3})(?![\d.,])/;
const EVERY_AMBIGUOUS = new RegExp(AMBIGUOUS, "g");

/** The typed text with its ambiguous number written in the reading chosen. */
export function settled(text: string, reading: string): string {
  return text.replace(AMBIGUOUS, (_all, before: string) => `${before}${reading.replace(/^[-+]/, "")}`);
}

/** A text of a sheet whose decimal mark is known, written so that it is not asked about again where it stands alone. */
export function settledBy(text: string, decimal: DecimalMark): string {
  return text.replace(EVERY_AMBIGUOUS, (all, before: string, number: string) => {
    const read = readNumberText(number, "");
    if (read.ok) return all;
    const [grouped = number, small = number] = read.issues[0]?.expected?.split(" or ") ?? [];
    return `${before}${number.includes(decimal) ? small : grouped}`;
  });
}
