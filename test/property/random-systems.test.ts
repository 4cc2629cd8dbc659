import { describe, expect, it } from "vitest";
import { compileSystem, davies, equilibrate, idealActivity } from "../../src/chem/index.ts";
import {
  balanceResidual,
  generator,
  massActionFault,
  randomSystem,
  saturationFault,
} from "./random-system.ts";
import type { Conditions, EquilibriumResult } from "../../src/chem/index.ts";
import type { Kind } from "./random-system.ts";

const SEED = 20_261_125;

const ordinary = { extreme: false, solids: 0, polymorphs: false };
const kinds: readonly (Kind & { readonly systems: number })[] = [
  { ...ordinary, name: "ordinary", systems: 6000 },
  { ...ordinary, name: "extreme constants and coefficients", extreme: true, systems: 6000 },
  { ...ordinary, name: "some solids", solids: 8, systems: 4000 },
  { ...ordinary, name: "many solids with polymorphs", solids: 30, polymorphs: true, systems: 2500 },
  { name: "extreme, solids with polymorphs", extreme: true, solids: 8, polymorphs: true, systems: 2500 },
];

/** In turn: no activity coefficients, Davies at any ionic strength, Davies held. */
const models = [idealActivity, davies(), davies({ holdAbove_molPerL: 0.5 })];

describe("21,000 random systems from a cold start: none fails", () => {
  it("makes 21,000", () => expect(kinds.reduce((sum, kind) => sum + kind.systems, 0)).toBe(21_000));

  it.each(kinds.map((kind) => [kind.name, kind] as const))("%s", (_name, kind) => {
    const random = generator(SEED);
    const failed: string[] = [];
    let balance = 0;
    let massAction = 0;
    let saturation = 0;
    for (let i = 0; i < kind.systems; i++) {
      const made = randomSystem(random, kind);
      const activity = models[i % models.length]!;
      const result = equilibrate(compileSystem(made), { totals_molPerL: made.totals, activity });
      if (!result.ok) {
        failed.push(`${i}: ${result.reason} ${result.detail}`);
        continue;
      }
      balance = Math.max(balance, balanceResidual(made, result.value));
      massAction = Math.max(massAction, massActionFault(made, result.value));
      saturation = Math.max(saturation, saturationFault(made, result.value));
    }
    expect(failed).toEqual([]);
    expect(balance).toBeLessThanOrEqual(1e-10);
    expect(massAction).toBeLessThanOrEqual(1e-9);
    expect(saturation).toBeLessThanOrEqual(1e-8);
  });
});

function expectSame(one: EquilibriumResult, other: EquilibriumResult): void {
  expect(one.ok).toBe(other.ok);
  if (!one.ok || !other.ok) return;
  expect(one.value.log10Concentrations).toEqual(other.value.log10Concentrations);
  expect(one.value.solids).toEqual(other.value.solids);
}

describe("what was solved before with a compiled system leaves no trace in an answer, to the last digit", () => {
  it.each(kinds.map((kind) => [kind.name, kind] as const))("%s", (_name, kind) => {
    const random = generator(SEED + 1);
    let compared = 0;
    for (let i = 0; i < kind.systems / 10; i++) {
      const made = randomSystem(random, kind);
      const names = made.components.map(({ name }) => name);
      const activity = models[i % models.length]!;
      const conditions: Conditions = { totals_molPerL: made.totals, activity };
      const fresh = equilibrate(compileSystem(made), conditions);
      const used = compileSystem(made);
      const first = equilibrate(used, conditions);
      if (!fresh.ok || !first.ok) continue;
      // Another layout (a component gone, one fixed, no solids), another basis, and a start from an answer.
      const without = { ...made.totals, [names[i % names.length]!]: 0 };
      const fixed = { [names.at(-1)!]: -6 };
      const [near, far] = [1, 6].map((decades) =>
        Object.fromEntries(
          names.map((name) => [name, made.totals[name]! * 10 ** (decades * (random() - 0.5))]),
        ),
      ) as [Record<string, number>, Record<string, number>];
      const warm = { ...conditions, totals_molPerL: near, start: first.value };
      const atFirst = equilibrate(used, warm);
      for (const between of [
        { ...conditions, totals_molPerL: without },
        { ...conditions, fixedLog10Activities: fixed },
        { ...conditions, solids: [] },
        { ...warm, totals_molPerL: far },
      ]) {
        equilibrate(used, between);
        expectSame(equilibrate(used, warm), atFirst);
        equilibrate(used, between);
        expectSame(equilibrate(used, conditions), fresh);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(0.3 * kind.systems);
  });
});
