import { describe, expect, it } from "vitest";
import { IntegerBasis } from "./integer-basis.ts";

function rowsOf(matrix: readonly (readonly number[])[]): readonly [Int32Array, Float64Array][] {
  return matrix.map((row) => {
    const used = row.flatMap((value, j) => (value === 0 ? [] : [j]));
    return [Int32Array.from(used), Float64Array.from(used, (j) => row[j]!)];
  });
}

function offerAll(basis: IntegerBasis, matrix: readonly (readonly number[])[]): number[] {
  return rowsOf(matrix).map(([index, value]) => basis.offer(index, value, 0, index.length));
}

describe("IntegerBasis", () => {
  it("takes independent rows, refuses dependent ones and inverts exactly", () => {
    const matrix = [
      [2, 1, 0],
      [4, 2, 0],
      [1, 0, 3],
      [3, 1, 3],
      [0, 5, 1],
    ];
    const basis = new IntegerBasis(3);
    basis.reset(3, true);
    const at = offerAll(basis, matrix);
    expect(at.map((position) => position >= 0)).toEqual([true, false, true, false, true]);
    expect(basis.rank).toBe(3);
    expect(basis.exact).toBe(true);
    expect(Math.abs(basis.denominator)).toBe(31);
    // Each taken row has coordinates 1 at its own place and 0 elsewhere.
    for (const r of [0, 2, 4]) {
      const [index, value] = rowsOf([matrix[r]!])[0]!;
      const w = [...basis.express(index, value, 0, index.length)].map((n) => n / basis.denominator + 0);
      expect(w).toEqual([0, 1, 2].map((k) => (k === at[r] ? 1 : 0)));
    }
    // The dependent row is the sum of the first and the third.
    const [index, value] = rowsOf([matrix[3]!])[0]!;
    const w = basis.express(index, value, 0, index.length);
    expect(w[at[0]!]! / basis.denominator).toBe(1);
    expect(w[at[2]!]! / basis.denominator).toBe(1);
  });

  it("starts afresh after reset, also at a smaller order", () => {
    const basis = new IntegerBasis(4);
    basis.reset(4, true);
    offerAll(basis, [[1, 2, 3, 4]]);
    basis.reset(2, true);
    expect(basis.rank).toBe(0);
    expect(
      offerAll(basis, [
        [1, 1],
        [1, -1],
      ]).every((p) => p >= 0),
    ).toBe(true);
    expect(Math.abs(basis.denominator)).toBe(2);
  });

  it("says when integers grow too large, so that the work can be done again in floating point", () => {
    const big = 99_999_989;
    const matrix = [
      [big, 1, 0],
      [1, big, 1],
      [0, 1, big],
    ];
    const basis = new IntegerBasis(3);
    basis.reset(3, true);
    offerAll(basis, matrix);
    expect(basis.exact).toBe(false);
    basis.reset(3, false);
    const at = offerAll(basis, matrix);
    const [index, value] = rowsOf([matrix[1]!])[0]!;
    const w = basis.express(index, value, 0, index.length);
    [0, 1, 2].forEach((k) => expect(w[k]! / basis.denominator).toBeCloseTo(k === at[1] ? 1 : 0, 12));
  });

  it("bears fractions in floating point", () => {
    const basis = new IntegerBasis(2);
    basis.reset(2, false);
    const rows = [
      [0.37, 1.1],
      [0.74, 2.2],
      [1, 0],
    ];
    expect(offerAll(basis, rows).map((p) => p >= 0)).toEqual([true, false, true]);
  });
});
