import { drawProgramme } from "./bands/programme-draws.ts";
import type { Effort } from "./bands/calibrate.ts";
import type { DrawnAim, DrawSetting, ProgrammeDraws } from "./bands/programme-draws.ts";
import { RATE_FACTOR } from "./bands/model-uncertainty.ts";
import { leafShare, tankShare } from "./active-shares.ts";
import { bindingOf, computedComponents } from "./binding-known.ts";
import { byClock, clockRange } from "./clock.ts";
import { DRYING_STOPS } from "./chemistry.ts";
import type { Chemistry } from "./chemistry.ts";
import { airedIron } from "./iron-air.ts";
import { dryingEnd, interactionsFromMemory, leafPaths } from "./leaf.ts";
import { onMud } from "./mud.ts";
import { sharesOf } from "./shares.ts";
import type { Steps } from "./steps.ts";
import type { Tank, TankActive } from "./tank.ts";
import type {
  ActiveVerdict,
  DryingEnd,
  DryingStep,
  Place,
  RuleVerdict,
  SolidAmount,
  TankState,
} from "./types.ts";
import type { DryDownStep, Equilibrium } from "../chem/index.ts";
import { quantileOf } from "../numerics/index.ts";

/** A numerical failure, with its reason: shown, never papered over. */
export interface Failed {
  readonly ok: false;
  readonly reason: string;
  readonly detail: string;
}
export type Computed<T> = { readonly ok: true; readonly value: T } | Failed;

/** The state of a tank and the three answers for each active in it. */
export interface TankVerdict {
  readonly state: TankState;
  readonly actives: readonly ActiveVerdict[];
  /** Central drying path. */
  readonly path: readonly DryingStep[];
  readonly drying: DryingEnd;
  /** Free shares over the draws; null when nothing was drawn or no active's binding is known. */
  readonly draws: ProgrammeDraws | null;
}

/**
 * Works out the three answers for every active of a tank; `rulesFor` adds what is published about each.
 *
 * @param drawn draws to give each answer its range; null for central answers only
 * @param effort that goes into the ranges
 * @param aim what they are held against
 */
export function* judgeTank(
  tank: Tank,
  chemistry: Chemistry,
  drawn: DrawSetting | null,
  effort: Effort,
  aim: DrawnAim,
  holdingTime_h: number | null,
  rulesFor: (active: TankActive, state: TankState) => readonly RuleVerdict[],
): Steps<Computed<TankVerdict>> {
  const solved = chemistry.inTank(tank);
  if (!solved.ok) return { ok: false, reason: solved.reason, detail: `in the tank: ${solved.detail}` };
  const dried = yield* leafPaths(tank, chemistry, DRYING_STOPS);
  if (!dried.ok) return dried;
  const paths = dried.value;
  const state = tankState(tank, solved.value);
  const components = judgedComponents(tank);
  let draws: ProgrammeDraws | null = null;
  if (drawn !== null && components.length > 0) {
    const central = { answer: solved.value, paths };
    const carried = yield* drawProgramme(tank, central, components, drawn, chemistry, effort, aim);
    if (!carried.ok) return carried;
    draws = carried.value;
  }
  const actives = tank.actives.map((active): ActiveVerdict => {
    const record = active.product.active;
    const { formulation } = active.product.item;
    const clock = byClock(record, formulation, state.pH, tank.temperature_C, holdingTime_h);
    const component = active.component ?? "";
    return {
      active: record.id,
      name: record.name,
      concentration_molPerL: active.concentration_molPerL,
      inTank: { ...tankShare(active, solved.value), ...rangeOf(draws?.inTank.get(component)) },
      onMud: onMud(active, tank),
      onLeaf: { ...leafShare(active, paths), ...rangeOf(draws?.onLeaf.get(component)) },
      byClock:
        draws === null || drawn === null
          ? clock
          : clockRange(record, clock, tank.temperature_C, holdingTime_h, {
              pH: draws.pH,
              z: drawn.draws.normal(`rate:${record.id}`),
              spread: RATE_FACTOR,
            }),
      rules: rulesFor(active, state),
    };
  });
  return {
    ok: true,
    value: {
      state,
      actives,
      path: paths["at threshold"].steps.map((step) => dryingStep(step, tank.actives)),
      drying: dryingEnd(paths["at threshold"], chemistry.humidity),
      draws,
    },
  };
}

/** Components of the actives whose binding can be computed, each once. */
function judgedComponents(tank: Tank): readonly string[] {
  return computedComponents(tank).map(({ component }) => component);
}

/** 5th and 95th percentile of draws; null ends where there are none. */
function rangeOf(values: Float64Array | undefined): {
  readonly low: number | null;
  readonly high: number | null;
} {
  if (values === undefined) return { low: null, high: null };
  const sorted = values.slice().sort();
  return { low: quantileOf(sorted, 0.05), high: quantileOf(sorted, 0.95) };
}

/**
 * Least free share over the actives of each draw, at one place.
 *
 * @param factors each active's amount against the plan [1], so that the share is one of the planned rate; 1 if left out
 */
export function leastOfDraws(
  draws: ProgrammeDraws,
  where: Place,
  tank: Tank,
  factors: readonly number[],
): Float64Array {
  const columns = where === "in the tank" ? draws.inTank : draws.onLeaf;
  const least = new Float64Array(draws.pH.length).fill(Infinity);
  tank.actives.forEach((active, a) => {
    const column = columns.get(active.component ?? "");
    if (column === undefined) return;
    const factor = factors[a] ?? 1;
    for (let i = 0; i < least.length; i++) least[i] = Math.min(least[i]!, factor * column[i]!);
  });
  return least;
}

/**
 * Free share that the least free active reaches in a given share of the draws, to first order; null when there is no
 * active whose binding is known.
 */
export function* sureFree(
  tank: Tank,
  chemistry: Chemistry,
  drawn: DrawSetting,
  aim: { readonly where: Place; readonly confidence: number },
  stops: readonly number[],
  factors: readonly number[] = [],
): Steps<Computed<number | null>> {
  const components = judgedComponents(tank);
  if (components.length === 0) return { ok: true, value: null };
  const solved = chemistry.inTank(tank);
  if (!solved.ok) return { ok: false, reason: solved.reason, detail: `in the tank: ${solved.detail}` };
  const paths = yield* leafPaths(tank, chemistry, stops, true);
  if (!paths.ok) return paths;
  const central = { answer: solved.value, paths: paths.value };
  const carried = yield* drawProgramme(tank, central, components, drawn, chemistry, "first order");
  if (!carried.ok) return carried;
  const least = leastOfDraws(carried.value, aim.where, tank, factors).sort();
  return { ok: true, value: quantileOf(least, 1 - aim.confidence) };
}

/**
 * Least free share over the actives whose binding can be computed, at one place; null when there is none.
 *
 * @param factors each active's amount against the plan [1], so that the share is one of the planned rate; 1 if left out
 */
export function leastFree(
  tank: Tank,
  chemistry: Chemistry,
  where: Place,
  stops: readonly number[],
  factors: readonly number[] = [],
): Computed<number | null> {
  const judged = tank.actives.flatMap((a, i) =>
    a.component === null || bindingOf(a).kind !== "computed"
      ? []
      : [{ component: a.component, factor: factors[i] ?? 1 }],
  );
  if (judged.length === 0) return { ok: true, value: null };
  let equilibrium: Equilibrium;
  if (where === "in the tank") {
    const solved = chemistry.inTank(tank);
    if (!solved.ok) return { ok: false, reason: solved.reason, detail: solved.detail };
    equilibrium = solved.value;
  } else {
    const dried = chemistry.dry(tank, "at threshold", stops);
    const last = dried.steps.at(-1);
    if (!dried.ok || last === undefined) {
      return {
        ok: false,
        reason: dried.ok ? "empty-path" : dried.reason,
        detail: dried.ok ? "" : dried.detail,
      };
    }
    equilibrium = last.equilibrium;
  }
  const shares = judged.map(({ component, factor }) => factor * sharesOf(equilibrium, component).free);
  return { ok: true, value: Math.min(...shares) };
}

function tankState(tank: Tank, equilibrium: Equilibrium): TankState {
  const pH = equilibrium.pH ?? Number.NaN;
  return {
    pH,
    ionicStrength_molPerL: equilibrium.ionicStrength_molPerL,
    solids: solidsOf(equilibrium),
    extrapolated: equilibrium.extrapolated,
    fromMemory: interactionsFromMemory(equilibrium),
    ferrousIron: airedIron(tank, pH),
  };
}

function solidsOf(equilibrium: Equilibrium): readonly SolidAmount[] {
  return equilibrium.system.solidNames.flatMap((name, i) => {
    const amount_molPerL = equilibrium.solids[i] ?? 0;
    return amount_molPerL > 0 ? [{ name, amount_molPerL }] : [];
  });
}

function dryingStep(step: DryDownStep, actives: readonly TankActive[]): DryingStep {
  const free: Record<string, number | null> = {};
  const heldBy: Record<string, Readonly<Record<string, number>>> = {};
  for (const active of actives) {
    const known = bindingOf(active).kind === "computed";
    const shares = known ? sharesOf(step.equilibrium, active.component ?? "") : null;
    free[active.product.active.id] = shares?.free ?? null;
    heldBy[active.product.active.id] = shares?.heldBy ?? {};
  }
  return {
    factor: step.factor,
    pH: step.equilibrium.pH ?? Number.NaN,
    ionicStrength_molPerL: step.equilibrium.ionicStrength_molPerL,
    free,
    heldBy,
    solids: solidsOf(step.equilibrium),
    waterActivity: step.equilibrium.waterActivity,
    extrapolated: step.equilibrium.extrapolated,
  };
}
