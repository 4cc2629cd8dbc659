import type { CompiledSystem } from "./compile.ts";
import type { Conditions, Equilibrium, EquilibriumFailure, EquilibriumResult } from "./conditions.ts";
import { isInteraction } from "./interaction-model.ts";
import type { InteractionModel } from "./interaction-model.ts";
import { applyInteractions, createInteractionState, evaluateInteractions } from "./interaction-state.ts";
import { createInteractionNewton } from "./newton-interaction.ts";
import type { InteractionNewton } from "./newton-interaction.ts";
import { setActivity } from "./newton-coupled.ts";
import { TIGHT } from "./newton.ts";
import { prepare } from "./prepare.ts";
import { readEquilibrium } from "./read-equilibrium.ts";
import type { SolidsStatus } from "./solid-set.ts";
import { solveCold, solveFromHere } from "./solve.ts";
import type { SolveTask } from "./solve.ts";
import { chooseBasis, recoverActivities } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

const DEFAULT_ITERATIONS = 2000;
/** Newton steps allowed to the many solves of one bracket, unless the conditions say how many in all. */
const BRACKET_ITERATIONS = 20000;
/** Newton steps per candidate solid, and one more, after which a warm start gives way to a cold one. */
const WARM_ITERATIONS = 25;

const REASONS: Readonly<Record<Exclude<SolidsStatus, "converged">, EquilibriumFailure>> = {
  stalled: "not-converged",
  iterations: "not-converged",
  cycled: "not-converged",
  unstable: "not-converged",
  infeasible: "infeasible-total",
  inconsistent: "inconsistent-solids",
  redundant: "redundant-component",
};

/**
 * Brings a solution to equilibrium: concentrations [mol/L], activities, solids, pH and ionic strength.
 *
 * Damped Newton on a strictly convex function in a basis of abundant species, so that a cold start converges from
 * anywhere; ionic strength as one more unknown with a bracketed fallback; solids appear and vanish one at a time.
 *
 * @param system as compiled; its scratch memory is used, the answer is a copy
 * @param conditions totals [mol/L], fixed activities, activity model, constants, solids allowed
 * @returns an equilibrium, or the reason there is none. Concentrations that did not converge are never returned.
 * @validity any totals for which an equilibrium exists; the activity model's own range is told by `extrapolated`
 * @source Morel & Morgan (1972) Environ. Sci. Technol. 6:58 (tableau); Smith & Missen (1982) Chemical Reaction
 *   Equilibrium Analysis (optimised basis)
 */
export function equilibrate(system: CompiledSystem, conditions: Conditions): EquilibriumResult {
  const preparation = prepare(system, conditions);
  if ("reason" in preparation) return { ok: false, ...preparation, residual: null, iterations: 0 };
  const w = system.workspace;
  const task = solveTask(system, conditions.activity);
  const limit = conditions.maxIterations ?? DEFAULT_ITERATIONS;
  w.iterations = 0;
  w.bracketIterations = conditions.maxIterations ?? BRACKET_ITERATIONS;
  w.tolerance = conditions.tolerance ?? TIGHT;
  w.troubleAt = -1;
  let status: SolidsStatus | null = null;
  if (conditions.start !== undefined && loadStart(system, conditions.start, task)) {
    w.maxIterations = Math.min(limit, WARM_ITERATIONS * (1 + w.q));
    status = solveFromHere(task);
  }
  if (status !== "converged") {
    w.maxIterations = w.iterations + limit;
    status = solveCold(task);
  }
  if (status !== "converged") return failure(system, status);
  recoverActivities(w);
  return { ok: true, value: readEquilibrium(system, preparation, conditions, task) };
}

/** What a solve of the prepared system by a model needs. */
export function solveTask(system: CompiledSystem, activity: Conditions["activity"]): SolveTask {
  const { workspace: w, speciesNames } = system;
  if (!isInteraction(activity)) return { w, model: activity, speciesNames, interactions: null };
  return { w, model: activity.startModel, speciesNames, interactions: interactionsFor(system, activity) };
}

const laidOut = new WeakMap<InteractionModel, WeakMap<CompiledSystem, InteractionNewton>>();

/** The model laid out for a system, once for each pair of the two. */
function interactionsFor(system: CompiledSystem, model: InteractionModel): InteractionNewton {
  let ofModel = laidOut.get(model);
  if (ofModel === undefined) laidOut.set(model, (ofModel = new WeakMap()));
  let found = ofModel.get(system);
  if (found === undefined) {
    const components = system.componentNames.length;
    const species = system.speciesNames.length;
    const terms = model.compile(system.speciesNames, system.speciesCharges);
    const state = createInteractionState(terms, components, species, 1);
    found = createInteractionNewton(state, components, species);
    ofModel.set(system, found);
  }
  return found;
}

/**
 * Puts an earlier answer into the workspace as a start: concentrations, ionic strength and solids.
 * @returns false if it does not fit the prepared problem (another system, or species it had no concentration for)
 */
export function loadStart(system: CompiledSystem, start: Equilibrium, task: SolveTask): boolean {
  const w = system.workspace;
  if (start.system !== system) return false;
  for (let i = 0; i < w.n; i++) {
    const value = start.log10Concentrations[w.speciesOf[i]!]! * Math.LN10;
    if (!Number.isFinite(value)) return false;
    w.lnC[i] = value;
  }
  for (let s = 0; s < w.q; s++) {
    const amount = start.solids[w.solidOf[s]!]!;
    w.present[s] = amount > 0 ? 1 : 0;
    w.amount[s] = Math.max(0, amount);
  }
  if (task.interactions === null) {
    setActivity(w, task.model, task.speciesNames, task.model.ideal ? 0 : start.ionicStrength_molPerL);
  } else startInteractionsAt(w, task.interactions);
  return chooseBasis(w) < 0;
}

/** Coefficients of the composition in `lnC`. */
function startInteractionsAt(w: Workspace, { state }: InteractionNewton): void {
  for (let i = 0; i < w.n; i++) w.c[i] = Math.exp(w.lnC[i]!);
  evaluateInteractions(w, state, false);
  for (let i = 0; i < w.n; i++) w.lnGamma[i] = state.terms.lnGamma[w.speciesOf[i]!]!;
  w.lnWater = state.terms.lnWaterActivity;
  applyInteractions(w);
}

function failure(system: CompiledSystem, status: Exclude<SolidsStatus, "converged">): EquilibriumResult {
  const w = system.workspace;
  return {
    ok: false,
    reason: REASONS[status],
    detail: describe(system, status),
    residual: Number.isFinite(w.lastResidual) ? w.lastResidual : null,
    iterations: w.iterations,
  };
}

/** The component or species at fault where one is known, else how the solve ended. */
function describe(system: CompiledSystem, status: SolidsStatus): string {
  const w = system.workspace;
  const at = w.troubleAt;
  if (status === "redundant" && at >= 0) return system.componentNames[w.componentOf[at]!]!;
  if (status === "infeasible" && at >= 0 && w.member[at]! >= 0) {
    const species = system.speciesNames[w.speciesOf[w.member[at]!]!]!;
    return `the totals leave nothing for ${species}: no mixture of the species adds up to them`;
  }
  return `${status} after ${w.iterations} iterations`;
}
