import { formatNumber } from "../units/index.ts";

/**
 * A number as people write it: three figures, never coarser than whole numbers, point decimals, a thin space between
 * thousands from five digits on ("3000 L" is easier to read aloud than "3 000 L").
 *
 * @param digits significant figures to keep
 */
export function figure(value: number, digits = 3): string {
  const size = Math.abs(value);
  const whole = size >= 1 ? Math.floor(Math.log10(size)) + 1 : 1;
  return formatNumber(value, { significant: Math.min(15, Math.max(digits, whole)), group: true }).replace(
    "-",
    "−",
  );
}

/** An amount to measure out, in the unit a person would use: "850 mL", "25.5 kg". */
export function amountText(amount: number, unit: "L" | "kg" | "mL" | "g"): string {
  if (unit === "L" && amount > 0 && amount < 1) return `${figure(amount * 1000)} mL`;
  if (unit === "kg" && amount > 0 && amount < 1) return `${figure(amount * 1000)} g`;
  return `${figure(amount)} ${unit}`;
}

/** A share as "93 in 100"; the ends are said in words, so that "100 in 100" never hides a loss. */
export function inHundred(share: number): string {
  const hundred = share * 100;
  if (hundred >= 99.95) return "all of it";
  if (hundred > 99) return `${hundred.toFixed(1)} in 100`;
  if (hundred <= 0.05) return "none";
  if (hundred < 1) return `${hundred.toFixed(1)} in 100`;
  return `${String(Math.round(hundred))} in 100`;
}

/** A share as a bare figure per hundred, for tables: "93", "99.6", "0.4". */
export function perHundred(share: number): string {
  const hundred = share * 100;
  if (hundred >= 99.95) return "100";
  if (hundred > 99 || (hundred < 1 && hundred > 0.05)) return hundred.toFixed(1);
  return String(Math.round(hundred));
}

/** A time as people say it: "40 min", "6.5 h", "12 days". @param hours time [h] */
export function timeText(hours: number): string {
  if (hours < 1) return `${figure(hours * 60, 2)} min`;
  if (hours < 72) return `${figure(hours, 2)} h`;
  if (hours < 24 * 730) return `${figure(hours / 24, 2)} days`;
  return `${figure(hours / 24 / 365.25, 2)} years`;
}

/** A pH with one decimal, or two where asked. */
export function pHText(pH: number, decimals = 1): string {
  return pH.toFixed(decimals);
}

/** A cost with two decimals; the currency is the job's own and is not named. */
export function costText(cost: number | null): string {
  return cost === null ? "not known" : cost.toFixed(2);
}
