import type { ThermoData } from "./thermo-types.ts";

/** Metals that can hold a ligand, by component; iron(II) and iron(III) are both iron. */
const METAL_OF_COMPONENT: Readonly<Record<string, string>> = {
  "Ca+2": "calcium",
  "Mg+2": "magnesium",
  "Fe+3": "iron",
  "Fe+2": "iron",
  "Al+3": "aluminium",
  "Mn+2": "manganese",
  "Zn+2": "zinc",
  "Cu+2": "copper",
  "Sr+2": "strontium",
  "Ba+2": "barium",
};

/** Number of ions of each metal in a species or solid, by the metal's name; empty when it holds none. */
export function metalsOf(formation: Readonly<Record<string, number>>): Readonly<Record<string, number>> {
  const metals: Record<string, number> = {};
  for (const [component, n] of Object.entries(formation)) {
    const metal = METAL_OF_COMPONENT[component];
    if (metal !== undefined && n > 0) metals[metal] = (metals[metal] ?? 0) + n;
  }
  return metals;
}

/**
 * Name of the metal a species or solid contains, the most numerous one if there are several; null for none. Sodium,
 * potassium and ammonium do not count: what they hold is free.
 */
export function metalOf(formation: Readonly<Record<string, number>>): string | null {
  let best: string | null = null;
  let most = 0;
  for (const [metal, n] of Object.entries(metalsOf(formation))) {
    if (n > most) {
      most = n;
      best = metal;
    }
  }
  return best;
}

/** A ligand and a metal in one system for which no constants are carried, and why. */
export interface UncomputedPair {
  readonly ligand: string;
  readonly metal: string;
  readonly why: string;
}

/** Pairs among the given components whose binding cannot be computed because no constants exist. */
export function uncomputedPairs(
  thermo: ThermoData,
  components: readonly string[],
): readonly UncomputedPair[] {
  const present = new Set(components);
  return thermo.missing
    .filter((entry) => present.has(entry.ligand))
    .flatMap((entry) =>
      entry.metals
        .filter((metal) => present.has(metal))
        .map((metal) => ({ ligand: entry.ligand, metal, why: entry.why })),
    );
}
