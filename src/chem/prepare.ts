import { compensatedDot, decimalRemainder } from "../numerics/index.ts";
import type { DoubleDouble } from "../numerics/index.ts";
import type { CompiledSystem, SparseRows } from "./compile.ts";
import type { Conditions, EquilibriumFailure } from "./conditions.ts";
import { loadWorkspace } from "./load-workspace.ts";

/** A problem found before any iteration. */
export interface PreparationFailure {
  readonly reason: EquilibriumFailure;
  readonly detail: string;
}

/** What the conditions say, per component, species and solid of the definition. */
export interface Preparation {
  /** Natural log of the activity of fixed components; NaN for the others. */
  readonly lnFixed: Float64Array;
  /** Totals [mol/L] in two halves; zero for fixed components. */
  readonly totalHigh: Float64Array;
  readonly totalLow: Float64Array;
  readonly absent: Uint8Array;
  readonly speciesAbsent: Uint8Array;
  readonly solidAbsent: Uint8Array;
  readonly solidAllowed: Uint8Array;
  readonly logK: Float64Array;
  readonly logKsp: Float64Array;
}

/**
 * Reads the conditions, removes absent components and loads the solver's workspace.
 *
 * Fixed activities move into the constants. A component with a total of exactly zero whose coefficients all have one
 * sign is absent, with everything that holds it; this is repeated until nothing more falls away.
 */
export function prepare(system: CompiledSystem, conditions: Conditions): Preparation | PreparationFailure {
  const components = system.componentNames.length;
  const preparation: Preparation = {
    lnFixed: new Float64Array(components).fill(NaN),
    totalHigh: new Float64Array(components),
    totalLow: new Float64Array(components),
    absent: new Uint8Array(components),
    speciesAbsent: new Uint8Array(system.speciesNames.length),
    solidAbsent: new Uint8Array(system.solidNames.length),
    solidAllowed: new Uint8Array(system.solidNames.length),
    logK: system.logK.slice(),
    logKsp: system.logKsp.slice(),
  };
  const failure =
    readFixed(system, conditions, preparation) ??
    readTotals(system, conditions, preparation) ??
    readOverrides(conditions.logK, system.speciesIndex, preparation.logK, "unknown-species") ??
    readOverrides(conditions.logKsp, system.solidIndex, preparation.logKsp, "unknown-solid") ??
    readSolids(system, conditions, preparation) ??
    removeAbsent(system, preparation);
  if (failure !== undefined) return failure;
  loadWorkspace(system, preparation);
  return preparation;
}

function readFixed(
  system: CompiledSystem,
  conditions: Conditions,
  preparation: Preparation,
): PreparationFailure | undefined {
  const fixed = conditions.fixedLog10Activities;
  if (fixed === undefined) return undefined;
  for (const name in fixed) {
    const j = system.componentIndex.get(name);
    if (j === undefined) return { reason: "unknown-component", detail: name };
    if (!Number.isFinite(fixed[name]))
      return { reason: "number-not-finite", detail: `fixed activity of ${name}` };
    preparation.lnFixed[j] = fixed[name]! * Math.LN10;
  }
  return undefined;
}

function readTotals(
  system: CompiledSystem,
  conditions: Conditions,
  preparation: Preparation,
): PreparationFailure | undefined {
  const { lnFixed, totalHigh, totalLow } = preparation;
  const neutral = conditions.electroneutral ?? null;
  const at = neutral === null ? -1 : system.componentIndex.get(neutral);
  if (at === undefined) return { reason: "unknown-component", detail: neutral ?? "" };
  const totals = conditions.totals_molPerL;
  for (const name in totals) {
    const j = system.componentIndex.get(name);
    if (j === undefined) return { reason: "unknown-component", detail: name };
  }
  for (let j = 0; j < system.componentNames.length; j++) {
    const name = system.componentNames[j]!;
    if (j === at || lnFixed[j] === lnFixed[j]) continue;
    const value = totals[name];
    if (value === undefined) return { reason: "missing-total", detail: name };
    if (!Number.isFinite(value)) return { reason: "number-not-finite", detail: `total of ${name}` };
    totalHigh[j] = value;
    totalLow[j] = decimalRemainder(value);
  }
  return at < 0 ? undefined : neutralise(system, preparation, at);
}

/** Sets the total of component `at` so that the charges of all components cancel. */
function neutralise(
  system: CompiledSystem,
  preparation: Preparation,
  at: number,
): PreparationFailure | undefined {
  const { lnFixed, totalHigh, totalLow } = preparation;
  const charges = system.componentCharges;
  if (!system.chargeConserved || charges[at] === 0) {
    return { reason: "charge-not-conserved", detail: system.componentNames[at]! };
  }
  for (let j = 0; j < charges.length; j++) {
    if (lnFixed[j] === lnFixed[j] && charges[j] !== 0) {
      return { reason: "electroneutral-with-fixed-charge", detail: system.componentNames[j]! };
    }
  }
  const sum: DoubleDouble = { high: 0, low: 0 };
  compensatedDot(totalHigh, totalLow, charges.length, charges, 0, 1, sum);
  totalHigh[at] = -sum.high / charges[at]!;
  totalLow[at] = Math.abs(charges[at]!) === 1 ? -sum.low / charges[at]! : 0;
  return undefined;
}

function readOverrides(
  values: Readonly<Record<string, number>> | undefined,
  index: ReadonlyMap<string, number>,
  into: Float64Array,
  reason: EquilibriumFailure,
): PreparationFailure | undefined {
  if (values === undefined) return undefined;
  for (const name in values) {
    const i = index.get(name);
    if (i === undefined) return { reason, detail: name };
    if (!Number.isFinite(values[name])) return { reason: "number-not-finite", detail: `constant of ${name}` };
    into[i] = values[name]!;
  }
  return undefined;
}

function readSolids(
  system: CompiledSystem,
  conditions: Conditions,
  preparation: Preparation,
): PreparationFailure | undefined {
  if (conditions.solids === undefined) {
    preparation.solidAllowed.fill(1);
    return undefined;
  }
  for (const name of conditions.solids) {
    const s = system.solidIndex.get(name);
    if (s === undefined) return { reason: "unknown-solid", detail: name };
    preparation.solidAllowed[s] = 1;
  }
  return undefined;
}

/** Marks absent components and all that holds them; finds totals of a sign that nothing can give. */
function removeAbsent(system: CompiledSystem, preparation: Preparation): PreparationFailure | undefined {
  const components = system.componentNames.length;
  const { lnFixed, totalHigh, totalLow, absent, speciesAbsent, solidAbsent, solidAllowed } = preparation;
  const gives = new Uint8Array(components);
  const takes = new Uint8Array(components);
  const count = (rows: SparseRows, i: number): void => {
    for (let e = rows.start[i]!; e < rows.start[i + 1]!; e++) {
      if (rows.value[e]! > 0) gives[rows.index[e]!] = 1;
      else takes[rows.index[e]!] = 1;
    }
  };
  for (let changed = true; changed;) {
    changed = false;
    gives.fill(0);
    takes.fill(0);
    for (let i = 0; i < speciesAbsent.length; i++) if (speciesAbsent[i] === 0) count(system.speciesRows, i);
    for (let s = 0; s < solidAbsent.length; s++) {
      if (solidAbsent[s] === 0 && solidAllowed[s] === 1) count(system.solidRows, s);
    }
    for (let j = 0; j < components; j++) {
      if (absent[j] === 1 || lnFixed[j] === lnFixed[j]) continue;
      const total = totalHigh[j]! + totalLow[j]!;
      if ((total > 0 && gives[j] === 0) || (total < 0 && takes[j] === 0)) {
        return {
          reason: "infeasible-total",
          detail: `${system.componentNames[j]!}: no species can give ${total} mol/L`,
        };
      }
      if (total === 0 && !(gives[j] === 1 && takes[j] === 1)) {
        absent[j] = 1;
        changed = true;
      }
    }
    if (changed) {
      markHolders(system.speciesRows, absent, speciesAbsent);
      markHolders(system.solidRows, absent, solidAbsent);
    }
  }
  return undefined;
}

function markHolders(rows: SparseRows, absent: Uint8Array, marks: Uint8Array): void {
  for (let i = 0; i < marks.length; i++) {
    for (let e = rows.start[i]!; e < rows.start[i + 1]!; e++) if (absent[rows.index[e]!] === 1) marks[i] = 1;
  }
}
