import type { ActivityModel } from "./activity.ts";
import { ACCEPTABLE, backSubstitute, evaluate, factorBalances, newtonFixed } from "./newton.ts";
import type { SolveStatus } from "./newton.ts";
import { chooseBasis, isDominant, refreshBeta, refreshLnC } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** Activity coefficients, their derivatives and ln K − ln γ at ionic strength `I` [mol/L]. */
export function setActivity(w: Workspace, model: ActivityModel, names: readonly string[], I: number): void {
  w.ionicStrength = I;
  for (let i = 0; i < w.n; i++) {
    const name = names[w.speciesOf[i]!]!;
    const lnGamma = model.lnGamma(w.charge[i]!, name, I);
    w.lnGamma[i] = lnGamma;
    w.dLnGamma[i] = model.dLnGamma(w.charge[i]!, name, I);
    w.b[i] = w.lnK[i]! - lnGamma;
  }
}

/** As `setActivity`, with everything in the working basis brought up to date at constant unknowns. */
export function setIonicStrength(
  w: Workspace,
  model: ActivityModel,
  names: readonly string[],
  I: number,
): void {
  setActivity(w, model, names, I);
  refreshBeta(w);
  refreshLnC(w);
}

/** Ionic strength [mol/L] of the present concentrations. */
export function ionicStrengthOf(w: Workspace): number {
  let I = 0;
  for (let i = 0; i < w.n; i++) I += w.halfZ2[i]! * w.c[i]!;
  return I;
}

/**
 * Derivative of beta by the ionic strength per row into `weight`, and the two borders of Newton's matrix
 * (`bordered` = d balances / dI, `border` = d I_out / dy); returns 1 − d I_out / dI at constant unknowns.
 */
export function borders(w: Workspace): number {
  const { n, m, vStart, vIndex, vValue, vFree, member, dLnGamma, c, halfZ2, weight, bordered, border } = w;
  bordered.fill(0, 0, w.free);
  border.fill(0, 0, w.free);
  let h = 1;
  for (let i = 0; i < n; i++) {
    let wi = -dLnGamma[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const row = member[vIndex[e]!]!;
      if (row >= 0) wi += vValue[e]! * dLnGamma[row]!;
    }
    weight[i] = wi;
  }
  for (let k = 0; k < m; k++) if (member[k]! >= 0) weight[member[k]!] = 0;
  for (let i = 0; i < n; i++) {
    const charged = halfZ2[i]! * c[i]!;
    h -= charged * weight[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k < 0) continue;
      bordered[k] = bordered[k]! + vValue[e]! * c[i]! * weight[i]!;
      border[k] = border[k]! + vValue[e]! * charged;
    }
  }
  return h;
}

/**
 * Newton with the ionic strength as one more unknown, from a rough solution at fixed activity coefficients.
 *
 * Quadratic near the answer but not protected by convexity: a residual that will not fall ends it as "stalled", and
 * the caller brackets the ionic strength instead. Longer than usual because the steps share one state.
 */
export function newtonCoupled(
  w: Workspace,
  model: ActivityModel,
  names: readonly string[],
  tolerance: number,
): SolveStatus {
  const rough = newtonFixed(w, 1e-2);
  if (rough !== "converged") return rough;
  let previous = Infinity;
  let failures = 0;
  for (;;) {
    let worst = evaluate(w);
    const reached = ionicStrengthOf(w);
    const gap = w.ionicStrength - reached;
    const reference = Math.max(w.ionicStrength, reached);
    if (reference > 0) worst = Math.max(worst, Math.abs(gap) / reference);
    w.lastResidual = worst;
    if (worst <= tolerance) return "converged";
    if (w.iterations >= w.maxIterations) return "iterations";
    if (worst > 0.7 * previous && ++failures > 3) return worst <= ACCEPTABLE / 10 ? "converged" : "stalled";
    previous = worst;
    w.iterations++;
    if (!factorBalances(w)) return "stalled";
    const h = borders(w);
    const { free, step, bordered, border, ionicStrength } = w;
    for (let k = 0; k < w.m; k++) if (w.freeOf[k]! >= 0) step[w.freeOf[k]!] = -w.residual[k]!;
    backSubstitute(w, step);
    backSubstitute(w, bordered);
    let pivot = h;
    let right = -gap;
    for (let k = 0; k < free; k++) {
      pivot += border[k]! * bordered[k]!;
      right += border[k]! * step[k]!;
    }
    // The pivot is 1 − dI_out/dI: not positive means this is not on the way to a locally unique root.
    if (!(pivot > 1e-6)) return "stalled";
    let change = right / pivot;
    let t = 1;
    if (change > 2 * ionicStrength && ionicStrength > 0) t = (2 * ionicStrength) / change;
    if (change < -0.7 * ionicStrength) t = Math.min(t, (-0.7 * ionicStrength) / change);
    let largest = 0;
    for (let k = 0; k < free; k++) {
      step[k] = step[k]! - bordered[k]! * change;
      if (!(Math.abs(step[k]!) <= largest)) largest = Math.abs(step[k]!);
    }
    if (!Number.isFinite(largest)) return "stalled";
    if (largest * t > 3) t = 3 / largest;
    change *= t;
    for (let k = 0; k < w.m; k++) {
      const f = w.freeOf[k]!;
      if (f >= 0) w.y[k] = w.y[k]! + t * step[f]!;
    }
    setIonicStrength(w, model, names, ionicStrength + change);
    if (!isDominant(w)) chooseBasis(w);
  }
}
