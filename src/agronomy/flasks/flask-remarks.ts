import { uncomputedPairs } from "../../chem/index.ts";
import type { Equilibrium } from "../../chem/index.ts";
import { SLOW_RUST } from "./flask-chemistry.ts";
import type { FlaskChemistry } from "./flask-chemistry.ts";
import type { FlaskData } from "./flask-data.ts";
import type { Cloud, FlaskRemark, FlaskState } from "./types.ts";

/** pH above which the word on sulfate and iron is given; our trial: half of the colour is out of reach from there on. */
const SULFATE_FAILS_ABOVE_PH = 3;
/** Sulfate from which a half-tone might be expected of it [mol/L]: 0.15 % ammonium sulfate. */
const SULFATE_OF_NOTE_MOL_PER_L = 0.01;
/** Iron whose colour is seen [mol/L]: 1 mg/L. */
const IRON_OF_NOTE_MOL_PER_L = 2e-5;
/** Share of the iron [1] that counts as next to nothing. */
const NEXT_TO_NOTHING = 0.1;

/** What to know about one state that its colour does not say. */
export function remarksOn(
  equilibrium: Equilibrium,
  totals_molPerL: Readonly<Record<string, number>>,
  held: FlaskState["heldBy"],
  clouds: readonly Cloud[],
  chemistry: FlaskChemistry,
  data: FlaskData,
): readonly FlaskRemark[] {
  const pH = equilibrium.pH ?? 7;
  const remarks: FlaskRemark[] = [];
  const plain = (text: string): void => void remarks.push({ text, source: null });
  for (const indicator of chemistry.indicators) {
    if (!((totals_molPerL[indicator.component.name] ?? 0) > 0)) continue;
    const { low, high, source } = indicator.pH;
    if (pH < low || pH > high) {
      const text = `${indicator.name} is known from pH ${low} to ${high}: at pH ${pH.toFixed(1)} its colour is a guess.`;
      remarks.push({ text, source });
    }
  }
  for (const limit of data.limits) {
    const total = totals_molPerL[limit.component] ?? 0;
    if (total > limit.most_molPerL && pH < limit.belowPh) {
      remarks.push({ text: limit.say, source: limit.source });
    }
  }
  const iron = held["iron"];
  if (
    iron !== undefined &&
    (totals_molPerL["Fe+3"] ?? 0) >= IRON_OF_NOTE_MOL_PER_L &&
    (totals_molPerL["SO4-2"] ?? 0) >= SULFATE_OF_NOTE_MOL_PER_L &&
    pH > SULFATE_FAILS_ABOVE_PH &&
    (iron["sulfate"] ?? 0) < NEXT_TO_NOTHING
  ) {
    plain(
      `At pH ${pH.toFixed(1)} sulfate holds ${percent(iron["sulfate"] ?? 0)} of the iron. A half-tone here has another cause.`,
    );
  }
  if (clouds.length === 0 && rustIsSlow(equilibrium)) {
    plain("Rust may form within hours: show it fresh, or add a little acid.");
  }
  for (const pair of uncomputedPairs(chemistry.thermo, present(totals_molPerL))) {
    plain(`What ${pair.ligand} does to ${pair.metal} is not computed: ${lower(pair.why)}`);
  }
  if (equilibrium.extrapolated)
    plain("More salt than the activity model was fitted to: the shade is less sure.");
  return remarks;
}

const percent = (share: number): string => (share < 0.005 ? "under 1 %" : `${Math.round(share * 100)} %`);
const lower = (text: string): string => `${text.slice(0, 1).toLowerCase()}${text.slice(1)}`;

function rustIsSlow(equilibrium: Equilibrium): boolean {
  const at = equilibrium.system.solidIndex.get(SLOW_RUST);
  return at !== undefined && equilibrium.saturationIndices[at]! > 0;
}

function present(totals_molPerL: Readonly<Record<string, number>>): readonly string[] {
  return Object.keys(totals_molPerL).filter((name) => (totals_molPerL[name] ?? 0) > 0);
}
