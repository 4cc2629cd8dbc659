import { solveDense } from "../numerics/index.ts";
import type { CompiledInteractions } from "./interaction-model.ts";
import { refreshBeta, refreshLnC } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** The interaction model of one system with the scratch memory of its Newton steps. */
export interface InteractionState {
  readonly terms: CompiledInteractions;
  /** Molalities of all species of the system [mol/kg]; zero for absent ones. */
  readonly molality: Float64Array;
  /** Rows whose response to each other is solved for, and how many. */
  readonly active: Int32Array;
  activeCount: number;
  readonly activeSpecies: Int32Array;
  /** Free unknowns that active rows depend on, and the place of each among them (-1: none). */
  readonly used: Int32Array;
  readonly usedAt: Int32Array;
  /** Water taken up per row, less that of the basis members it is written in. */
  readonly netWater: Float64Array;
  readonly inner: Float64Array;
  readonly responses: Float64Array;
  readonly rows: Float64Array;
  readonly outer: Float64Array;
}

/** Lays out the scratch memory for a number of right-hand sides. */
export function createInteractionState(
  terms: CompiledInteractions,
  components: number,
  species: number,
  columns: number,
): InteractionState {
  const width = components + columns;
  return {
    terms,
    molality: new Float64Array(species),
    active: new Int32Array(species),
    activeCount: 0,
    activeSpecies: new Int32Array(species),
    used: new Int32Array(components),
    usedAt: new Int32Array(components),
    netWater: new Float64Array(species),
    inner: new Float64Array(species * species),
    responses: new Float64Array(species * width),
    rows: new Float64Array(species * width),
    outer: new Float64Array(components * components),
  };
}

const NONE = new Int32Array(0);

/** Evaluates the model at the present concentrations, taken as molalities; with derivatives by the active rows. */
export function evaluateInteractions(w: Workspace, s: InteractionState, derivatives: boolean): void {
  s.molality.fill(0);
  for (let i = 0; i < w.n; i++) s.molality[w.speciesOf[i]!] = w.c[i]!;
  for (let a = 0; a < s.activeCount; a++) s.activeSpecies[a] = w.speciesOf[s.active[a]!]!;
  s.terms.evaluate(s.molality, derivatives ? s.activeSpecies.subarray(0, s.activeCount) : NONE);
}

/** ln K − ln γ (with the water taken up) and ln Ksp of all rows, from the coefficients now in the workspace. */
export function applyInteractions(w: Workspace): void {
  for (let i = 0; i < w.n; i++) w.b[i] = w.lnK[i]! - w.lnGamma[i]! + w.water[i]! * w.lnWater;
  for (let s = 0; s < w.q; s++) w.lnKsp[s] = w.lnKspInWater[s]! - w.solidWater[s]! * w.lnWater;
}

/** As `applyInteractions`, with everything in the working basis brought up to date at constant unknowns. */
export function refreshInteractions(w: Workspace): void {
  applyInteractions(w);
  refreshBeta(w);
  refreshLnC(w);
}

/** Takes the rows that make up at least `share` of all molality as active ones; all of them for 0. */
export function chooseActive(w: Workspace, s: InteractionState, share: number): void {
  let sum = 0;
  for (let i = 0; i < w.n; i++) sum += w.c[i]!;
  s.activeCount = 0;
  for (let i = 0; i < w.n; i++) if (w.c[i]! >= share * sum) s.active[s.activeCount++] = i;
}

/** Water taken up per row, less that of the members of the present basis it is written in. */
export function updateNetWater(w: Workspace, s: InteractionState): void {
  for (let i = 0; i < w.n; i++) {
    let water = w.water[i]!;
    for (let e = w.vStart[i]!; e < w.vStart[i + 1]!; e++) {
      const row = w.member[w.vIndex[e]!]!;
      water -= w.vValue[e]! * (row >= 0 ? w.water[row]! : w.solidWater[-1 - row]!);
    }
    s.netWater[i] = water;
  }
}

/** Finds the free unknowns that active rows depend on; the others get no response through the coefficients. */
function collectUsed(w: Workspace, s: InteractionState): number {
  s.usedAt.fill(-1);
  let uses = 0;
  for (let a = 0; a < s.activeCount; a++) {
    const i = s.active[a]!;
    for (let e = w.vStart[i]!; e < w.vStart[i + 1]!; e++) {
      const k = w.freeOf[w.vIndex[e]!]!;
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
 * the mass actions (w the net water, h = ∂ ln a_w / ∂ m) and Vᵀ C u = right for the balances. Rows that are not active
 * respond, but nothing responds to them. Longer than usual because the parts share one matrix layout.
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
  const { n, m, free, freeOf, vStart, vIndex, vValue, c, speciesOf, lnC, y } = w;
  const { active, activeCount, inner, responses, rows, outer, used, usedAt, activeSpecies } = s;
  const { jacobian, waterSlope, lnGamma } = s.terms;
  const all = lnGamma.length;
  updateNetWater(w, s);
  const uses = collectUsed(w, s);
  const compact = uses + columns;
  const width = free + columns;
  for (let a = 0; a < activeCount; a++) {
    const i = active[a]!;
    const line = speciesOf[i]! * all;
    for (let b = 0; b < activeCount; b++) {
      const species = activeSpecies[b]!;
      const g = jacobian[line + species]! - s.netWater[i]! * waterSlope[species]!;
      inner[a * activeCount + b] = (a === b ? 1 : 0) + g * c[active[b]!]!;
    }
    responses.fill(0, a * compact, a * compact + uses);
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = freeOf[vIndex[e]!]!;
      if (k >= 0) responses[a * compact + usedAt[k]!] = vValue[e]!;
    }
    for (let p = 0; p < columns; p++) responses[a * compact + uses + p] = offset[i * columns + p]!;
  }
  if (!solveDense(inner, activeCount, responses, compact)) return false;
  for (let i = 0; i < n; i++) {
    const at = i * width;
    rows.fill(0, at, at + free);
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = freeOf[vIndex[e]!]!;
      if (k >= 0) rows[at + k] = vValue[e]!;
    }
    for (let p = 0; p < columns; p++) rows[at + free + p] = offset[i * columns + p]!;
    const line = speciesOf[i]! * all;
    for (let b = 0; b < activeCount; b++) {
      const species = activeSpecies[b]!;
      const factor = (jacobian[line + species]! - s.netWater[i]! * waterSlope[species]!) * c[active[b]!]!;
      const from = b * compact;
      for (let l = 0; l < uses; l++) {
        const k = at + used[l]!;
        rows[k] = rows[k]! - factor * responses[from + l]!;
      }
      for (let p = 0; p < columns; p++) {
        rows[at + free + p] = rows[at + free + p]! - factor * responses[from + uses + p]!;
      }
    }
  }
  // Balances, scaled by √c of the basis members on both sides as in `factorBalances`.
  outer.fill(0, 0, free * free);
  const eta = out.lnActivity;
  const half = w.scratch;
  for (let k = 0; k < m; k++) if (freeOf[k]! >= 0) half[freeOf[k]!] = Math.exp(Math.min(700, -0.5 * y[k]!));
  for (let k = 0; k < free; k++) {
    for (let p = 0; p < columns; p++) eta[k * columns + p] = right[k * columns + p]! * half[k]!;
  }
  for (let i = 0; i < n; i++) {
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = freeOf[vIndex[e]!]!;
      if (k < 0) continue;
      const factor = vValue[e]! * Math.exp(lnC[i]! - 0.5 * y[vIndex[e]!]!);
      for (let l = 0; l < free; l++) {
        outer[k * free + l] = outer[k * free + l]! + factor * rows[i * width + l]! * half[l]!;
      }
      for (let p = 0; p < columns; p++) {
        eta[k * columns + p] = eta[k * columns + p]! - factor * rows[i * width + free + p]!;
      }
    }
  }
  if (!solveDense(outer, free, eta, columns)) return false;
  for (let k = 0; k < free; k++) {
    for (let p = 0; p < columns; p++) eta[k * columns + p] = eta[k * columns + p]! * half[k]!;
  }
  for (let p = 0; p < columns; p++) {
    let change = water[p]!;
    for (let i = 0; i < n; i++) {
      let u = rows[i * width + free + p]!;
      for (let l = 0; l < free; l++) u += rows[i * width + l]! * eta[l * columns + p]!;
      out.lnC[i * columns + p] = u;
    }
    for (let b = 0; b < activeCount; b++) {
      const j = active[b]!;
      change += waterSlope[speciesOf[j]!]! * c[j]! * out.lnC[j * columns + p]!;
    }
    out.lnWater[p] = change;
  }
  return true;
}
