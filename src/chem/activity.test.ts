import { describe, expect, it } from "vitest";
import { davies, extendedDebyeHuckel, idealActivity } from "./activity.ts";
import type { ActivityModel } from "./activity.ts";

const held = davies({ holdAbove_molPerL: 0.5 });
const extended = extendedDebyeHuckel({
  A: 0.509,
  B: 0.328,
  sizes: { "Na+": { a_angstrom: 4, b: 0.075 }, CO2: { a_angstrom: 0, b: 0.1 } },
  fallback: davies(),
  neutralCoefficient: 0.05,
});

describe("davies", () => {
  it("gives the formula by hand: z = 2, I = 0.1", () => {
    const root = Math.sqrt(0.1);
    const log = -0.509 * 4 * (root / (1 + root) - 0.03);
    expect(davies().lnGamma(-2, "SO4-2", 0.1) / Math.LN10).toBeCloseTo(log, 14);
    expect(davies({ A: 0.5, b: 0.2 }).lnGamma(1, "x", 0.1) / Math.LN10).toBeCloseTo(
      -0.5 * (root / (1 + root) - 0.02),
      14,
    );
  });

  it("leaves neutral species and infinite dilution at one", () => {
    expect(davies().lnGamma(0, "CO2", 0.3) + 0).toBe(0);
    expect(davies().lnGamma(3, "Fe+3", 0) + 0).toBe(0);
    expect(Number.isFinite(davies().dLnGamma(1, "x", 0))).toBe(true);
  });

  it("keeps its value above the ionic strength at which it is held", () => {
    expect(held.lnGamma(2, "x", 7)).toBe(held.lnGamma(2, "x", 0.5));
    expect(held.dLnGamma(2, "x", 7)).toBe(0);
    expect(davies().lnGamma(2, "x", 7)).not.toBe(davies().lnGamma(2, "x", 0.5));
  });

  it("refuses senseless settings", () => {
    expect(() => davies({ A: -1 })).toThrow("activity-option-invalid");
    expect(() => davies({ holdAbove_molPerL: 0 })).toThrow("activity-option-invalid");
  });
});

describe("extendedDebyeHuckel", () => {
  it("uses sizes where there are any, else the fallback or the neutral coefficient", () => {
    const root = Math.sqrt(0.2);
    const sodium = (-0.509 * root) / (1 + 0.328 * 4 * root) + 0.075 * 0.2;
    expect(extended.lnGamma(1, "Na+", 0.2) / Math.LN10).toBeCloseTo(sodium, 14);
    expect(extended.lnGamma(0, "CO2", 0.2) / Math.LN10).toBeCloseTo(0.02, 14);
    expect(extended.lnGamma(0, "HL", 0.2) / Math.LN10).toBeCloseTo(0.01, 14);
    expect(extended.lnGamma(2, "Ca+2", 0.2)).toBe(davies().lnGamma(2, "Ca+2", 0.2));
  });

  it("refuses senseless settings", () => {
    const settings = { A: 0.5, B: 0.33, sizes: { x: { a_angstrom: -1, b: 0 } }, fallback: davies() };
    expect(() => extendedDebyeHuckel(settings)).toThrow("activity-option-invalid");
  });
});

describe("derivatives by ionic strength", () => {
  const models: readonly ActivityModel[] = [idealActivity, davies(), held, extended];
  it.each(models.map((model) => [model.name, model] as const))(
    "of %s agree with differences",
    (_name, model) => {
      for (const [charge, species] of [
        [1, "Na+"],
        [-3, "L"],
        [0, "CO2"],
        [0, "HL"],
      ] as const) {
        for (const I of [1e-4, 0.03, 0.4, 2]) {
          const h = 1e-5 * I;
          const difference =
            (model.lnGamma(charge, species, I + h) - model.lnGamma(charge, species, I - h)) / (2 * h);
          expect(model.dLnGamma(charge, species, I)).toBeCloseTo(difference, 5);
        }
      }
    },
  );
});
