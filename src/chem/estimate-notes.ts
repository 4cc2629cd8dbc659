import type { EstimateNote } from "./interaction-model.ts";

/** What an interaction rests on that is carried from memory: a term of Pitzer's equations, a coefficient of the theory. */
export const FROM_MEMORY = {
  term: "interaction from memory",
  coefficient: "coefficient from memory",
} as const;

/** True where an activity coefficient rests on an interaction that is from memory, not on one borrowed from other ions. */
export function restsOnMemory({ as }: EstimateNote): boolean {
  return as === FROM_MEMORY.term || as === FROM_MEMORY.coefficient;
}

/** Change of log10 of an activity coefficient from which an interaction is named. Our choice: 1 % of the coefficient. */
export const TELLS = 0.005;
/** Least molality [mol/kg] of an ion whose own coefficient is looked at. Our choice: below what is measured of any ion but H+. */
export const PRESENT_MOL_PER_KG = 1e-9;
