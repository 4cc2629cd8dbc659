import { describe, expect, it } from "vitest";
import { correlationOf, inverseNormal, latinColumn, quantileOf, randomFrom, ranksOf } from "./index.ts";

describe("inverse normal distribution", () => {
  // Abramowitz & Stegun (1964) Handbook of Mathematical Functions, table 26.5, and the usual critical values.
  it.each([
    [0.5, 0],
    [0.75, 0.6744897501960817],
    [0.9, 1.2815515655446004],
    [0.95, 1.6448536269514722],
    [0.975, 1.959963984540054],
    [0.99, 2.3263478740408408],
    [0.999, 3.090232306167813],
    [1e-9, -5.997807015007687],
    [1e-20, -9.262340089798409],
  ])("has z(%f) = %f", (p, z) => {
    expect(inverseNormal(p)).toBeCloseTo(z, 12);
  });

  it("is odd and has infinite ends", () => {
    for (const p of [0.01, 0.2, 0.44]) expect(inverseNormal(p)).toBeCloseTo(-inverseNormal(1 - p), 12);
    expect(inverseNormal(0)).toBe(-Infinity);
    expect(inverseNormal(1)).toBe(Infinity);
  });
});

describe("Latin hypercube columns", () => {
  it("have one draw in every stratum, in an order of their own", () => {
    const column = latinColumn(200, "7|calcium");
    expect([...column].map((u) => Math.floor(u * 200)).sort((a, b) => a - b)).toEqual(
      Array.from({ length: 200 }, (_, i) => i),
    );
    expect(Math.abs(correlationOf(column, [...column.keys()]))).toBeLessThan(0.25);
  });

  it("depend on the seed alone and are independent of one another", () => {
    expect([...latinColumn(50, "a")]).toEqual([...latinColumn(50, "a")]);
    expect([...latinColumn(50, "a")]).not.toEqual([...latinColumn(50, "b")]);
    const columns = Array.from({ length: 20 }, (_, k) => latinColumn(500, `seed ${k}`));
    const worst = columns.flatMap((a, i) => columns.slice(i + 1).map((b) => Math.abs(correlationOf(a, b))));
    // 190 pairs of 500 draws: the largest of as many standard normal numbers over √500.
    expect(Math.max(...worst)).toBeLessThan(3.7 / Math.sqrt(500));
  });

  it("rest on a uniform stream", () => {
    const random = randomFrom("uniform");
    const counts = new Array<number>(16).fill(0);
    for (let i = 0; i < 16000; i++) counts[Math.floor(random() * 16)]! += 1;
    const chiSquare = counts.reduce((sum, n) => sum + (n - 1000) ** 2 / 1000, 0);
    // 0.1 % point of chi-square with 15 degrees of freedom.
    expect(chiSquare).toBeLessThan(37.7);
  });
});

describe("statistics", () => {
  it("gives quantiles linear between the values", () => {
    expect(quantileOf([1, 2, 3, 4], 0.5)).toBe(2.5);
    expect(quantileOf([1, 2, 3, 4], 0)).toBe(1);
    expect(quantileOf([1, 2, 3, 4], 1)).toBe(4);
    expect(quantileOf([5], 0.3)).toBe(5);
  });

  it("gives ties their mean rank", () => {
    expect([...ranksOf([3, 1, 3, 2])]).toEqual([3.5, 1, 3.5, 2]);
  });

  it("correlates ranks of a rising function fully", () => {
    const x = latinColumn(40, "x");
    expect(correlationOf(ranksOf(x), ranksOf(x.map((v) => Math.exp(9 * v))))).toBeCloseTo(1, 12);
    expect(correlationOf([1, 1, 1], [1, 2, 3])).toBe(0);
  });
});
