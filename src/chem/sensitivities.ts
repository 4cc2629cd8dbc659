import { loadStart } from "./equilibrate.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { backSubstitute, evaluate, factorBalances } from "./newton.ts";
import { borders } from "./newton-coupled.ts";
import { prepare } from "./prepare.ts";
import type { Preparation } from "./prepare.ts";
import type { Workspace } from "./workspace.ts";

/** What an equilibrium can be differentiated by; each in log10 of the constant, total or activity. */
export type SensitivityParameter =
  | { readonly kind: "logK"; readonly name: string }
  | { readonly kind: "logKsp"; readonly name: string }
  | { readonly kind: "total"; readonly name: string }
  | { readonly kind: "fixedActivity"; readonly name: string };

/** Derivatives by log10 of one parameter. Arrays are in the order of the system's name lists. */
export interface Sensitivity {
  readonly parameter: SensitivityParameter;
  /** d log10 c of species; zero for species of an absent component. */
  readonly dLog10Concentrations: Float64Array;
  /** d log10 activity of components; zero for absent ones. */
  readonly dLog10Activities: Float64Array;
  /** d ionic strength [mol/L]. */
  readonly dIonicStrength_molPerL: number;
  /** d amount of solids [mol/L]; zero for those not present. */
  readonly dSolids_molPerL: Float64Array;
}

/** Sensitivities in the order asked for, or why there are none. */
export type SensitivitiesResult =
  | { readonly ok: true; readonly value: readonly Sensitivity[] }
  | {
      readonly ok: false;
      readonly reason: "not-at-equilibrium" | "unknown-parameter" | "singular" | (string & {});
      readonly detail: string;
    };

/** Scaled residual up to which the given equilibrium is taken to belong to the given conditions. */
const AT_EQUILIBRIUM = 1e-8;

/**
 * Exact first derivatives of an equilibrium, from one factorisation and one back-substitution per parameter.
 *
 * They hold with the present solids staying present, so at the point where a solid appears or vanishes they are
 * one-sided. The response of activity coefficients to ionic strength is included, and with `electroneutral` so is that
 * of the balancing total. Near exactly equal totals of a strong complex they can be huge; that is real.
 * @param conditions those the equilibrium was found for
 * @param equilibrium answer of `equilibrate`
 * @param parameters constants, totals or fixed activities to differentiate by
 * @returns derivatives by log10 of each parameter. A total of zero has none and gives zeros; a negative total is taken
 *   by its size
 */
export function sensitivities(
  conditions: Conditions,
  equilibrium: Equilibrium,
  parameters: readonly SensitivityParameter[],
): SensitivitiesResult {
  const { system } = equilibrium;
  const preparation = prepare(system, conditions);
  if ("reason" in preparation) return { ok: false, ...preparation };
  const w = system.workspace;
  const task = { w, model: conditions.activity, speciesNames: system.speciesNames };
  if (!loadStart(system, equilibrium, task) || evaluate(w) > AT_EQUILIBRIUM) {
    return { ok: false, reason: "not-at-equilibrium", detail: `scaled residual ${w.lastResidual}` };
  }
  if (!factorBalances(w)) return { ok: false, reason: "singular", detail: "balances" };
  const response = coupling(w, conditions.activity.ideal);
  if (!(Math.abs(response.pivot) > 1e-12)) return { ok: false, reason: "singular", detail: "ionic strength" };
  const value: Sensitivity[] = [];
  for (const parameter of parameters) {
    const change = changeOf(parameter, conditions, equilibrium, preparation);
    if (change === null) {
      return { ok: false, reason: "unknown-parameter", detail: `${parameter.kind} ${parameter.name}` };
    }
    value.push(differentiate(parameter, change, equilibrium, response));
  }
  return { ok: true, value };
}

/** How constants and totals of the prepared problem move per natural log of a parameter. */
interface Change {
  /** Of ln K per row, of ln Ksp per candidate. */
  readonly lnK: Float64Array;
  readonly lnKsp: Float64Array;
  /** Of the totals per label [mol/L]. */
  readonly totals: Float64Array;
}

/** The ionic strength's part of the linear system. */
interface Coupling {
  readonly ideal: boolean;
  /** 1 − d I_out / d I. */
  readonly pivot: number;
}

/** Leaves H⁻¹ times the border in `bordered`. */
function coupling(w: Workspace, ideal: boolean): Coupling {
  if (ideal) {
    w.weight.fill(0, 0, w.n);
    return { ideal, pivot: 1 };
  }
  let pivot = borders(w);
  backSubstitute(w, w.bordered);
  for (let k = 0; k < w.free; k++) pivot += w.border[k]! * w.bordered[k]!;
  return { ideal, pivot };
}

function changeOf(
  parameter: SensitivityParameter,
  conditions: Conditions,
  { system }: Equilibrium,
  preparation: Preparation,
): Change | null {
  const w = system.workspace;
  const change: Change = {
    lnK: new Float64Array(w.n),
    lnKsp: new Float64Array(w.q),
    totals: new Float64Array(w.m),
  };
  if (parameter.kind === "logK") {
    const index = system.speciesIndex.get(parameter.name);
    if (index === undefined) return null;
    for (let i = 0; i < w.n; i++) if (w.speciesOf[i] === index) change.lnK[i] = 1;
    return change;
  }
  if (parameter.kind === "logKsp") {
    const index = system.solidIndex.get(parameter.name);
    if (index === undefined) return null;
    for (let s = 0; s < w.q; s++) if (w.solidOf[s] === index) change.lnKsp[s] = 1;
    return change;
  }
  const index = system.componentIndex.get(parameter.name);
  if (index === undefined) return null;
  const fixed = preparation.lnFixed[index] === preparation.lnFixed[index];
  if (parameter.kind === "fixedActivity") {
    if (!fixed) return null;
    const coefficient = (of: Readonly<Record<string, number>>): number => of[parameter.name] ?? 0;
    for (let i = 0; i < w.n; i++) {
      change.lnK[i] = coefficient(system.definition.species[w.speciesOf[i]!]!.formation);
    }
    for (let s = 0; s < w.q; s++) {
      change.lnKsp[s] = -coefficient(system.definition.solids[w.solidOf[s]!]!.formation);
    }
    return change;
  }
  const balancing = conditions.electroneutral ?? null;
  if (fixed || parameter.name === balancing) return null;
  const label = w.labelOf[index]!;
  if (label >= 0) change.totals[label] = preparation.totalHigh[index]!;
  if (balancing !== null) {
    const other = system.componentIndex.get(balancing)!;
    const ratio = system.componentCharges[index]! / system.componentCharges[other]!;
    if (w.labelOf[other]! >= 0) change.totals[w.labelOf[other]!] = -ratio * preparation.totalHigh[index]!;
  }
  return change;
}

/** Solves the linear system for one change and carries the step over to everything that is reported. */
function differentiate(
  parameter: SensitivityParameter,
  change: Change,
  { system }: Equilibrium,
  { ideal, pivot }: Coupling,
): Sensitivity {
  const w = system.workspace;
  const { m, n, member, freeOf, vStart, vIndex, vValue, basis, c } = w;
  /** Of b (ln K, or −ln Ksp for a solid) per basis member, of the totals and of beta in the working basis. */
  const ofMember = new Float64Array(m);
  const ofTotal = new Float64Array(m);
  const ofBeta = new Float64Array(n);
  const factor = w.coefficientScale / basis.denominator;
  for (let k = 0; k < m; k++) {
    ofMember[k] = member[k]! >= 0 ? change.lnK[member[k]!]! : -change.lnKsp[-1 - member[k]!]!;
    for (let j = 0; j < m; j++) {
      ofTotal[k] = ofTotal[k]! + factor * basis.numerator[j * m + k]! * change.totals[j]!;
    }
  }
  const step = new Float64Array(w.free);
  let dI = 0;
  for (let k = 0; k < m; k++) if (freeOf[k]! >= 0) step[freeOf[k]!] = ofTotal[k]!;
  for (let i = 0; i < n; i++) {
    let beta = change.lnK[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) beta -= vValue[e]! * ofMember[vIndex[e]!]!;
    ofBeta[i] = beta;
    dI += w.halfZ2[i]! * c[i]! * beta;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = freeOf[vIndex[e]!]!;
      if (k >= 0) step[k] = step[k]! - vValue[e]! * c[i]! * beta;
    }
  }
  backSubstitute(w, step);
  if (ideal) dI = 0;
  else {
    for (let k = 0; k < w.free; k++) dI += w.border[k]! * step[k]!;
    dI /= pivot;
    for (let k = 0; k < w.free; k++) step[k] = step[k]! - w.bordered[k]! * dI;
  }
  return carryOver(parameter, system.workspace, { step, dI, ofMember, ofTotal, ofBeta }, system);
}

/** A solved step with the changes it answers to. */
interface Step {
  readonly step: Float64Array;
  readonly dI: number;
  readonly ofMember: Float64Array;
  readonly ofTotal: Float64Array;
  readonly ofBeta: Float64Array;
}

function carryOver(
  parameter: SensitivityParameter,
  w: Workspace,
  { step, dI, ofMember, ofTotal, ofBeta }: Step,
  system: Equilibrium["system"],
): Sensitivity {
  const { m, n, member, freeOf, vStart, vIndex, vValue, basis } = w;
  const dLog10Concentrations = new Float64Array(system.speciesNames.length);
  const dSolids_molPerL = new Float64Array(system.solidNames.length);
  const dLog10Activities = new Float64Array(system.componentNames.length);
  let dIonicStrength = 0;
  for (let i = 0; i < n; i++) {
    let d = ofBeta[i]! + w.weight[i]! * dI;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      const k = freeOf[vIndex[e]!]!;
      if (k >= 0) d += vValue[e]! * step[k]!;
    }
    dLog10Concentrations[w.speciesOf[i]!] = d;
    dIonicStrength += w.halfZ2[i]! * w.c[i]! * d;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      ofTotal[vIndex[e]!] = ofTotal[vIndex[e]!]! - vValue[e]! * w.c[i]! * d;
    }
  }
  const factor = w.coefficientScale / basis.denominator;
  for (let k = 0; k < m; k++) {
    const row = member[k]!;
    // What is left of the change of a solid's balance is the change of its amount.
    if (row < 0) dSolids_molPerL[w.solidOf[-1 - row]!] = Math.LN10 * ofTotal[k]!;
    const ofY = row >= 0 ? dLog10Concentrations[w.speciesOf[row]!]! + w.dLnGamma[row]! * dI : 0;
    const potential = ofY - ofMember[k]!;
    for (let j = 0; j < m; j++) {
      const at = w.componentOf[j]!;
      dLog10Activities[at] = dLog10Activities[at]! + factor * basis.numerator[j * m + k]! * potential;
    }
  }
  if (parameter.kind === "fixedActivity") dLog10Activities[system.componentIndex.get(parameter.name)!] = 1;
  const dIonicStrength_molPerL = Math.LN10 * dIonicStrength;
  return { parameter, dLog10Concentrations, dLog10Activities, dIonicStrength_molPerL, dSolids_molPerL };
}
