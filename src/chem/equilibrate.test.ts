import { describe, expect, it } from "vitest";
import { davies, idealActivity } from "./activity.ts";
import { compileSystem } from "./compile.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { equilibrate } from "./equilibrate.ts";
import type { SystemDefinition } from "./system.ts";

/** Free ions of the components, then the given species: [name, charge, formation, log K]. */
function define(
  components: Readonly<Record<string, number>>,
  species: readonly (readonly [string, number, Readonly<Record<string, number>>, number])[],
  solids: SystemDefinition["solids"] = [],
): SystemDefinition {
  const names = Object.entries(components);
  return {
    components: names.map(([name, charge]) => ({ name, charge })),
    species: [
      ...names.map(([name, charge]) => ({ name, charge, formation: { [name]: 1 }, logK: 0 })),
      ...species.map(([name, charge, formation, logK]) => ({ name, charge, formation, logK })),
    ],
    solids,
  };
}

const carbonate = define(
  { "H+": 1, "CO3-2": -2, "Ca+2": 2, "Na+": 1, "Cl-": -1 },
  [
    ["OH-", -1, { "H+": -1 }, -14],
    ["HCO3-", -1, { "H+": 1, "CO3-2": 1 }, 10.33],
    ["CO2", 0, { "H+": 2, "CO3-2": 1 }, 16.68],
    ["CaCO3", 0, { "Ca+2": 1, "CO3-2": 1 }, 3.2],
  ],
  [
    { name: "Calcite", formation: { "Ca+2": 1, "CO3-2": 1 }, logKsp: -8.48 },
    { name: "Aragonite", formation: { "Ca+2": 1, "CO3-2": 1 }, logKsp: -8.34 },
  ],
);
const totals = { "H+": 0, "CO3-2": 0.004, "Ca+2": 0.003, "Na+": 0.004, "Cl-": 0.002 };

function solve(definition: SystemDefinition, conditions: Conditions): Equilibrium {
  const result = equilibrate(compileSystem(definition), conditions);
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return result.value;
}

function refusal(definition: SystemDefinition, conditions: Omit<Conditions, "activity">): string {
  const result = equilibrate(compileSystem(definition), { ...conditions, activity: idealActivity });
  return result.ok ? "solved" : `${result.reason}: ${result.detail}`;
}

const at = (value: Equilibrium, species: string): number =>
  value.concentrations[value.system.speciesIndex.get(species)!]!;

describe("equilibrate", () => {
  it("gives acetic acid as the quadratic formula does", () => {
    const acid = define({ "H+": 1, "A-": -1 }, [
      ["OH-", -1, { "H+": -1 }, -14],
      ["HA", 0, { "H+": 1, "A-": 1 }, 4.757],
    ]);
    const value = solve(acid, { totals_molPerL: { "H+": 0.01, "A-": 0.01 }, activity: idealActivity });
    const Ka = 10 ** -4.757;
    const h = (-Ka + Math.sqrt(Ka * Ka + 4 * Ka * 0.01)) / 2;
    // The formula leaves out water's own ions: 1e-14 / h² of the answer.
    expect(at(value, "H+") / h).toBeCloseTo(1, 6);
    expect(value.pH).toBeCloseTo(-Math.log10(h), 6);
    expect(value.extrapolated).toBe(false);
  });

  it("lets decimal totals cancel: 0.1 and 0.2 of two metals against 0.3 of a ligand", () => {
    const chelate = define({ M: 0, N: 0, L: 0 }, [
      ["ML", 0, { M: 1, L: 1 }, 40],
      ["NL", 0, { N: 1, L: 1 }, 40],
    ]);
    const value = solve(chelate, { totals_molPerL: { M: 0.1, N: 0.2, L: 0.3 }, activity: idealActivity });
    // Free L = free M + free N, and free M = 0.1 / (K L), free N = 0.2 / (K L).
    expect(at(value, "L") / Math.sqrt(0.3e-40)).toBeCloseTo(1, 10);
  });

  it("closes the charge balance by the total of hydrogen ions", () => {
    const value = solve(carbonate, {
      totals_molPerL: { ...totals, "H+": 99 },
      electroneutral: "H+",
      activity: davies(),
    });
    let charge = 0;
    value.system.speciesCharges.forEach((z, i) => (charge += z * value.concentrations[i]!));
    expect(Math.abs(charge)).toBeLessThan(1e-16);
    const { "H+": _given, ...others } = totals;
    const without = solve(carbonate, { totals_molPerL: others, electroneutral: "H+", activity: davies() });
    expect(without.pH).toBe(value.pH);
  });

  it("forms the less soluble of two polymorphs, and neither when they are not allowed", () => {
    const conditions: Conditions = { totals_molPerL: totals, electroneutral: "H+", activity: davies() };
    const value = solve(carbonate, conditions);
    expect(value.solids[0]).toBeGreaterThan(1e-4);
    expect(value.solids[1]).toBe(0);
    expect(value.saturationIndices[1]).toBeCloseTo(-0.14, 12);
    const only = solve(carbonate, { ...conditions, solids: ["Aragonite"] });
    expect(only.solids[0]).toBe(0);
    expect(only.solids[1]).toBeGreaterThan(1e-4);
    expect(only.saturationIndices[0]).toBeCloseTo(0.14, 12);
    const none = solve(carbonate, { ...conditions, solids: [] });
    expect([...none.solids]).toEqual([0, 0]);
    expect(none.saturationIndices[0]).toBeGreaterThan(0.5);
  });

  it("goes over from one polymorph to the other at a warm start with new solubilities", () => {
    const system = compileSystem(carbonate);
    const conditions: Conditions = { totals_molPerL: totals, electroneutral: "H+", activity: davies() };
    const first = equilibrate(system, conditions);
    if (!first.ok) throw new Error(first.reason);
    const second = equilibrate(system, { ...conditions, start: first.value, logKsp: { Aragonite: -9 } });
    if (!second.ok) throw new Error(second.reason);
    expect(second.value.solids[0]).toBe(0);
    expect(second.value.solids[1]).toBeGreaterThan(0);
    expect(first.value.solids[0]).toBeGreaterThan(0);
  });

  it("stops at the tolerance asked for, and is no further than that from the answer", () => {
    const conditions: Conditions = { totals_molPerL: totals, electroneutral: "H+", activity: davies() };
    const full = solve(carbonate, conditions);
    const rough = solve(carbonate, { ...conditions, tolerance: 1e-3 });
    expect(rough.iterations).toBeLessThan(full.iterations);
    expect(rough.residual).toBeLessThan(1e-3);
    expect(Math.abs(rough.pH! - full.pH!)).toBeLessThan(1e-3);
  });

  it("takes constants from the conditions", () => {
    const conditions: Conditions = { totals_molPerL: totals, activity: idealActivity, solids: [] };
    const weak = solve(carbonate, { ...conditions, logK: { CaCO3: -50 } });
    expect(at(weak, "CaCO3")).toBeLessThan(1e-50);
    expect(at(solve(carbonate, conditions), "CaCO3")).toBeGreaterThan(1e-6);
  });

  it("leaves out what an absent component would make, and says so with exact zeros", () => {
    const value = solve(carbonate, {
      totals_molPerL: { ...totals, "Ca+2": 0 },
      electroneutral: "H+",
      activity: davies(),
    });
    expect(at(value, "CaCO3")).toBe(0);
    expect(value.log10Concentrations[value.system.speciesIndex.get("Ca+2")!]).toBe(-Infinity);
    expect(value.log10Activities[2]).toBe(-Infinity);
    expect([...value.saturationIndices]).toEqual([-Infinity, -Infinity]);
  });

  it("keeps fixed activities, also when all are fixed", () => {
    const fixed = { "H+": -8, "CO3-2": -5, "Ca+2": -4, "Na+": -3, "Cl-": -3 };
    const value = solve(carbonate, { totals_molPerL: {}, fixedLog10Activities: fixed, activity: davies() });
    expect(value.pH).toBe(8);
    expect(Math.log10(at(value, "CaCO3"))).toBeCloseTo(-4 - 5 + 3.2, 12);
    let I = 0;
    value.system.speciesCharges.forEach((z, i) => (I += 0.5 * z * z * value.concentrations[i]!));
    expect(value.ionicStrength_molPerL).toBeCloseTo(I, 14);
    expect(value.saturationIndices[0]).toBeCloseTo(-0.52, 12);
  });

  it("marks an ionic strength beyond the model's range", () => {
    const salty: Conditions = {
      totals_molPerL: { ...totals, "Na+": 1.004, "Cl-": 1.002 },
      activity: davies(),
    };
    expect(solve(carbonate, salty).extrapolated).toBe(true);
    expect(solve(carbonate, { ...salty, activity: idealActivity }).extrapolated).toBe(false);
  });

  it("answers with arrays of the caller's own", () => {
    const system = compileSystem(carbonate);
    const first = equilibrate(system, { totals_molPerL: totals, activity: davies() });
    if (!first.ok) throw new Error(first.reason);
    const before = [...first.value.concentrations];
    equilibrate(system, { totals_molPerL: { ...totals, "Na+": 0.5 }, activity: davies() });
    expect([...first.value.concentrations]).toEqual(before);
  });
});

describe("equilibrate refuses, with a reason", () => {
  const pair = define({ M: 0, L: 0 }, [["ML", 0, { M: 1, L: 1 }, 5]]);
  const complexOnly: SystemDefinition = { ...pair, species: pair.species.slice(2) };
  const noFreeLigand: SystemDefinition = { ...pair, species: [pair.species[0]!, pair.species[2]!] };

  it.each<[string, SystemDefinition, Omit<Conditions, "activity">, string]>([
    ["an unknown component", pair, { totals_molPerL: { M: 1, L: 1, X: 1 } }, "unknown-component: X"],
    [
      "an unknown fixed component",
      pair,
      { totals_molPerL: { M: 1, L: 1 }, fixedLog10Activities: { X: 1 } },
      "unknown-component: X",
    ],
    ["an unknown species", pair, { totals_molPerL: { M: 1, L: 1 }, logK: { X: 1 } }, "unknown-species: X"],
    ["an unknown solid", pair, { totals_molPerL: { M: 1, L: 1 }, solids: ["X"] }, "unknown-solid: X"],
    ["a missing total", pair, { totals_molPerL: { M: 1 } }, "missing-total: L"],
    [
      "a total that is no number",
      pair,
      { totals_molPerL: { M: 1, L: NaN } },
      "number-not-finite: total of L",
    ],
    ["a negative total that nothing takes", pair, { totals_molPerL: { M: 1, L: -1 } }, "infeasible-total: L"],
    [
      "less metal than the ligand needs",
      noFreeLigand,
      { totals_molPerL: { M: 1, L: 2 } },
      "infeasible-total: the totals leave nothing for",
    ],
    [
      "just as much, which leaves exactly nothing free",
      noFreeLigand,
      { totals_molPerL: { M: 0.3, L: 0.3 } },
      "infeasible-total: the totals leave nothing for",
    ],
    [
      "two labels that always go together",
      complexOnly,
      { totals_molPerL: { M: 1, L: 1 } },
      "redundant-component: ",
    ],
    [
      "electroneutrality by a neutral component",
      pair,
      { totals_molPerL: { M: 1 }, electroneutral: "L" },
      "charge-not-conserved: L",
    ],
    [
      "electroneutrality by an unknown component",
      pair,
      { totals_molPerL: { M: 1 }, electroneutral: "X" },
      "unknown-component: X",
    ],
    [
      "electroneutrality with another charge fixed",
      carbonate,
      { totals_molPerL: totals, electroneutral: "H+", fixedLog10Activities: { "CO3-2": -5 } },
      "electroneutral-with-fixed-charge: CO3-2",
    ],
  ])("%s", (_what, definition, conditions, reason) => {
    expect(refusal(definition, conditions).startsWith(reason)).toBe(true);
  });

  it("solids whose solubilities contradict each other", () => {
    const solids = [
      { name: "A", formation: { M: 1 }, logKsp: -5 },
      { name: "B", formation: { M: -1 }, logKsp: 3 },
    ];
    expect(refusal({ ...pair, solids }, { totals_molPerL: { M: 1, L: 1 } })).toMatch(/^inconsistent-solids/);
  });

  it("too few iterations, rather than give numbers that did not converge", () => {
    const system = compileSystem(carbonate);
    const result = equilibrate(system, { totals_molPerL: totals, activity: davies(), maxIterations: 1 });
    expect(result).toMatchObject({ ok: false, reason: "not-converged" });
  });

  it("and solves again afterwards", () => {
    const system = compileSystem(noFreeLigand);
    expect(equilibrate(system, { totals_molPerL: { M: 1, L: 2 }, activity: idealActivity }).ok).toBe(false);
    const after = equilibrate(system, { totals_molPerL: { M: 2, L: 1 }, activity: idealActivity });
    expect(after.ok && after.value.concentrations[0]).toBeCloseTo(1, 12);
  });
});
