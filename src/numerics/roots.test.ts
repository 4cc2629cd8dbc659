import { describe, expect, it } from "vitest";
import { findRoot } from "./roots.ts";

describe("findRoot", () => {
  it.each([
    ["a line", (x: number) => 2 * x - 1, 0, 1, 0.5],
    ["a steep exponential", (x: number) => Math.exp(40 * x) - 10, 0, 1, Math.log(10) / 40],
    ["a flat power", (x: number) => (x - 0.25) ** 9, 0, 1, 0.25],
    ["a step", (x: number) => (x < 0.7 ? -1 : 1), 0, 1, 0.7],
    ["a bracket given backwards", (x: number) => x ** 3 - 8, 5, 0, 2],
  ])("finds the root of %s", (_what, f, low, high, expected) => {
    const root = findRoot(f, low, high, { xTolerance: 1e-12 });
    expect(root.ok && Math.abs(root.x - expected)).toBeLessThanOrEqual(
      _what === "a flat power" ? 1e-3 : 1e-11,
    );
  });

  it("returns an end that is a root", () => {
    const root = findRoot((x) => x, 0, 1, { xTolerance: 1e-9 });
    expect(root).toEqual({ ok: true, x: 0, f: 0, evaluations: 2 });
  });

  it("stops at the wanted size of the function", () => {
    const root = findRoot((x) => x * x - 2, 0, 2, { xTolerance: 0, fTolerance: 1e-3 });
    expect(root.ok && Math.abs(root.f)).toBeLessThanOrEqual(1e-3);
  });

  it("says when the ends have one sign or time runs out", () => {
    expect(findRoot((x) => x + 1, 0, 1, { xTolerance: 1e-9 })).toMatchObject({
      ok: false,
      reason: "not-bracketed",
    });
    const short = findRoot((x) => x ** 3 - 0.2, 0, 1, { xTolerance: 1e-15, maxEvaluations: 4 });
    expect(short).toEqual({ ok: false, reason: "not-converged", evaluations: 4 });
  });
});
