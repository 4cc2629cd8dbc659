import { MOLAR_MASSES } from "../units/index.ts";
import { WATER_CHECKS } from "./check-data.ts";

const CONDUCTANCES: Readonly<Record<string, number>> = WATER_CHECKS.conductances.values;
const { conductivity: RULES, criteria: CRITERIA } = WATER_CHECKS;

/** Charge number written at the end of an ion's name ("Ca+2", "Cl-"); 0 for a neutral name. */
export function chargeOfName(name: string): number {
  const match = /([+-])(\d*)$/.exec(name);
  if (match === null) return 0;
  return (match[1] === "+" ? 1 : -1) * (match[2] === "" ? 1 : Number(match[2]));
}

/** Ionic strength [mol/L] from ions by name: ½ Σ c z². */
export function ionicStrengthOf_molPerL(ions_molPerL: Readonly<Record<string, number>>): number {
  return Object.entries(ions_molPerL).reduce((sum, [name, c]) => sum + 0.5 * c * chargeOfName(name) ** 2, 0);
}

/**
 * Conductivity at infinite dilution [µS/cm at 25 °C]: the plain sum of equivalent conductances.
 *
 * Ions without a conductance are left out; they are traces in a water test.
 * @source Standard Methods 2510 A
 */
export function plainConductivity_uSPerCm(ions_molPerL: Readonly<Record<string, number>>): number {
  return Object.entries(ions_molPerL).reduce(
    (sum, [name, c]) => sum + (CONDUCTANCES[name] ?? 0) * Math.abs(chargeOfName(name)) * c * 1000,
    0,
  );
}

/**
 * Conductivity calculated from ions [µS/cm at 25 °C]: k = k° y², y the activity coefficient of a singly charged ion.
 *
 * @validity ionic strength up to about 0.5 mol/L, the range of the formula for y
 * @source Standard Methods 2510 A
 */
export function conductivityFromIons_uSPerCm(ions_molPerL: Readonly<Record<string, number>>): number {
  const I = Math.min(0.5, ionicStrengthOf_molPerL(ions_molPerL));
  const root = Math.sqrt(I);
  const y = 10 ** (-0.5 * (root / (1 + root) - 0.3 * I));
  return plainConductivity_uSPerCm(ions_molPerL) * y * y;
}

/**
 * Conductivity brought to 25 °C [µS/cm].
 *
 * @source Standard Methods 2510 B, 1.91 % per degree (from memory)
 */
export function conductivityAt25C_uSPerCm(read_uSPerCm: number, temperature_C: number): number {
  return read_uSPerCm / (1 + RULES.temperatureCoefficient_perC.value * (temperature_C - 25));
}

/** Whether a calculated conductivity agrees with the measured one. @source Standard Methods 1030 E */
export function conductivitiesAgree(calculated_uSPerCm: number, measured_uSPerCm: number): boolean {
  const { low, high } = CRITERIA.conductivityRatio;
  const ratio = calculated_uSPerCm / measured_uSPerCm;
  return ratio >= low - 1e-9 && ratio <= high + 1e-9;
}

/** Ionic strength [mol/L] from conductivity. @source Snoeyink & Jenkins (1980) */
export function ionicStrengthFromConductivity_molPerL(conductivity_uSPerCm: number): number {
  return RULES.ionicStrengthPerConductivity.value * conductivity_uSPerCm;
}

/** Ionic strength [mol/L] from dissolved solids. @source Crittenden et al. (2012) eq. 5-38 */
export function ionicStrengthFromDissolvedSolids_molPerL(dissolvedSolids_mgPerL: number): number {
  return RULES.ionicStrengthPerDissolvedSolids.value * dissolvedSolids_mgPerL;
}

/** Dissolved solids [mg/L] from conductivity by the usual factor. @source Wolf, How to interpret a water quality test */
export function dissolvedSolidsFromConductivity_mgPerL(conductivity_uSPerCm: number): number {
  return RULES.dissolvedSolidsPerConductivity.value * conductivity_uSPerCm;
}

/** What a conductivity alone says of a water, in the words of its source. @source Wolf, How to interpret a water quality test */
export function conductivityTriage(conductivity_uSPerCm: number): string {
  const bands = RULES.triage.bands;
  const band = bands.find((b) => b.upTo_uSPerCm === null || conductivity_uSPerCm <= b.upTo_uSPerCm);
  return band?.name ?? "";
}

/** Dissolved solids over conductivity, and where it lies in the usual band. @source Standard Methods 1030 E */
export function dissolvedSolidsRatio(
  dissolvedSolids_mgPerL: number,
  conductivity_uSPerCm: number,
): { readonly ratio: number; readonly band: "low" | "usual" | "high" } {
  const { low, high } = CRITERIA.dissolvedSolidsPerConductivity;
  const ratio = dissolvedSolids_mgPerL / conductivity_uSPerCm;
  return { ratio, band: ratio < low ? "low" : ratio > high ? "high" : "usual" };
}

/**
 * Dissolved solids as the sum of constituents [mg/L].
 *
 * Alkalinity counts as the carbonate left after drying: 0.6 times its value as CaCO3.
 * @param others_mgPerL Na, K, Ca, Mg, Cl, SO4, SiO2, NO3, F and whatever else was measured, each as itself
 * @source Standard Methods 1030 E
 */
export function dissolvedSolidsSum_mgPerL(
  alkalinity_mgPerL_asCaCO3: number,
  others_mgPerL: readonly number[],
): number {
  const carbonateShare = MOLAR_MASSES.CO3 / MOLAR_MASSES.CaCO3;
  return alkalinity_mgPerL_asCaCO3 * carbonateShare + others_mgPerL.reduce((sum, value) => sum + value, 0);
}

/**
 * Sodium adsorption ratio [(meq/L)^½]: Na / √((Ca + Mg)/2), all in meq/L.
 *
 * @source US Geological Survey, parameter 00931
 */
export function sodiumAdsorptionRatio(ions_meqPerL: {
  readonly sodium: number;
  readonly calcium: number;
  readonly magnesium: number;
}): number | null {
  const divalent = (ions_meqPerL.calcium + ions_meqPerL.magnesium) / 2;
  return divalent > 0 ? ions_meqPerL.sodium / Math.sqrt(divalent) : null;
}
