import type { CompiledSystem } from "./compile.ts";
import type { Conditions, Equilibrium, EquilibriumResult } from "./conditions.ts";
import { atFactor } from "./dry-down.ts";
import { equilibrate } from "./equilibrate.ts";
import { MOST_POWER, WATER_ACTIVITY_NEAR } from "./path-start.ts";

/** Tries to meet a water activity from a factor near it; how far one may go (ln), and on which least power. */
const SETTLE_STEPS = 10;
const SETTLE_MOST_STEP = 1.2;
const SETTLE_LEAST_POWER = 0.1;

/** Where a drop is in balance with the air, or why that was not found. */
export type SettleResult =
  | { readonly ok: true; readonly factor: number; readonly equilibrium: Equilibrium }
  | { readonly ok: false; readonly reason: string; readonly detail: string };

/**
 * The end of a drying path that is already known to lie near a factor, for conditions a little different from those of
 * a path followed in full: no stops on the way, so no solid can nucleate there.
 *
 * @param conditions as at a factor of 1
 * @param waterActivity relative humidity of the air as a share; null keeps the factor
 * @param nearEnough how near the water activity must come to it
 * @param solved the answer at `near`, where that is known already
 */
export function settleNear(
  system: CompiledSystem,
  conditions: Conditions,
  near: number,
  waterActivity: number | null,
  nearEnough = WATER_ACTIVITY_NEAR,
  solved: Equilibrium | null = null,
): SettleResult {
  let factor = near;
  let start = conditions.start;
  let before: { readonly lnFactor: number; readonly dryness: number } | null = null;
  let wet = 0;
  let dry = Infinity;
  for (let k = 0; k < SETTLE_STEPS; k++) {
    const result: EquilibriumResult =
      k === 0 && solved !== null
        ? { ok: true, value: solved }
        : equilibrate(system, {
            ...atFactor(conditions, factor),
            ...(start === undefined ? {} : { start }),
          });
    if (!result.ok)
      return { ok: false, reason: result.reason, detail: `at factor ${factor}: ${result.detail}` };
    const { value } = result;
    if (waterActivity === null) return { ok: true, factor, equilibrium: value };
    if (value.waterActivity === null) return { ok: false, reason: "no-water-activity", detail: "" };
    if (Math.abs(value.waterActivity - waterActivity) <= nearEnough) {
      return { ok: true, factor, equilibrium: value };
    }
    const here = { lnFactor: Math.log(factor), dryness: Math.log(-Math.log(value.waterActivity)) };
    if (value.waterActivity > waterActivity) wet = Math.max(wet, factor);
    else dry = Math.min(dry, factor);
    const rise = before === null ? 1 : (here.dryness - before.dryness) / (here.lnFactor - before.lnFactor);
    // Over a crystallising salt the water activity hardly moves while most of the water goes.
    const power = Math.min(MOST_POWER, Math.max(SETTLE_LEAST_POWER, rise));
    const step = (Math.log(-Math.log(waterActivity)) - here.dryness) / power;
    factor *= Math.exp(Math.min(SETTLE_MOST_STEP, Math.max(-SETTLE_MOST_STEP, step)));
    if (factor <= wet || factor >= dry) factor = Math.sqrt(wet * Math.min(dry, 1e6));
    before = here;
    start = value;
  }
  return {
    ok: false,
    reason: "not-settled",
    detail: `water activity ${waterActivity} not met near factor ${near}`,
  };
}
