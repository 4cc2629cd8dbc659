import { describe, expect, test } from "vitest";
import { readWaterTest } from "./read-water-test.ts";

const GOOD = {
  source: "Top bore",
  sampled: "2026-03-02",
  method: "laboratory",
  readings: [
    { parameter: "calcium", value: 92, unit: "mg/L" },
    { parameter: "magnesium", value: "31", unit: "mg/L" },
    { parameter: "alkalinity", value: 240, unit: "mg/L as CaCO3" },
    { parameter: "iron", value: "<0.05", unit: "mg/L" },
    { parameter: "pH", value: 7.6 },
  ],
};

function issuesOf(document: unknown): readonly (readonly [code: string, path: string, severity: string])[] {
  return readWaterTest(document, "water").issues.map(({ code, path, severity }) => [code, path, severity]);
}

describe("readWaterTest", () => {
  test("reads a test into internal units and keeps what was typed", () => {
    const read = readWaterTest(GOOD, "water");
    if (!read.ok) throw new Error(JSON.stringify(read.issues));
    expect(read.value).toMatchObject({ source: "Top bore", sampled: "2026-03-02", method: "laboratory" });
    const [calcium, , alkalinity, iron, pH] = read.value.readings;
    expect(calcium?.measured).toEqual({
      kind: "value",
      value: expect.closeTo(92 / 40.078 / 1000, 9) as number,
    });
    expect(alkalinity?.measured).toEqual({
      kind: "value",
      value: expect.closeTo(240 / 50.043 / 1000, 9) as number,
    });
    expect(iron).toMatchObject({ typed: { value: "<0.05", unit: "mg/L" }, path: "water.readings[3]" });
    expect(iron?.measured.kind).toBe("below");
    expect(pH?.measured).toEqual({ kind: "value", value: 7.6 });
    expect(read.issues).toEqual([]);
  });

  test("all problems at once, each with its place", () => {
    const bad = {
      sauce: "x",
      sampled: "02.03.2026",
      method: "labratory",
      readings: [
        { parameter: "calcuim", value: 92, unit: "mg/L" },
        { parameter: "magnesium", value: "1.250", unit: "mg/L" },
        { parameter: "pH", value: 15 },
        { parameter: "sodium", value: -3, unit: "mg/L" },
        { parameter: "iron", value: "ND", unit: "mg/L" },
        { parameter: "hardness", value: 3, unit: "furlongs" },
        { parameter: "chloride", vlaue: 3, unit: "mg/L" },
        "not a block",
      ],
    };
    expect(issuesOf(bad)).toEqual([
      ["key-unknown", "water.sauce", "error"],
      ["source-missing", "water.source", "note"],
      ["date-unreadable", "water.sampled", "error"],
      ["method-unknown", "water.method", "error"],
      ["parameter-unknown", "water.readings[0].parameter", "error"],
      ["number-ambiguous", "water.readings[1].value", "error"],
      ["reading-impossible", "water.readings[2].value", "error"],
      ["reading-negative", "water.readings[3].value", "error"],
      ["limit-missing", "water.readings[4].value", "error"],
      ["unit-unknown", "water.readings[5].unit", "error"],
      ["key-unknown", "water.readings[6].vlaue", "error"],
      ["block-expected", "water.readings[7]", "error"],
    ]);
  });

  test("suggestions: did you mean", () => {
    const hints = readWaterTest(
      {
        source: "a",
        method: "strip",
        readngs: [],
        readings: [{ parameter: "calcuim", value: 1, unit: "mg/L" }],
      },
      "water",
    ).issues.map(({ hint }) => hint);
    expect(hints).toContain("Did you mean readings?");
    expect(hints).toContain("Did you mean calcium?");
  });

  test("a blank reading is not measured, not zero", () => {
    const read = readWaterTest(
      { ...GOOD, readings: [{ parameter: "calcium", value: "", unit: "mg/L" }] },
      "water",
    );
    expect(read.ok && read.value.readings[0]?.measured).toEqual({ kind: "not measured" });
  });

  test("a unit typed behind the value is understood, and a second one must agree", () => {
    const one = readWaterTest({ ...GOOD, readings: [{ parameter: "calcium", value: "92 mg/L" }] }, "water");
    expect(one.ok && one.value.readings[0]?.typed).toEqual({ value: "92 mg/L", unit: "mg/L" });
    expect(one.ok && one.value.readings[0]?.measured.kind).toBe("value");
    const two = { ...GOOD, readings: [{ parameter: "calcium", value: "92 mg/L", unit: "mmol/L" }] };
    expect(issuesOf(two)).toEqual([["unit-given-twice", "water.readings[0].value", "error"]]);
    const same = { ...GOOD, readings: [{ parameter: "calcium", value: "<5 ppm", unit: "mg/L" }] };
    expect(issuesOf(same)).toEqual([]);
  });

  test("what is left out is said, not guessed in silence", () => {
    expect(issuesOf({ readings: [{ parameter: "pH", value: 7 }] })).toEqual([
      ["source-missing", "water.source", "note"],
      ["method-missing", "water.method", "note"],
    ]);
    expect(issuesOf({ source: "a", method: "meter" })).toEqual([
      ["readings-missing", "water.readings", "error"],
    ]);
    expect(issuesOf({ source: "a", method: "meter", readings: [] })).toEqual([
      ["readings-missing", "water.readings", "error"],
    ]);
    expect(issuesOf({ source: "a", method: "meter", readings: 7 })).toEqual([
      ["list-expected", "water.readings", "error"],
    ]);
  });

  test.each([null, undefined, 7, "water", []])("%j is no water block", (document) => {
    expect(issuesOf(document)).toEqual([["block-expected", "water", "error"]]);
  });

  test.each([
    ["2026-02-29", false],
    ["2024-02-29", true],
    ["2026-13-01", false],
    ["2026-03-02T10:00", true],
    ["March", false],
  ])("date %s: %s", (sampled, good) => {
    expect(readWaterTest({ ...GOOD, sampled }, "water").ok).toBe(good);
  });

  test("a negative alkalinity is that of an acid lake and is read", () => {
    const acid = { ...GOOD, readings: [{ parameter: "alkalinity", value: -40, unit: "µeq/L" }] };
    expect(issuesOf(acid)).toEqual([]);
  });

  test("the report's decimal mark settles an ambiguous number", () => {
    const block = { ...GOOD, readings: [{ parameter: "calcium", value: "1.250", unit: "mg/L" }] };
    const read = readWaterTest(block, "water", { decimal: "." });
    expect(read.ok && read.value.readings[0]?.measured).toEqual({
      kind: "value",
      value: expect.closeTo(1.25 / 40.078 / 1000, 9) as number,
    });
  });
});
