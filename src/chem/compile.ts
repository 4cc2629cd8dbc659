import { HardstandError } from "../units/index.ts";
import { definitionProblems } from "./definition-problems.ts";
import type { Solid, Species, SystemDefinition } from "./system.ts";
import { createWorkspace } from "./workspace.ts";
import type { Workspace } from "./workspace.ts";

/** Sparse rows: entries of row i are `index[k], value[k]` for `start[i] ≤ k < start[i + 1]`, by ascending index. */
export interface SparseRows {
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly value: Float64Array;
}

/**
 * A system definition checked and laid out for the solver.
 *
 * It also holds the solver's workspace, so one compiled system must not be used by two solves at the same time
 * (never a concern in single-threaded use: every call runs to its end and copies its answer out).
 */
export interface CompiledSystem {
  readonly definition: SystemDefinition;
  readonly componentNames: readonly string[];
  readonly speciesNames: readonly string[];
  readonly solidNames: readonly string[];
  readonly componentIndex: ReadonlyMap<string, number>;
  readonly speciesIndex: ReadonlyMap<string, number>;
  readonly solidIndex: ReadonlyMap<string, number>;
  /** Charge numbers, in the order of `componentNames` and `speciesNames`. */
  readonly componentCharges: Float64Array;
  readonly speciesCharges: Float64Array;
  /** Formation coefficients by component index. */
  readonly speciesRows: SparseRows;
  readonly solidRows: SparseRows;
  readonly logK: Float64Array;
  readonly logKsp: Float64Array;
  /** Whole number by which all coefficients become integers, or 0 if there is none up to 5040. */
  readonly coefficientScale: number;
  /** True when every species has the charge of its components and every solid has none: electroneutrality can be asked for. */
  readonly chargeConserved: boolean;
  /** Internal: scratch arrays of the solver. */
  readonly workspace: Workspace;
}

/**
 * Checks a system definition and lays it out for `equilibrate`.
 *
 * @throws HardstandError `system-definition-invalid` with all problems in `details`: duplicate or empty names, a
 *   component in a formation that is not defined, numbers that are not finite, empty formations, and species made of
 *   H⁺ alone other than H⁺ and OH⁻ (water would ionise without limit)
 */
export function compileSystem(definition: SystemDefinition): CompiledSystem {
  const problems = definitionProblems(definition);
  if (problems.length > 0) {
    throw new HardstandError("system-definition-invalid", "compileSystem", { problems });
  }
  const componentNames = definition.components.map((component) => component.name);
  const componentIndex = indexOf(componentNames);
  const componentCharges = Float64Array.from(definition.components, (component) => component.charge);
  const speciesRows = sparseRows(definition.species, componentIndex);
  const solidRows = sparseRows(definition.solids, componentIndex);
  const speciesNames = definition.species.map((species) => species.name);
  const solidNames = definition.solids.map((solid) => solid.name);
  const speciesCharges = Float64Array.from(definition.species, (species) => species.charge);
  return {
    definition,
    componentNames,
    speciesNames,
    solidNames,
    componentIndex,
    speciesIndex: indexOf(speciesNames),
    solidIndex: indexOf(solidNames),
    componentCharges,
    speciesCharges,
    speciesRows,
    solidRows,
    logK: Float64Array.from(definition.species, (species) => species.logK),
    logKsp: Float64Array.from(definition.solids, (solid) => solid.logKsp),
    coefficientScale: commonScale([speciesRows, solidRows]),
    chargeConserved:
      conservesCharge(speciesRows, componentCharges, speciesCharges) &&
      conservesCharge(solidRows, componentCharges, new Float64Array(solidNames.length)),
    workspace: createWorkspace(
      componentNames.length,
      speciesNames.length,
      solidNames.length,
      speciesRows.index.length,
      solidRows.index.length,
    ),
  };
}

function indexOf(names: readonly string[]): ReadonlyMap<string, number> {
  return new Map(names.map((name, k) => [name, k]));
}

function sparseRows(
  rows: readonly (Species | Solid)[],
  componentIndex: ReadonlyMap<string, number>,
): SparseRows {
  const start = new Int32Array(rows.length + 1);
  const index: number[] = [];
  const value: number[] = [];
  rows.forEach((row, i) => {
    const entries = Object.entries(row.formation)
      .filter(([, coefficient]) => coefficient !== 0)
      .map(([component, coefficient]) => [componentIndex.get(component)!, coefficient] as const)
      .sort(([a], [b]) => a - b);
    for (const [component, coefficient] of entries) {
      index.push(component);
      value.push(coefficient);
    }
    start[i + 1] = index.length;
  });
  return { start, index: Int32Array.from(index), value: Float64Array.from(value) };
}

/** Smallest usual factor that turns all coefficients into integers (fractions such as 1/2, 1/3 and their like), else 0. */
function commonScale(tables: readonly SparseRows[]): number {
  for (const scale of [1, 2, 3, 4, 6, 10, 12, 60, 100, 420, 1000, 2520, 5040]) {
    const whole = tables.every((table) =>
      table.value.every((value) => Math.abs(value * scale - Math.round(value * scale)) <= 1e-12 * scale),
    );
    if (whole) return scale;
  }
  return 0;
}

function conservesCharge(rows: SparseRows, componentCharges: Float64Array, charges: Float64Array): boolean {
  for (let i = 0; i < charges.length; i++) {
    let charge = 0;
    for (let k = rows.start[i]!; k < rows.start[i + 1]!; k++) {
      charge += rows.value[k]! * componentCharges[rows.index[k]!]!;
    }
    if (Math.abs(charge - charges[i]!) > 1e-9) return false;
  }
  return true;
}
