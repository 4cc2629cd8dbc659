import { describe, expect, it } from "vitest";
import { compileSystem, davies, equilibrate, idealActivity, sensitivities } from "../../../src/chem/index.ts";
import type { Conditions, SensitivityParameter, SystemDefinition } from "../../../src/chem/index.ts";
import caseFile from "./cases.json" with { type: "json" };
import file from "./sensitivities.json" with { type: "json" };

interface Share {
  readonly of: string;
  readonly species: readonly string[];
  readonly value: number;
  readonly d: Readonly<Record<string, number>>;
}
interface Published {
  readonly id: string;
  readonly dLog10c: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly shares: Readonly<Record<string, Share>>;
}
interface Case extends SystemDefinition {
  readonly id: string;
  readonly totals: Record<string, number>;
  readonly fixedLog10Activities: Record<string, number>;
  readonly activity: "ideal" | "davies";
}
const cases = caseFile.cases as unknown as readonly Case[];
const published = file.cases as unknown as readonly Published[];

/** "log10 K Fe(OH)2+" and the like. */
function parameterOf(label: string): SensitivityParameter {
  const [, kind, name] = /^log10 (Ksp|K|T) (.+)$/.exec(label) ?? [];
  if (kind === undefined || name === undefined) throw new Error(`not a parameter: ${label}`);
  return { kind: kind === "K" ? "logK" : kind === "T" ? "total" : "logKsp", name };
}

/** Agreement asked for: relative to the derivative, or to the largest that the same parameter causes (twelve printed digits). */
const RELATIVE = 1e-8;

describe("derivatives by log K, log Ksp and log T, from 80-digit arithmetic", () => {
  it("holds nine cases", () => expect(published).toHaveLength(9));

  it.each(published.map((p) => [p.id, p] as const))("%s", (id, expected) => {
    const one = cases.find((c) => c.id === id)!;
    const system = compileSystem(one);
    const conditions: Conditions = {
      totals_molPerL: one.totals,
      fixedLog10Activities: one.fixedLog10Activities,
      activity: one.activity === "ideal" ? idealActivity : davies(),
    };
    const answer = equilibrate(system, conditions);
    if (!answer.ok) throw new Error(answer.reason);
    const labels = Object.keys(expected.dLog10c);
    const result = sensitivities(conditions, answer.value, labels.map(parameterOf));
    if (!result.ok) throw new Error(result.reason);
    let compared = 0;
    labels.forEach((label, p) => {
      const of = expected.dLog10c[label]!;
      const largest = Math.max(...Object.values(of).map(Math.abs));
      for (const [species, derivative] of Object.entries(of)) {
        const ours = result.value[p]!.dLog10Concentrations[system.speciesIndex.get(species)!]!;
        expect(Math.abs(ours - derivative), `${label} on ${species}`).toBeLessThanOrEqual(
          RELATIVE * Math.abs(derivative) + 1e-11 * largest,
        );
        compared++;
      }
    });
    expect(compared).toBeGreaterThan(0);
    for (const [name, share] of Object.entries(expected.shares)) {
      const held = share.species.map((species) => {
        const i = system.speciesIndex.get(species)!;
        const coefficient = one.species[i]!.formation[share.of]!;
        return [i, (coefficient * answer.value.concentrations[i]!) / one.totals[share.of]!] as const;
      });
      expect(held.reduce((sum, [, part]) => sum + part, 0)).toBeCloseTo(share.value, 10);
      labels.forEach((label, p) => {
        const d = result.value[p]!.dLog10Concentrations;
        const parts = held.map(([i, part]) => Math.LN10 * part * d[i]!);
        // A share's own total stands in its denominator.
        if (label === `log10 T ${share.of}`) parts.push(-Math.LN10 * share.value);
        const ours = parts.reduce((sum, part) => sum + part, 0);
        const size = Math.max(...parts.map(Math.abs));
        expect(Math.abs(ours - share.d[label]!), `${label} on ${name}`).toBeLessThanOrEqual(
          RELATIVE * Math.abs(share.d[label]!) + 1e-11 * size,
        );
      });
    }
  });
});
