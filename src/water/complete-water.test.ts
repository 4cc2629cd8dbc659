import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import type { Read } from "../units/index.ts";
import { alkalinity_mgPerL_asCaCO3, hardness_mgPerL_asCaCO3 } from "./hardness.ts";
import { completeWater } from "./complete-water.ts";
import { readWaterTest } from "./read-water-test.ts";
import type { Water } from "./types.ts";

type Row = readonly [parameter: string, value: number | string, unit?: string];

function complete(rows: readonly Row[], temperature_C: number | null = 12): Read<Water> {
  const readings = rows.map(([parameter, value, unit]) => ({
    parameter,
    value,
    ...(unit === undefined ? {} : { unit }),
  }));
  const test = readWaterTest({ source: "bore", method: "laboratory", readings }, "water");
  if (!test.ok) throw new Error(JSON.stringify(test.issues));
  return completeWater(test.value, { thermo: builtInThermo(), temperature_C });
}

function water(rows: readonly Row[], temperature_C: number | null = 12): Water {
  const read = complete(rows, temperature_C);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

const issue = (read: Read<Water>, code: string) => read.issues.find((found) => found.code === code);
const assumption = (from: Water, code: string, about?: string) =>
  from.assumptions.find((found) => found.code === code && (about === undefined || found.about === about));

const CACO3 = "mg/L as CaCO3";

describe("a strip: hardness and pH alone", () => {
  const strip = water([
    ["hardness", "250-425", CACO3],
    ["pH", 7.2],
  ]);

  test("the middle of the step is taken, with the step as range", () => {
    expect(hardness_mgPerL_asCaCO3(strip)).toBeCloseTo(337.5, 6);
    const step = assumption(strip, "within-step");
    expect([step?.low, step?.high].map((x) => (x ?? 0) * 100_086)).toEqual([
      expect.closeTo(250, 6) as number,
      expect.closeTo(425, 6) as number,
    ]);
  });

  test("calcium and magnesium share it, and everything else is assumed aloud", () => {
    expect(strip.totals_molPerL["Ca+2"]! / strip.hardness_molPerL).toBeCloseTo(0.6, 9);
    const codes = strip.assumptions.map(({ code, about }) => `${code} ${about}`);
    expect(codes).toEqual(
      expect.arrayContaining([
        "hardness-shared Ca+2",
        "hardness-shared Mg+2",
        "alkalinity-from-hardness alkalinity",
        "iron-not-measured Fe+3",
        "sodium-from-hardness Na+",
        "anion-from-balance Cl-",
        "anion-from-balance SO4-2",
      ]),
    );
    for (const { low, value, high, code } of strip.assumptions) {
      expect(low <= value && value <= high, code).toBe(true);
    }
  });

  test("nothing was balanced that was not measured", () => {
    expect(strip.chargeBalance_percent).toBeNull();
  });

  test("the top step means at least that much", () => {
    const top = water([["hardness", ">425", CACO3]]);
    const atLeast = assumption(top, "at-least");
    expect(hardness_mgPerL_asCaCO3(top)).toBeCloseTo(425, 6);
    expect((atLeast?.high ?? 0) / (atLeast?.low ?? 1)).toBeCloseTo(2, 9);
    expect(assumption(top, "ph-assumed")).toMatchObject({ value: 7.8, low: 6.64, high: 9.1 });
  });
});

describe("readings brought together", () => {
  test("the one of calcium and magnesium that is missing follows from the hardness", () => {
    const found = water([
      ["hardness", 300, CACO3],
      ["calcium", 80, "mg/L"],
    ]);
    expect(found.totals_molPerL["Mg+2"]).toBeCloseTo(300 / 100_086 - 80 / 40_078, 9);
    expect(assumption(found, "hardness-shared")).toBeUndefined();
  });

  test("alkalinity counts before hydrogen carbonate, which counts before an estimate", () => {
    const both = water([
      ["hardness", 300, CACO3],
      ["alkalinity", 200, CACO3],
      ["bicarbonate", 244, "mg/L"],
    ]);
    expect(alkalinity_mgPerL_asCaCO3(both)).toBeCloseTo(200, 6);
    const forms = water([
      ["hardness", 300, CACO3],
      ["bicarbonate", 244, "mg/L"],
      ["carbonate", 6, "mg/L"],
      ["pH", 8.4],
    ]);
    expect(forms.alkalinity_molPerL).toBeCloseTo(244 / 61_016 + 12 / 60_008, 6);
  });

  test("nitrate as N and as NO3 agree and are counted once", () => {
    const read = complete([
      ["hardness", 300, CACO3],
      ["nitrate", 1.67, "mg/L as N"],
      ["nitrate", 7.38, "mg/L as NO3"],
    ]);
    expect(issue(read, "readings-disagree")).toBeUndefined();
    expect(read.ok && read.value.totals_molPerL["NO3-"]).toBeCloseTo(1.67 / 14_007, 9);
  });

  test("nitrate as N typed as NO3 is noticed", () => {
    const read = complete([
      ["hardness", 300, CACO3],
      ["nitrate", 1.67, "mg/L as N"],
      ["nitrate", 1.67, "mg/L as NO3"],
    ]);
    expect(issue(read, "readings-disagree")?.hint).toBe("Nitrate (NO3) read as nitrogen (N)?");
  });

  test("alkalinity from the ion balance when all major ions are known", () => {
    const found = water([
      ["calcium", 40, "mg/L"],
      ["magnesium", 10, "mg/L"],
      ["sodium", 20, "mg/L"],
      ["potassium", 3, "mg/L"],
      ["chloride", 30, "mg/L"],
      ["sulfate", 50, "mg/L"],
      ["pH", 7.8],
    ]);
    const meq = 80 / 40.078 + 20 / 24.305 + 20 / 22.99 + 3 / 39.098 - 30 / 35.45 - 100 / 96.056;
    expect(found.alkalinity_molPerL * 1000).toBeCloseTo(meq, 6);
    expect(assumption(found, "alkalinity-from-balance")).toBeDefined();
  });

  test("sodium and its anions follow from a measured conductivity", () => {
    const rows: Row[] = [
      ["hardness", 300, CACO3],
      ["alkalinity", 280, CACO3],
      ["pH", 7.5],
    ];
    const low = water([...rows, ["conductivity", 700, "µS/cm"]]);
    const high = water([...rows, ["conductivity", 2.1, "dS/m"]]);
    expect(assumption(low, "sodium-from-conductivity")).toBeDefined();
    expect(high.totals_molPerL["Na+"]!).toBeGreaterThan(3 * low.totals_molPerL["Na+"]!);
    expect(high.conductivity_uSPerCm).toBeCloseTo(2100, 9);
  });

  test("dissolved solids stand in for a conductivity", () => {
    const found = water([
      ["hardness", 300, CACO3],
      ["dissolved solids", 650, "mg/L"],
    ]);
    expect(found.conductivity_uSPerCm).toBeCloseTo(1000, 9);
    expect(assumption(found, "conductivity-from-dissolved-solids")).toBeDefined();
  });

  test("a reading below its limit is half of it, from nothing to all of it", () => {
    const found = water([
      ["hardness", 300, CACO3],
      ["iron", "<0.05", "mg/L"],
    ]);
    expect(found.totals_molPerL["Fe+3"]).toBeCloseTo(0.025 / 55_845, 12);
    expect(assumption(found, "below-limit", "iron")).toMatchObject({ low: 0 });
  });

  test("iron whose form is not said is taken as dissolved iron(III), aloud", () => {
    const found = water([
      ["hardness", 300, CACO3],
      ["iron", 4.2, "mg/L"],
    ]);
    expect(found.totals_molPerL["Fe+3"]).toBeCloseTo(4.2 / 55_845, 12);
    expect(assumption(found, "iron-form", "Fe+3")?.low).toBe(0);
    expect(found.issues.map(({ code }) => code)).toContain("iron-form-assumed");
    const forms = water([
      ["hardness", 300, CACO3],
      ["iron", 4.2, "mg/L"],
      ["ferrous iron", 4, "mg/L"],
    ]);
    expect(forms.totals_molPerL["Fe+2"]).toBeCloseTo(4 / 55_845, 12);
    expect(forms.totals_molPerL["Fe+3"]).toBeCloseTo(0.2 / 55_845, 9);
  });

  test("the temperature asked for counts before the reading, and both before an assumption", () => {
    const rows: Row[] = [
      ["hardness", 300, CACO3],
      ["temperature", 18, "°C"],
    ];
    expect(water(rows, 12).temperature_C).toBe(12);
    expect(water(rows, null).temperature_C).toBe(18);
    const none = water([["hardness", 300, CACO3]], null);
    expect(assumption(none, "temperature-assumed")).toMatchObject({ value: none.temperature_C });
  });
});
