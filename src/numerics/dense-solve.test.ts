import { describe, expect, it } from "vitest";
import { solveDense } from "./dense-solve.ts";

describe("solveDense", () => {
  it("solves for two right-hand sides and needs row pivoting to do so", () => {
    const a = Float64Array.of(0, 2, 1, 1, 1, 1, 2, 1, -1);
    const b = Float64Array.of(7, 1, 6, 0, 1, 3);
    expect(solveDense(a, 3, b, 2)).toBe(true);
    // The first answer is known; the second is put back into the equations.
    const first = [b[0]!, b[2]!, b[4]!];
    const second = [b[1]!, b[3]!, b[5]!];
    expect(first[0]).toBeCloseTo(1, 12);
    expect(first[1]).toBeCloseTo(2, 12);
    expect(first[2]).toBeCloseTo(3, 12);
    expect(2 * second[1]! + second[2]!).toBeCloseTo(1, 12);
    expect(second[0]! + second[1]! + second[2]!).toBeCloseTo(0, 12);
    expect(2 * second[0]! + second[1]! - second[2]!).toBeCloseTo(3, 12);
  });

  it("refuses a singular matrix and one that is not finite", () => {
    expect(solveDense(Float64Array.of(0, 0, 0, 1), 2, Float64Array.of(1, 1), 1)).toBe(false);
    expect(solveDense(Float64Array.of(Infinity), 1, Float64Array.of(1), 1)).toBe(false);
    expect(solveDense(Float64Array.of(NaN), 1, Float64Array.of(1), 1)).toBe(false);
  });
});
