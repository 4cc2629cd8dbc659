import { expect, test } from "vitest";
import { compileSystem, davies, equilibrate, idealActivity } from "../../src/chem/index.ts";
import type { Equilibrium, Solid, Species } from "../../src/chem/index.ts";

const SYSTEMS = 20_000;
const SEED = 20_261_125;

/** Mulberry32: a small seeded generator, so that a failing system can be made again. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

interface RandomSystem {
  readonly species: readonly Species[];
  readonly solids: readonly Solid[];
  readonly components: readonly { readonly name: string; readonly charge: number }[];
  readonly totals: Readonly<Record<string, number>>;
}

/** A system whose totals are those of a random mixture of its own species and solids, so that an answer exists. */
function randomSystem(random: () => number): RandomSystem {
  const between = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
  const count = between(2, 12);
  const components = Array.from({ length: count }, (_, j) => ({
    name: j === 0 ? "H+" : `C${j}`,
    charge: j === 0 ? 1 : between(-3, 3),
  }));
  const species: Species[] = components.map((c) => ({ ...c, formation: { [c.name]: 1 }, logK: 0 }));
  species.push({ name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 });
  const made = (least: number): { formation: Record<string, number>; charge: number; size: number } => {
    const formation: Record<string, number> = {};
    for (let p = between(least, 3); p > 0; p--) formation[`C${between(1, count - 1)}`] = between(1, 3);
    const protons = between(-2, 3);
    if (protons !== 0) formation["H+"] = protons;
    const charge = components.reduce((sum, c) => sum + c.charge * (formation[c.name] ?? 0), 0);
    return { formation, charge, size: Object.values(formation).reduce((sum, n) => sum + Math.abs(n), 0) };
  };
  for (let i = between(0, 60); i > 0; i--) {
    const { formation, charge, size } = made(1);
    if (Math.abs(charge) <= 5)
      species.push({ name: `S${i}`, charge, formation, logK: (random() * 9 - 2) * size });
  }
  const solids: Solid[] = [];
  for (let i = random() < 0.2 ? between(1, 6) : 0; i > 0; i--) {
    const { formation, size } = made(1);
    solids.push({ name: `P${i}`, formation, logKsp: -(random() * 6 + 1) * size });
  }
  const totals: Record<string, number> = {};
  for (const c of components) totals[c.name] = 0;
  for (const s of [...species.slice(0, count + 1), ...species.filter(() => random() < 0.3), ...solids]) {
    const amount = 10 ** (-random() * 11 - 1);
    for (const [name, n] of Object.entries(s.formation)) totals[name] = (totals[name] ?? 0) + n * amount;
  }
  return { components, species, solids, totals };
}

/** Largest balance residual in the given components, relative to the size of its terms. */
function residualOf({ species, solids, totals }: RandomSystem, value: Equilibrium): number {
  let worst = 0;
  for (const [name, total] of Object.entries(totals)) {
    let sum = -total;
    let size = Math.abs(total);
    species.forEach((s, i) => {
      const part = (s.formation[name] ?? 0) * value.concentrations[i]!;
      sum += part;
      size += Math.abs(part);
    });
    solids.forEach((s, i) => {
      const part = (s.formation[name] ?? 0) * value.solids[i]!;
      sum += part;
      size += Math.abs(part);
    });
    worst = Math.max(worst, Math.abs(sum) / size);
  }
  return worst;
}

test(`${SYSTEMS} random systems are solved from a cold start, balances closing to 1e-10`, () => {
  const random = generator(SEED);
  const failed: string[] = [];
  let worst = 0;
  for (let i = 0; i < SYSTEMS; i++) {
    const made = randomSystem(random);
    const activity = i % 2 === 0 ? idealActivity : davies({ holdAbove_molPerL: 0.5 });
    const result = equilibrate(compileSystem(made), { totals_molPerL: made.totals, activity });
    if (result.ok) worst = Math.max(worst, residualOf(made, result.value));
    else failed.push(`${i}: ${result.reason} ${result.detail}`);
  }
  expect(failed).toEqual([]);
  expect(worst).toBeLessThanOrEqual(1e-10);
});
