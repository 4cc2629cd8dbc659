import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  builtInPitzer,
  builtInThermo,
  compileSystem,
  davies,
  debyeHuckelA,
  dryDown,
  equilibrate,
  pitzer,
  sensitivities,
  systemFor,
} from "../../src/chem/index.ts";
import type {
  Conditions,
  Equilibrium,
  SensitivityParameter,
  SystemDefinition,
} from "../../src/chem/index.ts";

const data = builtInPitzer();
const model = pitzer(data);
const COMPONENTS = ["Ca+2", "Mg+2", "Na+", "NH4+", "CO3-2", "SO4-2", "Cl-", "Gly-3", "IPA+"];
const definition = systemFor(builtInThermo(), {
  components: COMPONENTS,
  temperature_C: 25,
  solids: ["gypsum", "calcium hydrogen glyphosate"],
  carbonate: "closed",
  interactions: data,
});
const system = compileSystem(definition);
/** A tank with ammonium sulfate [mol/kg]. */
const TANK: Readonly<Record<string, number>> = {
  "Ca+2": 3e-3,
  "Mg+2": 1e-3,
  "Na+": 2e-3,
  "NH4+": 0.15,
  "CO3-2": 5e-3,
  "SO4-2": 0.077,
  "Cl-": 2e-3,
  "Gly-3": 1.07e-2,
  "IPA+": 1.07e-2,
};

/** The tank times a factor, each total moved by up to a factor of four either way, strictly positive. */
const waters = fc
  .tuple(
    fc.double({ min: -2, max: 2.3, noNaN: true }),
    fc.array(fc.double({ min: -0.6, max: 0.6, noNaN: true }), { minLength: 9, maxLength: 9 }),
  )
  .map(([factor, moves]) =>
    Object.fromEntries(COMPONENTS.map((name, k) => [name, TANK[name]! * 10 ** (factor + moves[k]!)])),
  );
const runs = { numRuns: 150, seed: 20_261_125 };

const withTotals = (totals_molPerL: Readonly<Record<string, number>>): Conditions => ({
  totals_molPerL,
  electroneutral: "H+",
  activity: model,
});

function solve(of: SystemDefinition | typeof system, conditions: Conditions): Equilibrium {
  const result = equilibrate("workspace" in of ? of : compileSystem(of), conditions);
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return result.value;
}

/** Largest difference of ln c between two answers, species matched by name. */
function difference(a: Equilibrium, b: Equilibrium): number {
  return Math.max(
    ...a.system.speciesNames.map((name, i) => {
      const other = b.log10Concentrations[b.system.speciesIndex.get(name)!]!;
      return Math.abs(a.log10Concentrations[i]! - other) * Math.LN10;
    }),
  );
}

describe("equilibrium with Pitzer's equations", () => {
  it("closes every balance and the charge, and satisfies every mass action and saturation", () => {
    fc.assert(
      fc.property(waters, (totals) => {
        const { concentrations, log10Activities, lnGamma, solids, saturationIndices, waterActivity } = solve(
          system,
          withTotals(totals),
        );
        let charge = 0;
        let ions = 0;
        const sums = Object.fromEntries(COMPONENTS.map((name) => [name, 0]));
        definition.species.forEach((species, i) => {
          charge += species.charge * concentrations[i]!;
          ions += Math.abs(species.charge) * concentrations[i]!;
          let logActivity = species.logK + ((species.water ?? 0) * Math.log(waterActivity!)) / Math.LN10;
          for (const [name, n] of Object.entries(species.formation)) {
            logActivity += n * log10Activities[system.componentIndex.get(name)!]!;
            if (name in sums) sums[name] = sums[name]! + n * concentrations[i]!;
          }
          const own = Math.log10(concentrations[i]!) + lnGamma[i]! / Math.LN10;
          expect(Math.abs(own - logActivity)).toBeLessThan(1e-9);
        });
        definition.solids.forEach((solid, s) => {
          expect(solids[s]! > 0 ? Math.abs(saturationIndices[s]!) : saturationIndices[s]!).toBeLessThan(1e-8);
          for (const [name, n] of Object.entries(solid.formation)) {
            if (name in sums) sums[name] = sums[name]! + n * solids[s]!;
          }
        });
        expect(Math.abs(charge)).toBeLessThan(1e-9 * ions);
        for (const name of COMPONENTS) expect(Math.abs(sums[name]! / totals[name]! - 1)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  it("gives the coefficients of its own composition, from a cold and from a warm start", () => {
    const terms = model.compile(system.speciesNames, system.speciesCharges);
    fc.assert(
      fc.property(waters, waters, (totals, other) => {
        const cold = solve(system, withTotals(totals));
        terms.evaluate(cold.concentrations, new Int32Array(0));
        cold.lnGamma.forEach((value, i) => {
          expect(Math.abs(value - terms.lnGamma[i]!)).toBeLessThan(1e-9);
        });
        const warm = solve(system, { ...withTotals(totals), start: solve(system, withTotals(other)) });
        expect(difference(cold, warm)).toBeLessThan(1e-9);
      }),
      runs,
    );
  });

  it("does not depend on the order of components, species and solids", () => {
    const turned: SystemDefinition = {
      components: [...definition.components].reverse(),
      species: [...definition.species].reverse(),
      solids: [...definition.solids].reverse(),
    };
    fc.assert(
      fc.property(waters, (totals) => {
        expect(difference(solve(system, withTotals(totals)), solve(turned, withTotals(totals)))).toBeLessThan(
          1e-9,
        );
      }),
      { ...runs, numRuns: 50 },
    );
  });

  it("joins Davies' formula on dilution", () => {
    const totals = Object.fromEntries(COMPONENTS.map((name) => [name, TANK[name]! * 1e-4]));
    const dilute = solve(system, withTotals(totals));
    const other = solve(system, { ...withTotals(totals), activity: davies({ A: debyeHuckelA(25) }) });
    expect(difference(dilute, other)).toBeLessThan(0.01);
    expect(dilute.waterActivity).toBeCloseTo(other.waterActivity!, 9);
  });

  it("ends at a finite answer or a reason at extreme concentrations, never at NaN", () => {
    for (const factor of [1e-12, 1e-6, 1, 1e2, 1e3, 1e4, 1e6]) {
      const totals = Object.fromEntries(COMPONENTS.map((name) => [name, TANK[name]! * factor]));
      for (const solids of [[], ["gypsum", "calcium hydrogen glyphosate"]]) {
        const result = equilibrate(system, { ...withTotals(totals), solids });
        if (!result.ok) {
          expect(result.reason).toBe("not-converged");
          continue;
        }
        const { concentrations, lnGamma, pH, waterActivity } = result.value;
        for (const value of [...concentrations, ...lnGamma, pH, waterActivity]) {
          expect(Number.isFinite(value)).toBe(true);
        }
        expect(waterActivity).toBeLessThanOrEqual(1);
      }
    }
  });

  it("converges from a cold start on random mixtures of everything, up to 2 mol/kg of each", () => {
    const many = [...COMPONENTS, "K+", "Fe+2", "Fe+3", "Mn+2", "NO3-", "PO4-3", "Cit-3", "Edta-4"];
    const mixed = compileSystem(
      systemFor(builtInThermo(), {
        components: many,
        temperature_C: 25,
        solids: "fast",
        carbonate: "closed",
        interactions: data,
      }),
    );
    const amounts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), {
      minLength: many.length,
      maxLength: many.length,
    });
    const scale = fc.constantFrom([-6, -3], [-3, -0.3], [-2, 0.3]);
    fc.assert(
      fc.property(amounts, scale, (draws, [low, high]) => {
        const totals = Object.fromEntries(
          many.map((name, k) => [name, 10 ** (low! + (high! - low!) * draws[k]!)]),
        );
        const charge = mixed.definition.components.reduce(
          (sum, c) => sum + c.charge * (totals[c.name] ?? 0),
          0,
        );
        const balance = charge > 0 ? "Cl-" : "Na+";
        totals[balance] = totals[balance]! + Math.abs(charge);
        const { residual, waterActivity } = solve(mixed, withTotals(totals));
        expect(residual).toBeLessThan(1e-8);
        expect(waterActivity).toBeLessThan(1);
      }),
      runs,
    );
  });

  it("dries a tank with glyphosate and ammonium sulfate to a water activity of 0.6 without a jump", () => {
    const salts = ["gypsum", "ammonium sulfate"];
    const drying = compileSystem(
      systemFor(builtInThermo(), {
        components: COMPONENTS.filter((name) => name !== "CO3-2"),
        temperature_C: 25,
        solids: salts,
        carbonate: "closed",
        interactions: data,
      }),
    );
    const { "CO3-2": _carbonate, ...totals } = TANK;
    const factors = Array.from({ length: 115 }, (_, k) => 1.06 ** k);
    const path = dryDown(drying, withTotals(totals), { factors });
    if (!path.ok) throw new Error(`${path.reason}: ${path.detail}`);
    let before = 1;
    for (const { equilibrium } of path.steps) {
      expect(equilibrium.waterActivity).toBeLessThan(before);
      expect(equilibrium.waterActivity).toBeGreaterThan(before - 0.03);
      before = equilibrium.waterActivity!;
    }
    expect(before).toBeLessThan(0.65);
    const last = path.steps.at(-1)!.equilibrium;
    expect(drying.solidNames.filter((_, s) => last.solids[s]! > 0)).toEqual(salts);
    expect(last.estimates.map((note) => note.species)).toContain("IPA+");
  });

  it("has sensitivities that agree with differences", () => {
    const totals = Object.fromEntries(COMPONENTS.map((name) => [name, TANK[name]! * 20]));
    const conditions = withTotals(totals);
    const parameters: readonly SensitivityParameter[] = [
      { kind: "logK", name: "CaHGly" },
      { kind: "logK", name: "HSO4-" },
      { kind: "logKsp", name: "gypsum" },
      { kind: "total", name: "SO4-2" },
      { kind: "total", name: "Mg+2" },
    ];
    const base = solve(system, conditions);
    expect(base.solids[0]).toBeGreaterThan(0);
    const result = sensitivities(conditions, base, parameters);
    if (!result.ok) throw new Error(result.detail);
    const d = 1e-5;
    result.value.forEach((sensitivity, p) => {
      const moved = (by: number): Equilibrium => {
        const { kind, name } = parameters[p]!;
        if (kind === "total") {
          return solve(system, withTotals({ ...totals, [name]: totals[name]! * 10 ** by }));
        }
        const row = kind === "logK" ? definition.species : definition.solids;
        const found = row.find((one) => one.name === name)!;
        const value = ("logK" in found ? found.logK : found.logKsp) + by;
        return solve(system, { ...conditions, [kind]: { [name]: value } });
      };
      const [high, low] = [moved(d), moved(-d)];
      sensitivity.dLog10Concentrations.forEach((value, i) => {
        const quotient = (high.log10Concentrations[i]! - low.log10Concentrations[i]!) / (2 * d);
        expect(Math.abs(value - quotient)).toBeLessThan(1e-5 * (1 + Math.abs(quotient)));
      });
      sensitivity.dLog10Activities.forEach((value, j) => {
        const quotient = (high.log10Activities[j]! - low.log10Activities[j]!) / (2 * d);
        expect(Math.abs(value - quotient)).toBeLessThan(1e-5 * (1 + Math.abs(quotient)));
      });
      const solids = (high.solids[0]! - low.solids[0]!) / (2 * d);
      expect(Math.abs(sensitivity.dSolids_molPerL[0]! - solids)).toBeLessThan(1e-5 * (1 + Math.abs(solids)));
    });
  });
});
