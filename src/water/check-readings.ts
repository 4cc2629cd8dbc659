import { formatNumber, fromInternal, readingScale } from "../units/index.ts";
import type { Parameter } from "../units/index.ts";
import { WATER_CHECKS } from "./check-data.ts";
import { asTyped } from "./known.ts";
import type { Known, KnownReadings } from "./known.ts";
import { say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import { physicalIssues } from "./read-reading.ts";
import { slipBetween } from "./slips.ts";

const CRITERIA = WATER_CHECKS.criteria;

interface UsualRange {
  readonly low?: number;
  readonly high: number;
  readonly unit: string;
}
const USUAL: Readonly<Partial<Record<string, UsualRange>>> = WATER_CHECKS.usualRanges.values;

/** A share in percent of the larger of two values. */
export function apart_percent(a: number, b: number): number {
  const largest = Math.max(Math.abs(a), Math.abs(b));
  return largest === 0 ? 0 : (Math.abs(a - b) / largest) * 100;
}

/** Whether the ranges of two readings overlap. */
export function overlap(
  a: { readonly low: number; readonly high: number },
  b: { readonly low: number; readonly high: number },
): boolean {
  return a.low <= b.high && b.low <= a.high;
}

/** A value of a parameter in the first unit its readings are usually given in. */
export function shown(parameter: Parameter, value: number, unit: string): string {
  const read = fromInternal(parameter, value, unit);
  return formatNumber(read.ok ? read.value : value, { significant: 3, unit });
}

/** Checks each reading on its own: what cannot be, and what is far from what waters have. */
export function checkEachReading(known: KnownReadings, ledger: Ledger): void {
  for (const [parameter, entry] of known) {
    const { reading } = entry;
    const impossible = physicalIssues(parameter, reading.measured, asTyped(entry), reading.path);
    ledger.issues.push(...impossible);
    if (impossible.length > 0) continue;
    if (parameter === "pH") checkUsualPH(entry, ledger);
    else checkUsual(parameter, entry, ledger);
  }
}

function checkUsualPH(entry: Known, ledger: Ledger): void {
  const { low, high } = CRITERIA.pHUsual;
  if (entry.value >= low && entry.value <= high) return;
  say(ledger, "reading-unusual", "warning", `${entry.reading.path}.value`, {
    received: asTyped(entry),
    expected: `a pH from ${low} to ${high}`,
    hint: "Was the meter calibrated, and is this the untreated water?",
  });
}

function checkUsual(parameter: Parameter, entry: Known, ledger: Ledger): void {
  const usual = USUAL[parameter];
  if (usual === undefined) return;
  const scale = readingScale(parameter, usual.unit, "");
  if (!scale.ok) return;
  const inside = (limit: number): number => (limit - scale.value.offset) * scale.value.factor;
  const tooHigh = entry.value > inside(usual.high);
  const tooLow = usual.low !== undefined && entry.value < inside(usual.low);
  if (!tooHigh && !tooLow) return;
  const range =
    usual.low === undefined
      ? `up to ${usual.high} ${usual.unit}`
      : `${usual.low} to ${usual.high} ${usual.unit}`;
  say(ledger, "reading-unusual", "warning", `${entry.reading.path}.value`, {
    received: asTyped(entry),
    expected: range,
    hint: sizeHint(parameter, tooHigh),
  });
}

function sizeHint(parameter: Parameter, tooHigh: boolean): string {
  if (parameter === "conductivity") return tooHigh ? "µS/cm typed as mS/cm?" : "mS/cm typed as µS/cm?";
  if (parameter === "temperature") return "Fahrenheit typed as Celsius?";
  return tooHigh ? "µg/L typed as mg/L, or a decimal mark lost?" : "mg/L typed as µg/L?";
}

/** Hardness against calcium plus magnesium, both measured [mol/L]. */
export function checkHardness(hardness: Known, calcium: Known, magnesium: Known, ledger: Ledger): void {
  const sum = calcium.value + magnesium.value;
  const sumRange = { low: calcium.low + magnesium.low, high: calcium.high + magnesium.high };
  const apart = apart_percent(hardness.value, sum);
  const { warning, error } = CRITERIA.hardnessAgreement;
  if (apart <= warning || overlap(hardness, sumRange)) return;
  const unit = "mg/L as CaCO3";
  say(
    ledger,
    "hardness-against-metals",
    apart > error ? "error" : "warning",
    `${hardness.reading.path}.value`,
    {
      received: `hardness ${shown("hardness", hardness.value, unit)}, calcium and magnesium ${shown("hardness", sum, unit)}`,
      expected: `within ${warning} % of one another`,
      hint: hardnessSlip(hardness, calcium, magnesium) ?? "Check the units of the three lines.",
    },
  );
}

/** The one slip in hardness, calcium or magnesium that makes the three agree. */
function hardnessSlip(hardness: Known, calcium: Known, magnesium: Known): string | null {
  const sum = calcium.value + magnesium.value;
  return (
    slipBetween("calcium", calcium.value, hardness.value - magnesium.value) ??
    slipBetween("magnesium", magnesium.value, hardness.value - calcium.value) ??
    slipBetween("hardness", hardness.value, sum) ??
    // Both lines of a report are usually in one unit.
    slipBetween("calcium", sum, hardness.value)
  );
}

/** Alkalinity against hydrogen carbonate plus carbonate, all measured [eq/L]. */
export function checkAlkalinity(alkalinity: Known, fromForms: number, path: string, ledger: Ledger): void {
  const apart = apart_percent(alkalinity.value, fromForms);
  const { warning, error } = CRITERIA.alkalinityAgreement;
  const small = Math.max(Math.abs(alkalinity.value), fromForms) < CRITERIA.alkalinityNegligible.value;
  if (apart <= warning || small || (fromForms >= alkalinity.low && fromForms <= alkalinity.high)) return;
  const unit = "mg/L as CaCO3";
  say(ledger, "alkalinity-against-hydrogen-carbonate", apart > error ? "error" : "warning", path, {
    received: `alkalinity ${shown("alkalinity", alkalinity.value, unit)}, from hydrogen carbonate ${shown("alkalinity", fromForms, unit)}`,
    expected: `within ${warning} % of one another`,
    hint:
      slipBetween("bicarbonate", fromForms, alkalinity.value) ??
      slipBetween("alkalinity", alkalinity.value, fromForms) ??
      "Check the units of the two lines.",
  });
}
