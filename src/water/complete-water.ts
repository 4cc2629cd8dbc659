import type { ThermoData } from "../chem/index.ts";
import type { Read } from "../units/index.ts";
import { alkalinityOf_eqPerL } from "./charge.ts";
import { ASSUMED, WATER_CHECKS } from "./check-data.ts";
import { checkEachReading } from "./check-readings.ts";
import { checkComposition } from "./check-composition.ts";
import { completeAlkalinity } from "./complete-alkalinity.ts";
import { completeCarbonate } from "./complete-carbonate.ts";
import { completeHardness } from "./complete-hardness.ts";
import { closeBalance, completeMajor, conductingIons } from "./complete-major.ts";
import { completeMinor } from "./complete-minor.ts";
import { conductivityFromIons_uSPerCm } from "./conductivity.ts";
import { gatherReadings } from "./known.ts";
import type { KnownReadings } from "./known.ts";
import { assumed } from "./drawn.ts";
import type { Draw } from "./drawn.ts";
import { assume, assumeFigure, hasError, newLedger, say } from "./ledger.ts";
import type { Ledger } from "./ledger.ts";
import type { WaterSystem } from "./solve-carbonate.ts";
import type { Water, WaterTest } from "./types.ts";

/** Settings of a completion. */
export interface CompleteOptions {
  readonly thermo: ThermoData;
  /** Temperature of the water in the tank [°C]; null or left out: the reading's, else an assumption. */
  readonly temperature_C?: number | null;
  /** Where in its distribution each uncertain input is taken; left out: central values. */
  readonly draw?: Draw;
  /** Compiled systems kept between completions of one water, by the components in them. */
  readonly systems?: Map<string, WaterSystem>;
}

/** Temperatures [°C] that the constants of the data reach. */
const REACHED_C = { low: 0, high: 45 } as const;

/**
 * Completes and checks a water test: a neutral composition that has the measured hardness, alkalinity and pH, with
 * every assumption that it took and every doubt about the readings.
 *
 * Missing readings are completed by stated assumptions with their ranges, never by zero. Readings that contradict one
 * another beyond repair are errors: there is no answer then.
 */
export function completeWater(test: WaterTest, options: CompleteOptions): Read<Water> {
  const ledger = newLedger(options.draw);
  const measuredOnly = gatherReadings(test, ledger);
  const known = withConductivity(measuredOnly, ledger);
  const path = readingsPath(test);
  checkEachReading(measuredOnly, ledger);
  const temperature_C = completeTemperature(known, options.temperature_C ?? null, path, ledger);
  const pH = completePH(known, ledger);
  const hardness = completeHardness(known, path, ledger);
  const minor = completeMinor(known, test.ironForm, path, ledger);
  const metals = { ...minor, "Ca+2": hardness?.calcium ?? 0, "Mg+2": hardness?.magnesium ?? 0 };
  const measured = withMeasuredMajor(known, metals);
  const alkalinity = completeAlkalinity(known, measured, hardness?.measured ?? false, ledger);
  const chargeBalance_percent = checkComposition(measuredOnly, metals, alkalinity, pH.value, path, ledger);
  if (hardness === null || hasError(ledger)) return { ok: false, issues: ledger.issues };
  const strong = { ...completeMajor(known, metals, alkalinity.value, ledger) };
  closeBalance(strong, alkalinity.value, ledger);
  const totals = completeCarbonate(
    {
      totals_molPerL: strong,
      alkalinity_eqPerL: alkalinity.value,
      pH: pH.value,
      bothMeasured: pH.measured && alkalinity.measured,
      temperature_C,
      path: known.get("pH")?.reading.path ?? path,
    },
    options.thermo,
    ledger,
    options.systems,
  );
  if (totals === null || hasError(ledger)) return { ok: false, issues: ledger.issues };
  const conductivity = known.get("conductivity");
  const alkalinity_molPerL = alkalinityOf_eqPerL(totals);
  const water: Water = {
    source: test.source,
    temperature_C,
    pH: pH.value,
    totals_molPerL: withoutZeros(totals),
    alkalinity_molPerL,
    hardness_molPerL: hardness.calcium + hardness.magnesium,
    conductivity_uSPerCm:
      conductivity?.value ??
      conductivityFromIons_uSPerCm(conductingIons(totals, alkalinity_molPerL, pH.value)),
    turbidity_NTU: known.get("turbidity")?.value ?? null,
    suspendedSolids_mgPerL: known.get("suspended solids")?.value ?? null,
    chargeBalance_percent,
    assumptions: ledger.assumptions,
    issues: ledger.issues,
  };
  return { ok: true, value: water, issues: ledger.issues };
}

/** Dissolved solids stand in for a conductivity that was not measured, by the usual factor. */
function withConductivity(known: KnownReadings, ledger: Ledger): KnownReadings {
  const solids = known.get("dissolved solids");
  if (known.has("conductivity") || solids === undefined) return known;
  const { low, high } = WATER_CHECKS.criteria.dissolvedSolidsPerConductivity;
  const { value: factor, source } = WATER_CHECKS.conductivity.dissolvedSolidsPerConductivity;
  const estimate = { value: solids.value / factor, low: solids.low / high, high: solids.high / low };
  assume(ledger, {
    code: "conductivity-from-dissolved-solids",
    about: "conductivity",
    ...estimate,
    unit: "µS/cm",
    why: "Conductivity was not measured: it follows from the dissolved solids by the usual factor.",
    evidence: "common practice",
    source,
  });
  return new Map([...known, ["conductivity", { ...solids, ...estimate, kind: "range" }]]);
}

/** Path of the list of readings, for what is about all of them. */
function readingsPath(test: WaterTest): string {
  const first = test.readings[0]?.path ?? "readings[0]";
  return first.replace(/\[\d+\]$/, "");
}

function withoutZeros(totals: Readonly<Record<string, number>>): Readonly<Record<string, number>> {
  return Object.fromEntries(Object.entries(totals).filter(([, total]) => total > 0));
}

function withMeasuredMajor(
  known: KnownReadings,
  totals: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> {
  return {
    ...totals,
    "Na+": known.get("sodium")?.value ?? 0,
    "K+": known.get("potassium")?.value ?? 0,
    "Cl-": known.get("chloride")?.value ?? 0,
    "SO4-2": known.get("sulfate")?.value ?? 0,
  };
}

function completeTemperature(
  known: KnownReadings,
  asked: number | null,
  path: string,
  ledger: Ledger,
): number {
  const reading = known.get("temperature");
  const temperature =
    asked ??
    reading?.value ??
    assumeFigure(
      ledger,
      {
        code: "temperature-assumed",
        about: "temperature",
        unit: "°C",
        why: "No temperature was given: that of a mild spraying day is taken.",
      },
      ASSUMED.temperature_C,
    );
  const { low, high } = REACHED_C;
  if (temperature >= low && temperature <= high) return temperature;
  const severity = temperature > 100 || temperature < -5 ? "error" : "warning";
  say(ledger, "temperature-out-of-range", severity, reading?.reading.path ?? path, {
    received: `${temperature} °C`,
    expected: `${low} to ${high} °C`,
    hint: "The constants are used at the nearest temperature they reach.",
  });
  return Math.min(high, Math.max(low, temperature));
}

function completePH(
  known: KnownReadings,
  ledger: Ledger,
): { readonly value: number; readonly measured: boolean } {
  const reading = known.get("pH");
  if (reading !== undefined) return { value: reading.value, measured: true };
  const { central, low, high, source } = assumed(ledger.draw, "pH");
  const alkalinity = known.get("alkalinity") ?? known.get("bicarbonate");
  // Without alkalinity the pH is that of rain, whatever the other waters of the data have.
  const value = alkalinity !== undefined && alkalinity.value <= 0 ? 5.6 : central;
  assume(ledger, {
    code: "ph-assumed",
    about: "pH",
    value,
    low: Math.min(low, value),
    high,
    unit: "",
    why: "pH was not measured: that of the waters of the data is taken.",
    evidence: "computed",
    source,
  });
  return { value, measured: false };
}
