import type { SolveStatus } from "./newton.ts";
import { chooseBasis, recoverActivities } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** Amount, relative to what the solid draws on, below which a negative amount is rounding. */
const AMOUNT_NOISE = 1e-13;
/** Supersaturation (natural log per mole of ions released) that calls for a solid. */
const SATURATION_NOISE = 1e-9;

/** How the search for the set of solids ended. */
export type SolidsStatus = SolveStatus | "inconsistent" | "cycled" | "unstable";

/**
 * Finds which candidate solids are present, solving the equilibrium for one set after another.
 *
 * An active-set method on the convex function of the amounts whose gradient is −ln saturation: from the last feasible
 * amounts it goes towards the amounts of the solved set, stops where one would become negative and drops that solid;
 * once all are non-negative it takes in the most supersaturated one. Each full step lowers the function, so at fixed
 * activity coefficients no set comes back (ties of exactly zero apart; the number of turns is bounded).
 * @param solveSet equilibrium with the solids of `present`, from the present unknowns
 */
export function settleSolids(w: Workspace, solveSet: () => SolveStatus): SolidsStatus {
  const limit = 40 + 12 * w.q;
  for (let turn = 0; turn < limit; turn++) {
    const status = solveSet();
    if (status !== "converged" || w.q === 0) return status;
    const blocking = acceptAmounts(w);
    if (blocking >= 0) {
      w.present[blocking] = 0;
      w.amount[blocking] = 0;
    } else {
      const wanted = mostSupersaturated(w);
      if (wanted < 0) return "converged";
      if (!admit(w, wanted)) return "inconsistent";
    }
    chooseBasis(w);
  }
  return "cycled";
}

/**
 * Moves the amounts towards those of the solved set, from the balances as its solve left them; returns the solid that
 * blocks the way at zero, or -1.
 */
function acceptAmounts(w: Workspace): number {
  const { m, member, amount, solved } = w;
  let blocking = -1;
  let reach = 1;
  let deficit = 0;
  for (let k = 0; k < m; k++) {
    if (member[k]! >= 0) continue;
    const s = -1 - member[k]!;
    const p = -w.residual[k]!;
    solved[s] = p;
    if (p >= -AMOUNT_NOISE * w.scale[k]!) continue;
    const ratio = amount[s]! / (amount[s]! - p);
    const relative = p / w.scale[k]!;
    if (blocking < 0 || ratio < reach || (ratio === reach && relative < deficit)) {
      blocking = s;
      reach = ratio;
      deficit = relative;
    }
  }
  for (let k = 0; k < m; k++) {
    if (member[k]! >= 0) continue;
    const s = -1 - member[k]!;
    const next = blocking < 0 ? solved[s]! : amount[s]! + reach * (solved[s]! - amount[s]!);
    amount[s] = Math.max(0, next);
  }
  return blocking;
}

/** The absent candidate with the largest supersaturation per mole of ions, or -1; fills `saturation` (natural log). */
function mostSupersaturated(w: Workspace): number {
  recoverActivities(w);
  let best = -1;
  let largest = SATURATION_NOISE;
  for (let s = 0; s < w.q; s++) {
    let product = -w.lnKsp[s]!;
    let ions = 0;
    for (let e = w.sStart[s]!; e < w.sStart[s + 1]!; e++) {
      const coefficient = w.sValue[e]! / w.coefficientScale;
      product += coefficient * w.lnActivity[w.sIndex[e]!]!;
      ions += Math.abs(coefficient);
    }
    w.saturation[s] = product;
    if (w.present[s] === 0 && product / ions > largest) {
      largest = product / ions;
      best = s;
    }
  }
  return best;
}

/**
 * Takes a solid into the present set. If its composition depends on those present (polymorphs, chains of minerals),
 * it replaces the one that it uses up first, as in a simplex pivot: this is the phase rule.
 * @returns false if it depends on them without using any up, so that the constants contradict each other
 */
function admit(w: Workspace, wanted: number): boolean {
  const { m, member, basis, amount } = w;
  const row = basis.express(w.sIndex, w.sValue, w.sStart[wanted]!, w.sStart[wanted + 1]!);
  let dependent = true;
  for (let k = 0; k < m; k++) if (member[k]! >= 0 && row[k] !== 0) dependent = false;
  w.present[wanted] = 1;
  amount[wanted] = 0;
  if (!dependent) return true;
  let leaving = -1;
  let most = Infinity;
  for (let k = 0; k < m; k++) {
    const used = row[k]! / basis.denominator;
    if (member[k]! >= 0 || used <= 0) continue;
    const s = -1 - member[k]!;
    if (amount[s]! / used < most) {
      most = amount[s]! / used;
      leaving = s;
    }
  }
  if (leaving < 0) return false;
  for (let k = 0; k < m; k++) {
    if (member[k]! >= 0) continue;
    const s = -1 - member[k]!;
    amount[s] = Math.max(0, amount[s]! - (most * row[k]!) / basis.denominator);
  }
  amount[wanted] = most;
  w.present[leaving] = 0;
  amount[leaving] = 0;
  return true;
}
