import { atFactor, compileSystem, equilibrate } from "../../chem/index.ts";
import type { CompiledSystem, Conditions, Equilibrium } from "../../chem/index.ts";
import { recent } from "../recent.ts";

/** A species that is a smaller part than this of each of its components changes no share that can be told. */
const TRACE = 1e-5;

/** An equilibrium without its traces, and the conditions it was solved for. */
export interface Abridged {
  readonly equilibrium: Equilibrium;
  readonly conditions: Conditions;
}

/**
 * Leaves the traces out of a system, so that many draws near one answer are solved in a fraction of the time.
 *
 * @param equilibrium an answer; `conditions` it was found for at a factor of 1; `factor` its concentration factor
 * @param negligible whether a component is so little that the answer is as good without it; none if left out
 * @returns the same answer of the smaller system, to about 1e-5 of each total; the answer given where that fails
 */
export function abridge(
  equilibrium: Equilibrium,
  conditions: Conditions,
  factor: number,
  negligible: (component: string) => boolean = () => false,
): Abridged {
  const whole = { equilibrium, conditions };
  const { system } = equilibrium;
  const without = new Set(Object.keys(conditions.totals_molPerL).filter(negligible));
  const kept = weightySpecies(equilibrium, without);
  if (kept.length === system.speciesNames.length) return whole;
  const { definition } = system;
  const solids = definition.solids.flatMap(({ formation }, i) => (formedFrom(formation, without) ? [] : [i]));
  const small = smallerSystem(system, kept, solids, without);
  const own = ownConditions(small, conditions, without);
  const start: Equilibrium = {
    ...equilibrium,
    system: small,
    concentrations: pick(equilibrium.concentrations, kept),
    log10Concentrations: pick(equilibrium.log10Concentrations, kept),
    lnGamma: pick(equilibrium.lnGamma, kept),
    solids: pick(equilibrium.solids, solids),
  };
  const solved = equilibrate(small, { ...atFactor(own, factor), start });
  return solved.ok ? { equilibrium: solved.value, conditions: own } : whole;
}

/** Whether something is formed from any of these components. */
function formedFrom(formation: Readonly<Record<string, number>>, components: ReadonlySet<string>): boolean {
  return Object.keys(formation).some((name) => components.has(name));
}

/** Conditions that speak of what the smaller system has. */
function ownConditions(
  small: CompiledSystem,
  { start: _other, ...conditions }: Conditions,
  without: ReadonlySet<string>,
): Conditions {
  const { logK, logKsp, solids } = conditions;
  const names = new Set(small.speciesNames);
  const solidNames = new Set(small.solidNames);
  const only = (
    record: Readonly<Record<string, number>>,
    has: (name: string) => boolean,
  ): Record<string, number> => Object.fromEntries(Object.entries(record).filter(([name]) => has(name)));
  return {
    ...conditions,
    totals_molPerL: only(conditions.totals_molPerL, (name) => !without.has(name)),
    ...(logK === undefined ? {} : { logK: only(logK, (name) => names.has(name)) }),
    ...(logKsp === undefined ? {} : { logKsp: only(logKsp, (name) => solidNames.has(name)) }),
    ...(solids === undefined ? {} : { solids: solids.filter((name) => solidNames.has(name)) }),
  };
}

/** Places of the species that count: what weighs in one of its components, and water's own ions. */
function weightySpecies(
  { system, concentrations }: Equilibrium,
  without: ReadonlySet<string>,
): readonly number[] {
  const { species } = system.definition;
  const totals = new Map<string, number>();
  const parts = species.map(({ formation }) =>
    Object.entries(formation).filter(([component, n]) => n > 0 && component !== "H+"),
  );
  parts.forEach((of, i) => {
    for (const [component, n] of of)
      totals.set(component, (totals.get(component) ?? 0) + n * concentrations[i]!);
  });
  return species.flatMap(({ name, formation }, i) => {
    if (formedFrom(formation, without)) return [];
    const of = parts[i]!;
    const counts =
      of.length === 0 ||
      system.componentIndex.has(name) ||
      of.some(([component, n]) => n * concentrations[i]! > TRACE * totals.get(component)!);
    return counts ? [i] : [];
  });
}

const smaller = new WeakMap<CompiledSystem, Map<string, CompiledSystem>>();
/** Smaller systems kept of one; a drying drop needs a few. */
const MOST_KEPT = 8;

function smallerSystem(
  system: CompiledSystem,
  kept: readonly number[],
  solids: readonly number[],
  without: ReadonlySet<string>,
): CompiledSystem {
  const ofSystem = smaller.get(system) ?? new Map<string, CompiledSystem>();
  smaller.set(system, ofSystem);
  const { definition } = system;
  return recent(ofSystem, kept.join(), MOST_KEPT, () =>
    compileSystem({
      components: definition.components.filter(({ name }) => !without.has(name)),
      species: kept.map((i) => definition.species[i]!),
      solids: solids.map((i) => definition.solids[i]!),
    }),
  );
}

function pick(values: Float64Array, kept: readonly number[]): Float64Array {
  return Float64Array.from(kept, (i) => values[i]!);
}
