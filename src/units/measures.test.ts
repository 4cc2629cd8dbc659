import { describe, expect, it, test } from "vitest";
import { inMeasures, measuresOf, rateInMeasures } from "./measures.ts";

test.each([
  ["3000 L", "metric"],
  ["150 US gal", "US"],
  ["150 gal", "US"],
  ["330 imp gal", "imperial"],
  ["90 UK gal/ac", "imperial"],
  ["600 qt", "US"],
  ["600 US quarts", "US"],
  ["1200 pt", "US"],
  ["1200 pints", "US"],
  ["640 fl oz", "US"],
  ["640 US fl. oz", "US"],
  ["640 fluid ounces", "US"],
  ["1.5 pt/ac", "US"],
  ["22 fl oz/ac", "US"],
  ["2 lb/ac", "US"],
  ["800 imp pt", "imperial"],
  ["3 UK pints/ac", "imperial"],
  ["20gal/ac", "US"],
  ["2 L/ha", "metric"],
  ["50 hL", "metric"],
  ["1 part", "metric"],
  [3000, "metric"],
])("a tank of %s is filled by %s measures", (typed, measures) => {
  expect(measuresOf(typed)).toBe(measures);
});

// Conversion factors of NIST Handbook 44 (2024), appendix C, to the figures given here.
describe("an amount in the measures of a country", () => {
  it.each([
    [3.785411784, "L", "US", 1, "US gal"],
    [2.37, "L", "US", 2.504, "US qt"],
    [0.1, "L", "US", 3.381, "US fl oz"],
    [4.54609, "L", "imperial", 1, "imp gal"],
    [1, "L", "imperial", 1.76, "imp pt"],
    [0.1, "L", "imperial", 3.52, "imp fl oz"],
    [0.45359237, "kg", "US", 1, "lb"],
    [0.1, "kg", "imperial", 3.527, "oz"],
    [1, "ha", "US", 2.471, "ac"],
    [100, "L/ha", "US", 10.69, "US gal/ac"],
    [2, "L", "metric", 2, "L"],
  ] as const)("%f %s in %s measures is %f %s", (amount, unit, measures, value, told) => {
    const found = inMeasures(amount, unit, measures);
    expect(found.unit).toBe(told);
    expect(found.value / value).toBeCloseTo(1, 3);
  });
});

// Conversion factors of NIST Handbook 44 (2024), appendix C: an acre is 0.40469 ha, a US fluid ounce 29.5735 mL.
describe("a rate of product in the measures of a country", () => {
  it.each([
    [1.75, "L", "US", 23.95, "US fl oz/ac"],
    [3, "L", "US", 1.283, "US qt/ac"],
    [12, "L", "US", 1.283, "US gal/ac"],
    [1.75, "L", "imperial", 1.246, "imp pt/ac"],
    [0.05, "kg", "US", 0.7137, "oz/ac"],
    [2, "kg", "imperial", 1.784, "lb/ac"],
    [1.75, "L", "metric", 1.75, "L/ha"],
  ] as const)("%f %s per ha in %s measures is %f %s", (perHa, of, measures, value, told) => {
    const found = rateInMeasures(perHa, of, measures);
    expect(found.unit).toBe(told);
    expect(found.value / value).toBeCloseTo(1, 3);
  });
});
