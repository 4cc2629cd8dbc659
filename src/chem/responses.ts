import type { CompiledInteractions } from "./interaction-model.ts";
import {
  chooseActive,
  createInteractionState,
  evaluateInteractions,
  updateNetWater,
} from "./interaction-state.ts";
import { createStep, solveInteractionStep } from "./interaction-step.ts";
import { backSubstitute, factorBalances } from "./newton.ts";
import { borders } from "./newton-coupled.ts";
import type { InBasis, Response } from "./sensitivities.ts";
import type { Workspace } from "./workspace.ts";

/** Smallest 1 − d I_out / d I that is told from zero. */
const SINGULAR = 1e-12;

/**
 * Responses with activity coefficients that follow the ionic strength: one factorisation, one back-substitution each.
 * @returns null if the balances or the ionic strength have no unique response
 */
export function strengthResponses(
  w: Workspace,
  ideal: boolean,
  changes: readonly InBasis[],
): readonly Response[] | null {
  if (!factorBalances(w)) return null;
  let pivot = 1;
  if (ideal) w.weight.fill(0, 0, w.n);
  else {
    pivot = borders(w);
    backSubstitute(w, w.bordered);
    for (let k = 0; k < w.free; k++) pivot += w.border[k]! * w.bordered[k]!;
  }
  if (!(Math.abs(pivot) > SINGULAR)) return null;
  return changes.map((change) => strengthResponse(w, ideal, pivot, change));
}

function strengthResponse(
  w: Workspace,
  ideal: boolean,
  pivot: number,
  { ofTotal, ofBeta }: InBasis,
): Response {
  const { m, n, member, freeOf, vStart, vValue, vFree, c } = w;
  const step = new Float64Array(w.free);
  let dI = 0;
  for (let k = 0; k < m; k++) if (freeOf[k]! >= 0) step[freeOf[k]!] = ofTotal[k]!;
  for (let i = 0; i < n; i++) {
    dI += w.halfZ2[i]! * c[i]! * ofBeta[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k >= 0) step[k] = step[k]! - vValue[e]! * c[i]! * ofBeta[i]!;
    }
  }
  backSubstitute(w, step);
  if (ideal) dI = 0;
  else {
    for (let k = 0; k < w.free; k++) dI += w.border[k]! * step[k]!;
    dI /= pivot;
    for (let k = 0; k < w.free; k++) step[k] = step[k]! - w.bordered[k]! * dI;
  }
  const lnC = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let d = ofBeta[i]! + w.weight[i]! * dI;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vFree[e]!;
      if (k >= 0) d += vValue[e]! * step[k]!;
    }
    lnC[i] = d;
  }
  const lnActivity = new Float64Array(m);
  for (let k = 0; k < m; k++) {
    const row = member[k]!;
    if (row >= 0) lnActivity[k] = lnC[row]! + w.dLnGamma[row]! * dI;
  }
  return { lnC, lnActivity, lnWater: 0 };
}

/** Responses with activity coefficients that follow the whole composition, all from one factorisation; null if singular. */
export function interactionResponses(
  w: Workspace,
  terms: CompiledInteractions,
  changes: readonly InBasis[],
): readonly Response[] | null {
  const columns = changes.length;
  const state = createInteractionState(terms, w.m, terms.lnGamma.length, columns);
  chooseActive(w, state, 0);
  evaluateInteractions(w, state, true);
  updateNetWater(w, state);
  const offset = new Float64Array(w.n * columns);
  const right = new Float64Array(w.free * columns);
  changes.forEach(({ ofTotal, ofBeta }, p) => {
    for (let i = 0; i < w.n; i++) offset[i * columns + p] = ofBeta[i]!;
    for (let k = 0; k < w.m; k++) {
      if (w.freeOf[k]! >= 0) right[w.freeOf[k]! * columns + p] = ofTotal[k]!;
    }
  });
  const step = createStep(w.m, w.n, columns);
  if (!solveInteractionStep(w, state, columns, offset, right, new Float64Array(columns), step)) return null;
  return changes.map((_, p) => ({
    lnC: Float64Array.from({ length: w.n }, (_unused, i) => step.lnC[i * columns + p]!),
    lnActivity: Float64Array.from({ length: w.m }, (_unused, k) => {
      const f = w.freeOf[k]!;
      return f < 0 ? 0 : step.lnActivity[f * columns + p]!;
    }),
    lnWater: step.lnWater[p]!,
  }));
}
