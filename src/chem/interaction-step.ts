import { factorDense, solveFactored } from "../numerics/index.ts";
import type { InteractionState } from "./interaction-state.ts";
import { underflows } from "./newton.ts";
import type { Workspace } from "./workspace.ts";

/** Finds the free unknowns that active rows depend on; the others get no response through the coefficients. */
function collectUsed(w: Workspace, s: InteractionState): number {
  s.usedAt.fill(-1);
  let uses = 0;
  for (let a = 0; a < s.activeCount; a++) {
    const i = s.active[a]!;
    for (let e = w.vStart[i]!; e < w.vStart[i + 1]!; e++) {
      const k = w.vFree[e]!;
      if (k < 0 || s.usedAt[k]! >= 0) continue;
      s.used[uses] = k;
      s.usedAt[k] = uses++;
    }
  }
  return uses;
}

/** A linearised change of the whole solution, for each right-hand side p: entries at [i · columns + p]. */
export interface InteractionStep {
  /** Of ln c per row. */
  readonly lnC: Float64Array;
  /** Of the ln activity of free basis members. */
  readonly lnActivity: Float64Array;
  /** Of ln a_w. */
  readonly lnWater: Float64Array;
}

/** Lays out a step. */
export function createStep(components: number, species: number, columns: number): InteractionStep {
  return {
    lnC: new Float64Array(species * columns),
    lnActivity: new Float64Array(components * columns),
    lnWater: new Float64Array(columns),
  };
}

/**
 * Solves the linearised equilibrium with the response of all activity coefficients to all molalities.
 *
 * With u = d ln c, η = d ln a of the free basis members and G = ∂ ln γ / ∂ m: (1 + G C − w hᵀ C) u = V η + offset for
 * the mass actions (w the net water, h = ∂ ln a_w / ∂ m) and Vᵀ C u = right for the balances. Nothing responds to rows
 * that are not active; they respond to the active ones, in a second pass over the balances. The net water and the
 * derivatives by the active rows must be up to date.
 * @param columns number of right-hand sides, p in what follows
 * @param offset change of the mass action per row; `right` change asked of the balances per free unknown, both at
 *   [· columns + p]; `water` the part of the change of ln a_w that is given
 * @returns false if the matrix is singular
 */
export function solveInteractionStep(
  w: Workspace,
  s: InteractionState,
  columns: number,
  offset: Float64Array,
  right: Float64Array,
  water: Float64Array,
  out: InteractionStep,
): boolean {
  const uses = collectUsed(w, s);
  if (!solveActiveRows(w, s, uses, columns, offset)) return false;
  const { half, activeRow, outer, outerPivots, offsets } = s;
  for (let k = 0; k < w.m; k++) {
    if (w.freeOf[k]! >= 0) half[w.freeOf[k]!] = Math.exp(Math.min(700, -0.5 * w.y[k]!));
  }
  offsets.set(offset.subarray(0, w.n * columns));
  for (let i = 0; i < w.n; i++) {
    const a = activeRow[i]!;
    for (let p = 0; p < columns && a >= 0; p++) {
      offsets[i * columns + p] = s.responses[a * (uses + columns) + uses + p]!;
    }
  }
  balanceMatrix(w, s, uses, columns);
  balanceRight(w, s, columns, right, out.lnActivity);
  if (!factorDense(outer, w.free, outerPivots)) return false;
  solveFactored(outer, w.free, outerPivots, out.lnActivity, columns);
  unscale(w, s, columns, out.lnActivity);
  changesOfActive(s, uses, columns, out);
  if (s.activeCount < w.n) {
    respondToActive(w, s, columns, out);
    balanceRight(w, s, columns, right, out.lnActivity);
    solveFactored(outer, w.free, outerPivots, out.lnActivity, columns);
    unscale(w, s, columns, out.lnActivity);
    changesOfActive(s, uses, columns, out);
    changesOfOthers(w, s, columns, out);
  }
  for (let p = 0; p < columns; p++) {
    let change = water[p]!;
    for (let b = 0; b < s.activeCount; b++) {
      const i = s.active[b]!;
      change += s.terms.waterSlope[b]! * w.c[i]! * out.lnC[i * columns + p]!;
    }
    out.lnWater[p] = change;
  }
  return true;
}

/** u of the active rows per unit of each used unknown and for the offsets, into `responses`. */
function solveActiveRows(
  w: Workspace,
  s: InteractionState,
  uses: number,
  columns: number,
  offset: Float64Array,
): boolean {
  const { vStart, vValue, vFree, c, speciesOf } = w;
  const { active, activeCount, activeRow, inner, innerPivots, responses, usedAt } = s;
  const { jacobian, waterSlope } = s.terms;
  const width = uses + columns;
  activeRow.fill(-1);
  for (let a = 0; a < activeCount; a++) {
    const i = active[a]!;
    activeRow[i] = a;
    const line = speciesOf[i]! * activeCount;
    const water = s.netWater[i]!;
    for (let b = 0; b < activeCount; b++) {
      const g = jacobian[line + b]! - water * waterSlope[b]!;
      inner[a * activeCount + b] = (a === b ? 1 : 0) + g * c[active[b]!]!;
    }
    responses.fill(0, a * width, a * width + uses);
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k >= 0) responses[a * width + usedAt[k]!] = vValue[e]!;
    }
    for (let p = 0; p < columns; p++) responses[a * width + uses + p] = offset[i * columns + p]!;
  }
  if (!factorDense(inner, activeCount, innerPivots)) return false;
  solveFactored(inner, activeCount, innerPivots, responses, width);
  return true;
}

/** Vᵀ C U over the free unknowns, scaled by √c of the basis members on both sides as in `factorBalances`. */
function balanceMatrix(w: Workspace, s: InteractionState, uses: number, columns: number): void {
  const { n, free, vStart, vIndex, vValue, vFree, c, lnC, y } = w;
  const { outer, responses, activeRow, used, half, entryFactor } = s;
  outer.fill(0, 0, free * free);
  const scaled = underflows(w);
  for (let i = 0; i < n; i++) {
    const from = vStart[i]!;
    const to = vStart[i + 1]!;
    const response = activeRow[i]! * (uses + columns);
    for (let e = from; e < to; e++) {
      const k = vFree[e]!;
      if (k < 0) continue;
      const weight = scaled ? Math.exp(lnC[i]! - 0.5 * y[vIndex[e]!]!) : c[i]! * half[k]!;
      const factor = vValue[e]! * weight;
      entryFactor[e] = factor;
      const line = k * free;
      if (response >= 0) {
        for (let l = 0; l < uses; l++) {
          const at = line + used[l]!;
          outer[at] = outer[at]! + factor * responses[response + l]! * half[used[l]!]!;
        }
        continue;
      }
      for (let o = from; o < to; o++) {
        const l = vFree[o]!;
        if (l >= 0) outer[line + l] = outer[line + l]! + factor * vValue[o]! * half[l]!;
      }
    }
  }
}

/** What is left for the unknowns to do in the scaled balances, after the offsets; once `balanceMatrix` has run. */
function balanceRight(
  w: Workspace,
  s: InteractionState,
  columns: number,
  right: Float64Array,
  into: Float64Array,
): void {
  const { n, free, vStart, vFree } = w;
  const { entryFactor } = s;
  for (let k = 0; k < free; k++) {
    for (let p = 0; p < columns; p++) into[k * columns + p] = right[k * columns + p]! * s.half[k]!;
  }
  for (let i = 0; i < n; i++) {
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k < 0) continue;
      const factor = entryFactor[e]!;
      for (let p = 0; p < columns; p++) {
        into[k * columns + p] = into[k * columns + p]! - factor * s.offsets[i * columns + p]!;
      }
    }
  }
}

function unscale(w: Workspace, s: InteractionState, columns: number, unknowns: Float64Array): void {
  for (let k = 0; k < w.free; k++) {
    for (let p = 0; p < columns; p++) unknowns[k * columns + p] = unknowns[k * columns + p]! * s.half[k]!;
  }
}

function changesOfActive(s: InteractionState, uses: number, columns: number, out: InteractionStep): void {
  for (let a = 0; a < s.activeCount; a++) {
    const i = s.active[a]!;
    for (let p = 0; p < columns; p++) {
      let u = s.offsets[i * columns + p]!;
      for (let l = 0; l < uses; l++) {
        u += s.responses[a * (uses + columns) + l]! * out.lnActivity[s.used[l]! * columns + p]!;
      }
      out.lnC[i * columns + p] = u;
    }
  }
}

/** Adds to the offsets of the other rows what the changes of the active ones do to their coefficients. */
function respondToActive(w: Workspace, s: InteractionState, columns: number, out: InteractionStep): void {
  const { jacobian, waterSlope } = s.terms;
  for (let i = 0; i < w.n; i++) {
    if (s.activeRow[i]! >= 0) continue;
    const line = w.speciesOf[i]! * s.activeCount;
    for (let b = 0; b < s.activeCount; b++) {
      const j = s.active[b]!;
      const factor = (jacobian[line + b]! - s.netWater[i]! * waterSlope[b]!) * w.c[j]!;
      for (let p = 0; p < columns; p++) {
        s.offsets[i * columns + p] = s.offsets[i * columns + p]! - factor * out.lnC[j * columns + p]!;
      }
    }
  }
}

function changesOfOthers(w: Workspace, s: InteractionState, columns: number, out: InteractionStep): void {
  const { vStart, vValue, vFree } = w;
  for (let i = 0; i < w.n; i++) {
    if (s.activeRow[i]! >= 0) continue;
    for (let p = 0; p < columns; p++) {
      let u = s.offsets[i * columns + p]!;
      for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
        const k = vFree[e]!;
        if (k >= 0) u += vValue[e]! * out.lnActivity[k * columns + p]!;
      }
      out.lnC[i * columns + p] = u;
    }
  }
}
