import { TITRANT_MOL_PER_L } from "./contents.ts";
import type { Added, Addition, FlaskStart, FlaskStep, StockMedium } from "./types.ts";

/** The water a flask starts with. */
export function waterAdded({ waterName, volume_mL }: FlaskStart): Added {
  return { kind: "water", water: waterName, volume_mL };
}

/**
 * What a step brings into a flask.
 *
 * @param acid_mol acid (positive) or alkali (negative) that setting a pH took; null for a step that sets none
 */
export function stepAdded(step: FlaskStep, acid_mol: number | null): Added {
  if (step.kind === "add") {
    const { amountText, substance, strengthText } = step;
    return {
      kind: "measured",
      amount: amountText,
      substance: substance.name,
      strength: strengthText,
      medium: mediumOf(step),
    };
  }
  const used_mol = acid_mol ?? 0;
  return {
    kind: "pH set",
    pH: step.pH,
    substance: used_mol >= 0 ? "hydrochloric acid" : "sodium hydroxide",
    molPerL: TITRANT_MOL_PER_L,
    about_mL: (Math.abs(used_mol) / TITRANT_MOL_PER_L) * 1000,
  };
}

/** Acid or alkali that what is measured in is kept in; null for water. */
export function mediumOf({ medium }: Addition): StockMedium | null {
  return medium === null ? null : { substance: medium.substance.name, molPerL: medium.molPerL };
}
