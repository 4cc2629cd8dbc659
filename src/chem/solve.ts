import { findRoot } from "../numerics/index.ts";
import type { ActivityModel } from "./activity.ts";
import { coordinatePasses } from "./coordinate-passes.ts";
import { ACCEPTABLE, evaluate, newtonFixed } from "./newton.ts";
import type { SolveStatus } from "./newton.ts";
import { ionicStrengthOf, newtonCoupled, setActivity, setIonicStrength } from "./newton-coupled.ts";
import { relaxInteractions, solveSetInteraction } from "./newton-interaction.ts";
import type { InteractionNewton } from "./newton-interaction.ts";
import { settleSolids } from "./solid-set.ts";
import type { SolidsStatus } from "./solid-set.ts";
import { chooseBasis, useLabels } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** Everything one solve needs besides the workspace. */
export interface SolveTask {
  readonly w: Workspace;
  /** The model, or the one an interaction model starts from. */
  readonly model: ActivityModel;
  readonly speciesNames: readonly string[];
  /** Set for an interaction model. */
  readonly interactions: InteractionNewton | null;
}

/** Starting activity of components that some species release, and of those with no total to go by. */
const LN_TRACE = Math.log(1e-7);
/** Ionic strength [mol/L] from which a first guess by totals is not trusted. */
const FIRST_GUESS_LIMIT = 0.5;
/** Ionic strength [mol/L] beyond which activity coefficients are not evaluated. */
const ABSURD = 1e4;
/** ln of a water activity above 1: no solution of solutes in water is stable there, the model is out of its depth. */
const UNSTABLE = 1e-9;
/** Scaled residual at which a solution is good enough to start another model from. */
const ROUGH = 1e-2;
/** Solves from scratch, with no solid present at first. */
export function solveCold(task: SolveTask): SolidsStatus {
  const { w } = task;
  w.present.fill(0, 0, w.q);
  w.amount.fill(0, 0, w.q);
  const status = startFromTotals(task, guessIonicStrength(w));
  if (status !== "converged") return status;
  if (task.interactions !== null) {
    const rough = startInteractions(task);
    if (rough !== "converged") return rough;
  }
  return solveFromHere(task);
}

/** Solves from the unknowns, the basis and the solids now in the workspace. */
export function solveFromHere(task: SolveTask): SolidsStatus {
  const { w, model, interactions } = task;
  if (interactions !== null) return solveInteractions(w, interactions);
  if (model.ideal || !isCharged(w)) return settleSolids(w, () => newtonFixed(w, w.tolerance));
  const status = settleSolids(w, () => solveSetCoupled(task));
  if (status !== "cycled" && status !== "stalled") return status;
  // With activity coefficients that follow the solids a set may come back; at a fixed ionic strength it cannot.
  w.present.fill(0, 0, w.q);
  w.amount.fill(0, 0, w.q);
  return bracketIonicStrength(task, () => settleSolids(w, () => newtonFixed(w, w.tolerance)));
}

/** A rough solution by the start model, its ionic strength brought up to date once. */
function startInteractions({ w, model, speciesNames }: SolveTask): SolveStatus {
  w.lnWater = 0;
  for (let turn = 0; turn < 2; turn++) {
    const status = newtonFixed(w, ROUGH);
    if (status !== "converged") return status;
    if (turn === 0) setIonicStrength(w, model, speciesNames, Math.min(ABSURD, ionicStrengthOf(w)));
  }
  return "converged";
}

function solveInteractions(w: Workspace, interactions: InteractionNewton): SolidsStatus {
  const status = settleSolids(w, () => solveSetInteraction(w, interactions));
  if (status === "converged" && w.lnWater <= UNSTABLE) return status;
  if (status !== "cycled" && status !== "stalled" && status !== "converged") return status;
  // As with Davies: a set of solids can come back only while the coefficients follow it.
  const allowed = w.maxIterations;
  w.maxIterations = w.iterations + w.bracketIterations;
  const inner = (): SolidsStatus => settleSolids(w, () => newtonFixed(w, w.tolerance));
  const relaxed = relaxInteractions(w, interactions, inner, ACCEPTABLE);
  w.maxIterations = allowed;
  return relaxed === "converged" && w.lnWater > UNSTABLE ? "unstable" : relaxed;
}

function solveSetCoupled(task: SolveTask): SolveStatus {
  const { w, model, speciesNames } = task;
  const status = newtonCoupled(w, model, speciesNames, w.tolerance);
  if (status !== "stalled") return status;
  return bracketIonicStrength(task, () => newtonFixed(w, w.tolerance));
}

function isCharged(w: Workspace): boolean {
  for (let i = 0; i < w.n; i++) if (w.halfZ2[i] !== 0) return true;
  w.ionicStrength = 0;
  return false;
}

/** Half the sum of all totals, as if they were free ions of charge one, kept modest [mol/L]. */
function guessIonicStrength(w: Workspace): number {
  let sum = 0;
  for (let k = 0; k < w.m; k++) sum += 0.5 * Math.abs(w.totalHigh[k]!);
  return Math.min(FIRST_GUESS_LIMIT, Math.max(1e-7, sum));
}

/** Rough concentrations from the totals: coordinate passes in the components, then the first dominant basis. */
function startFromTotals(task: SolveTask, ionicStrength: number): SolveStatus {
  const { w, model, speciesNames } = task;
  setActivity(w, model, speciesNames, isCharged(w) ? ionicStrength : 0);
  const takes = w.scratch.fill(0, 0, w.m);
  for (let e = 0; e < w.aStart[w.n]!; e++) if (w.aValue[e]! < 0) takes[w.aIndex[e]!] = 1;
  for (let k = 0; k < w.m; k++) {
    w.y[k] = takes[k] === 0 && w.totalHigh[k]! > 0 ? Math.log(w.totalHigh[k]!) : LN_TRACE;
  }
  useLabels(w);
  // A fault here is not final: with solids, or in another basis, the balance may close.
  coordinatePasses(w, 40);
  w.troubleAt = chooseBasis(w);
  return w.troubleAt < 0 ? "converged" : "redundant";
}

/**
 * Ionic strength as the root of I_out(I) − I, with a full solve inside at each trial.
 *
 * The difference is not negative at zero and negative for large I, so a root exists and the bracket always closes on
 * it; going up from below by doubling finds the lowest one and never evaluates coefficients at absurd values.
 */
function bracketIonicStrength<S extends SolidsStatus>(task: SolveTask, inner: () => S): S | SolveStatus {
  const { w, model, speciesNames } = task;
  let trouble: S | SolveStatus = "converged";
  const excess = (I: number): number => {
    setIonicStrength(w, model, speciesNames, I);
    let status: S | SolveStatus = inner();
    if (status !== "converged") {
      status = startFromTotals(task, I);
      if (status === "converged") status = inner();
    }
    if (status !== "converged") trouble = status;
    evaluate(w);
    return ionicStrengthOf(w) - I;
  };
  const allowed = w.maxIterations;
  w.maxIterations = w.iterations + w.bracketIterations;
  let low = 0;
  let gap = excess(low);
  let high = Math.min(gap, 1e-3);
  while (trouble === "converged" && high > 0) {
    gap = excess(high);
    if (gap <= 0) break;
    low = high;
    high *= 2;
    if (high > ABSURD) trouble = "stalled";
  }
  if (trouble === "converged" && gap < 0) {
    const root = findRoot(excess, low, high, { xTolerance: 1e-14 * high, fTolerance: 1e-13 * low });
    // The last trial need not have been at the root.
    if (!root.ok || Math.abs(excess(root.x)) > 1e-10 * root.x) trouble = "stalled";
  }
  w.maxIterations = allowed;
  return trouble;
}
