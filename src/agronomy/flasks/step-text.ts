import { TITRANT_MOL_PER_L } from "./contents.ts";
import type { Addition, Adjustment } from "./types.ts";

/** What is measured in, in words: "0.8 mL of iron(III) chloride hexahydrate, 1 % w/v". */
export function additionText({ substance, strengthText, amountText, medium }: Addition): string {
  const strength = strengthText === null ? "" : `, ${strengthText}`;
  const kept = medium === null ? "" : ` (stock in ${medium.substance.name})`;
  return `${amountText} of ${substance.name}${strength}${kept}`;
}

/** How a pH is set, in words, with about how much it takes. */
export function adjustmentText({ pH }: Adjustment, acid_mol: number): string {
  const mL = (Math.abs(acid_mol) / TITRANT_MOL_PER_L) * 1000;
  const what = acid_mol >= 0 ? "hydrochloric acid" : "sodium hydroxide";
  return `pH set to ${pH} with ${what}, ${TITRANT_MOL_PER_L} mol/L (about ${mL.toPrecision(2)} mL)`;
}
