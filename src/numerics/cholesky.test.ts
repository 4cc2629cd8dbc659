import { describe, expect, it } from "vitest";
import { factorCholesky, solveCholesky } from "./cholesky.ts";

describe("factorCholesky and solveCholesky", () => {
  it("solve a small system", () => {
    // [[4, 2, 0], [2, 5, 1], [0, 1, 3]] · [1, −2, 3] = [0, −5, 7]
    const a = Float64Array.of(4, 0, 0, 2, 5, 0, 0, 1, 3);
    const x = Float64Array.of(0, -5, 7);
    const scale = new Float64Array(3);
    expect(factorCholesky(a, 3, scale)).toBe(true);
    solveCholesky(a, 3, scale, x);
    [1, -2, 3].forEach((expected, k) => expect(x[k]).toBeCloseTo(expected, 14));
  });

  it("bear diagonals a hundred powers of ten apart", () => {
    const a = Float64Array.of(1e100, 0, 0.5, 1e-100);
    const x = Float64Array.of(1e100 + 0.5, 0.5 + 1e-100);
    const scale = new Float64Array(2);
    expect(factorCholesky(a, 2, scale)).toBe(true);
    solveCholesky(a, 2, scale, x);
    expect(x[1]! / 1e-100).toBeGreaterThan(0);
    expect(x[0]! * 1e100 + 0.5 * x[1]!).toBeCloseTo(1e100, -88);
  });

  it.each([
    ["singular", [1, 0, 1, 1]],
    ["indefinite", [1, 0, 2, 1]],
    ["with a zero on the diagonal", [0, 0, 0, 1]],
    ["with an infinite diagonal", [Infinity, 0, 0, 1]],
    ["with NaN", [NaN, 0, 0, 1]],
  ])("refuse a matrix that is %s", (_what, values) => {
    expect(factorCholesky(Float64Array.from(values), 2, new Float64Array(2))).toBe(false);
  });
});
