import { expect, test } from "vitest";
import { amountText, costText, figure, inHundred, perHundred, timeText } from "./figures.ts";

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
