import { expect, test } from "vitest";
import { amountText, costText, figure, inHundred, measured, perHundred, timeText } from "./figures.ts";

test("a figure keeps three digits and never loses a whole number", () => {
  expect([0, 2.5, 30, 2955, 51.04, 0.01234, -3.456, 123456].map((value) => figure(value))).toEqual([
    "0",
    "2.5",
    "30",
    "2955",
    "51",
    "0.0123",
    "−3.46",
    "123\u202f456",
  ]);
});

test("an amount below one comes in the smaller unit", () => {
  expect(amountText(0.85, "L")).toBe("850 mL");
  expect(amountText(0.0042, "kg")).toBe("4.2 g");
  expect(amountText(25.5, "kg")).toBe("25.5 kg");
  expect(amountText(0, "L")).toBe("0 L");
});

// NIST SP 811 (2008), appendix B.8, and NIST Handbook 44, appendix C: 1 US gal = 3.785412 L = 4 qt = 128 fl oz; 1 imp gal =
// 4.54609 L = 8 pt = 160 imp fl oz; 1 lb = 0.45359237 kg = 16 oz; 1 ac = 0.40468564 ha.
test.each([
  [568, "L", "US", "150 US gal (568 L)"], // 568 / 3.785412 = 150.05
  [3.785412, "L", "US", "1 US gal (3.79 L)"],
  [1, "L", "US", "1.06 US qt (1 L)"], // 4 / 3.785412 = 1.0567
  [0.5, "L", "US", "16.9 US fl oz (500 mL)"], // 0.5 · 128 / 3.785412 = 16.907
  [10, "L", "imperial", "2.2 imp gal (10 L)"], // 10 / 4.54609 = 2.1997
  [1, "L", "imperial", "1.76 imp pt (1 L)"], // 8 / 4.54609 = 1.7598
  [0.3, "L", "imperial", "10.6 imp fl oz (300 mL)"], // 0.3 · 160 / 4.54609 = 10.559
  [2, "kg", "US", "4.41 lb (2 kg)"], // 2 / 0.45359237 = 4.4092
  [0.3, "kg", "imperial", "10.6 oz (300 g)"], // 0.3 · 16 / 0.45359237 = 10.582
  [5, "ha", "US", "12.4 ac (5 ha)"], // 5 / 0.40468564 = 12.355
  [200, "L/ha", "US", "21.4 US gal/ac (200 L/ha)"], // 200 · 0.40468564 / 3.785412 = 21.381
  [200, "L/ha", "imperial", "17.8 imp gal/ac (200 L/ha)"], // 200 · 0.40468564 / 4.54609 = 17.804
  [0.85, "L", "metric", "850 mL"],
  [0.02, "kg", "metric", "20 g"],
  [0, "kg", "US", "0 oz (0 kg)"],
  [0.5, "ha", "metric", "0.5 ha"],
] as const)("%s %s in %s measures: %s", (amount, unit, measures, text) => {
  expect(measured(amount, unit, measures)).toBe(text);
});

test("the ends of a share never hide a loss or a trace", () => {
  expect([1, 0.9999, 0.996, 0.934, 0.004, 0.0002, 0].map((share) => inHundred(share))).toEqual([
    "all of it",
    "all of it",
    "99.6 in 100",
    "93 in 100",
    "0.4 in 100",
    "none",
    "none",
  ]);
  expect([1, 0.996, 0.934, 0.004].map((share) => perHundred(share))).toEqual(["100", "99.6", "93", "0.4"]);
});

test("times and costs read as people say them", () => {
  expect([0.5, 6.52, 100, 20000].map((hours) => timeText(hours))).toEqual([
    "30 min",
    "6.5 h",
    "4.2 days",
    "2.3 years",
  ]);
  expect(costText(null)).toBe("not known");
  expect(costText(4.4)).toBe("4.40");
});
