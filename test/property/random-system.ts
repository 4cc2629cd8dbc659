import type { Component, Equilibrium, Solid, Species, SystemDefinition } from "../../src/chem/index.ts";

/** Mulberry32: a small seeded generator, so that a failing system can be made again. */
export function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** What kind of system to make. */
export interface Kind {
  readonly name: string;
  /** log K to ±120, coefficients to 13, instead of ordinary ones. */
  readonly extreme: boolean;
  /** Most candidate solids, and whether some come twice with another solubility (polymorphs). */
  readonly solids: number;
  readonly polymorphs: boolean;
}

export interface RandomSystem extends SystemDefinition {
  readonly totals: Readonly<Record<string, number>>;
}

/** Totals that meet in exact ties, in decimals and in powers of two. */
const TIES = [1e-3, 2e-3, 5e-4, 0.0009765625, 0.1, 0.3];

/**
 * A system of 2 to 15 components and up to some 80 species. Every component has its free ion and water gives OH⁻, so
 * any positive totals with any total of hydrogen ions have an equilibrium.
 */
export function randomSystem(random: () => number, kind: Kind): RandomSystem {
  const between = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const count = between(2, 15);
  const components: Component[] = Array.from({ length: count }, (_, j) => ({
    name: j === 0 ? "H+" : `C${j}`,
    charge: j === 0 ? 1 : between(-4, 4),
  }));
  const row = (): { formation: Record<string, number>; charge: number; size: number } => {
    const formation: Record<string, number> = {};
    for (let p = between(1, 3); p > 0; p--) {
      formation[`C${between(1, count - 1)}`] = between(1, kind.extreme && random() < 0.2 ? 13 : 3);
    }
    const protons = random() < 0.6 ? (kind.extreme ? between(-8, 8) : between(-3, 4)) : 0;
    if (protons !== 0) formation["H+"] = protons;
    const charge = components.reduce((sum, c) => sum + c.charge * (formation[c.name] ?? 0), 0);
    return { formation, charge, size: Object.values(formation).reduce((sum, n) => sum + Math.abs(n), 0) };
  };
  const species: Species[] = components.map((c) => ({ ...c, formation: { [c.name]: 1 }, logK: 0 }));
  species.push({ name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 });
  for (let i = between(0, 65); i > 0; i--) {
    const { formation, charge, size } = row();
    const logK = (kind.extreme ? random() * 40 - 12 : random() * 12 - 3) * size;
    if (Math.abs(charge) > 8) continue;
    species.push({ name: `S${i}`, charge, formation, logK: Math.max(-120, Math.min(120, logK)) });
  }
  const solids: Solid[] = [];
  for (let i = kind.solids > 0 ? between(1, kind.solids) : 0; i > 0; i--) {
    const { formation, size } = row();
    const logKsp = -(kind.extreme ? random() * 20 : random() * 9 - 1) * size;
    solids.push({ name: `P${i}`, formation, logKsp });
    if (kind.polymorphs && random() < 0.4) {
      solids.push({ name: `Q${i}`, formation, logKsp: logKsp + random() * 2 - 1 });
    }
  }
  return { components, species, solids, totals: randomTotals(random, components) };
}

function randomTotals(random: () => number, components: readonly Component[]): Record<string, number> {
  const between = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const tied = random() < 0.4;
  const choices = random() < 0.5 ? 0 : TIES.length - 1;
  const totals: Record<string, number> = {};
  for (const { name } of components) {
    totals[name] = tied && random() < 0.7 ? TIES[between(0, choices)]! : 10 ** (-12 * random());
  }
  const u = random();
  if (u < 0.15) totals["H+"] = 0;
  else if (u < 0.5) totals["H+"] = -(10 ** (-6 * random())) * between(1, 3);
  else if (u < 0.8) totals["H+"] = 10 ** (-8 * random()) * between(1, 3);
  else totals["H+"] = tied ? between(-6, 6) * 1e-3 : random() - 0.5;
  return totals;
}

/** Largest balance residual in the given components, relative to the size of its terms. */
export function balanceResidual({ species, solids, totals }: RandomSystem, value: Equilibrium): number {
  let worst = 0;
  for (const [name, total] of Object.entries(totals)) {
    let sum = -total;
    let size = Math.abs(total);
    const add = (part: number): void => {
      sum += part;
      size += Math.abs(part);
    };
    species.forEach((s, i) => add((s.formation[name] ?? 0) * value.concentrations[i]!));
    solids.forEach((s, i) => add((s.formation[name] ?? 0) * value.solids[i]!));
    worst = Math.max(worst, Math.abs(sum) / size);
  }
  return worst;
}

/** Largest fault (log10) of mass action over all species, from the activities of the components alone. */
export function massActionFault({ species, components }: RandomSystem, value: Equilibrium): number {
  let worst = 0;
  species.forEach((s, i) => {
    let expected = s.logK - value.lnGamma[i]! / Math.LN10;
    components.forEach((c, j) => (expected += (s.formation[c.name] ?? 0) * value.log10Activities[j]!));
    worst = Math.max(worst, Math.abs(expected - value.log10Concentrations[i]!));
  });
  return worst;
}

/** Largest fault (log10) of saturation: away from zero for a solid that is there, above zero for one that is not. */
export function saturationFault({ solids, components }: RandomSystem, value: Equilibrium): number {
  let worst = 0;
  solids.forEach((s, i) => {
    let index = -s.logKsp;
    components.forEach((c, j) => (index += (s.formation[c.name] ?? 0) * value.log10Activities[j]!));
    worst = Math.max(worst, value.solids[i]! > 0 ? Math.abs(index) : index);
    if (value.solids[i]! < 0) worst = Infinity;
  });
  return worst;
}
