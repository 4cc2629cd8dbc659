import { describe, expect, it } from "vitest";
import { compileSystem, davies, equilibrate, idealActivity } from "../../../src/chem/index.ts";
import type { SystemDefinition } from "../../../src/chem/index.ts";
import { record } from "../validation-recorder.ts";
import file from "./cases.json" with { type: "json" };

interface Solution {
  readonly concentrations: Record<string, number>;
  readonly solids: Record<string, number>;
  readonly saturationIndices: Record<string, number | null>;
  readonly ionicStrength: number;
  readonly pH?: number | null;
}
interface Case extends SystemDefinition {
  readonly id: string;
  readonly totals: Record<string, number>;
  readonly fixedLog10Activities: Record<string, number>;
  readonly activity: "ideal" | "davies";
  readonly solution: Solution;
  readonly conditioning: { readonly totalsAmplification: number };
  readonly exactBinary?: boolean;
}
const cases = file.cases as unknown as readonly Case[];

/** Largest relative deviation of a concentration that a case may show; the rule is in the file's conventions. */
const AGREED = 1e-8;

function deviation(ours: number, published: number): number {
  if (published === 0) return Math.abs(ours) === 0 ? 0 : Infinity;
  return Math.abs(ours / published - 1);
}

describe("equilibrium cases solved in 80-digit arithmetic, from a cold start", () => {
  it("holds all 68 cases", () => expect(cases).toHaveLength(68));

  it.each(cases.map((c) => [c.id, c] as const))("%s", (_id, c) => {
    const system = compileSystem({ components: c.components, species: c.species, solids: c.solids });
    const result = equilibrate(system, {
      totals_molPerL: c.totals,
      fixedLog10Activities: c.fixedLog10Activities,
      activity: c.activity === "ideal" ? idealActivity : davies(),
    });
    if (!result.ok) throw new Error(`${c.id}: ${result.reason} ${result.detail}`);
    const { value } = result;
    let worst = 0;
    for (const [name, published] of Object.entries(c.solution.concentrations)) {
      const ours = value.concentrations[system.speciesIndex.get(name) ?? -1];
      worst = Math.max(worst, deviation(ours ?? Number.NaN, published));
    }
    const bound =
      c.exactBinary === true ? AGREED : Math.max(AGREED, 1e-15 * c.conditioning.totalsAmplification);
    record({
      group: "Equilibrium cases",
      what: `case ${c.id}, largest relative deviation of a concentration`,
      published: 0,
      ours: Number(worst.toExponential(1)),
      unit: "relative",
      tolerance: bound,
      within: worst <= bound,
      source: "solved independently in 80-digit arithmetic; constants as stated with each case",
    });
    expect(worst).toBeLessThanOrEqual(bound);
    const largest = Math.max(0, ...Object.values(c.solution.solids));
    for (const [name, published] of Object.entries(c.solution.solids)) {
      const ours = value.solids[system.solidIndex.get(name) ?? -1] ?? Number.NaN;
      expect(Math.abs(ours - published)).toBeLessThanOrEqual(Math.max(1e-8 * published, 1e-12 * largest));
    }
    for (const [name, published] of Object.entries(c.solution.saturationIndices)) {
      const ours = value.saturationIndices[system.solidIndex.get(name) ?? -1] ?? Number.NaN;
      if (published === null) expect(ours).toBe(-Infinity);
      else expect(Math.abs(ours - published)).toBeLessThanOrEqual(1e-8);
    }
    expect(deviation(value.ionicStrength_molPerL, c.solution.ionicStrength)).toBeLessThanOrEqual(bound);
    if (typeof c.solution.pH === "number")
      expect(Math.abs((value.pH ?? NaN) - c.solution.pH)).toBeLessThanOrEqual(1e-8);
  });
});
