import type { Addition, Flask, FlaskStep } from "./types.ts";

/** What is at hand, each as an addition of 1 mL or 1 g. */
export interface Bottles {
  readonly metal: Addition;
  readonly indicator: Addition;
  readonly sequestrant: Addition;
  /** For the half-tone; null: only dark and clear are wanted. */
  readonly competitor: Addition | null;
  readonly acid: Addition | null;
}

/** Amounts of each bottle, in its own unit (mL or g). */
export interface Candidate {
  readonly metal: number;
  readonly indicator: number;
  readonly sequestrant: number;
  readonly competitor: number;
  readonly acid: number;
}

/** Amounts looked at [mL or g]. */
const METAL_ML = [0.3, 0.5, 0.8, 1.2, 2];
const ACID_ML = [0, 1, 2, 4];
const COMPETITOR_G = [0.3, 0.5, 1, 1.5, 2, 3];
const COMPETITOR_ML = [0.2, 0.5, 1, 2, 4, 8];
/** Moles of indicator per mole of metal. */
const INDICATOR_RATIOS = [1, 2, 4];
/** Moles of sequestrant per mole of metal: twice, so that a weak stock still does. */
const SEQUESTRANT_RATIO = 2;
/** Steps in which a pipette and a kitchen balance measure. */
const STEP = { mL: 0.1, g: 0.1 } as const;
const LEAST = { mL: 0.2, g: 0.3 } as const;
const MOST_ML = 20;

/** An amount as it can be measured; null when it is too little, or too much for a flask. */
function measurable(amount: number, unit: "mL" | "g"): number | null {
  const rounded = Math.round(amount / STEP[unit]) * STEP[unit];
  if (rounded < LEAST[unit] - 1e-9 || rounded > MOST_ML) return null;
  return Number(rounded.toFixed(2));
}

/** Sets of amounts that can be measured from these bottles. */
export function candidatesOf(bottles: Bottles): readonly Candidate[] {
  const { metal: metalBottle, indicator, sequestrant, competitor, acid } = bottles;
  const found: Candidate[] = [];
  const competitors =
    competitor === null ? [0] : competitor.amount.unit === "g" ? COMPETITOR_G : COMPETITOR_ML;
  for (const metal of METAL_ML) {
    const moles = metal * metalBottle.amount_mol;
    const taken = measurable((SEQUESTRANT_RATIO * moles) / sequestrant.amount_mol, sequestrant.amount.unit);
    for (const ratio of INDICATOR_RATIOS) {
      const coloured = measurable((ratio * moles) / indicator.amount_mol, indicator.amount.unit);
      if (taken === null || coloured === null) continue;
      for (const acid_mL of acid === null ? [0] : ACID_ML) {
        for (const amount of competitors) {
          found.push({
            metal,
            indicator: coloured,
            sequestrant: taken,
            competitor: amount,
            acid: acid_mL,
          });
        }
      }
    }
  }
  return found;
}

/** As much of a bottle as said. */
function poured(bottle: Addition, amount: number): Addition {
  return {
    ...bottle,
    amount: { ...bottle.amount, value: amount },
    amountText: `${amount} ${bottle.amount.unit}`,
    amount_mol: bottle.amount_mol * amount,
    volume_mL: bottle.volume_mL * amount,
  };
}

/** The flasks of a candidate: dark, half (with a competitor) and clear. */
export function flasksOf(candidate: Candidate, bottles: Bottles, volume_mL: number): readonly Flask[] {
  const { metal, indicator, sequestrant, competitor, acid } = bottles;
  const flask = (name: string, shows: string, between: readonly FlaskStep[]): Flask => ({
    name,
    shows,
    start: { water: null, waterName: "deionised water", volume_mL },
    steps: [
      ...(acid === null || candidate.acid === 0 ? [] : [poured(acid, candidate.acid)]),
      poured(metal, candidate.metal),
      ...between,
      poured(indicator, candidate.indicator),
    ],
    path: "design",
  });
  return [
    flask("dark", "held", []),
    ...(competitor === null ? [] : [flask("half", "part held", [poured(competitor, candidate.competitor)])]),
    flask("clear", "free", [poured(sequestrant, candidate.sequestrant)]),
  ];
}
