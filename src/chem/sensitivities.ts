import { loadStart, solveTask } from "./equilibrate.ts";
import type { Conditions, Equilibrium } from "./conditions.ts";
import { evaluate } from "./newton.ts";
import { prepare } from "./prepare.ts";
import type { Preparation } from "./prepare.ts";
import { interactionResponses, strengthResponses } from "./responses.ts";
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
  /** d log10 of the water activity; zero where the activity model keeps none in the balances. */
  readonly dLog10WaterActivity: number;
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
  const task = solveTask(system, conditions.activity);
  if (!loadStart(system, equilibrium, task) || evaluate(w) > AT_EQUILIBRIUM) {
    return { ok: false, reason: "not-at-equilibrium", detail: `scaled residual ${w.lastResidual}` };
  }
  const changes: InBasis[] = [];
  for (const parameter of parameters) {
    const change = changeOf(parameter, conditions, equilibrium, preparation);
    if (change === null) {
      return { ok: false, reason: "unknown-parameter", detail: `${parameter.kind} ${parameter.name}` };
    }
    changes.push(inWorkingBasis(change, w));
  }
  const responses =
    task.interactions === null
      ? strengthResponses(w, conditions.activity.ideal, changes)
      : interactionResponses(w, task.interactions.state.terms, changes);
  if (responses === null) return { ok: false, reason: "singular", detail: "balances with activity" };
  return {
    ok: true,
    value: parameters.map((parameter, p) => carryOver(parameter, changes[p]!, responses[p]!, system)),
  };
}

/** How constants and totals of the prepared problem move per natural log of a parameter. */
interface Change {
  /** Of ln K per row, of ln Ksp per candidate. */
  readonly lnK: Float64Array;
  readonly lnKsp: Float64Array;
  /** Of the totals per label [mol/L]. */
  readonly totals: Float64Array;
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

/** A change as the solver's present basis sees it. */
export interface InBasis {
  /** Of b (ln K, or −ln Ksp for a solid) per basis member. */
  readonly ofMember: Float64Array;
  /** Of the total per basis member. */
  readonly ofTotal: Float64Array;
  /** Of beta per row. */
  readonly ofBeta: Float64Array;
}

/** What a change does to the solution (natural logs). */
export interface Response {
  /** Of ln c per row. */
  readonly lnC: Float64Array;
  /** Of ln activity per basis member; zero for solids. */
  readonly lnActivity: Float64Array;
  readonly lnWater: number;
}

function inWorkingBasis(change: Change, w: Workspace): InBasis {
  const { m, n, member, vStart, vIndex, vValue, basis } = w;
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
  for (let i = 0; i < n; i++) {
    let beta = change.lnK[i]!;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) beta -= vValue[e]! * ofMember[vIndex[e]!]!;
    ofBeta[i] = beta;
  }
  return { ofMember, ofTotal, ofBeta };
}

function carryOver(
  parameter: SensitivityParameter,
  { ofMember, ofTotal }: InBasis,
  { lnC, lnActivity, lnWater }: Response,
  system: Equilibrium["system"],
): Sensitivity {
  const w = system.workspace;
  const { m, n, member, vStart, vIndex, vValue, basis } = w;
  const left = ofTotal.slice();
  const dLog10Concentrations = new Float64Array(system.speciesNames.length);
  const dSolids_molPerL = new Float64Array(system.solidNames.length);
  const dLog10Activities = new Float64Array(system.componentNames.length);
  let dIonicStrength = 0;
  for (let i = 0; i < n; i++) {
    const d = lnC[i]!;
    dLog10Concentrations[w.speciesOf[i]!] = d;
    dIonicStrength += w.halfZ2[i]! * w.c[i]! * d;
    for (let e = vStart[i]!; e < vStart[i + 1]!; e++) {
      left[vIndex[e]!] = left[vIndex[e]!]! - vValue[e]! * w.c[i]! * d;
    }
  }
  const factor = w.coefficientScale / basis.denominator;
  for (let k = 0; k < m; k++) {
    const row = member[k]!;
    // What is left of the change of a solid's balance is the change of its amount.
    if (row < 0) dSolids_molPerL[w.solidOf[-1 - row]!] = Math.LN10 * left[k]!;
    const water = row >= 0 ? w.water[row]! : w.solidWater[-1 - row]!;
    const potential = lnActivity[k]! - ofMember[k]! - water * lnWater;
    for (let j = 0; j < m; j++) {
      const at = w.componentOf[j]!;
      dLog10Activities[at] = dLog10Activities[at]! + factor * basis.numerator[j * m + k]! * potential;
    }
  }
  if (parameter.kind === "fixedActivity") dLog10Activities[system.componentIndex.get(parameter.name)!] = 1;
  const dIonicStrength_molPerL = Math.LN10 * dIonicStrength;
  return {
    parameter,
    dLog10Concentrations,
    dLog10Activities,
    dIonicStrength_molPerL,
    dSolids_molPerL,
    dLog10WaterActivity: lnWater,
  };
}
