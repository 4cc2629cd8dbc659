import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { latinColumn, quantileOf } from "../numerics/index.ts";
import { CHEAP_TESTS, completeWater, drawWaters, readingUncertainty, readWaterTest } from "./index.ts";
import type { TestMethod, Water, WaterTest } from "./index.ts";

const options = { thermo: builtInThermo(), temperature_C: 15 };
const COUNT = 200;

type Line = readonly [parameter: string, value: number | string, unit: string];

function testOf(method: TestMethod, lines: readonly Line[]): WaterTest {
  const readings = lines.map(([parameter, value, unit]) => ({ parameter, value, unit }));
  const read = readWaterTest({ source: "bore", method, readings }, "water");
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

function centralOf(test: WaterTest): Water {
  const read = completeWater(test, options);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

function draw(
  test: WaterTest,
  column: (key: string) => ArrayLike<number> = (key) => latinColumn(COUNT, `1|${key}`),
): ReturnType<typeof drawWaters> {
  return drawWaters(test, options, centralOf(test), COUNT, column);
}

/** 5th and 95th percentile of a component over the draws [mol/L]. */
function band(waters: readonly Water[], component: string): { readonly low: number; readonly high: number } {
  const sorted = waters.map((w) => w.totals_molPerL[component] ?? 0).sort((a, b) => a - b);
  return { low: quantileOf(sorted, 0.05), high: quantileOf(sorted, 0.95) };
}

const BORE: readonly Line[] = [
  ["calcium", 92, "mg/L"],
  ["magnesium", 31, "mg/L"],
  ["sodium", 60, "mg/L"],
  ["chloride", 110, "mg/L"],
  ["sulfate", 80, "mg/L"],
  ["alkalinity", 240, "mg/L as CaCO3"],
  ["iron", "<0.05", "mg/L"],
  ["pH", 7.6, ""],
];

describe("uncertainty of a reading", () => {
  it("has the method's figure and half a unit of the last digit typed", () => {
    const [hardness, pH] = testOf("laboratory", [
      ["hardness", "240", "mg/L as CaCO3"],
      ["pH", "7.6", ""],
    ]).readings;
    const ofHardness = readingUncertainty(hardness!, "laboratory");
    expect(ofHardness.relative).toBeCloseTo(0.029, 12);
    // 1 mg/L as CaCO3 is 1/100.09 mmol/L.
    expect(ofHardness.absolute).toBeCloseTo(1 / 100.09 / 1000, 8);
    expect(ofHardness.halfDigit).toBeCloseTo(0.5 / 100.09 / 1000, 8);
    expect(readingUncertainty(pH!, "laboratory")).toMatchObject({ absolute: 0.1, relative: 0 });
    expect(readingUncertainty(pH!, "laboratory").halfDigit).toBeCloseTo(0.05, 12);
  });

  it("does not depend on the unit the reading is typed in", () => {
    const inMg = testOf("strip", [["hardness", "250", "mg/L as CaCO3"]]).readings[0]!;
    const inDegrees = testOf("strip", [["hardness", "14", "°dH"]]).readings[0]!;
    const { relative, absolute } = readingUncertainty(inMg, "strip");
    expect(readingUncertainty(inDegrees, "strip")).toMatchObject({ relative, absolute });
  });

  it("names only assumptions in the tests it advises that a completion can make", () => {
    const known = new Set([
      ...draw(testOf("strip", [["hardness", 250, "mg/L as CaCO3"]])).keys,
      ...draw(testOf("meter", [["conductivity", 900, "µS/cm"]])).keys,
      ...draw(testOf("laboratory", [...BORE.filter(([name]) => name !== "iron"), ["iron", 0.4, "mg/L"]]))
        .keys,
      ...draw(
        testOf("laboratory", [
          ["calcium", 92, "mg/L"],
          ["magnesium", 31, "mg/L"],
          ["sodium", 60, "mg/L"],
        ]),
      ).keys,
    ]);
    const unmade = CHEAP_TESTS.flatMap((t) => t.settles).filter((name) => !known.has(`assumed:${name}`));
    expect(unmade).toEqual([]);
  });
});

describe("draws of a water", () => {
  it("are the same for the same seed and others for another", () => {
    const calcium = (seed: string): readonly (number | undefined)[] =>
      draw(testOf("laboratory", BORE), (key) => latinColumn(COUNT, `${seed}|${key}`)).waters.map(
        (w) => w.totals_molPerL["Ca+2"],
      );
    expect(calcium("1")).toEqual(calcium("1"));
    expect(calcium("1")).not.toEqual(calcium("2"));
  });

  it("spread as the method says around the central water", () => {
    const test = testOf("laboratory", BORE);
    const central = centralOf(test).totals_molPerL["Ca+2"]!;
    const { low, high } = band(draw(test).waters, "Ca+2");
    // 5 % standard between laboratories: 5th and 95th percentile at ∓1.645 of it.
    expect(low / central).toBeGreaterThan(0.9);
    expect(low / central).toBeLessThan(0.94);
    expect(high / central).toBeGreaterThan(1.07);
    expect(high / central).toBeLessThan(1.11);
  });

  it("spread more with a strip than with a laboratory, and more without a calcium reading than with one", () => {
    const width = (test: WaterTest): number => {
      const { low, high } = band(draw(test).waters, "Ca+2");
      return high / low;
    };
    const laboratory = width(testOf("laboratory", BORE));
    const strip = width(testOf("strip", BORE));
    const shared = width(testOf("laboratory", [["hardness", 357, "mg/L as CaCO3"], ...BORE.slice(2)]));
    expect(strip).toBeGreaterThan(1.5 * laboratory);
    expect(shared).toBeGreaterThan(1.5 * laboratory);
  });

  it("take a reading below its limit evenly from nothing to the limit, and a step anywhere in the step", () => {
    const test = testOf("strip", [
      ["hardness", "250-425", "mg/L as CaCO3"],
      ["iron", "<0.05", "mg/L"],
    ]);
    const { waters } = draw(test);
    const limit = 0.05 / 55.845 / 1000;
    const iron = band(waters, "Fe+3");
    expect(iron.low / limit).toBeCloseTo(0.05, 1);
    expect(iron.high / limit).toBeCloseTo(0.95, 1);
    for (const water of waters) {
      expect(water.hardness_molPerL * 100090).toBeGreaterThan(249);
      expect(water.hardness_molPerL * 100090).toBeLessThan(426);
    }
  });

  it("come back to the central water at the median of every plain input", () => {
    const test = testOf(
      "laboratory",
      BORE.filter(([name]) => name !== "iron"),
    );
    const middle = draw(test, () => new Float64Array(COUNT).fill(0.5)).waters[0]!;
    const central = centralOf(test);
    for (const [component, total] of Object.entries(central.totals_molPerL)) {
      expect(middle.totals_molPerL[component]! / total).toBeCloseTo(1, 9);
    }
  });

  it("stay electrically possible and complete nearly always", () => {
    const { waters, replaced } = draw(testOf("strip", BORE));
    expect(replaced).toBeLessThan(0.05 * COUNT);
    for (const water of waters) {
      for (const total of Object.values(water.totals_molPerL)) expect(total).toBeGreaterThan(0);
    }
  });
});
