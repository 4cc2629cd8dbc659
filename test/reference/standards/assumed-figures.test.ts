import { describe, expect, test } from "vitest";
import data from "../../../data/water-checks.json" with { type: "json" };
import { REAL_WATERS } from "./real-waters.ts";
import type { RealWater } from "./real-waters.ts";

/** The analyses the percentiles are taken of: usable as spray water, and hard enough for ratios to mean something. */
const USED = REAL_WATERS.filter(
  (water) => water.conductivity !== null && water.conductivity <= 4000 && hardness(water) >= 1000,
);

function hardness(water: RealWater): number {
  return (water.calcium ?? 0) + (water.magnesium ?? 0);
}

/** A ratio of two positive readings; null where one is missing or not positive. */
function ratio(a: number | null, b: number | null): number | null {
  return a !== null && b !== null && a > 0 && b > 0 ? a / b : null;
}

/** Percentile with every set of the same weight: cumulative weight at mid-step, linear between steps. */
function percentile(of: (water: RealWater) => number | null, share: number): number {
  const values = USED.flatMap((water) => {
    const found = of(water);
    return found === null ? [] : [{ found, set: water.set }];
  }).sort((a, b) => a.found - b.found);
  const sizes = new Map<string, number>();
  for (const { set } of values) sizes.set(set, (sizes.get(set) ?? 0) + 1);
  let cumulative = 0;
  let before: { readonly at: number; readonly found: number } | null = null;
  for (const { found, set } of values) {
    const weight = 1 / (sizes.size * sizes.get(set)!);
    const at = cumulative + weight / 2;
    if (at >= share) {
      if (before === null) return found;
      return before.found + ((found - before.found) * (share - before.at)) / (at - before.at);
    }
    before = { at, found };
    cumulative += weight;
  }
  return before?.found ?? 0;
}

const FIGURES: Readonly<Record<string, (water: RealWater) => number | null>> = {
  calciumShareOfHardness: (w) => (w.calcium ?? 0) / hardness(w),
  alkalinityPerHardness: (w) => ratio(w.alkalinity, hardness(w)),
  // µeq/L over µS/cm is meq/L per mS/cm, and half of it mmol/L of hardness.
  hardnessPerConductivity: (w) => (ratio(hardness(w), w.conductivity) ?? 0) / 2000,
  alkalinityPerConductivity: (w) => {
    const found = ratio(w.alkalinity, w.conductivity);
    return found === null ? null : found / 1000;
  },
  chlorideShare: (w) => ratio(w.chloride, (w.chloride ?? 0) + (w.sulfate ?? 0)),
  sodiumPerHardness: (w) => ratio(w.sodium, hardness(w)),
  potassiumPerSodium: (w) => ratio(w.potassium, w.sodium),
  pH: (w) => w.pH,
};

describe("what is taken for missing readings", () => {
  test("the percentiles are those of 781 real analyses", () => {
    expect(USED.length).toBe(781);
  });

  test.each(Object.entries(FIGURES))("%s", (name, of) => {
    const stated = data.assumptions[name as keyof typeof data.assumptions];
    // The figures of the data are rounded to three digits.
    for (const [end, share] of [
      ["low", 0.05],
      ["central", 0.5],
      ["high", 0.95],
    ] as const) {
      const found = percentile(of, share);
      expect(Math.abs(stated[end] / found - 1), `${name} ${end}: ${found}`).toBeLessThan(0.006);
    }
  });

  test("every range holds its central value", () => {
    for (const [name, { low, central, high }] of Object.entries(data.assumptions)) {
      expect(low <= central && central <= high, name).toBe(true);
    }
  });
});
