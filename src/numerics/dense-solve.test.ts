import { describe, expect, it } from "vitest";
import { factorDense, solveDense, solveFactored } from "./dense-solve.ts";

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

  it("solves again with one factorisation, where rows change places more than once", () => {
    // Put together from a solution: B = A X.
    const n = 4;
    const a = Float64Array.of(0, 3, -1, 2, 1, 1, 4, 0, 8, 2, 0, 1, -2, 5, 1, 7);
    const factored = a.slice();
    const pivots = new Int32Array(n);
    expect(factorDense(factored, n, pivots)).toBe(true);
    expect(pivots.filter((pivot, k) => pivot !== k).length).toBeGreaterThan(1);
    for (const x of [
      [1, 2, 3, 4],
      [-5, 0.5, 0, 7],
    ]) {
      const b = Float64Array.from(x, (_, i) => x.reduce((sum, value, j) => sum + a[i * n + j]! * value, 0));
      solveFactored(factored, n, pivots, b, 1);
      x.forEach((value, i) => {
        expect(b[i]).toBeCloseTo(value, 12);
      });
    }
  });

  it("refuses a singular matrix and one that is not finite", () => {
    expect(solveDense(Float64Array.of(0, 0, 0, 1), 2, Float64Array.of(1, 1), 1)).toBe(false);
    expect(solveDense(Float64Array.of(Infinity), 1, Float64Array.of(1), 1)).toBe(false);
    expect(solveDense(Float64Array.of(NaN), 1, Float64Array.of(1), 1)).toBe(false);
  });
});
