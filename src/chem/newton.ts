import { factorCholesky, solveCholesky } from "../numerics/index.ts";
import { coordinatePasses } from "./coordinate-passes.ts";
import { chooseBasis, isDominant, refreshLnC } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** How a solve at a fixed set of solids ended. */
export type SolveStatus = "converged" | "stalled" | "iterations" | "infeasible" | "redundant";

/** Scaled residual at which a solve is done, and the one accepted when steps have sunk into rounding. */
export const TIGHT = 1e-12;
export const ACCEPTABLE = 1e-9;
/** Scaled residual above which coordinate passes come before Newton. */
const FAR = 0.1;
/** Below this largest change of ln c the full step needs no line search (which would only see rounding). */
const SAFE_STEP = 0.3;
/** Unknowns (natural log) below this: products of concentrations underflow, scaled sums are used. */
const UNDERFLOW = -300;

/** Concentrations, balance residuals and their scales; returns the largest scaled residual of the free balances. */
export function evaluate(w: Workspace): number {
  const { n, m, vStart, vIndex, vValue, lnC, c, residual, scale, total } = w;
  for (let k = 0; k < m; k++) {
    residual[k] = -total[k]!;
    scale[k] = 0;
  }
  for (let i = 0; i < n; i++) {
    const ci = Math.exp(lnC[i]!);
    c[i] = ci;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vIndex[e]!;
      const part = vValue[e]! * ci;
      residual[k] = residual[k]! + part;
      scale[k] = scale[k]! + Math.abs(part);
    }
  }
  let worst = 0;
  for (let k = 0; k < m; k++) {
    if (Math.abs(total[k]!) > scale[k]!) scale[k] = Math.abs(total[k]!);
    if (w.freeOf[k]! < 0 || scale[k] === 0) continue;
    const relative = Math.abs(residual[k]!) / scale[k]!;
    if (relative > worst) worst = relative;
    else if (relative !== relative) worst = Infinity;
  }
  w.lastResidual = worst;
  return worst;
}

/** True where products of concentrations of free basis members may underflow. */
export function underflows({ m, freeOf, y }: Workspace): boolean {
  for (let k = 0; k < m; k++) if (freeOf[k]! >= 0 && y[k]! < UNDERFLOW) return true;
  return false;
}

/**
 * Newton's matrix over the free unknowns, factored; right-hand side −residual goes to `step`.
 *
 * Everything is divided by √(c_k c_l), which in a dominant basis leaves a unit diagonal or a little more; `diagonal`
 * carries that scaling on to `backSubstitute`.
 */
export function factorBalances(w: Workspace): boolean {
  const { m, free, matrix, freeOf, y } = w;
  matrix.fill(0, 0, free * free);
  const scaled = underflows(w);
  if (scaled) addScaledProducts(w);
  else addProducts(w);
  if (!factorCholesky(matrix, free, w.diagonal)) return false;
  if (scaled) {
    for (let k = 0; k < m; k++) {
      const f = freeOf[k]!;
      if (f >= 0) w.diagonal[f] = w.diagonal[f]! * Math.exp(Math.min(700, -0.5 * y[k]!));
    }
  }
  return true;
}

/** The lower triangle of Vᵀ C V. */
function addProducts({ n, free, matrix, vStart, vValue, vFree, c }: Workspace): void {
  let from = 0;
  for (let i = 0; i < n; i++) {
    const to = vStart[i + 1]!;
    const ci = c[i]!;
    for (let e = from; e < to; e++) {
      const k = vFree[e]!;
      if (k < 0) continue;
      const left = vValue[e]! * ci;
      const row = k * free;
      // Entries ascend, so those up to this one are its part of the triangle.
      for (let o = from; o <= e; o++) {
        const l = vFree[o]!;
        if (l >= 0) matrix[row + l] = matrix[row + l]! + left * vValue[o]!;
      }
    }
    from = to;
  }
}

/** The same divided by √(c_k c_l) of the basis members. */
function addScaledProducts({ n, free, matrix, vStart, vIndex, vValue, vFree, y, lnC }: Workspace): void {
  const root = (i: number, e: number): number => vValue[e]! * Math.exp(0.5 * (lnC[i]! - y[vIndex[e]!]!));
  for (let i = 0; i < n; i++) {
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k < 0) continue;
      const left = root(i, e);
      for (let o = vStart[i]!; o <= e; o++) {
        const l = vFree[o]!;
        if (l >= 0) matrix[k * free + l] = matrix[k * free + l]! + left * root(i, o);
      }
    }
  }
}

/** Solves the factored balances for one right-hand side over the free unknowns, in place. */
export function backSubstitute(w: Workspace, x: Float64Array): void {
  solveCholesky(w.matrix, w.free, w.diagonal, x);
}

/** Change of ln c of every row for a step of the free unknowns, into `slope`; returns the largest. */
function rowSteps(w: Workspace, step: Float64Array): number {
  const { n, vStart, vValue, vFree, slope } = w;
  let largest = 0;
  for (let i = 0; i < n; i++) {
    let s = 0;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k >= 0) s += vValue[e]! * step[k]!;
    }
    slope[i] = s;
    if (!(Math.abs(s) <= largest)) largest = Math.abs(s);
  }
  return largest;
}

/** Moves the unknowns along `step` by the factor `t` and refreshes all concentrations. */
function move(w: Workspace, step: Float64Array, t: number): void {
  for (let k = 0; k < w.m; k++) {
    const f = w.freeOf[k]!;
    if (f >= 0) w.y[k] = w.y[k]! + t * step[f]!;
  }
  refreshLnC(w);
}

/** Longest sensible step: no ln c moves by more than 20, no species grows past what its scarcest total allows. */
function stepCap(w: Workspace, largest: number): number {
  let cap = largest > 20 ? 20 / largest : 1;
  for (let i = 0; i < w.n; i++) {
    const s = w.slope[i]!;
    if (s <= 0) continue;
    const room = Math.max(1, Math.log(w.limit[i]!) - w.lnC[i]!);
    if (cap * s > room) cap = room / s;
  }
  return cap;
}

/** Slope along the step of the convex function that is minimised, after going a factor `t` along it. */
function slopeAt(w: Workspace, totalsAlong: number, t: number): number {
  let value = -totalsAlong;
  for (let i = 0; i < w.n; i++) {
    const s = w.slope[i]!;
    if (s !== 0) value += s * Math.exp(w.lnC[i]! + t * s);
  }
  return value;
}

/** Factor along the step at which the slope has fallen to half or less of what it was, at most `cap`. */
function lineSearch(w: Workspace, cap: number): number {
  let totalsAlong = 0;
  for (let k = 0; k < w.m; k++) {
    if (w.freeOf[k]! >= 0) totalsAlong += w.total[k]! * w.step[w.freeOf[k]!]!;
  }
  const start = slopeAt(w, totalsAlong, 0);
  if (!(start < 0)) return Math.min(cap, 1);
  const enough = -0.5 * start;
  let low = 0;
  let high = Infinity;
  let t = Math.min(1, cap);
  for (let trial = 0; trial < 50; trial++) {
    const value = slopeAt(w, totalsAlong, t);
    if (Math.abs(value) <= enough) return t;
    if (value < 0) {
      low = t;
      if (t >= cap) return t;
      t = high === Infinity ? Math.min(cap, 3 * t) : 0.5 * (low + high);
    } else {
      high = t;
      t = low === 0 ? 0.3 * t : 0.5 * (low + high);
    }
  }
  return low > 0 ? low : t;
}

/** Passes in the working basis and, if they upset the order of abundance, a new basis; -1 or the balance at fault. */
function passesAndBasis(w: Workspace, sweeps: number): number {
  const fault = coordinatePasses(w, sweeps);
  if (fault >= 0) {
    w.troubleAt = fault;
    return fault;
  }
  refreshLnC(w);
  if (!isDominant(w)) chooseBasis(w);
  return -1;
}

/**
 * Damped Newton at fixed activity coefficients and a fixed set of solids, from the present unknowns.
 *
 * The function minimised is strictly convex, so the damped step converges from any start (Boyd & Vandenberghe 2004,
 * ch. 9); judged in the dominant basis, the scaled residual also bounds the relative error of every concentration.
 * Longer than usual because the steps share one state and their order matters.
 */
export function newtonFixed(w: Workspace, tolerance: number): SolveStatus {
  let worst = evaluate(w);
  let afterPasses = false;
  for (;;) {
    if (worst <= tolerance) return "converged";
    if (w.iterations >= w.maxIterations) return "iterations";
    if (!(worst <= FAR) && !afterPasses) {
      if (passesAndBasis(w, 40) >= 0) return "infeasible";
      worst = evaluate(w);
      if (worst <= tolerance) return "converged";
    }
    w.iterations++;
    if (!factorBalances(w)) {
      // Only far from the answer: a basis gone stale. Passes mend it.
      chooseBasis(w);
      if (passesAndBasis(w, 40) >= 0) return "infeasible";
      evaluate(w);
      if (!factorBalances(w)) return "stalled";
    }
    for (let k = 0; k < w.m; k++) if (w.freeOf[k]! >= 0) w.step[w.freeOf[k]!] = -w.residual[k]!;
    backSubstitute(w, w.step);
    const largest = rowSteps(w, w.step);
    if (!Number.isFinite(largest)) return "stalled";
    let t = 1;
    let capped = false;
    if (largest >= SAFE_STEP) {
      const cap = stepCap(w, largest);
      t = lineSearch(w, cap);
      capped = t >= cap || t < 0.05;
    }
    move(w, w.step, t);
    afterPasses = capped;
    if (capped) {
      if (passesAndBasis(w, 4) >= 0) return "infeasible";
    } else if (!isDominant(w)) chooseBasis(w);
    worst = evaluate(w);
    if (largest * t < 1e-13) return worst <= ACCEPTABLE ? "converged" : "stalled";
  }
}
