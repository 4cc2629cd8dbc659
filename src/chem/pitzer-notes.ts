import { FROM_MEMORY, PRESENT_MOL_PER_KG, TELLS } from "./estimate-notes.ts";
import type { EstimateNote, RangeNote } from "./interaction-model.ts";
import type { PitzerLayout } from "./pitzer-layout.ts";

/** Share of the charge of its sign from which an ion counts for what is said about a solution. */
const WEIGHT = 0.01;
/** Distance from 25 °C [°C] from which parameters known at 25 °C only are reported. Our judgement: below it their change stays within a few per cent of ln γ. */
const NEAR_25_C = 10;

/** Ions of one sign that carry at least 1 % of the charge of that sign, as positions in `ions`. */
function weighty(ions: Int32Array, charges: Float64Array, m: Float64Array): readonly number[] {
  let total = 0;
  for (const i of ions) total += Math.abs(charges[i]!) * m[i]!;
  const found: number[] = [];
  ions.forEach((i, at) => {
    if (total > 0 && Math.abs(charges[i]!) * m[i]! >= WEIGHT * total) found.push(at);
  });
  return found;
}

/** Salts and limits that a solution is outside of, each once. */
export function pitzerRangeNotes(
  layout: PitzerLayout,
  { hold, temperature_C }: { readonly hold: number; readonly temperature_C: number },
  m: Float64Array,
): readonly RangeNote[] {
  const { charges, cations, anions, names, pairs } = layout;
  let I = 0;
  for (let i = 0; i < charges.length; i++) I += 0.5 * charges[i]! * charges[i]! * m[i]!;
  const notes: RangeNote[] = [];
  if (I > hold) notes.push({ what: "ionic strength", why: "held", limit: hold });
  const heavy = weighty(anions, charges, m);
  for (const c of weighty(cations, charges, m)) {
    for (const a of heavy) {
      const pair = pairs[c * anions.length + a]!;
      const what = `${names[cations[c]!]!} ${names[anions[a]!]!}`;
      if (I > pair.fittedTo) notes.push({ what, why: "above the fitted molality", limit: pair.fittedTo });
      if (pair.at25only && I > 0.1 && Math.abs(temperature_C - 25) > NEAR_25_C) {
        notes.push({ what, why: "away from the fitted temperature", limit: 25 });
      }
    }
  }
  return notes;
}

/**
 * Charged species that carry weight and have no parameters of their own, and what stands in for them; then interactions
 * carried from memory that tell.
 */
export function pitzerEstimateNotes(layout: PitzerLayout, m: Float64Array): readonly EstimateNote[] {
  return [...standInNotes(layout, m), ...memoryNotes(layout, m)];
}

function standInNotes(layout: PitzerLayout, m: Float64Array): readonly EstimateNote[] {
  const { charges, names, standIns } = layout;
  const ions = (sign: number): Int32Array =>
    Int32Array.from(names.map((_, i) => i).filter((i) => charges[i]! * sign > 0));
  return [1, -1].flatMap((sign) => {
    const all = ions(sign);
    return weighty(all, charges, m)
      .map((at) => all[at]!)
      .filter((i) => standIns[i] !== null)
      .map((i) => ({ species: names[i]!, as: standIns[i]! }));
  });
}

/** Interactions from memory that move the coefficient of an ion that is there by what is worth naming. */
function memoryNotes({ names, fromMemory }: PitzerLayout, m: Float64Array): readonly EstimateNote[] {
  return fromMemory.flatMap(({ at, size }) => {
    const present = at.map((i) => m[i]!).sort((a, b) => a - b);
    if (present[0]! < PRESENT_MOL_PER_KG) return [];
    // The scarcest of them feels the others most.
    const moves = present.slice(1).reduce((product, molality) => product * molality, size / Math.LN10);
    return moves < TELLS ? [] : [{ species: at.map((i) => names[i]!).join(" "), as: FROM_MEMORY.term }];
  });
}
