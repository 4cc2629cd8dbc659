import { describe, expect, test } from "vitest";
import { readQuantity } from "./read-quantity.ts";
import type { Dimension } from "./read-quantity.ts";

function value(text: unknown, dimension: Dimension): unknown {
  const read = readQuantity(text, dimension, "q");
  if (!read.ok) throw new Error(`${String(text)}: ${JSON.stringify(read.issues)}`);
  return read.value;
}

function code(text: unknown, dimension: Dimension): string {
  const read = readQuantity(text, dimension, "q");
  return read.ok ? "read" : (read.issues[0]?.code ?? "");
}

describe("quantities in internal units", () => {
  test.each<[string, Dimension, number]>([
    ["200 L/ha", "volume per area", 200],
    ["200 litres per hectare", "volume per area", 200],
    ["200 L ha-1", "volume per area", 200],
    ["10 gal/ac", "volume per area", (10 * 3.785411784) / 0.40468564224],
    ["10 US gal/ac", "volume per area", (10 * 3.785411784) / 0.40468564224],
    ["10 gpa", "volume per area", (10 * 3.785411784) / 0.40468564224],
    ["10 imp gal/ac", "volume per area", (10 * 4.54609) / 0.40468564224],
    ["3 m3", "volume", 3000],
    ["800 US gal", "volume", 800 * 3.785411784],
    ["100 ac", "area", 40.468564224],
    ["2500 m2", "area", 0.25],
    ["−2 °C", "temperature", -2],
    ["54 °F", "temperature", (22 * 5) / 9],
    ["90 min", "time", 1.5],
    ["2 d", "time", 48],
    ["2 L/ha", "liquid rate", 2],
    ["750 mL/ha", "liquid rate", 0.75],
    ["32 fl oz/ac", "liquid rate", (32 * 0.0295735295625) / 0.40468564224],
    ["1 qt/ac", "liquid rate", 0.946352946 / 0.40468564224],
    ["1 pt/ac", "liquid rate", 0.473176473 / 0.40468564224],
    ["100 g/ha", "solid rate", 0.1],
    ["1 lb/ac", "solid rate", 0.45359237 / 0.40468564224],
    ["2 oz/ac", "solid rate", (2 * 0.028349523125) / 0.40468564224],
    ["95 %", "share", 0.95],
    ["0,95", "share", 0.95],
  ])("%s as %s", (text, dimension, expected) => {
    expect(value(text, dimension)).toBeCloseTo(expected, 9);
  });

  test("a share may be a bare number", () => {
    expect(value(0.95, "share")).toBe(0.95);
  });

  test.each<[string, unknown]>([
    ["360 g/L", { value: 360, per: "L", basis: null }],
    ["360 g/L ae", { value: 360, per: "L", basis: "acid equivalent" }],
    ["480 g/L salt", { value: 480, per: "L", basis: "salt" }],
    ["750 g/kg a.i.", { value: 750, per: "kg", basis: "active" }],
    ["75 % w/w", { value: 750, per: "kg", basis: null }],
    ["36 % w/v", { value: 360, per: "L", basis: null }],
    ["4 lb ae/US gal", { value: expect.closeTo(479.306, 2) as number, per: "L", basis: "acid equivalent" }],
    ["4 lb/gal a.e.", { value: expect.closeTo(479.306, 2) as number, per: "L", basis: "acid equivalent" }],
  ])("content %s", (text, expected) => {
    expect(value(text, "content")).toEqual(expected);
  });

  test.each<[string, unknown]>([
    ["20 g/L", { value: 20, unit: "g/L" }],
    ["2 kg/100 L", { value: 20, unit: "g/L" }],
    ["2 % w/v", { value: 20, unit: "g/L" }],
    ["0.25 % v/v", { value: 0.0025, unit: "L/L" }],
    ["0.5 L/100 L", { value: 0.005, unit: "L/L" }],
    ["17 lb/100 US gal", { value: expect.closeTo(20.3705, 3) as number, unit: "g/L" }],
    ["0 g/L", { value: 0, unit: "g/L" }],
  ])("dose %s", (text, expected) => {
    expect(value(text, "dose")).toEqual(expected);
  });

  test.each<[string, unknown]>([
    ["0.55 /kg", { value: 0.55, per: "kg" }],
    ["1.20/L", { value: 1.2, per: "L" }],
    ["12 /20 kg", { value: 0.6, per: "kg" }],
    ["€0,55 per kg", { value: 0.55, per: "kg" }],
    ["550 USD/t", { value: 0.55, per: "kg" }],
  ])("price %s", (text, expected) => {
    const found = value(text, "price") as { value: number; per: string };
    expect(found.value).toBeCloseTo((expected as { value: number }).value, 12);
    expect(found.per).toBe((expected as { per: string }).per);
  });

  test("a rate says whether the product is liquid or dry", () => {
    expect(value("2 L/ha", "rate")).toEqual({ value: 2, per: "L" });
    expect(value("0.1 kg/ha", "rate")).toEqual({ value: 0.1, per: "kg" });
  });
});

describe("quantities that cannot be read", () => {
  test.each<[unknown, Dimension, string]>([
    [null, "volume", "quantity-missing"],
    ["", "volume", "quantity-missing"],
    [200, "volume per area", "unit-missing"],
    ["200", "volume per area", "unit-missing"],
    ["200 L", "volume per area", "unit-wrong-kind"],
    ["200 furlongs", "volume", "unit-unknown"],
    ["1.250 L", "volume", "number-ambiguous"],
    ["20-30 L/ha", "volume per area", "range-not-allowed"],
    ["<30 L/ha", "volume per area", "range-not-allowed"],
    ["about 30 L", "volume", "quantity-unreadable"],
    ["0 ha", "area", "number-not-positive"],
    ["-3 L", "volume", "number-negative"],
    ["75 %", "content", "unit-ambiguous"],
    ["2 %", "dose", "unit-ambiguous"],
    ["32 oz/ac", "liquid rate", "unit-ambiguous"],
    ["36000 g/L", "content", "number-too-large"],
    ["0.55", "price", "unit-missing"],
    ["95", "share", "share-out-of-range"],
    [true, "volume", "number-expected"],
    [NaN, "volume", "number-unreadable"],
  ])("%j as %s: %s", (text, dimension, expected) => {
    expect(code(text, dimension)).toBe(expected);
  });

  test("the likeliest slip is named, and what was typed is kept", () => {
    const issue = (text: string, dimension: Dimension) =>
      readQuantity(text, dimension, "spray.volume").issues[0];
    expect(issue("200 L", "volume per area")).toMatchObject({
      path: "spray.volume",
      received: "200 L",
      hint: "Did you mean L/ha?",
    });
    expect(issue("95", "share")?.hint).toBe("Did you mean 95 %?");
    expect(issue("32 oz/ac", "liquid rate")?.hint).toMatch(/fl oz/);
  });

  test("a default unit and a decimal mark may be handed in", () => {
    const read = readQuantity("1.250", "volume", "q", { unit: "L", decimal: "," });
    expect(read.ok && read.value).toBe(1250);
  });
});
