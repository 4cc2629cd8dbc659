import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sharesOf } from "../../src/agronomy/shares.ts";
import {
  builtInThermo,
  compileSystem,
  davies,
  dryDown,
  equilibrate,
  idealActivity,
  systemFor,
} from "../../src/chem/index.ts";
import type { CompiledSystem, Conditions, Equilibrium } from "../../src/chem/index.ts";

const thermo = builtInThermo();
const WATER = ["Ca+2", "Mg+2", "Fe+3", "Na+", "NH4+", "CO3-2", "SO4-2", "Cl-"];
const SEQUESTRANTS = ["Edta-4", "Cit-3", "Hedp-4"];
const ACTIVE = "Gly-3";
const held = davies({ holdAbove_molPerL: 0.5 });

function systemWith(components: readonly string[], solids: readonly string[] = []): CompiledSystem {
  return compileSystem(systemFor(thermo, { components, temperature_C: 15, solids, carbonate: "closed" }));
}

/** A generated water with an active in it [mol/L]: rain to gypsum wells, any rate. */
const decade = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: Math.log10(low), max: Math.log10(high), noNaN: true }).map((log) => 10 ** log);
const waters = fc
  .record({
    "Ca+2": decade(1e-5, 1.5e-2),
    "Mg+2": decade(1e-5, 1.5e-2),
    "Fe+3": decade(1e-8, 2e-4),
    "Na+": decade(1e-4, 5e-2),
    "NH4+": decade(1e-5, 0.2),
    "CO3-2": decade(1e-5, 1e-2),
    "SO4-2": decade(1e-5, 0.1),
    "Cl-": decade(1e-4, 5e-2),
    [ACTIVE]: decade(1e-3, 0.1),
  })
  .map((totals) => totals as Readonly<Record<string, number>>);
const acidity = fc.double({ min: 3, max: 9, noNaN: true });
const runs = { numRuns: 300, seed: 20_261_126 };

function solve(system: CompiledSystem, conditions: Conditions): Equilibrium {
  const result = equilibrate(system, conditions);
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return result.value;
}

describe("a tank of a generated water", () => {
  it.each(SEQUESTRANTS)("with none of %s is the tank without it", (name) => {
    const plain = systemWith([...WATER, ACTIVE]);
    const more = systemWith([...WATER, ACTIVE, name]);
    fc.assert(
      fc.property(waters, (totals) => {
        const conditions = { electroneutral: "H+", activity: held };
        const without = solve(plain, { ...conditions, totals_molPerL: totals });
        const zero = solve(more, { ...conditions, totals_molPerL: { ...totals, [name]: 0 } });
        plain.speciesNames.forEach((species, i) => {
          const other = zero.log10Concentrations[more.speciesIndex.get(species)!]!;
          expect(Math.abs(other - without.log10Concentrations[i]!) * Math.LN10).toBeLessThan(1e-9);
        });
      }),
      runs,
    );
  });

  // A theorem for constant activity coefficients; with them, salt of the sequestrant loosens every ion pair a little.
  it.each(SEQUESTRANTS)("frees no more metal and no less of the active with more %s, at one pH", (name) => {
    const system = systemWith([...WATER, ACTIVE, name]);
    fc.assert(
      fc.property(waters, acidity, decade(1e-6, 0.05), decade(1.01, 30), (totals, pH, dose, times) => {
        const at = (total: number): Equilibrium =>
          solve(system, {
            totals_molPerL: { ...totals, [name]: total },
            fixedLog10Activities: { "H+": -pH },
            activity: idealActivity,
          });
        const [less, more] = [at(dose), at(dose * times)];
        for (const metal of ["Ca+2", "Mg+2", "Fe+3"]) {
          const index = system.speciesIndex.get(metal)!;
          expect(more.log10Concentrations[index]!).toBeLessThan(less.log10Concentrations[index]! + 1e-9);
        }
        expect(sharesOf(more, ACTIVE).free).toBeGreaterThan(sharesOf(less, ACTIVE).free - 1e-9);
      }),
      runs,
    );
  });

  it("dries to the same end by any steps, with salts crystallising", () => {
    const solids = ["gypsum", "calcium hydrogen glyphosate"];
    const system = systemWith([...WATER, ACTIVE], solids);
    const steps = fc.array(fc.double({ min: 1.01, max: 45, noNaN: true }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(waters, steps, (totals, between) => {
        const conditions: Conditions = { totals_molPerL: totals, electroneutral: "H+", activity: held };
        const endBy = (factors: readonly number[]): Equilibrium => {
          const path = dryDown(system, conditions, { factors });
          if (!path.ok) throw new Error(`${path.reason}: ${path.detail}`);
          return path.steps.at(-1)!.equilibrium;
        };
        const direct = endBy([50]);
        const stepped = endBy([1, ...[...new Set(between)].sort((a, b) => a - b), 50]);
        system.speciesNames.forEach((_, i) => {
          const apart = stepped.log10Concentrations[i]! - direct.log10Concentrations[i]!;
          expect(Math.abs(apart) * Math.LN10).toBeLessThan(1e-9);
        });
        system.solidNames.forEach((_, s) => {
          expect(Math.abs(stepped.solids[s]! - direct.solids[s]!)).toBeLessThan(
            1e-9 * (1 + direct.solids[s]!),
          );
        });
      }),
      runs,
    );
  });
});
