import file from "../../../data/model-uncertainty.json" with { type: "json" };
import { inverseNormal } from "../../numerics/index.ts";

/** Names of what is assumed about drying. */
export type DryingAssumption = keyof typeof file.assumptions;

/** Beyond twice the distance of its 5th and 95th percentile nothing is drawn: the tails are not known. */
const FURTHEST = 2;
const Z95 = inverseNormal(0.95);

/** An assumption at a place 0…1 in its distribution. */
export function drawnAssumption(name: DryingAssumption, u: number): number {
  const { central, low, high } = file.assumptions[name];
  const steps = Math.max(-FURTHEST, Math.min(FURTHEST, inverseNormal(u) / Z95));
  return central + Math.abs(steps) * ((steps < 0 ? low : high) - central);
}

/** One standard uncertainty of the humidity that a person gave, as a share. */
export const HUMIDITY_MEASURED = file.standards.humidityMeasured.value;
/** One standard uncertainty of the natural logarithm of a published hydrolysis rate. */
export const RATE_FACTOR = file.standards.rateFactor.value;
/** Uncertain mixing terms: θ [kg/mol] between an ion and another. */
export const MIXING = file.mixing;
/** A spread with a longer side below its centre: one standard deviation above it, and how far below goes for it. */
export interface UnevenSpread {
  readonly above: number;
  readonly belowPerAbove: number;
  /** Key of the source. */
  readonly source: string;
}

/** Spread of log Ksp of solids whose age is not known, by name. */
export const SOLID_SPREAD: ReadonlyMap<string, UnevenSpread> = new Map(
  file.solids.map(({ solid, low, central, high, source }) => [
    solid,
    { above: (high - central) / Z95, belowPerAbove: (central - low) / (high - central), source },
  ]),
);
/** Source of what is assumed about drying. */
export function assumptionSource(name: DryingAssumption): string {
  return file.assumptions[name].source;
}

/** Source of a standard uncertainty. */
export function standardSource(name: keyof typeof file.standards): string {
  return file.standards[name].source;
}

/** Tests that would settle an assumption about drying. */
export const DRYING_TESTS = file.tests;

/**
 * One standard uncertainty of log10 of an activity coefficient whose parameters are borrowed.
 *
 * @param charge of the ion
 * @param ionicStrength [mol/kg]
 * @source data/model-uncertainty.json
 */
export function borrowedActivity(charge: number, ionicStrength: number): number {
  const figure = borrowedFigure(charge);
  if (figure === undefined) return 0;
  return figure.coefficient * Math.min(ionicStrength, figure.toIonicStrength_molPerKg) ** figure.power;
}

function borrowedFigure(charge: number): (typeof file.borrowedActivity)[number] | undefined {
  const size = Math.min(2, Math.abs(charge));
  return file.borrowedActivity.find((record) => record.charge === size);
}

/** Source of the spread of a borrowed activity coefficient; null for a charge without one. */
export function borrowedActivitySource(charge: number): string | null {
  return borrowedFigure(charge)?.source ?? null;
}
