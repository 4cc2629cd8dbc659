import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { fitPolynomial } from "./polynomial-fit.ts";

const points = fc.uniqueArray(fc.integer({ min: -20, max: 20 }), { minLength: 6, maxLength: 15 });

describe("fitPolynomial", () => {
  it("gives a polynomial of its degree back", () => {
    fc.assert(
      fc.property(
        points,
        fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 3, maxLength: 3 }),
        (xs, c) => {
          const f = (x: number): number => c[0]! + c[1]! * x + c[2]! * x * x;
          const fit = fitPolynomial(xs, xs.map(f), 2);
          for (const x of [...xs, 0.5]) expect(fit.at(x)).toBeCloseTo(f(x), 6);
          for (const left of fit.leftOut) expect(Math.abs(left)).toBeLessThan(1e-5);
        },
      ),
    );
  });

  it("foretells a left-out point as a fit without it does", () => {
    const x = [0, 1, 2, 3, 4, 5];
    const y = [1, 2.2, 2.9, 4.5, 4.8, 6.3];
    const all = fitPolynomial(x, y, 1);
    x.forEach((at, i) => {
      const without = (values: readonly number[]): number[] => values.filter((_, k) => k !== i);
      const fit = fitPolynomial(without(x), without(y), 1);
      expect(all.leftOut[i]).toBeCloseTo(y[i]! - fit.at(at), 10);
    });
  });

  it("gives the mean of points that all have one x, and the value of a single point", () => {
    expect(fitPolynomial([2, 2, 2], [1, 2, 6], 2).at(2)).toBeCloseTo(3, 12);
    expect(fitPolynomial([2], [7], 2).at(2)).toBe(7);
  });
});
