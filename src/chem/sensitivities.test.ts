import { describe, expect, it } from "vitest";
import { davies, extendedDebyeHuckel, idealActivity } from "./activity.ts";
import type { ActivityModel } from "./activity.ts";
import { compileSystem } from "./compile.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { equilibrate } from "./equilibrate.ts";
import { sensitivities } from "./sensitivities.ts";
import type { SensitivityParameter } from "./sensitivities.ts";

const system = compileSystem({
  components: [
    { name: "H+", charge: 1 },
    { name: "CO2", charge: 0 },
    { name: "Ca+2", charge: 2 },
    { name: "Cl-", charge: -1 },
    { name: "Mg+2", charge: 2 },
  ],
  species: [
    { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
    { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
    { name: "CO2", charge: 0, formation: { CO2: 1 }, logK: 0 },
    { name: "HCO3-", charge: -1, formation: { CO2: 1, "H+": -1 }, logK: -6.35 },
    { name: "CO3-2", charge: -2, formation: { CO2: 1, "H+": -2 }, logK: -16.68 },
    { name: "Ca+2", charge: 2, formation: { "Ca+2": 1 }, logK: 0 },
    { name: "CaHCO3+", charge: 1, formation: { "Ca+2": 1, CO2: 1, "H+": -1 }, logK: -5.25 },
    { name: "Cl-", charge: -1, formation: { "Cl-": 1 }, logK: 0 },
    { name: "Mg+2", charge: 2, formation: { "Mg+2": 1 }, logK: 0 },
  ],
  solids: [{ name: "Calcite", formation: { "Ca+2": 1, CO2: 1, "H+": -2 }, logKsp: 8.2 }],
});
const base: Omit<Conditions, "activity"> = {
  totals_molPerL: { "Ca+2": 0.02, "Cl-": 0.03, "Mg+2": 0 },
  fixedLog10Activities: { CO2: -4.9 },
  electroneutral: "H+",
};
const parameters: readonly SensitivityParameter[] = [
  { kind: "logK", name: "HCO3-" },
  { kind: "logK", name: "OH-" },
  { kind: "logKsp", name: "Calcite" },
  { kind: "total", name: "Ca+2" },
  { kind: "total", name: "Cl-" },
  { kind: "fixedActivity", name: "CO2" },
];

/** The same conditions with one parameter moved by `by` in log10. */
function moved(conditions: Conditions, { kind, name }: SensitivityParameter, by: number): Conditions {
  const totals = conditions.totals_molPerL;
  const fixed = conditions.fixedLog10Activities!;
  switch (kind) {
    case "logK":
      return { ...conditions, logK: { [name]: system.logK[system.speciesIndex.get(name)!]! + by } };
    case "logKsp":
      return { ...conditions, logKsp: { [name]: system.logKsp[system.solidIndex.get(name)!]! + by } };
    case "total":
      return { ...conditions, totals_molPerL: { ...totals, [name]: totals[name]! * 10 ** by } };
    case "fixedActivity":
      return { ...conditions, fixedLog10Activities: { ...fixed, [name]: fixed[name]! + by } };
  }
}

function solve(conditions: Conditions): Equilibrium {
  const result = equilibrate(system, conditions);
  if (!result.ok) throw new Error(result.reason);
  return result.value;
}

const sized = extendedDebyeHuckel({
  A: 0.509,
  B: 0.328,
  sizes: { "Ca+2": { a_angstrom: 5, b: 0.165 } },
  fallback: davies(),
  neutralCoefficient: 0.1,
});
const models: readonly ActivityModel[] = [idealActivity, davies(), sized];

describe("sensitivities", () => {
  it.each(models.flatMap((model) => [true, false].map((solid) => [model.name, solid, model] as const)))(
    "agree with central differences: %s, solid %s",
    (_name, solid, activity) => {
      const conditions: Conditions = { ...base, activity, solids: solid ? ["Calcite"] : [] };
      const value = solve(conditions);
      expect(value.solids[0]! > 0).toBe(solid);
      const result = sensitivities(conditions, value, parameters);
      if (!result.ok) throw new Error(result.reason);
      const h = 1e-4;
      result.value.forEach((one) => {
        const up = solve(moved(conditions, one.parameter, h));
        const down = solve(moved(conditions, one.parameter, -h));
        const compare = (ours: number, high: number, low: number, size: number): void => {
          const difference = high === low ? 0 : (high - low) / (2 * h);
          expect(Math.abs(ours - difference)).toBeLessThanOrEqual(
            2e-6 * Math.max(size, Math.abs(difference)),
          );
        };
        up.log10Concentrations.forEach((high, i) =>
          compare(one.dLog10Concentrations[i]!, high, down.log10Concentrations[i]!, 1),
        );
        up.log10Activities.forEach((high, j) =>
          compare(one.dLog10Activities[j]!, high, down.log10Activities[j]!, 1),
        );
        up.solids.forEach((high, s) => compare(one.dSolids_molPerL[s]!, high, down.solids[s]!, 1e-3));
        compare(one.dIonicStrength_molPerL, up.ionicStrength_molPerL, down.ionicStrength_molPerL, 1e-3);
      });
    },
  );

  it("are zero for what is absent and for totals of zero", () => {
    const conditions: Conditions = { ...base, activity: davies() };
    const result = sensitivities(conditions, solve(conditions), [
      { kind: "logK", name: "Mg+2" },
      { kind: "total", name: "Mg+2" },
    ]);
    if (!result.ok) throw new Error(result.reason);
    for (const one of result.value) {
      expect([...one.dLog10Concentrations].every((d) => d === 0)).toBe(true);
      expect(one.dIonicStrength_molPerL + 0).toBe(0);
    }
  });

  it("refuse what is no parameter, and an equilibrium of other conditions", () => {
    const conditions: Conditions = { ...base, activity: davies() };
    const value = solve(conditions);
    for (const parameter of [
      { kind: "logK", name: "X" },
      { kind: "logKsp", name: "X" },
      { kind: "total", name: "X" },
      { kind: "total", name: "H+" },
      { kind: "total", name: "CO2" },
      { kind: "fixedActivity", name: "Ca+2" },
    ] as const) {
      expect(sensitivities(conditions, value, [parameter])).toMatchObject({ reason: "unknown-parameter" });
    }
    const other = { ...conditions, totals_molPerL: { "Ca+2": 0.5, "Cl-": 0.03, "Mg+2": 0 }, solids: [] };
    expect(sensitivities(other, value, [])).toMatchObject({ ok: false, reason: "not-at-equilibrium" });
    expect(sensitivities({ ...conditions, totals_molPerL: {} }, value, [])).toMatchObject({
      ok: false,
      reason: "missing-total",
    });
  });
});
