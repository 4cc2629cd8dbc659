import { findRoot } from "../numerics/index.ts";
import type { ActivityModel } from "./activity.ts";
import type { CompiledSystem } from "./compile.ts";
import type { Conditions, Equilibrium, EquilibriumFailure, EquilibriumResult } from "./conditions.ts";
import { coordinatePasses } from "./coordinate-passes.ts";
import {
  evaluate,
  ionicStrengthOf,
  newtonCoupled,
  newtonFixed,
  setActivity,
  setIonicStrength,
  TIGHT,
} from "./newton.ts";
import type { SolveStatus } from "./newton.ts";
import { prepare } from "./prepare.ts";
import { settleSolids } from "./solid-set.ts";
import { chooseBasis, recoverActivities, refreshLnC, useLabels } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";
import { readEquilibrium } from "./read-equilibrium.ts";

const DEFAULT_ITERATIONS = 2000;
const SWEEPS = 60;
/** ln of the start activity of a component whose total says nothing. */
const LN_GUESS = Math.log(1e-7);
/** Ionic strength [mol/L] beyond which no bracket is looked for. */
const MOST_IONIC_STRENGTH = 1e4;

/** Result of one solve at a set of solids, with the label at fault where there is one. */
export interface SetSolve {
  readonly status: SolveStatus;
  readonly label: number;
}

/**
 * Brings a solution to equilibrium: concentrations [mol/L], activities, solids, pH and ionic strength.
 *
 * Damped Newton on a strictly convex function in a basis of abundant species, so that a cold start converges from
 * anywhere; ionic strength as one more unknown with a bracketed fallback; solids appear and vanish one at a time.
 *
 * @returns an equilibrium, or the reason there is none. Concentrations that did not converge are never returned.
 * @source Morel & Morgan (1972) Environ. Sci. Technol. 6:58 (tableau); Smith & Missen (1982) Chemical Reaction
 *   Equilibrium Analysis (optimised basis)
 */
export function equilibrate(system: CompiledSystem, conditions: Conditions): EquilibriumResult {
  const warm = conditions.start;
  if (warm !== undefined && warm.system === system) {
    const result = attempt(system, conditions, warm);
    if (result.ok) return result;
  }
  return attempt(system, conditions, null);
}

function attempt(
  system: CompiledSystem,
  conditions: Conditions,
  warm: Equilibrium | null,
): EquilibriumResult {
  const preparation = prepare(system, conditions);
  if ("reason" in preparation) return { ok: false, ...preparation, residual: null, iterations: 0 };
  const w = system.workspace;
  w.iterations = 0;
  w.maxIterations = conditions.maxIterations ?? DEFAULT_ITERATIONS;
  const fail = (reason: EquilibriumFailure, detail: string): EquilibriumResult => ({
    ok: false,
    reason,
    detail,
    residual: Number.isFinite(w.lastResidual) ? w.lastResidual : null,
    iterations: w.iterations,
  });

  const model = conditions.activity;
  const names = system.speciesNames;
  const started = warm === null ? startCold(w, model, names) : startWarm(w, model, names, warm);
  const first = started.status === "converged" ? solveSet(w, model, names) : started;
  const settled = first.status === "converged" ? settleSolids(w, () => solveSet(w, model, names)) : first;
  switch (settled.status) {
    case "converged":
      break;
    case "infeasible":
      return fail("infeasible-total", labelName(system, settled.label));
    case "redundant":
      return fail("redundant-component", labelName(system, settled.label));
    default:
      return fail("not-converged", `${settled.status} after ${w.iterations} iterations`);
  }
  recoverActivities(w);
  return { ok: true, value: readEquilibrium(system, preparation, conditions) };
}

function labelName(system: CompiledSystem, label: number): string {
  const component = label >= 0 ? system.workspace.componentOf[label] : undefined;
  return component === undefined ? "a combination of totals" : (system.componentNames[component] ?? "");
}

/** Unknowns from the totals, passes in the labels, the first basis of abundant species, a rough ionic strength. */
function startCold(w: Workspace, model: ActivityModel, names: readonly string[]): SetSolve {
  const onlyGives = new Uint8Array(w.m).fill(1);
  for (let e = 0; e < w.aStart[w.n]!; e++) if (w.aValue[e]! < 0) onlyGives[w.aIndex[e]!] = 0;
  setActivity(w, model, names, 0);
  for (let k = 0; k < w.m; k++) {
    const total = w.totalHigh[k]!;
    w.y[k] = onlyGives[k] === 1 && total > 0 ? Math.log(total) : LN_GUESS;
  }
  useLabels(w);
  const fault = coordinatePasses(w, SWEEPS);
  if (fault >= 0) return { status: "infeasible", label: fault };
  refreshLnC(w);
  const redundant = chooseBasis(w);
  if (redundant >= 0) return { status: "redundant", label: redundant };
  if (coordinatePasses(w, SWEEPS) >= 0) return { status: "infeasible", label: -1 };
  refreshLnC(w);
  if (!model.ideal) {
    const rough = newtonFixed(w, 0.1);
    if (rough !== "converged") return { status: rough, label: -1 };
    setIonicStrength(w, model, names, Math.min(ionicStrengthOf(w), 1));
    chooseBasis(w);
  }
  return { status: "converged", label: -1 };
}

/** Unknowns, ionic strength and solids of an earlier answer. */
function startWarm(
  w: Workspace,
  model: ActivityModel,
  names: readonly string[],
  warm: Equilibrium,
): SetSolve {
  setActivity(w, model, names, model.ideal ? 0 : warm.ionicStrength_molPerL);
  for (let k = 0; k < w.m; k++) {
    const known = warm.log10Activities[w.componentOf[k]!]! * Math.LN10;
    w.y[k] = Number.isFinite(known) ? known : LN_GUESS;
  }
  useLabels(w);
  w.basis.reset(w.m, w.integerCoefficients);
  for (let s = 0; s < w.q; s++) {
    const wasPresent = warm.solids[w.solidOf[s]!]! > 0;
    const independent = wasPresent && w.basis.offer(w.sIndex, w.sValue, w.sStart[s]!, w.sStart[s + 1]!) >= 0;
    w.present[s] = independent ? 1 : 0;
  }
  const redundant = chooseBasis(w);
  return redundant >= 0 ? { status: "redundant", label: redundant } : { status: "converged", label: -1 };
}

/** Solves at the present set of solids, activity coefficients included. */
function solveSet(w: Workspace, model: ActivityModel, names: readonly string[]): SetSolve {
  if (model.ideal) return { status: newtonFixed(w, TIGHT), label: -1 };
  const status = newtonCoupled(w, model, names, TIGHT);
  if (status === "converged") return { status, label: -1 };
  return { status: bracketIonicStrength(w, model, names), label: -1 };
}

/**
 * Finds the ionic strength as a bracketed root of (what the solution at I gives) − I, with a full solve inside.
 * The difference is ≥ 0 at I = 0 and negative for large I, so there is a root; the bracket is raised from below by
 * doubling, because activity formulas overflow at absurd ionic strengths.
 */
function bracketIonicStrength(w: Workspace, model: ActivityModel, names: readonly string[]): SolveStatus {
  let failed: SolveStatus | null = null;
  const excess = (I: number): number => {
    setIonicStrength(w, model, names, I);
    if (chooseBasis(w) >= 0) failed = "redundant";
    const status = newtonFixed(w, TIGHT);
    if (status !== "converged") failed = status;
    evaluate(w);
    return ionicStrengthOf(w) - I;
  };
  let low = 0;
  let high = 1e-6;
  while (failed === null && excess(high) > 0) {
    low = high;
    high *= 2;
    if (high > MOST_IONIC_STRENGTH) return "stalled";
  }
  if (failed !== null) return failed;
  const root = findRoot(excess, low, high, { xTolerance: 1e-14 * high, maxEvaluations: 200 });
  if (failed !== null) return failed;
  const gap = root.ok ? excess(root.x) : Infinity;
  return root.ok && Math.abs(gap) <= 1e-10 * root.x ? "converged" : "stalled";
}
