import { compensatedDot } from "../numerics/index.ts";
import type { DoubleDouble } from "../numerics/index.ts";
import type { Workspace } from "./workspace.ts";

/** How far (natural log) a species may outgrow a basis member it uses before the basis is chosen anew. */
const HYSTERESIS = 2.3;

/** Mark of a solid that was offered to the basis and left out again: unlike any it may have when it is offered anew. */
const DEPENDENT = 2;

const sum: DoubleDouble = { high: 0, low: 0 };

/**
 * Makes the labels themselves the working basis: unknowns are the ln activities of the components.
 * The caller sets `y` to them.
 */
export function useLabels(w: Workspace): void {
  const { n, m } = w;
  const unscale = 1 / w.coefficientScale;
  w.isBasisChosen = false;
  w.basis.reset(m, w.integerCoefficients);
  let entry = 0;
  for (let i = 0; i < n; i++) {
    for (let e = w.aStart[i]!; e < w.aStart[i + 1]!; e++) {
      w.vIndex[entry] = w.aIndex[e]!;
      w.vValue[entry] = w.aValue[e]! * unscale;
      entry++;
    }
    w.vStart[i + 1] = entry;
    w.beta[i] = w.b[i]!;
  }
  for (let k = 0; k < m; k++) {
    w.member[k] = k;
    w.freeOf[k] = k;
    w.total[k] = w.totalHigh[k]! + w.totalLow[k]!;
  }
  w.free = m;
  buildColumns(w);
  refreshLnC(w);
}

/**
 * Chooses the working basis anew: present solids first, then the most abundant independent species.
 *
 * Concentrations are taken from `lnC`, and so are the new unknowns; species outside the basis are recomputed from
 * them. Each species outside the basis is at most as abundant as every (free) member it uses, which bounds the
 * condition number of Newton's matrix whatever the constants and totals (Smith & Missen 1982, optimised basis).
 * @returns the position of a label that depends on the others, or -1 when the basis is complete
 */
export function chooseBasis(w: Workspace): number {
  const { m, basis, member } = w;
  sortByAbundance(w);
  if (!standsAsChosen(w)) {
    takeMembers(w, w.integerCoefficients);
    // Integers too large to be exact: start again in floating point, where the pivots are chosen for accuracy.
    if (w.integerCoefficients && !basis.exact) takeMembers(w, false);
    w.isBasisChosen = basis.rank === m;
    if (!w.isBasisChosen) return basis.taken.subarray(0, m).indexOf(0);
    let free = 0;
    for (let k = 0; k < m; k++) w.freeOf[k] = member[k]! < 0 ? -1 : free++;
    w.free = free;
    rewriteRows(w);
  }
  for (let k = 0; k < m; k++) w.y[k] = member[k]! < 0 ? 0 : w.lnC[member[k]!]!;
  rewriteTotals(w);
  refreshBeta(w);
  refreshLnC(w);
  return -1;
}

/** Whether the same solids and the same rows in the same order would be offered as to the basis that stands. */
function standsAsChosen(w: Workspace): boolean {
  if (!w.isBasisChosen) return false;
  const { q, present, offeredSolids, order, offered, offeredCount } = w;
  for (let s = 0; s < q; s++) if (present[s] !== offeredSolids[s]) return false;
  for (let o = 0; o < offeredCount; o++) if (order[o] !== offered[o]) return false;
  return true;
}

/** Fills the basis: present solids, then rows in the order of abundance, each if it is independent of those before. */
function takeMembers(w: Workspace, exact: boolean): void {
  const { m, n, q, basis, member, order, offered, offeredSolids } = w;
  basis.reset(m, exact);
  for (let s = 0; s < q; s++) {
    offeredSolids[s] = w.present[s]!;
    if (w.present[s] !== 1) continue;
    const at = basis.rank < m ? basis.offer(w.sIndex, w.sValue, w.sStart[s]!, w.sStart[s + 1]!) : -1;
    if (at >= 0) member[at] = -1 - s;
    else {
      w.present[s] = 0;
      offeredSolids[s] = DEPENDENT;
    }
  }
  w.offeredCount = 0;
  for (let o = 0; o < n && basis.rank < m; o++) {
    const i = order[o]!;
    offered[w.offeredCount++] = i;
    if (w.aStart[i] === w.aStart[i + 1]) continue;
    const at = basis.offer(w.aIndex, w.aValue, w.aStart[i]!, w.aStart[i + 1]!);
    if (at >= 0) member[at] = i;
  }
}

/**
 * Rows in descending order of abundance, in `order`, those of the same by their place, so that the order before does
 * not matter; insertion sort, since it changes little between calls.
 */
function sortByAbundance(w: Workspace): void {
  const { n, order, lnC } = w;
  for (let o = 1; o < n; o++) {
    const i = order[o]!;
    const key = lnC[i]!;
    let p = o - 1;
    while (p >= 0) {
      const other = order[p]!;
      const its = lnC[other]!;
      if (!(its < key || (its === key && other > i))) break;
      order[p + 1] = other;
      p--;
    }
    order[p + 1] = i;
  }
}

function rewriteRows(w: Workspace): void {
  const { n, m, basis } = w;
  const denominator = basis.denominator;
  let entry = 0;
  for (let i = 0; i < n; i++) {
    const v = basis.express(w.aIndex, w.aValue, w.aStart[i]!, w.aStart[i + 1]!);
    for (let k = 0; k < m; k++) {
      if (v[k] === 0) continue;
      w.vIndex[entry] = k;
      w.vValue[entry] = v[k]! / denominator;
      entry++;
    }
    w.vStart[i + 1] = entry;
  }
  buildColumns(w);
}

/** Totals in the working basis; exact cancellations between totals happen here, once. */
function rewriteTotals(w: Workspace): void {
  const { m, basis } = w;
  const factor = w.coefficientScale / basis.denominator;
  for (let k = 0; k < m; k++) {
    compensatedDot(w.totalHigh, w.totalLow, m, basis.numerator, k, m, sum);
    w.total[k] = sum.high * factor;
  }
}

/** The rows by column, and the place of each entry among the free unknowns. */
function buildColumns(w: Workspace): void {
  const { n, m, vStart, vIndex, vValue, vFree, freeOf, colStart } = w;
  const entries = vStart[n]!;
  colStart.fill(0, 0, m + 1);
  for (let e = 0; e < entries; e++) {
    const k = vIndex[e]!;
    vFree[e] = freeOf[k]!;
    colStart[k + 1] = colStart[k + 1]! + 1;
  }
  for (let k = 0; k < m; k++) colStart[k + 1] = colStart[k + 1]! + colStart[k]!;
  for (let i = 0; i < n; i++) {
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vIndex[e]!;
      const at = colStart[k]!;
      w.colRow[at] = i;
      w.colValue[at] = vValue[e]!;
      colStart[k] = at + 1;
    }
  }
  for (let k = m; k > 0; k--) colStart[k] = colStart[k - 1]!;
  colStart[0] = 0;
}

/** Constants of mass action in the working basis, after `b` has changed. */
export function refreshBeta(w: Workspace): void {
  const { n, member, b, vStart, vIndex, vValue } = w;
  for (let i = 0; i < n; i++) {
    let beta = b[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const row = member[vIndex[e]!]!;
      beta -= vValue[e]! * (row >= 0 ? b[row]! : -w.lnKsp[-1 - row]!);
    }
    w.beta[i] = beta;
  }
  for (let k = 0; k < w.m; k++) if (member[k]! >= 0) w.beta[member[k]!] = 0;
}

/** ln concentrations of all rows from the unknowns. */
export function refreshLnC(w: Workspace): void {
  const { n, vStart, vIndex, vValue, y, beta } = w;
  for (let i = 0; i < n; i++) {
    let value = beta[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) value += vValue[e]! * y[vIndex[e]!]!;
    w.lnC[i] = value;
  }
}

/** True while no species outgrows a free basis member it uses by more than a factor of ten. */
export function isDominant(w: Workspace): boolean {
  const { n, vStart, vIndex, y, lnC, freeOf } = w;
  for (let i = 0; i < n; i++) {
    const bound = lnC[i]! - HYSTERESIS;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = vIndex[e]!;
      if (freeOf[k]! >= 0 && bound > y[k]!) return false;
    }
  }
  return true;
}

/** ln activities of the labels from the unknowns of a chosen basis, into `lnActivity`. */
export function recoverActivities(w: Workspace): void {
  const { m, basis, member, y, b } = w;
  const factor = w.coefficientScale / basis.denominator;
  for (let j = 0; j < m; j++) {
    let value = 0;
    for (let k = 0; k < m; k++) {
      const row = member[k]!;
      const potential = row >= 0 ? y[k]! - b[row]! : w.lnKsp[-1 - row]!;
      value += basis.numerator[j * m + k]! * potential;
    }
    w.lnActivity[j] = value * factor;
  }
}
