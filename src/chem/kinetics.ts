import { HardstandError } from "../units/index.ts";

/** Gas constant [kJ/(mol·K)], exact by definition of the SI (2019). */
const GAS_CONSTANT_KJ_PER_MOL_K = 0.008314462618;

/** pH range outside which a fitted hydrolysis law is extrapolated: laws rest on half-lives between pH 4 or 5 and 9. */
export const HYDROLYSIS_FITTED_PH = { low: 4, high: 10 } as const;

/**
 * Hydrolysis as the sum of an acid, a neutral and a base term:
 * k = kA·[H+]/(1 + [H+]/Ka) + kN + kB·[OH−], with [H+] = 10^−pH and [OH−] = 10^(pH − 14).
 */
export interface HydrolysisLaw {
  /** Acid term [L/(mol·h)]. */
  readonly kA: number;
  /** Neutral term [1/h]. */
  readonly kN: number;
  /** Base term [L/(mol·h)]. */
  readonly kB: number;
  /** pKa at which the acid term levels off, because only the undissociated form is attacked; null: no cap. */
  readonly pKaCap: number | null;
  /** Temperature the constants hold at [°C]. */
  readonly temperature_C: number;
}

/**
 * Ratio k(to)/k(from) of a rate at two temperatures by Arrhenius' law [1].
 *
 * @param activationEnergy_kJPerMol activation energy of the observed rate at constant pH [kJ/mol]
 * @param from_C temperature the rate is known at [°C]
 * @param to_C temperature asked for [°C]
 */
export function arrheniusFactor(activationEnergy_kJPerMol: number, from_C: number, to_C: number): number {
  return Math.exp(
    (activationEnergy_kJPerMol / GAS_CONSTANT_KJ_PER_MOL_K) * (1 / (from_C + 273.15) - 1 / (to_C + 273.15)),
  );
}

/**
 * First-order hydrolysis rate at a pH and temperature [1/h].
 *
 * @param law the three rate constants and their temperature
 * @param pH pH of the liquid
 * @param temperature_C temperature of the liquid [°C]
 * @param activationEnergy_kJPerMol of the observed rate at constant pH [kJ/mol]
 * @throws HardstandError "rate-law-invalid" when a constant is negative or an argument is not a number
 * @validity dissolved active; pH 4–10 (`HYDROLYSIS_FITTED_PH`); suspended active breaks down more slowly
 */
export function hydrolysisRate_perH(
  law: HydrolysisLaw,
  pH: number,
  temperature_C: number,
  activationEnergy_kJPerMol: number,
): number {
  const { kA, kN, kB, pKaCap } = law;
  if (
    ![pH, temperature_C, activationEnergy_kJPerMol].every(Number.isFinite) ||
    !(kA >= 0 && kN >= 0 && kB >= 0)
  ) {
    throw new HardstandError("rate-law-invalid", "hydrolysisRate_perH", { ...law, pH, temperature_C });
  }
  // kA·[H+]/(1 + [H+]/Ka) = kA·Ka·(undissociated share).
  const acid = pKaCap === null ? kA * 10 ** -pH : (kA * 10 ** -pKaCap) / (1 + 10 ** (pH - pKaCap));
  const atReference = acid + kN + kB * 10 ** (pH - 14);
  return atReference * arrheniusFactor(activationEnergy_kJPerMol, law.temperature_C, temperature_C);
}

/** Half-life of a first-order rate [h]; null for a rate of zero: it never halves. */
export function halfLife_h(rate_perH: number): number | null {
  requireRate(rate_perH, "halfLife_h");
  return rate_perH === 0 ? null : Math.LN2 / rate_perH;
}

/** First-order rate of a half-life [1/h]. */
export function rateFromHalfLife_perH(halfLife_hours: number): number {
  if (!(halfLife_hours > 0))
    throw new HardstandError("half-life-invalid", "rateFromHalfLife_perH", { halfLife_hours });
  return Math.LN2 / halfLife_hours;
}

/** First-order rate that leaves the given share (0…1, both ends left out) after the given time [1/h]. */
export function rateFromShare_perH(share: number, hours: number): number {
  if (!(share > 0 && share <= 1 && hours > 0)) {
    throw new HardstandError("share-invalid", "rateFromShare_perH", { share, hours });
  }
  return -Math.log(share) / hours;
}

/** Share still intact after a time under a first-order rate (0…1). */
export function shareIntact(rate_perH: number, hours: number): number {
  requireRate(rate_perH, "shareIntact");
  if (!(hours >= 0)) throw new HardstandError("time-invalid", "shareIntact", { hours });
  return Math.exp(-rate_perH * hours);
}

/** Time until only the given share (0…1) is left [h]; null when the rate is zero and the share below one. */
export function timeToShare_h(rate_perH: number, share: number): number | null {
  requireRate(rate_perH, "timeToShare_h");
  if (!(share > 0 && share <= 1)) throw new HardstandError("share-invalid", "timeToShare_h", { share });
  if (share === 1) return 0;
  return rate_perH === 0 ? null : -Math.log(share) / rate_perH;
}

function requireRate(rate_perH: number, where: string): void {
  if (!(rate_perH >= 0 && Number.isFinite(rate_perH)))
    throw new HardstandError("rate-invalid", where, { rate_perH });
}
