import { describe, expect, it } from "vitest";
import { davies, idealActivity } from "./activity.ts";
import { compileSystem } from "./compile.ts";
import type { Conditions } from "./conditions.ts";
import { dryDown } from "./dry-down.ts";
import type { DryDownStep } from "./dry-down.ts";
import { equilibrate } from "./equilibrate.ts";

const system = compileSystem({
  components: [
    { name: "H+", charge: 1 },
    { name: "Ca+2", charge: 2 },
    { name: "SO4-2", charge: -2 },
    { name: "Na+", charge: 1 },
    { name: "Cl-", charge: -1 },
  ],
  species: [
    { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
    { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
    { name: "Ca+2", charge: 2, formation: { "Ca+2": 1 }, logK: 0 },
    { name: "SO4-2", charge: -2, formation: { "SO4-2": 1 }, logK: 0 },
    { name: "Na+", charge: 1, formation: { "Na+": 1 }, logK: 0 },
    { name: "Cl-", charge: -1, formation: { "Cl-": 1 }, logK: 0 },
    { name: "CaSO4", charge: 0, formation: { "Ca+2": 1, "SO4-2": 1 }, logK: 2.3 },
  ],
  solids: [
    { name: "Gypsum", formation: { "Ca+2": 1, "SO4-2": 1 }, logKsp: -4.6 },
    { name: "Anhydrite", formation: { "Ca+2": 1, "SO4-2": 1 }, logKsp: -4.3 },
  ],
});
const conditions: Conditions = {
  totals_molPerL: { "Ca+2": 0.004, "SO4-2": 0.004, "Na+": 0.002, "Cl-": 0.002 },
  electroneutral: "H+",
  activity: davies({ holdAbove_molPerL: 0.5 }),
};
const factors = [1, 2, 4, 8, 16, 50];

function path(
  nucleation: readonly { readonly solid: string; readonly thresholdSI: number }[] = [],
  from: Conditions = conditions,
  along = factors,
): readonly DryDownStep[] {
  const result = dryDown(system, from, { factors: along, nucleation });
  if (!result.ok) throw new Error(`${result.reason} ${result.detail}`);
  return result.steps;
}
const gypsum = (step: DryDownStep): number => step.equilibrium.solids[0]!;

describe("dryDown", () => {
  it("concentrates totals and lets solids form, per litre of liquid left", () => {
    const steps = path();
    expect(steps.map((step) => step.factor)).toEqual(factors);
    expect(gypsum(steps[0]!)).toBe(0);
    expect(gypsum(steps.at(-1)!)).toBeGreaterThan(0.1);
    steps.forEach(({ factor, equilibrium }) => {
      const calcium =
        equilibrium.concentrations[2]! + equilibrium.concentrations[6]! + equilibrium.solids[0]!;
      expect(calcium / (0.004 * factor)).toBeCloseTo(1, 11);
    });
  });

  it("gives at each step what a cold start gives there", () => {
    for (const { factor, equilibrium } of path()) {
      const totals = Object.entries(conditions.totals_molPerL).map(([name, total]) => [name, total * factor]);
      const cold = equilibrate(system, { ...conditions, totals_molPerL: Object.fromEntries(totals) });
      if (!cold.ok) throw new Error(cold.reason);
      cold.value.log10Concentrations.forEach((log, i) => {
        expect(equilibrium.log10Concentrations[i]).toBeCloseTo(log, 9);
      });
      expect(equilibrium.solids[0]).toBeCloseTo(cold.value.solids[0]!, 12);
    }
  });

  it("keeps a solid away until its saturation index has passed the threshold, and then no longer", () => {
    const free = path([], { ...conditions, solids: [] });
    const waiting = [
      { solid: "Gypsum", thresholdSI: 0.5 },
      { solid: "Anhydrite", thresholdSI: 9 },
    ];
    const steps = path(waiting);
    steps.forEach((step, k) => {
      const passed = free.slice(0, k + 1).some((one) => one.equilibrium.saturationIndices[0]! > 0.5);
      expect(step.nucleated).toEqual(passed ? ["Gypsum"] : []);
      expect(gypsum(step) > 0).toBe(passed);
      if (passed) expect(step.equilibrium.saturationIndices[0]).toBeCloseTo(0, 9);
    });
    // Both things happen on this path: supersaturated without a solid, and a solid after that.
    expect(steps.some((step) => step.equilibrium.saturationIndices[0]! > 0.01)).toBe(true);
    expect(steps.some((step) => gypsum(step) > 0)).toBe(true);
  });

  it("never lets a nucleating solid form that is not allowed", () => {
    const nucleation = [{ solid: "Gypsum", thresholdSI: 0.5 }];
    const steps = path(nucleation, { ...conditions, solids: ["Anhydrite"] });
    expect(steps.every((step) => step.nucleated.length === 0 && gypsum(step) === 0)).toBe(true);
    expect(steps.at(-1)!.equilibrium.solids[1]).toBeGreaterThan(0.1);
  });

  it("says where and why it broke off", () => {
    const broken = dryDown(system, { totals_molPerL: { "Ca+2": 1 }, activity: idealActivity }, { factors });
    expect(broken).toMatchObject({ ok: false, reason: "missing-total", steps: [] });
    const unknown = dryDown(system, conditions, { factors, nucleation: [{ solid: "X", thresholdSI: 1 }] });
    expect(unknown).toMatchObject({ ok: false, reason: "unknown-solid", detail: "X" });
  });

  it.each([[[1, 1]], [[2, 1]], [[0]], [[1, NaN]], [[1, Infinity]]])("throws for factors %j", (wrong) => {
    expect(() => dryDown(system, conditions, { factors: wrong })).toThrow("dry-down-factors-invalid");
  });
});
