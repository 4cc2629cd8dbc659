import { WATER_CHECKS } from "./check-data.ts";

/** Sums of cations and anions [meq/L]. */
export interface IonSums {
  readonly cations_meqPerL: number;
  readonly anions_meqPerL: number;
}

/**
 * Sums of cations and of anions [meq/L] from signed charges.
 *
 * @param amounts_mmolPerL amount and charge number of each ion
 */
export function ionSums(
  amounts_mmolPerL: readonly { readonly amount: number; readonly charge: number }[],
): IonSums {
  let cations = 0;
  let anions = 0;
  for (const { amount, charge } of amounts_mmolPerL) {
    if (charge > 0) cations += amount * charge;
    else anions -= amount * charge;
  }
  return { cations_meqPerL: cations, anions_meqPerL: anions };
}

/** (cations − anions) / (cations + anions) · 100 [%]; null when there are no ions. */
export function chargeBalanceError_percent(sums: IonSums): number | null {
  const all = sums.cations_meqPerL + sums.anions_meqPerL;
  return all > 0 ? ((sums.cations_meqPerL - sums.anions_meqPerL) / all) * 100 : null;
}

/** What the published criterion says of a charge balance. */
export interface BalanceVerdict {
  readonly accepted: boolean;
  /** Limit that applies at this anion sum. */
  readonly limit: number;
  readonly limitUnit: "meq/L" | "%";
  readonly source: string;
}

/**
 * Whether a charge balance lies within the published limits, which widen with the anion sum.
 *
 * @validity above 800 meq/L of anions, brines, the criterion says nothing; the last band is used
 * @source Standard Methods 1030 E (bands from memory)
 */
export function judgeBalance(sums: IonSums): BalanceVerdict {
  const { bands, source } = WATER_CHECKS.criteria.ionBalance;
  const band = bands.find((b) => sums.anions_meqPerL <= b.anionSumUpTo_meqPerL) ?? bands.at(-1);
  const difference = Math.abs(sums.cations_meqPerL - sums.anions_meqPerL);
  if (band?.difference_meqPerL !== undefined) {
    const limit = band.difference_meqPerL;
    return { accepted: difference <= limit * (1 + 1e-9), limit, limitUnit: "meq/L", source };
  }
  const limit = band?.difference_percent ?? 5;
  const percent = Math.abs(chargeBalanceError_percent(sums) ?? 0);
  return { accepted: percent <= limit * (1 + 1e-9), limit, limitUnit: "%", source };
}

/** Whether an ion may be left out of a balance, by its share of the cation or anion sum [%]. @source DIN 38402-62 */
export function mayBeLeftOutOfBalance(share_percent: number): boolean {
  return share_percent < WATER_CHECKS.criteria.minorIon.value;
}
