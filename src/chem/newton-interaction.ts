import { ACCEPTABLE, evaluate, newtonFixed } from "./newton.ts";
import type { SolveStatus } from "./newton.ts";
import {
  chooseActive,
  evaluateInteractions,
  refreshInteractions,
  updateNetWater,
} from "./interaction-state.ts";
import type { InteractionState } from "./interaction-state.ts";
import { createStep, solveInteractionStep } from "./interaction-step.ts";
import type { InteractionStep } from "./interaction-step.ts";
import type { SolidsStatus } from "./solid-set.ts";
import { chooseBasis, isDominant } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** Share of all molality from which the response to a species is part of Newton's matrix. */
const ACTIVE_SHARE = 1e-3;
/** Mismatch whose next one is likely to be below the tolerance. */
const LIKELY_LAST = 1e-7;
/** Largest change of ln c in one step. */
const LARGEST_STEP = 3;
/** Steps that may fail to lower the mismatch before the relaxed iteration takes over. */
const FAILURES_ALLOWED = 6;
/**
 * Relaxed iteration: first and least share of the mismatch taken over, mismatch that calls for Newton, most turns. Our
 * choice: from 1e-2 Newton doubles its right digits at each step, so that going on slowly would only cost turns.
 */
const FIRST_SHARE = 0.5;
const LEAST_SHARE = 0.02;
const NEAR = 1e-2;
const RELAXED_TURNS = 400;

/** Scratch memory of Newton's step beside that of the linear solve. */
export interface InteractionNewton {
  readonly state: InteractionState;
  readonly offset: Float64Array;
  readonly right: Float64Array;
  readonly water: Float64Array;
  readonly step: InteractionStep;
}

/** Lays out the scratch memory of Newton's method for one system. */
export function createInteractionNewton(
  state: InteractionState,
  components: number,
  species: number,
): InteractionNewton {
  return {
    state,
    offset: new Float64Array(species),
    right: new Float64Array(components),
    water: new Float64Array(1),
    step: createStep(components, species, 1),
  };
}

/** Largest difference between the coefficients in use and those of the present composition; fills `offset` and `water`. */
function mismatch(w: Workspace, k: InteractionNewton): number {
  const { terms, netWater } = k.state;
  const ofWater = terms.lnWaterActivity - w.lnWater;
  k.water[0] = ofWater;
  let largest = Math.abs(ofWater);
  for (let i = 0; i < w.n; i++) {
    const difference = terms.lnGamma[w.speciesOf[i]!]! - w.lnGamma[i]!;
    k.offset[i] = netWater[i]! * ofWater - difference;
    if (!(Math.abs(difference) <= largest)) largest = Math.abs(difference);
  }
  return largest;
}

/**
 * Newton with all activity coefficients and the water activity as unknowns, for a fixed set of solids.
 *
 * Quadratic in what dominates the solution, with a factor of at most `ACTIVE_SHARE` per step in what traces do to it.
 * Not protected by convexity: a mismatch that will not fall ends it as "stalled".
 */
export function newtonInteraction(w: Workspace, k: InteractionNewton, tolerance: number): SolveStatus {
  const { state, offset, right, water, step } = k;
  let previous = Infinity;
  let failures = 0;
  for (;;) {
    let worst = evaluate(w);
    // The derivatives are left out where this is likely to be the answer.
    const near = previous < LIKELY_LAST;
    if (!near) chooseActive(w, state, ACTIVE_SHARE);
    evaluateInteractions(w, state, !near);
    updateNetWater(w, state);
    const difference = mismatch(w, k);
    if (!(difference <= worst)) worst = difference;
    w.lastResidual = worst;
    if (worst <= tolerance) return "converged";
    if (w.iterations >= w.maxIterations) return "iterations";
    if (!(worst <= 0.7 * previous) && ++failures > FAILURES_ALLOWED) {
      return worst <= ACCEPTABLE / 10 ? "converged" : "stalled";
    }
    previous = worst;
    w.iterations++;
    if (near) {
      chooseActive(w, state, ACTIVE_SHARE);
      evaluateInteractions(w, state, true);
    }
    for (let j = 0; j < w.m; j++) if (w.freeOf[j]! >= 0) right[w.freeOf[j]!] = -w.residual[j]!;
    if (!solveInteractionStep(w, state, 1, offset, right, water, step)) return "stalled";
    let largest = 0;
    for (let i = 0; i < w.n; i++) {
      if (!(Math.abs(step.lnC[i]!) <= largest)) largest = Math.abs(step.lnC[i]!);
    }
    if (!Number.isFinite(largest)) return "stalled";
    takeStep(w, k, largest > LARGEST_STEP ? LARGEST_STEP / largest : 1);
    if (!isDominant(w)) chooseBasis(w);
  }
}

/** Moves unknowns and coefficients a factor `t` along the step. */
function takeStep(w: Workspace, { state, step }: InteractionNewton, t: number): void {
  const { member, freeOf, vStart, vValue, vFree } = w;
  for (let i = 0; i < w.n; i++) {
    let change = state.netWater[i]! * step.lnWater[0]! - step.lnC[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const j = vFree[e]!;
      if (j >= 0) change += vValue[e]! * step.lnActivity[j]!;
    }
    w.lnGamma[i] = w.lnGamma[i]! + t * change;
  }
  for (let j = 0; j < w.m; j++) if (freeOf[j]! >= 0) w.y[j] = w.y[j]! + t * step.lnC[member[j]!]!;
  w.lnWater += t * step.lnWater[0]!;
  refreshInteractions(w);
}

/**
 * Takes over a share of the mismatch at a time, with a full solve at fixed coefficients inside each turn.
 *
 * The inner problem is convex and always solved; the share shrinks when the mismatch does not fall. Slow, and only
 * used where Newton stalled. @param near mismatch at which it is done
 */
export function relaxInteractions<S extends SolidsStatus>(
  w: Workspace,
  k: InteractionNewton,
  inner: () => S,
  near: number,
): S | SolveStatus {
  let share = FIRST_SHARE;
  let previous = Infinity;
  for (let turn = 0; turn < RELAXED_TURNS; turn++) {
    const status = inner();
    if (status !== "converged") return status;
    evaluate(w);
    evaluateInteractions(w, k.state, false);
    const difference = mismatch(w, k);
    w.lastResidual = difference;
    if (difference <= near) return "converged";
    if (difference > 0.95 * previous) share = Math.max(LEAST_SHARE, 0.5 * share);
    previous = difference;
    for (let i = 0; i < w.n; i++) {
      const wanted = k.state.terms.lnGamma[w.speciesOf[i]!]!;
      w.lnGamma[i] = w.lnGamma[i]! + share * (wanted - w.lnGamma[i]!);
    }
    w.lnWater += share * k.water[0]!;
    refreshInteractions(w);
    if (!isDominant(w)) chooseBasis(w);
  }
  return "stalled";
}

/** Equilibrium with the present set of solids: Newton, and where it stalls the relaxed iteration until it is near. */
export function solveSetInteraction(w: Workspace, k: InteractionNewton): SolveStatus {
  const status = newtonInteraction(w, k, w.tolerance);
  if (status !== "stalled") return status;
  const near = relaxInteractions(w, k, () => newtonFixed(w, w.tolerance), NEAR);
  return near === "converged" ? newtonInteraction(w, k, w.tolerance) : near;
}
