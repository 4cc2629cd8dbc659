import type { CompiledSystem } from "./compile.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { equilibrate } from "./equilibrate.ts";
import { MOST_POWER, startFor, WATER_ACTIVITY_NEAR } from "./path-start.ts";
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
  const walk = startWalk(system, conditions, options.nucleation ?? []);
  if ("reason" in walk) return walk;
  const steps: DryDownStep[] = [];
  let state = walk;
  for (const factor of options.factors) {
    const next = stepTo(factor, state);
    if (!next.ok) return { ...next, steps };
    steps.push(next.step);
    state = next.state;
  }
  return { ok: true, steps };
}

/** How a drop dries until the air takes no more water from it. */
export interface DryToOptions {
  /** Water activity at which drying stops: the relative humidity of the air as a share. */
  readonly waterActivity: number;
  /** Factors passed on the way for the record, ascending from 1; beyond them no step is longer than their last ratio. */
  readonly stops: readonly number[];
  /** Factor beyond which the drop is not followed. */
  readonly mostFactor: number;
  readonly nucleation?: DryDownOptions["nucleation"];
  /** The path of a similar solution of the same system: where its steps are nearer, they are starts; the answer is its own. */
  readonly similar?: readonly DryDownStep[];
}

/** A drying path that ends with the air. */
export type DryToResult =
  | {
      readonly ok: true;
      readonly steps: readonly DryDownStep[];
      /** What the last step stands for; "not solved further" keeps the last one that was solved. */
      readonly ended: "at the humidity" | "at the most factor" | "not solved further";
    }
  | Extract<DryDownResult, { ok: false }>;

/** Narrowest bracket of factors, where a solid makes the water activity jump. */
const END_RATIO = 1.01;
/** Times that a step may be shortened where the next one cannot be solved. */
const SHORTER_STEPS = 4;
/** Least power of the factor, in which −ln a_w grows, that a prediction may rest on. */
const LEAST_POWER = 0.7;
/** Least factor from which a path that cannot be solved further still says something about a dry drop. */
const LEAST_USEFUL_FACTOR = 10;

/**
 * Dries a solution until its water activity equals that of the air within 0.002, or within 1 % of the factor where a
 * solid makes it jump. Needs an activity model that gives a water activity.
 *
 * @returns the path with its end, or why there is none ("no-water-activity" when the model gives none)
 * @throws HardstandError `dry-down-factors-invalid` if the stops do not ascend from 1, or the water activity is not
 *   between 0 and 1
 */
export function dryToWaterActivity(
  system: CompiledSystem,
  conditions: Conditions,
  options: DryToOptions,
): DryToResult {
  const { waterActivity: target, stops, mostFactor, similar = [] } = options;
  const ascending = stops.every((stop, k) => stop > (stops[k - 1] ?? 0));
  if (stops[0] !== 1 || stops.length < 2 || !ascending || !(target > 0 && target < 1)) {
    throw new HardstandError("dry-down-factors-invalid", "dryToWaterActivity", { stops, target });
  }
  const walk = startWalk(system, conditions, options.nucleation ?? []);
  if ("reason" in walk) return walk;
  let ratio = stops.at(-1)! / stops.at(-2)!;
  let repeats = 0;
  const steps: DryDownStep[] = [];
  let state = walk;
  for (;;) {
    const factor = Math.min(nextFactor(steps, stops, ratio, target), mostFactor);
    const last = steps.at(-1);
    const next = stepTo(factor, { ...state, start: startFor(factor, state.start, last, similar) });
    if (!next.ok) {
      // A shorter way from the last answer often can be solved where a long one cannot.
      if (last !== undefined && repeats++ < SHORTER_STEPS) {
        ratio = Math.sqrt(Math.min(ratio, factor / last.factor));
        continue;
      }
      const useful = last !== undefined && last.factor >= LEAST_USEFUL_FACTOR;
      return useful ? { ok: true, steps, ended: "not solved further" } : { ...next, steps };
    }
    const water = next.step.equilibrium.waterActivity;
    if (water === null)
      return { ok: false, reason: "no-water-activity", detail: `at factor ${factor}`, steps };
    const near = Math.abs(water - target) <= WATER_ACTIVITY_NEAR;
    if (near || water <= target) {
      const through = near || last === undefined;
      steps.push(through ? next.step : narrowEnd(state, last, next.step, target));
      return { ok: true, steps, ended: "at the humidity" };
    }
    steps.push(next.step);
    if (factor >= mostFactor) return { ok: true, steps, ended: "at the most factor" };
    state = next.state;
  }
}

/**
 * The next stop; beyond the last one, where the path is likely to end, but not further than a ratio away. Along a path
 * −ln a_w grows nearly as a power of the factor, which the last two steps tell.
 */
function nextFactor(
  steps: readonly DryDownStep[],
  stops: readonly number[],
  ratio: number,
  target: number,
): number {
  const last = steps.at(-1);
  if (last === undefined) return stops[0]!;
  const furthest = last.factor * ratio;
  const stop = stops.find((factor) => factor > last.factor * (1 + 1e-9));
  if (stop !== undefined) return Math.min(stop, furthest);
  const drynessOf = (step: DryDownStep): number => -Math.log(step.equilibrium.waterActivity ?? 1);
  const before = steps.at(-2);
  const rise =
    before === undefined
      ? 1
      : Math.log(drynessOf(last) / drynessOf(before)) / Math.log(last.factor / before.factor);
  const power = rise >= LEAST_POWER && rise <= MOST_POWER ? rise : 1;
  const likely = last.factor * (-Math.log(target) / drynessOf(last)) ** (1 / power);
  return likely > last.factor * END_RATIO ? Math.min(likely, furthest) : furthest;
}

/**
 * The end between a factor that is still too wet and a step that is too dry. The logarithm of the water activity falls
 * nearly in proportion to the factor, so a straight line between the two comes close; halving guards against a jump.
 */
function narrowEnd(wet: Walk, wetStep: DryDownStep, dry: DryDownStep, target: number): DryDownStep {
  const activityOf = (step: DryDownStep): number => step.equilibrium.waterActivity ?? Number.NaN;
  let low = wetStep;
  let high = dry;
  let from = wet;
  for (let k = 0; high.factor / low.factor > END_RATIO; k++) {
    const [wetter, drier] = [Math.log(activityOf(low)), Math.log(activityOf(high))];
    const part = k % 3 === 2 ? 0.5 : (wetter - Math.log(target)) / (wetter - drier);
    const width = high.factor - low.factor;
    const trial = stepTo(low.factor + Math.min(0.95, Math.max(0.05, part)) * width, from);
    // A solid that forms between may leave no solution here; the dry side of the bracket stands.
    if (!trial.ok || !Number.isFinite(activityOf(trial.step))) break;
    if (Math.abs(activityOf(trial.step) - target) <= WATER_ACTIVITY_NEAR) return trial.step;
    if (activityOf(trial.step) <= target) high = trial.step;
    else {
      low = trial.step;
      from = trial.state;
    }
  }
  return high;
}

/** Conditions with all totals grown by a factor. */
export function atFactor(conditions: Conditions, factor: number): Conditions {
  const totals_molPerL: Record<string, number> = {};
  for (const [name, total] of Object.entries(conditions.totals_molPerL))
    totals_molPerL[name] = total * factor;
  return { ...conditions, totals_molPerL };
}

/** Where a path has come to: the answer to start from, and the solids that have not nucleated. */
interface Walk {
  readonly system: CompiledSystem;
  readonly conditions: Conditions;
  readonly allowed: readonly string[];
  readonly waiting: ReadonlyMap<string, number>;
  readonly nucleated: readonly string[];
  readonly start: Equilibrium | undefined;
}

function startWalk(
  system: CompiledSystem,
  conditions: Conditions,
  nucleation: NonNullable<DryDownOptions["nucleation"]>,
): Walk | Extract<DryDownResult, { ok: false }> {
  const unknown = nucleation.find((n) => !system.solidIndex.has(n.solid));
  if (unknown !== undefined) return { ok: false, reason: "unknown-solid", detail: unknown.solid, steps: [] };
  const allowed = conditions.solids ?? system.solidNames;
  const waiting = new Map(
    nucleation.filter((n) => allowed.includes(n.solid)).map((n) => [n.solid, n.thresholdSI]),
  );
  return { system, conditions, allowed, waiting, nucleated: [], start: conditions.start };
}

type StepTaken =
  | { readonly ok: true; readonly step: DryDownStep; readonly state: Walk }
  | { readonly ok: false; readonly reason: string; readonly detail: string };

/** Solves at one factor, with every solid that nucleates there. */
function stepTo(factor: number, walk: Walk): StepTaken {
  const { system, conditions, allowed } = walk;
  const { start: _unused, ...rest } = atFactor(conditions, factor);
  const waiting = new Map(walk.waiting);
  const nucleated = [...walk.nucleated];
  let start = walk.start;
  for (;;) {
    const solids = allowed.filter((name) => !waiting.has(name));
    const result = equilibrate(system, {
      ...rest,
      solids,
      ...(start === undefined ? {} : { start }),
    });
    if (!result.ok)
      return { ok: false, reason: result.reason, detail: `at factor ${factor}: ${result.detail}` };
    start = result.value;
    const next = firstOverThreshold(result.value, waiting);
    if (next === null) {
      const step = { factor, equilibrium: result.value, nucleated };
      return { ok: true, step, state: { ...walk, waiting, nucleated, start } };
    }
    waiting.delete(next);
    nucleated.push(next);
  }
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
