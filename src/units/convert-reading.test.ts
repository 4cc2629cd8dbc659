import { describe, expect, test } from "vitest";
import { convertReading, fromInternal, readingScale } from "./convert-reading.ts";
import { PARAMETERS, PARAMETER_RULES, parameterNamed } from "./parameters.ts";
import type { Parameter } from "./parameters.ts";

function internal(parameter: Parameter, value: number, unit: string): number {
  const read = convertReading(parameter, { kind: "value", value }, unit, "u");
  if (!read.ok || read.value.kind !== "value") throw new Error(JSON.stringify(read.issues));
  return read.value.value;
}

function codes(parameter: Parameter, unit: string | undefined): readonly string[] {
  return readingScale(parameter, unit, "u").issues.map(({ code }) => code);
}

describe("spellings of one unit", () => {
  test.each<[Parameter, readonly string[]]>([
    [
      "calcium",
      [
        "mg/L",
        "mg/l",
        "MG/L",
        "ppm",
        "mg L-1",
        "mg L⁻¹",
        "mg per litre",
        "g/m3",
        "mg / L",
        "mg l^-1",
        "mg·L-1",
      ],
    ],
    ["calcium", ["meq/L", "me/L", "mval/l", "meq l-1", "eq/m3"]],
    ["calcium", ["µg/L", "μg/l", "ug/L", "ppb", "mcg/L"]],
    [
      "hardness",
      [
        "mg/L as CaCO3",
        "mg/L CaCO₃",
        "ppm CaCO3",
        "mg/L (as CaCO3)",
        "mg CaCO3/L",
        "mg/l als CaCO3",
        "mg/L en CaCO3",
        "mg/L (como CaCO3)",
      ],
    ],
    ["hardness", ["°dH", "dGH", "dH", "°DH", "German degrees", "deg dH"]],
    ["hardness", ["°fH", "fH", "°f", "French degrees"]],
    ["hardness", ["°e", "Clark", "°Clark", "English degrees", "grains per imperial gallon", "gr/imp gal"]],
    ["hardness", ["gpg", "gr/gal", "grains per gallon", "grains/US gal"]],
    ["nitrate", ["mg/L as N", "mg N/L", "mgN/L", "mg/L NO3-N", "ppm as N", "mg/L (as N)", "mg(N)/L"]],
    ["sodium", ["meq/L", "mval/l", "mmol(+)/L", "mmolc/L", "epm"]],
    ["alkalinity", ["mg/L as HCO3", "mg/L HCO3-", "ppm (as HCO3)"]],
    ["conductivity", ["µS/cm", "uS/cm", "μS cm-1", "µmho/cm", "umhos/cm", "µS/cm at 25 °C", "µS/cm @ 25°C"]],
    ["conductivity", ["dS/m", "mS/cm", "mmho/cm"]],
    ["temperature", ["°C", "C", "℃", "deg C"]],
    ["turbidity", ["NTU", "FNU", "ntu"]],
  ])("%s: %j", (parameter, spellings) => {
    const values = spellings.map((unit) => internal(parameter, 7, unit));
    for (const value of values) expect(value).toBeCloseTo(values[0]!, 12);
  });
});

describe("meaning of a unit", () => {
  test("basis is part of the unit", () => {
    expect(internal("nitrate", 1, "mg/L as N") / internal("nitrate", 1, "mg/L as NO3")).toBeCloseTo(
      4.4267,
      3,
    );
    expect(internal("alkalinity", 61.016, "mg/L as HCO3")).toBeCloseTo(0.001, 9);
    expect(internal("calcium", 100.086, "mg/L as CaCO3")).toBeCloseTo(0.001, 9);
  });

  test("equivalents go by the ion's charge, of alkalinity one for one", () => {
    expect(internal("calcium", 1, "meq/L")).toBeCloseTo(0.0005, 12);
    expect(internal("sodium", 1, "meq/L")).toBeCloseTo(0.001, 12);
    expect(internal("alkalinity", 1, "mmol/L")).toBeCloseTo(0.001, 12);
    expect(internal("alkalinity", 1, "mmol/L as CaCO3")).toBeCloseTo(0.002, 12);
  });

  test("°F is Fahrenheit for a temperature and French for a hardness", () => {
    expect(internal("temperature", 77, "°F")).toBeCloseTo(25, 9);
    expect(internal("hardness", 1, "°f")).toBeCloseTo(0.01 / 100.086, 9);
  });

  test("a limit and a range are converted like a value", () => {
    const read = convertReading("iron", { kind: "below", limit: 55.845 }, "mg/L", "u");
    expect(read.ok && read.value).toEqual({ kind: "below", limit: expect.closeTo(0.001, 12) as number });
  });
});

describe("units that do not fit", () => {
  test.each<[Parameter, string | undefined, string]>([
    ["calcium", undefined, "unit-missing"],
    ["calcium", "mgl/", "unit-unknown"],
    ["calcium", "°C", "unit-wrong-kind"],
    ["conductivity", "ppm", "unit-wrong-kind"],
    ["dissolved solids", "µS/cm", "unit-wrong-kind"],
    ["pH", "mg/L", "unit-wrong-kind"],
    ["turbidity", "FAU", "unit-not-comparable"],
    ["turbidity", "JTU", "unit-not-comparable"],
    ["iron", "meq/L", "unit-needs-charge"],
    ["silica", "meq/L", "unit-needs-charge"],
    ["calcium", "mg/L as N", "unit-basis-unknown"],
  ])("%s in %s: %s", (parameter, unit, code) => {
    const read = readingScale(parameter, unit, "u");
    expect(read.ok).toBe(false);
    expect(read.issues[0]).toMatchObject({ code, severity: "error" });
    expect(read.issues[0]?.expected).toBeTruthy();
  });

  test("the likeliest slip is named", () => {
    const hint = (parameter: Parameter, unit: string): string | undefined =>
      readingScale(parameter, unit, "u").issues[0]?.hint;
    expect(hint("calcium", "mgl/")).toBe("Did you mean mg/L?");
    expect(hint("conductivity", "ppm")).toMatch(/dissolved solids/);
  });

  test("a bare mass is taken on the usual basis, with a word where two are in use", () => {
    expect(codes("calcium", "mg/L")).toEqual([]);
    expect(codes("hardness", "ppm")).toEqual(["unit-basis-assumed"]);
    expect(readingScale("alkalinity", "mg/L", "u").issues[0]?.severity).toBe("warning");
    expect(readingScale("nitrate", "mg/L", "u").issues[0]?.hint).toMatch(/"as N"/);
  });
});

test("every parameter understands each of the units it offers, and shows a value in it", () => {
  for (const parameter of PARAMETERS) {
    for (const unit of PARAMETER_RULES[parameter].units) {
      expect(readingScale(parameter, unit, "u").ok, `${parameter} in ${unit}`).toBe(true);
      expect(fromInternal(parameter, 1, unit).ok).toBe(true);
    }
  }
});

test("names in use lead to the parameter, and unknown ones to none", () => {
  expect(parameterNamed("Ca")).toBe("calcium");
  expect(parameterNamed("PH")).toBe("pH");
  expect(parameterNamed("Total Hardness")).toBe("hardness");
  expect(parameterNamed("sulphate")).toBe("sulfate");
  expect(parameterNamed("toString")).toBeNull();
  expect(parameterNamed("carbonate hardness")).toBeNull();
});
