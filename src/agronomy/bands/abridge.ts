import { atFactor, compileSystem, equilibrate } from "../../chem/index.ts";
import type { CompiledSystem, Conditions, Equilibrium } from "../../chem/index.ts";

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
 * @returns the same answer of the smaller system, to about 1e-5 of each total; the answer given where that fails
 */
export function abridge(equilibrium: Equilibrium, conditions: Conditions, factor: number): Abridged {
  const whole = { equilibrium, conditions };
  const { system } = equilibrium;
  const kept = weightySpecies(equilibrium);
  if (kept.length === system.speciesNames.length) return whole;
  const small = smallerSystem(system, kept);
  const names = new Set(small.speciesNames);
  const { logK, start: _other, ...rest } = conditions;
  const own: Conditions =
    logK === undefined
      ? rest
      : { ...rest, logK: Object.fromEntries(Object.entries(logK).filter(([name]) => names.has(name))) };
  const start: Equilibrium = {
    ...equilibrium,
    system: small,
    concentrations: pick(equilibrium.concentrations, kept),
    log10Concentrations: pick(equilibrium.log10Concentrations, kept),
    lnGamma: pick(equilibrium.lnGamma, kept),
  };
  const solved = equilibrate(small, { ...atFactor(own, factor), start });
  return solved.ok ? { equilibrium: solved.value, conditions: own } : whole;
}

/** Places of the species that count: what weighs in one of its components, and water's own ions. */
function weightySpecies({ system, concentrations }: Equilibrium): readonly number[] {
  const { species } = system.definition;
  const totals = new Map<string, number>();
  const parts = species.map(({ formation }) =>
    Object.entries(formation).filter(([component, n]) => n > 0 && component !== "H+"),
  );
  parts.forEach((of, i) => {
    for (const [component, n] of of)
      totals.set(component, (totals.get(component) ?? 0) + n * concentrations[i]!);
  });
  return species.flatMap(({ name }, i) => {
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

function smallerSystem(system: CompiledSystem, kept: readonly number[]): CompiledSystem {
  const ofSystem = smaller.get(system) ?? new Map<string, CompiledSystem>();
  smaller.set(system, ofSystem);
  const key = kept.join();
  let found = ofSystem.get(key);
  if (found === undefined) {
    const { definition } = system;
    found = compileSystem({ ...definition, species: kept.map((i) => definition.species[i]!) });
    if (ofSystem.size >= MOST_KEPT) ofSystem.clear();
    ofSystem.set(key, found);
  }
  return found;
}

function pick(values: Float64Array, kept: readonly number[]): Float64Array {
  return Float64Array.from(kept, (i) => values[i]!);
}
