import type { Equilibrium } from "./conditions.ts";
import type { DryDownStep } from "./dry-down.ts";

/** How near the end comes to the water activity of the air; hygrometers are ten times worse. */
export const WATER_ACTIVITY_NEAR = 0.002;
/** Largest power of the factor, in which −ln a_w grows, that a prediction may rest on. */
export const MOST_POWER = 2;

/**
 * Where to start at a factor: the nearest answer of a similar solution, moved by how much this one differed from it at
 * the last stop; else the last answer of this path.
 */
export function startFor(
  factor: number,
  here: Equilibrium | undefined,
  last: DryDownStep | undefined,
  similar: readonly DryDownStep[],
): Equilibrium | undefined {
  const own = last === undefined ? Infinity : Math.log(factor / last.factor);
  const nearest = nearestStep(factor, similar);
  if (nearest === undefined || Math.abs(Math.log(factor / nearest.factor)) >= own) return here;
  const before = last === undefined ? undefined : nearestStep(last.factor, similar);
  if (last === undefined || before === undefined || before.factor !== last.factor) return nearest.equilibrium;
  return moved(nearest.equilibrium, before.equilibrium, last.equilibrium);
}

function nearestStep(factor: number, steps: readonly DryDownStep[]): DryDownStep | undefined {
  let found: DryDownStep | undefined;
  for (const step of steps) {
    const distance = Math.abs(Math.log(factor / step.factor));
    if (found === undefined || distance < Math.abs(Math.log(factor / found.factor))) found = step;
  }
  return found;
}

/** An answer moved by the difference of two others of its system; as it is where those hold other solids. */
function moved(answer: Equilibrium, from: Equilibrium, to: Equilibrium): Equilibrium {
  const { system } = answer;
  if (from.system !== system || to.system !== system) return answer;
  if (to.solids.some((amount, s) => amount > 0 !== from.solids[s]! > 0)) return answer;
  const log10Concentrations = answer.log10Concentrations.map(
    (value, i) => value + to.log10Concentrations[i]! - from.log10Concentrations[i]!,
  );
  return { ...answer, log10Concentrations };
}
