import { describe, expect, test } from "vitest";
import { formatNumber } from "./format.ts";
import { HardstandError } from "./issue.ts";

describe("formatNumber", () => {
  test.each([
    [0.000123456, {}, "0.000123"],
    [1234567, {}, "1230000"],
    [999.9, {}, "1000"],
    [2.5, { keepZeros: true }, "2.50"],
    [2.5, {}, "2.5"],
    [0, {}, "0"],
    [-0.04, { significant: 1 }, "-0.04"],
    [12.5, { decimal: "," as const }, "12,5"],
    [92, { unit: "mg/L" }, "92\u00a0mg/L"],
    [1234567, { significant: 7, group: true }, "1\u202f234\u202f567"],
    [1234, { significant: 4, group: true }, "1234"],
  ])("%d with %j is %s", (value, options, expected) => {
    expect(formatNumber(value, options)).toBe(expected);
  });

  test("what is no number is the programmer's fault", () => {
    expect(() => formatNumber(NaN)).toThrow(HardstandError);
    expect(() => formatNumber(1, { significant: 0 })).toThrow(HardstandError);
  });
});
