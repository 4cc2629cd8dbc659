import {
  builtInPitzer,
  builtInThermo,
  compileSystem,
  equilibrate,
  pitzer,
  systemFor,
} from "../../../src/chem/index.ts";
import type { CompiledInteractions, CompiledSystem, InteractionModel } from "../../../src/chem/index.ts";
import tables from "./tables.json" with { type: "json" };

const data = builtInPitzer();
const models = new Map<number, InteractionModel>();

/** Pitzer's equations at a temperature [°C]; one model each. */
export function modelAt(temperature_C: number): InteractionModel {
  let model = models.get(temperature_C);
  if (model === undefined) models.set(temperature_C, (model = pitzer(data, { temperature_C })));
  return model;
}

/** Ions of a salt with their number in it. */
export function ionsOf(salt: string): readonly (readonly [string, number])[] {
  const found = (tables.salts as unknown as Readonly<Record<string, readonly [string, number][]>>)[salt];
  if (found === undefined) throw new Error(`no such salt: ${salt}`);
  return found;
}

/** Charge number at the end of an ion's name. */
function chargeOf(name: string): number {
  const [, sign, size] = /([+-])(\d*)$/.exec(name)!;
  return (sign === "+" ? 1 : -1) * Number(size === "" ? 1 : size);
}

/** A solution of one salt: mean activity coefficient, osmotic coefficient, water activity; by Pitzer's equations at 25 °C if no model is given. */
export function saltSolution(
  salt: string,
  molality: number,
  model: InteractionModel = modelAt(25),
): { gamma: number; phi: number; aw: number } {
  const ions = ionsOf(salt);
  const terms: CompiledInteractions = model.compile(
    ions.map(([name]) => name),
    Float64Array.from(ions, ([name]) => chargeOf(name)),
  );
  terms.evaluate(
    Float64Array.from(ions, ([, n]) => n * molality),
    new Int32Array(0),
  );
  const number = ions.reduce((sum, [, n]) => sum + n, 0);
  const mean = ions.reduce((sum, [, n], i) => sum + n * terms.lnGamma[i]!, 0) / number;
  return { gamma: Math.exp(mean), phi: terms.osmoticCoefficient, aw: Math.exp(terms.lnWaterActivity) };
}

const systems = new Map<string, CompiledSystem>();

/** Calcium [mol/kg] in a solution of a salt that is saturated with gypsum. */
export function gypsumSolubility(salt: string, molality: number, temperature_C: number): number {
  const key = `${salt} ${temperature_C}`;
  const ions = ionsOf(salt);
  let system = systems.get(key);
  if (system === undefined) {
    const components = [...new Set(["Ca+2", "SO4-2", ...ions.map(([name]) => name)])];
    system = compileSystem(
      systemFor(builtInThermo(), {
        components,
        temperature_C,
        solids: ["gypsum"],
        carbonate: "closed",
        interactions: data,
      }),
    );
    systems.set(key, system);
  }
  const plenty = 0.5;
  const totals: Record<string, number> = { "Ca+2": plenty, "SO4-2": plenty };
  for (const [name, n] of ions) totals[name] = (totals[name] ?? 0) + n * molality;
  const result = equilibrate(system, {
    totals_molPerL: totals,
    electroneutral: "H+",
    activity: modelAt(temperature_C),
  });
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return plenty - result.value.solids[0]!;
}
