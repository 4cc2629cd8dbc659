import type { Workspace } from "./workspace.ts";

/** Largest change (natural log) of an unknown below which the passes have done their work. */
const SETTLED = 1;
/** How far (natural log) a balance may be off, or its unknown move, when it is left. Our choice: a tenth of `SETTLED`. */
const CLOSE = 0.1;

/**
 * How far (natural log) from 1 concentrations may lie for sums of them to be taken as they are. Our choice: less than half
 * of what a double holds (e^±708), so that a shift has as much room again.
 */
const PLAIN = 300;

/** The two sides of one balance in logarithms, at a trial shift of its unknown. */
let gap = 0;
let slope = 0;
/** True while `c` follows `lnC` and all of it lies within `PLAIN`. */
let plain = false;

/**
 * Solves each balance in turn for its own unknown, nearly and in logarithms, until no unknown moves by more than one.
 *
 * Each move lowers the convex function that the equilibrium minimises, so passes can never make a start worse. This
 * is the positive continuous fraction of Carrayrou, Mosé & Behra (2002) taken to its exact form.
 * @param sweeps most sweeps over all unknowns
 * @returns -1, or the unknown whose balance has no solution (its total has a sign no species can give)
 */
export function coordinatePasses(w: Workspace, sweeps: number): number {
  takeConcentrations(w);
  for (let sweep = 0; sweep < sweeps; sweep++) {
    let largest = 0;
    for (let k = 0; k < w.m; k++) {
      if (w.freeOf[k]! < 0) continue;
      const shift = solveCoordinate(w, k);
      if (shift !== shift) return k;
      if (shift === 0) continue;
      shiftRows(w, k, shift);
      if (Math.abs(shift) > largest) largest = Math.abs(shift);
    }
    if (largest < SETTLED) break;
  }
  return -1;
}

/** Concentrations as they are, where none is too far from 1. */
function takeConcentrations({ n, lnC, c }: Workspace): void {
  plain = true;
  for (let i = 0; i < n; i++) {
    const value = lnC[i]!;
    if (!(Math.abs(value) < PLAIN)) plain = false;
    c[i] = Math.exp(value);
  }
}

/** Moves unknown k, and what holds it. */
function shiftRows(w: Workspace, k: number, shift: number): void {
  const { colRow, colValue, lnC, c } = w;
  const grown = Math.exp(shift);
  w.y[k] = w.y[k]! + shift;
  for (let e = w.colStart[k]!; e < w.colStart[k + 1]!; e++) {
    const i = colRow[e]!;
    const v = colValue[e]!;
    const value = lnC[i]! + v * shift;
    lnC[i] = value;
    if (!plain) continue;
    c[i] = c[i]! * powerOf(grown, v);
    if (!(Math.abs(value) < PLAIN)) plain = false;
  }
}

/** A positive number to a power that is most often a small whole number. */
function powerOf(x: number, v: number): number {
  if (v === 1) return x;
  if (v === -1) return 1 / x;
  if (v === 2) return x * x;
  if (v === -2) return 1 / (x * x);
  return x ** v;
}

/** Shift of unknown k that closes its balance to within `CLOSE` with all others frozen; NaN if none exists. */
function solveCoordinate(w: Workspace, k: number): number {
  const total = w.total[k]!;
  const lnTotal = total === 0 ? -Infinity : Math.log(Math.abs(total));
  measure(w, k, 0, total, lnTotal);
  if (gap === -Infinity || gap === Infinity || gap !== gap) return NaN;
  if (Math.abs(gap) < CLOSE) return 0;
  let low = -Infinity;
  let high = Infinity;
  let shift = 0;
  for (let trial = 0; trial < 60; trial++) {
    if (gap < 0) low = shift;
    else high = shift;
    let next = shift - gap / slope;
    if (!(next > low && next < high)) {
      if (low === -Infinity || high === Infinity) next = shift - Math.sign(gap) * 50;
      else next = 0.5 * (low + high);
    }
    const moved = Math.abs(next - shift);
    shift = next;
    if (moved < CLOSE) return shift;
    measure(w, k, shift, total, lnTotal);
    if (Math.abs(gap) < CLOSE) return shift;
  }
  return shift;
}

/** Sets `gap` = ln(gives) − ln(takes) of balance k at the shift, and its slope. */
function measure(w: Workspace, k: number, shift: number, total: number, lnTotal: number): void {
  if (!plain || !measurePlain(w, k, shift, total)) measureLogs(w, k, shift, total, lnTotal);
}

/** `measure` by the concentrations; false where a sum is beyond what a number can hold. */
function measurePlain(w: Workspace, k: number, shift: number, total: number): boolean {
  const { colRow, colValue, c } = w;
  const grown = Math.exp(shift);
  let gives = total < 0 ? -total : 0;
  let takes = total > 0 ? total : 0;
  let givesSlope = 0;
  let takesSlope = 0;
  const to = w.colStart[k + 1]!;
  for (let e = w.colStart[k]!; e < to; e++) {
    const v = colValue[e]!;
    const part = v * c[colRow[e]!]! * powerOf(grown, v);
    if (v > 0) {
      gives += part;
      givesSlope += v * part;
    } else {
      takes -= part;
      takesSlope += v * part;
    }
  }
  if (!(gives > 0 && takes > 0 && givesSlope + takesSlope < Infinity)) return false;
  gap = Math.log(gives / takes);
  slope = givesSlope / gives + takesSlope / takes;
  return true;
}

/** `measure` by logarithms: sums are taken from the largest term down. */
function measureLogs(w: Workspace, k: number, shift: number, total: number, lnTotal: number): void {
  const { colRow, colValue, lnC } = w;
  const from = w.colStart[k]!;
  const to = w.colStart[k + 1]!;
  let topGives = total < 0 ? lnTotal : -Infinity;
  let topTakes = total > 0 ? lnTotal : -Infinity;
  for (let e = from; e < to; e++) {
    const v = colValue[e]!;
    const exponent = lnC[colRow[e]!]! + v * shift;
    if (v > 0) {
      if (exponent > topGives) topGives = exponent;
    } else if (exponent > topTakes) topTakes = exponent;
  }
  let gives = total < 0 ? Math.exp(lnTotal - topGives) : 0;
  let takes = total > 0 ? Math.exp(lnTotal - topTakes) : 0;
  let givesSlope = 0;
  let takesSlope = 0;
  for (let e = from; e < to; e++) {
    const v = colValue[e]!;
    const exponent = lnC[colRow[e]!]! + v * shift;
    if (v > 0) {
      if (exponent < topGives - 40) continue;
      const part = v * Math.exp(exponent - topGives);
      gives += part;
      givesSlope += v * part;
    } else {
      if (exponent < topTakes - 40) continue;
      const part = -v * Math.exp(exponent - topTakes);
      takes += part;
      takesSlope -= v * part;
    }
  }
  gap = topGives - topTakes + Math.log(gives / takes);
  slope = givesSlope / gives + takesSlope / takes;
}
