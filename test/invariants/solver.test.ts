import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  compileSystem,
  davies,
  equilibrate,
  idealActivity,
  rebase,
  rebaseTotals,
} from "../../src/chem/index.ts";
import type { ActivityModel, Conditions, Equilibrium, SystemDefinition } from "../../src/chem/index.ts";
import { generator, randomSystem } from "../property/random-system.ts";
import type { Kind, RandomSystem } from "../property/random-system.ts";

const held = davies({ holdAbove_molPerL: 0.5 });
const kinds: readonly Kind[] = [
  { name: "ordinary", extreme: false, solids: 0, polymorphs: false },
  { name: "with solids", extreme: false, solids: 6, polymorphs: false },
  { name: "with polymorphs", extreme: false, solids: 10, polymorphs: true },
];

/** A random system by seed: small numbers to shrink, the whole variety of the generator. */
const systems = fc
  .record({ seed: fc.integer({ min: 1, max: 1e9 }), kind: fc.constantFrom(...kinds) })
  .map(({ seed, kind }) => randomSystem(generator(seed), kind));
const models = fc.constantFrom<ActivityModel>(idealActivity, held);
const runs = { numRuns: 400, seed: 20_261_125 };

function solve(made: SystemDefinition, conditions: Conditions): Equilibrium {
  const result = equilibrate(compileSystem(made), conditions);
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return result.value;
}

/**
 * Largest difference of ln c between two answers, species matched by name. Near exact ties a concentration can depend
 * on totals so steeply that their rounding shows; ties are exact here, so they do not.
 */
function difference(a: Equilibrium, b: Equilibrium): number {
  let worst = 0;
  a.system.speciesNames.forEach((name, i) => {
    const other = b.log10Concentrations[b.system.speciesIndex.get(name)!]!;
    worst = Math.max(worst, Math.abs(a.log10Concentrations[i]! - other) * Math.LN10);
  });
  return worst;
}

function shuffled<T>(list: readonly T[], random: () => number): T[] {
  const copy = [...list];
  for (let i = copy.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [copy[i], copy[j]] = [copy[j]!, copy[i]!];
  }
  return copy;
}

describe("equilibrium", () => {
  it("does not depend on the order of species, components or solids", () => {
    fc.assert(
      fc.property(systems, models, fc.integer(), (made, activity, seed) => {
        const random = generator(seed);
        const other = {
          components: shuffled(made.components, random),
          species: shuffled(made.species, random),
          solids: shuffled(made.solids, random),
        };
        const conditions = { totals_molPerL: made.totals, activity };
        expect(difference(solve(made, conditions), solve(other, conditions))).toBeLessThanOrEqual(1e-9);
      }),
      runs,
    );
  });

  it("is the same from a warm start as from a cold one", () => {
    fc.assert(
      fc.property(systems, models, fc.double({ min: -1.5, max: 1.5, noNaN: true }), (made, activity, by) => {
        const system = compileSystem(made);
        const moved = Object.fromEntries(
          Object.entries(made.totals).map(([name, total]) => [name, total * 10 ** by]),
        );
        const from = equilibrate(system, { totals_molPerL: moved, activity });
        if (!from.ok) throw new Error(from.reason);
        const conditions = { totals_molPerL: made.totals, activity };
        const cold = equilibrate(system, conditions);
        const warm = equilibrate(system, { ...conditions, start: from.value });
        if (!cold.ok || !warm.ok) throw new Error("not solved");
        expect(difference(cold.value, warm.value)).toBeLessThanOrEqual(1e-9);
        const again = equilibrate(system, { ...conditions, start: cold.value });
        if (!again.ok) throw new Error(again.reason);
        expect(difference(cold.value, again.value)).toBeLessThanOrEqual(1e-9);
      }),
      runs,
    );
  });

  it("closes the charge balance when the solution is to be neutral", () => {
    fc.assert(
      fc.property(systems, models, (made, activity) => {
        const neutral = withNeutralSolids(made);
        const value = solve(neutral, { totals_molPerL: made.totals, activity, electroneutral: "H+" });
        let charge = 0;
        let size = 0;
        neutral.species.forEach((species, i) => {
          charge += species.charge * value.concentrations[i]!;
          size += Math.abs(species.charge) * value.concentrations[i]!;
        });
        expect(Math.abs(charge)).toBeLessThanOrEqual(1e-10 * size);
      }),
      runs,
    );
  });

  it("scales: all totals and concentrations by s when constants are scaled to match", () => {
    fc.assert(
      fc.property(systems, fc.integer({ min: -6, max: 6 }), (made, power) => {
        // With c → 2^p c and the activities of all components alike, ln K of a row changes by (1 − Σ coefficients) p.
        const by = (formation: Readonly<Record<string, number>>, of: number): number =>
          (of - Object.values(formation).reduce((sum, n) => sum + n, 0)) * power * Math.log10(2);
        const scaled = {
          ...made,
          species: made.species.map((s) => ({ ...s, logK: s.logK + by(s.formation, 1) })),
          solids: made.solids.map((s) => ({ ...s, logKsp: s.logKsp - by(s.formation, 0) })),
        };
        const totals = Object.fromEntries(Object.entries(made.totals).map(([n, t]) => [n, t * 2 ** power]));
        const a = solve(made, { totals_molPerL: made.totals, activity: idealActivity });
        const b = solve(scaled, { totals_molPerL: totals, activity: idealActivity });
        made.species.forEach((_, i) => {
          const expected = a.log10Concentrations[i]! + power * Math.log10(2);
          expect(Math.abs(b.log10Concentrations[i]! - expected)).toBeLessThanOrEqual(1e-9);
        });
      }),
      runs,
    );
  });

  it("does not depend on which species serve as components", () => {
    fc.assert(
      fc.property(systems, models, fc.nat(), (made, activity, choice) => {
        const rows = made.species.filter((s) => (s.formation["C1"] ?? 0) === 1);
        const by = rows[choice % rows.length]!.name;
        // Multiples of a power of two: the totals of the other components are then formed without rounding.
        const old = Object.fromEntries(
          Object.entries(made.totals).map(([n, t]) => [n, (Math.round(t * 2 ** 14) + 1) / 2 ** 15]),
        );
        const a = solve(made, { totals_molPerL: old, activity });
        const totals = rebaseTotals(made, "C1", by, old);
        const b = solve(rebase(made, "C1", by), { totals_molPerL: totals, activity });
        expect(difference(a, b)).toBeLessThanOrEqual(1e-9);
      }),
      runs,
    );
  });

  it("frees no metal when ligand is added", () => {
    const system = compileSystem({
      components: [
        { name: "M", charge: 2 },
        { name: "L", charge: -2 },
        { name: "H+", charge: 1 },
      ],
      species: [
        { name: "M", charge: 2, formation: { M: 1 }, logK: 0 },
        { name: "L", charge: -2, formation: { L: 1 }, logK: 0 },
        { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
        { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
        { name: "HL", charge: -1, formation: { "H+": 1, L: 1 }, logK: 9 },
        { name: "ML", charge: 0, formation: { M: 1, L: 1 }, logK: 6 },
        { name: "ML2", charge: -2, formation: { M: 1, L: 2 }, logK: 10 },
      ],
      solids: [],
    });
    const amount = fc.double({ min: 1e-8, max: 0.1, noNaN: true });
    fc.assert(
      fc.property(amount, amount, fc.double({ min: 1.01, max: 100, noNaN: true }), (M, L, more) => {
        const free = (ligand: number): number => {
          const result = equilibrate(system, {
            totals_molPerL: { M, L: ligand },
            fixedLog10Activities: { "H+": -7 },
            activity: idealActivity,
          });
          if (!result.ok) throw new Error(result.reason);
          return result.value.concentrations[0]!;
        };
        expect(free(0)).toBeCloseTo(M, 15);
        expect(free(L * more)).toBeLessThanOrEqual(free(L) * (1 + 1e-12));
      }),
      runs,
    );
  });
});

/** The same system without solids that carry a charge, which no neutral solution could be made of. */
function withNeutralSolids(made: RandomSystem): SystemDefinition {
  const charges = new Map(made.components.map((c) => [c.name, c.charge]));
  return {
    ...made,
    solids: made.solids.filter((solid) => {
      const charge = Object.entries(solid.formation).reduce(
        (sum, [n, k]) => sum + (charges.get(n) ?? 0) * k,
        0,
      );
      return charge === 0;
    }),
  };
}
