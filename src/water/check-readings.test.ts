import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import type { Read } from "../units/index.ts";
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

const errors = (read: Read<Water>): readonly string[] =>
  read.issues.filter(({ severity }) => severity === "error").map(({ code }) => code);
const issue = (read: Read<Water>, code: string) => read.issues.find((found) => found.code === code);
const assumption = (from: Water, code: string, about?: string) =>
  from.assumptions.find((found) => found.code === code && (about === undefined || found.about === about));

const CACO3 = "mg/L as CaCO3";

describe("sets that contradict themselves", () => {
  test("calcium given as CaCO3 but read as calcium", () => {
    const read = complete([
      ["hardness", 363, CACO3],
      ["calcium", 236, "mg/L"],
      ["magnesium", 31, "mg/L"],
    ]);
    expect(errors(read)).toEqual(["hardness-against-metals"]);
    expect(issue(read, "hardness-against-metals")?.hint).toBe(
      "Calcium given as CaCO3 but read as mg/L of calcium?",
    );
  });

  test("French degrees read as German ones", () => {
    const read = complete([
      ["hardness", 20, "°dH"],
      ["calcium", 55, "mg/L"],
      ["magnesium", 15.2, "mg/L"],
    ]);
    expect(issue(read, "hardness-against-metals")?.hint).toBe("French degrees read as German ones?");
  });

  test("mmol/L typed as mg/L", () => {
    const read = complete([
      ["hardness", 353, CACO3],
      ["calcium", 2.3, "mg/L"],
      ["magnesium", 30, "mg/L"],
    ]);
    expect(issue(read, "hardness-against-metals")?.hint).toBe("mmol/L typed as mg/L?");
  });

  test("a small difference between hardness and its metals is a warning, a tiny one nothing", () => {
    const at = (hardness: number): Read<Water> =>
      complete([
        ["hardness", hardness, CACO3],
        ["calcium", 80, "mg/L"],
        ["magnesium", 30, "mg/L"],
      ]);
    expect(issue(at(330), "hardness-against-metals")).toBeUndefined();
    expect(issue(at(380), "hardness-against-metals")?.severity).toBe("warning");
    expect(issue(at(600), "hardness-against-metals")?.severity).toBe("error");
  });

  test("the hardness is less than the calcium in it", () => {
    const read = complete([
      ["hardness", 100, CACO3],
      ["calcium", 100, "mg/L"],
    ]);
    expect(errors(read)).toEqual(["hardness-below-metal"]);
    expect(issue(read, "hardness-below-metal")?.hint).toBe(
      "Calcium given as CaCO3 but read as mg/L of calcium?",
    );
  });

  test("alkalinity as CaCO3 given as hydrogen carbonate", () => {
    const read = complete([
      ["hardness", 363, CACO3],
      ["alkalinity", 240, CACO3],
      ["bicarbonate", 240, "mg/L"],
    ]);
    expect(issue(read, "alkalinity-against-hydrogen-carbonate")).toMatchObject({
      severity: "warning",
      hint: "Alkalinity as CaCO3 given as hydrogen carbonate (HCO3)?",
    });
  });

  test.each<readonly [string, string, readonly Row[]]>([
    [
      "pH 11.6 with hydrogen carbonate",
      "ph-against-hydrogen-carbonate",
      [
        ["bicarbonate", 408.8, "mg/L"],
        ["pH", 11.6],
      ],
    ],
    [
      "pH 4.2 with alkalinity",
      "ph-below-alkalinity",
      [
        ["alkalinity", 50, CACO3],
        ["pH", 4.2],
      ],
    ],
    [
      "pH 4.8 with much alkalinity",
      "ph-below-alkalinity",
      [
        ["alkalinity", 400, CACO3],
        ["pH", 4.8],
      ],
    ],
    [
      "pH 11.5 with little alkalinity",
      "ph-above-alkalinity",
      [
        ["alkalinity", 30, CACO3],
        ["pH", 11.5],
      ],
    ],
    [
      "phenolphthalein above total alkalinity",
      "alkalinity-forms-impossible",
      [
        ["alkalinity", 50, CACO3],
        ["phenolphthalein alkalinity", 80, CACO3],
        ["pH", 8.6],
      ],
    ],
  ])("%s", (_name, code, rows) => {
    expect(errors(complete([["hardness", 100, CACO3], ...rows]))).toContain(code);
  });

  test("mS/cm typed as µS/cm", () => {
    const read = complete([
      ["hardness", 300, CACO3],
      ["conductivity", 0.85, "µS/cm"],
    ]);
    expect(errors(read)).toEqual(["conductivity-against-ions"]);
    expect(issue(read, "conductivity-against-ions")?.hint).toBe("mS/cm typed as µS/cm?");
  });

  test("nothing tells the hardness", () => {
    expect(errors(complete([["pH", 7]]))).toEqual(["hardness-unknown"]);
  });
});

describe("checks of a full analysis", () => {
  const full: readonly Row[] = [
    ["calcium", 80, "mg/L"],
    ["magnesium", 30, "mg/L"],
    ["sodium", 60, "mg/L"],
    ["potassium", 5, "mg/L"],
    ["bicarbonate", 300, "mg/L"],
    ["sulfate", 120, "mg/L"],
    ["chloride", 60, "mg/L"],
    ["pH", 7.6],
  ];
  const change = (parameter: string, row: Row): readonly Row[] =>
    full.map((r) => (r[0] === parameter ? row : r));

  test("a balanced analysis passes", () => {
    const read = complete([...full, ["conductivity", 850, "µS/cm"]]);
    expect(read.ok && read.value.chargeBalance_percent).toBeCloseTo(0.4975, 2);
    expect(issue(read, "charge-balance-off")).toBeUndefined();
    expect(issue(read, "conductivity-against-ions")).toBeUndefined();
  });

  test("an unbalanced one is a warning that names the slip which would explain it", () => {
    const read = complete(change("sulfate", ["sulfate", 40.05, "mg/L"]));
    expect(issue(read, "charge-balance-off")?.severity).toBe("warning");
    expect(issue(read, "charge-balance-off")?.hint).toMatch(/sulfate: Sulfur \(S\) read as sulfate/);
  });

  test("what was added to close the balance is said with its amount", () => {
    const found = water(change("chloride", ["chloride", 50, "mg/L"]));
    const closed = assumption(found, "balance-closed", "Cl-");
    expect(found.totals_molPerL["Cl-"]).toBeCloseTo(50 / 35_450 + (closed?.value ?? 0), 12);
    expect(closed?.value).toBeGreaterThan(2e-4);
  });

  test("a conductivity that does not fit the ions is a warning", () => {
    const read = complete([...full, ["conductivity", 1500, "µS/cm"]]);
    expect(issue(read, "conductivity-against-ions")?.severity).toBe("warning");
  });

  test("a value far outside what waters have is a warning with the likeliest slip", () => {
    const read = complete([...full, ["iron", 300, "mg/L"]]);
    expect(issue(read, "reading-unusual")).toMatchObject({
      severity: "warning",
      received: "300 mg/L",
      hint: "µg/L typed as mg/L, or a decimal mark lost?",
    });
    expect(issue(complete(change("pH", ["pH", 10.6])), "reading-unusual")).toBeDefined();
  });
});
