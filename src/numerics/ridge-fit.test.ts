import { describe, expect, it } from "vitest";
import { randomFrom } from "./latin-hypercube.ts";
import { fitRidge } from "./ridge-fit.ts";

/** Columns of uniform numbers. */
function columnsOf(count: number, inputs: number, seed = "inputs"): readonly Float64Array[] {
  const random = randomFrom(seed);
  return Array.from({ length: inputs }, () => Float64Array.from({ length: count }, () => random() - 0.5));
}

const firstRows = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i);

describe("fitRidge", () => {
  it("finds a straight law in the rows that were not observed", () => {
    const inputs = columnsOf(300, 6);
    const law = (row: number): number => 2 + 3 * inputs[0]![row]! - inputs[3]![row]!;
    const rows = firstRows(60);
    const { fitted, leftOut } = fitRidge(inputs, rows, rows.map(law));
    const worst = Math.max(...Array.from(fitted.subarray(60), (value, k) => Math.abs(value - law(60 + k))));
    expect(worst).toBeLessThan(0.05);
    expect(Math.max(...leftOut.map(Math.abs))).toBeLessThan(0.05);
  });

  it("stays at the mean where the inputs say nothing", () => {
    const inputs = columnsOf(200, 30);
    const noise = columnsOf(40, 1, "noise")[0]!;
    const rows = firstRows(40);
    const { fitted } = fitRidge(inputs, rows, noise);
    const mean = noise.reduce((sum, value) => sum + value, 0) / 40;
    const spread = Math.sqrt(fitted.reduce((sum, value) => sum + (value - mean) ** 2, 0) / fitted.length);
    expect(spread).toBeLessThan(0.15);
  });

  it("foretells each observation as a fit made without it does", () => {
    const inputs = columnsOf(50, 3);
    const noise = columnsOf(50, 1, "noise")[0]!;
    const y = (row: number): number => inputs[1]![row]! + 0.2 * noise[row]!;
    const rows = firstRows(50);
    const { leftOut } = fitRidge(inputs, rows, rows.map(y));
    const without = fitRidge(inputs, rows.slice(1), rows.slice(1).map(y));
    expect(leftOut[0]! / (y(0) - without.fitted[0]!)).toBeCloseTo(1, 1);
  });

  it("leaves out inputs that do not vary, and takes none at all", () => {
    const rows = firstRows(5);
    const { fitted } = fitRidge([new Float64Array(8).fill(4)], rows, [1, 2, 3, 4, 5]);
    expect([...fitted]).toEqual(new Array<number>(8).fill(3));
    expect(fitRidge([], rows, [1, 2, 3, 4, 5]).fitted).toHaveLength(0);
  });
});
