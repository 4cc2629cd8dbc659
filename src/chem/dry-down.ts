import type { CompiledSystem } from "./compile.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { equilibrate } from "./equilibrate.ts";
import { HardstandError } from "../units/index.ts";

/** How far to dry, and which solids need a push before they form. */
export interface DryDownOptions {
  /**
   * Concentration factors in ascending order: litres of the first solution per litre of liquid left. With an
   * interaction model: kg of water at first per kg of liquid water left, which is what a drying droplet loses; at
   * 5 mol/kg a litre of liquid holds 0.7 kg of water, so the two are not the same. Water bound in solids is not liquid.
   */
  readonly factors: readonly number[];
  /**
   * Solids that stay away until their saturation index first exceeds a threshold at one of the factors; from then on
   * they come to equilibrium like any other.
   */
  readonly nucleation?: readonly { readonly solid: string; readonly thresholdSI: number }[];
}

/** One stop of a drying path. Amounts and concentrations are per litre of liquid left (interaction model: per kg of water left). */
export interface DryDownStep {
  readonly factor: number;
  readonly equilibrium: Equilibrium;
  /** Names of the solids that have nucleated so far. */
  readonly nucleated: readonly string[];
}

/** A drying path, or where it broke off and why. */
export type DryDownResult =
  | { readonly ok: true; readonly steps: readonly DryDownStep[] }
  | {
      readonly ok: false;
      readonly reason: string;
      readonly detail: string;
      readonly steps: readonly DryDownStep[];
    };

/**
 * Takes water out of a solution step by step: totals grow by the concentration factor, fixed activities (an open gas)
 * stay, solids form and dissolve. The path has no memory but for nucleation, so its end does not depend on the steps
 * between unless a solid nucleates on the way and would not have done so at the end.
 *
 * @returns the steps, or those reached and why the next failed (a nucleating solid that the system does not have is
 *   "unknown-solid"). A nucleating solid that the conditions do not allow never forms.
 * @throws HardstandError `dry-down-factors-invalid` if a factor is not positive or they do not ascend
 */
export function dryDown(
  system: CompiledSystem,
  conditions: Conditions,
  options: DryDownOptions,
): DryDownResult {
  options.factors.forEach((factor, k) => {
    if (!(factor > (options.factors[k - 1] ?? 0)) || factor === Infinity) {
      throw new HardstandError("dry-down-factors-invalid", "dryDown", { factors: options.factors });
    }
  });
  const nucleation = options.nucleation ?? [];
  const unknown = nucleation.find((n) => !system.solidIndex.has(n.solid));
  if (unknown !== undefined) return { ok: false, reason: "unknown-solid", detail: unknown.solid, steps: [] };
  const allowed = conditions.solids ?? system.solidNames;
  const waiting = new Map(
    nucleation.filter((n) => allowed.includes(n.solid)).map((n) => [n.solid, n.thresholdSI]),
  );
  const nucleated: string[] = [];
  const steps: DryDownStep[] = [];
  let start: Equilibrium | undefined = conditions.start;
  for (const factor of options.factors) {
    const totals_molPerL: Record<string, number> = {};
    for (const [name, total] of Object.entries(conditions.totals_molPerL))
      totals_molPerL[name] = total * factor;
    for (;;) {
      const solids = allowed.filter((name) => !waiting.has(name));
      const { start: _unused, ...rest } = conditions;
      const result = equilibrate(system, {
        ...rest,
        totals_molPerL,
        solids,
        ...(start === undefined ? {} : { start }),
      });
      if (!result.ok) {
        return { ok: false, reason: result.reason, detail: `at factor ${factor}: ${result.detail}`, steps };
      }
      start = result.value;
      const next = firstOverThreshold(result.value, waiting);
      if (next === null) {
        steps.push({ factor, equilibrium: result.value, nucleated: [...nucleated] });
        break;
      }
      waiting.delete(next);
      nucleated.push(next);
    }
  }
  return { ok: true, steps };
}

/** The waiting solid that exceeds its threshold by most, or null. */
function firstOverThreshold(equilibrium: Equilibrium, waiting: ReadonlyMap<string, number>): string | null {
  let found: string | null = null;
  let most = 0;
  for (const [solid, threshold] of waiting) {
    const index = equilibrium.system.solidIndex.get(solid);
    const excess = index === undefined ? -1 : equilibrium.saturationIndices[index]! - threshold;
    if (excess > most) {
      most = excess;
      found = solid;
    }
  }
  return found;
}
