import type { PitzerData } from "./pitzer-data.ts";
import { chargeInName } from "./pitzer-parameters.ts";
import type { PairLookup, PairParameters } from "./pitzer-parameters.ts";

/** Parameters of one system in typed arrays, by index of its species. */
export interface PitzerLayout {
  readonly names: readonly string[];
  readonly charges: Float64Array;
  /** Ions with pair parameters, and ions that follow Davies' formula. */
  readonly cations: Int32Array;
  readonly anions: Int32Array;
  readonly unknown: Int32Array;
  /** Pair (c, a) at [c · anions + a], by position in `cations` and `anions`. */
  readonly beta0: Float64Array;
  readonly beta1: Float64Array;
  readonly beta2: Float64Array;
  readonly c: Float64Array;
  /** Position of α1 and α2 of the pair in `alphas`. */
  readonly alpha1: Int32Array;
  readonly alpha2: Int32Array;
  readonly alphas: Float64Array;
  /** theta and lambda as pairs of species; W gets 2 value m_i m_j. */
  readonly twoI: Int32Array;
  readonly twoJ: Int32Array;
  readonly two: Float64Array;
  /** psi as triples of species; W gets value m_i m_j m_k. */
  readonly threeI: Int32Array;
  readonly threeJ: Int32Array;
  readonly threeK: Int32Array;
  readonly three: Float64Array;
  readonly pairs: readonly PairParameters[];
  /** Terms carried from memory: their species, and the size of what they add to ln γ of one by the molalities of the others. */
  readonly fromMemory: readonly MemoryTerm[];
  /** Stand-in per species; null where it has parameters of its own or needs none. */
  readonly standIns: readonly (string | null)[];
}

/** A term carried from memory. */
export interface MemoryTerm {
  /** Two or three species, as positions. */
  readonly at: readonly number[];
  /** Largest ∂² W / ∂ m_i ∂ m_j of a pair [kg/mol], or that of a triple by all three [(kg/mol)²]. */
  readonly size: number;
}

/** Finds and lays out all parameters for the species of one system. */
export function layOutPitzer(
  data: PitzerData,
  lookup: PairLookup,
  given: readonly string[],
  charges: Float64Array,
): PitzerLayout {
  // Names are the caller's: one that says another charge than the species has is no name of a known ion.
  const names = given.map((name, i) => (chargeInName(name) === charges[i] ? name : ""));
  const all = names.map((_, i) => i);
  const covered = (i: number): boolean => lookup.covers(names[i]!, charges[i]!);
  const cations = all.filter((i) => charges[i]! > 0 && covered(i));
  const anions = all.filter((i) => charges[i]! < 0 && covered(i));
  const unknown = all.filter((i) => charges[i] !== 0 && !covered(i));
  const pairs = cations.flatMap((c) =>
    anions.map((a) => lookup.pair(names[c]!, names[a]!, charges[c]!, charges[a]!)),
  );
  const alphas = [...new Set(pairs.flatMap((pair) => [pair.alpha1, pair.alpha2]))];
  const index = new Map(names.map((name, i) => [name, i]));
  const mixing = data.mixing
    .map((term) => ({ ...term, at: term.species.map((name) => index.get(name) ?? -1) }))
    .filter(({ at }) => !at.includes(-1));
  const two = mixing.filter(({ at }) => at.length === 2);
  const three = mixing.filter(({ at }) => at.length === 3);
  return {
    names: given,
    charges,
    cations: Int32Array.from(cations),
    anions: Int32Array.from(anions),
    unknown: Int32Array.from(unknown),
    beta0: Float64Array.from(pairs, (pair) => pair.beta0),
    beta1: Float64Array.from(pairs, (pair) => pair.beta1),
    beta2: Float64Array.from(pairs, (pair) => pair.beta2),
    c: Float64Array.from(pairs, (pair) => pair.c),
    alpha1: Int32Array.from(pairs, (pair) => alphas.indexOf(pair.alpha1)),
    alpha2: Int32Array.from(pairs, (pair) => alphas.indexOf(pair.alpha2)),
    alphas: Float64Array.from(alphas),
    twoI: Int32Array.from(two, ({ at }) => at[0]!),
    twoJ: Int32Array.from(two, ({ at }) => at[1]!),
    two: Float64Array.from(two, ({ value }) => value),
    threeI: Int32Array.from(three, ({ at }) => at[0]!),
    threeJ: Int32Array.from(three, ({ at }) => at[1]!),
    threeK: Int32Array.from(three, ({ at }) => at[2]!),
    three: Float64Array.from(three, ({ value }) => value),
    pairs,
    fromMemory: [
      ...pairsFromMemory(pairs, cations, anions),
      ...mixing
        .filter((one) => one.fromMemory)
        .map(({ at, value }) => ({ at, size: Math.abs(at.length === 2 ? 2 * value : value) })),
    ],
    standIns: all.map((i) => {
      if (charges[i] === 0) return null;
      return covered(i) ? lookup.standIn(names[i]!) : "Davies";
    }),
  };
}

function pairsFromMemory(
  pairs: readonly PairParameters[],
  cations: readonly number[],
  anions: readonly number[],
): readonly MemoryTerm[] {
  return pairs.flatMap(({ fromMemory, beta0, beta1, beta2 }, k) => {
    if (!fromMemory) return [];
    const at = [cations[Math.floor(k / anions.length)]!, anions[k % anions.length]!];
    return [{ at, size: 2 * (Math.abs(beta0) + Math.abs(beta1) + Math.abs(beta2)) }];
  });
}
