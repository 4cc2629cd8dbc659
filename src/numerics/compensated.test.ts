import { describe, expect, it } from "vitest";
import { compensatedDot, decimalRemainder, productError, sumError } from "./compensated.ts";

const out = { high: 0, low: 0 };

function dot(values: readonly number[], factors: readonly number[]): number {
  const high = Float64Array.from(values);
  const low = high.map(decimalRemainder);
  compensatedDot(high, low, high.length, Float64Array.from(factors), 0, 1, out);
  return out.high;
}

describe("sumError and productError", () => {
  it("give what rounding took away", () => {
    expect(sumError(1, 2 ** -60)).toBe(2 ** -60);
    expect(sumError(2 ** -60, 1)).toBe(2 ** -60);
    // (1 + 2^-30)² = 1 + 2^-29 + 2^-60
    expect(productError(1 + 2 ** -30, 1 + 2 ** -30)).toBe(2 ** -60);
    expect(productError(3, 5)).toBe(0);
  });
});

describe("decimalRemainder", () => {
  it("is the rest of a short decimal, computed here in integers", () => {
    // 0.1 = 3602879701896397 / 2^55 − rest: 3602879701896397 · 10 − 2^55 = 2 in units of 1 / (10 · 2^55).
    expect(decimalRemainder(0.1)).toBeCloseTo(-2 / 10 / 2 ** 55, 33);
    expect(decimalRemainder(-0.1)).toBe(-decimalRemainder(0.1));
  });

  it("is zero for sums of powers of two and for doubles that no short decimal names", () => {
    for (const x of [0, 1, 0.5, 0.0009765625, 1e15, 2 ** -10 + 2 ** -40, 0.1 + 0.2]) {
      expect(decimalRemainder(x)).toBe(0);
    }
  });
});

describe("compensatedDot", () => {
  it("lets decimals cancel that cancel on paper", () => {
    expect(0.1 + 0.2 - 0.3).not.toBe(0);
    expect(dot([0.1, 0.2, 0.3], [1, 1, -1])).toBe(0);
    expect(dot([0.006, 0.002, 0.018], [3, -0, -1])).toBe(0);
  });

  it("keeps a small difference of large terms to full precision", () => {
    expect(dot([1, 2 ** -70, 1], [1, 1, -1])).toBe(2 ** -70);
    // Remainders of some 1e-17 are known to some 1e-33.
    expect(Math.abs(dot([0.3, 0.1, 1e-20], [1, -3, 1]) - 1e-20)).toBeLessThanOrEqual(2e-33);
  });

  it("takes factors from a column of a matrix and returns the second half too", () => {
    const matrix = Float64Array.of(9, 1, 9, 3);
    const high = Float64Array.of(0.1, 0.1);
    compensatedDot(high, high.map(decimalRemainder), 2, matrix, 1, 2, out);
    expect(out.high).toBe(0.4);
    expect(out.low).toBeCloseTo(decimalRemainder(0.4), 32);
  });
});
