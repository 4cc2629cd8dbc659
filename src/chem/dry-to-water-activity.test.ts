import { describe, expect, it } from "vitest";
import { compileSystem } from "./compile.ts";
import type { Conditions } from "./conditions.ts";
import { davies } from "./activity.ts";
import { dryToWaterActivity } from "./dry-down.ts";
import type { DryToOptions } from "./dry-down.ts";
import { pitzer } from "./pitzer.ts";
import { builtInPitzer } from "./pitzer-data.ts";

/** Sodium chloride in water: its water activity against molality is in every handbook. */
const brine = compileSystem({
  components: [
    { name: "H+", charge: 1 },
    { name: "Na+", charge: 1 },
    { name: "Cl-", charge: -1 },
  ],
  species: [
    { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
    { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
    { name: "Na+", charge: 1, formation: { "Na+": 1 }, logK: 0 },
    { name: "Cl-", charge: -1, formation: { "Cl-": 1 }, logK: 0 },
  ],
  solids: [{ name: "Halite", formation: { "Na+": 1, "Cl-": 1 }, logKsp: 1.57 }],
});
const START_MOL_PER_KG = 0.05;
const conditions: Conditions = {
  totals_molPerL: { "Na+": START_MOL_PER_KG, "Cl-": START_MOL_PER_KG },
  electroneutral: "H+",
  activity: pitzer(builtInPitzer()),
};
const options: DryToOptions = { waterActivity: 0.9, stops: [1, 2, 5], mostFactor: 1000 };

function dried(change: Partial<DryToOptions> = {}) {
  const result = dryToWaterActivity(brine, conditions, { ...options, ...change });
  if (!result.ok) throw new Error(`${result.reason} ${result.detail}`);
  return result;
}

describe("dryToWaterActivity", () => {
  it("stops at the molality whose water activity is that of the air", () => {
    // Robinson & Stokes (1959) Electrolyte Solutions, appendix 8.3: sodium chloride of 2.8 mol/kg has a water activity
    // of 0.9016, of 3.0 mol/kg 0.8932 (from memory). Hence 0.900 lies at 2.84 mol/kg.
    const end = dried().steps.at(-1)!;
    expect(dried().ended).toBe("at the humidity");
    expect(end.equilibrium.waterActivity).toBeCloseTo(0.9, 2);
    expect(Math.abs(end.factor * START_MOL_PER_KG - 2.84)).toBeLessThan(0.08);
  });

  it("meets the same end by any stops", () => {
    const fine = dried({ stops: [1, 1.3, 1.7, 2.2, 2.9, 3.7, 4.8] }).steps.at(-1)!;
    const coarse = dried({ stops: [1, 20] }).steps.at(-1)!;
    expect(Math.abs(Math.log(fine.factor / coarse.factor))).toBeLessThan(0.05);
  });

  it.each([
    ["a weaker one", 0.02],
    ["a stronger one, whose salt has come out where this one has none yet", 0.4],
  ])("comes to the same steps whatever path it starts from: %s", (_, start) => {
    // Its own steps are told by the start alone where nothing similar is given: compared stop by stop.
    const other = dryToWaterActivity(
      brine,
      { ...conditions, totals_molPerL: { "Na+": start, "Cl-": start } },
      { ...options, stops: [1, 2, 5, 20, 60], waterActivity: 0.6, mostFactor: 200 },
    );
    const stops = { stops: [1, 2, 5, 20, 60], waterActivity: 0.6, mostFactor: 200 };
    const alone = dried(stops).steps;
    const led = dried({ ...stops, similar: other.steps }).steps;
    expect(led.map(({ factor }) => factor)).toEqual(alone.map(({ factor }) => factor));
    led.forEach(({ equilibrium }, k) => {
      const same = alone[k]!.equilibrium;
      expect(equilibrium.waterActivity).toBeCloseTo(same.waterActivity!, 9);
      expect(equilibrium.pH).toBeCloseTo(same.pH!, 8);
      expect(equilibrium.solids[0]! / Math.max(1e-3, same.solids[0]!)).toBeCloseTo(
        same.solids[0]! / Math.max(1e-3, same.solids[0]!),
        8,
      );
    });
    expect(other.steps.length).toBeGreaterThan(3);
  });

  it("says when a saturated salt keeps the drop wetter than the air", () => {
    // Saturated sodium chloride holds 75 % humidity (Greenspan 1977, J. Res. NBS 81A:89); drier air takes all its water.
    const result = dried({ waterActivity: 0.5 });
    expect(result.ended).toBe("at the most factor");
    expect(result.steps.at(-1)!.equilibrium.waterActivity).toBeCloseTo(0.753, 2);
    expect(result.steps.at(-1)!.equilibrium.solids[0]).toBeGreaterThan(0);
  });

  it("gives a tank that is drier than the air as its own end", () => {
    const strong = { ...conditions, totals_molPerL: { "Na+": 4, "Cl-": 4 } };
    const result = dryToWaterActivity(brine, strong, options);
    expect(result.ok && result.steps.map((step) => step.factor)).toEqual([1]);
  });

  it("refuses a model without a water activity, and stops that do not ascend from one", () => {
    const held = { ...conditions, activity: davies({ holdAbove_molPerL: 0.5 }) };
    expect(dryToWaterActivity(brine, held, options)).toMatchObject({
      ok: false,
      reason: "no-water-activity",
    });
    expect(() => dryToWaterActivity(brine, conditions, { ...options, stops: [2, 3] })).toThrow(
      "dry-down-factors",
    );
    expect(() => dryToWaterActivity(brine, conditions, { ...options, waterActivity: 1 })).toThrow(
      "dry-down-factors",
    );
  });
});
