import { levenbergMarquardt } from "ml-levenberg-marquardt";
import { isInteraction } from "../src/chem/index.ts";
import type { Equilibrium } from "../src/chem/index.ts";
import type { Problem } from "./problems.ts";

/** What a general solver made of a problem. */
export interface GeneralAnswer {
  /** ln of the activities of the components, then ln of the ionic strength. */
  readonly unknowns: readonly number[];
  /** ln of the concentrations of all species. */
  readonly lnConcentrations: Float64Array;
  /** Largest residual: of ln(sum) − ln(total), of the charge balance and of the ionic strength. */
  readonly residual: number;
  readonly iterations: number;
}

/** Sum of squared residuals at which the general solver may stop: residuals of about 1e-12. */
const SQUARED_TOLERANCE = 1e-24;
const MOST_ITERATIONS = 500;

/** How fast the damping changes: by the library's own factors, or by those found to solve most of the varied tanks. */
export type Settings = "own" | "best found";
const SETTINGS: Readonly<Record<Settings, { dampingStepUp: number; dampingStepDown: number }>> = {
  own: { dampingStepUp: 11, dampingStepDown: 9 },
  "best found": { dampingStepUp: 3, dampingStepDown: 2 },
};

/**
 * A dissolved equilibrium as equations for a solver that knows no chemistry, in the form that suits it best: unknowns
 * are logarithms, and each balance is the logarithm of a ratio of sums of positive terms, so that no step can make a
 * concentration negative and no equation outweighs another. Analytic derivatives are given.
 */
export interface Equations {
  readonly size: number;
  /** Start from nothing but the totals. */
  readonly start: readonly number[];
  /** Start from an answer. */
  startFrom(answer: Equilibrium): readonly number[];
  evaluate(unknowns: readonly number[]): {
    readonly residuals: Float64Array;
    /** By row (equation) and column (unknown). */
    readonly jacobian: readonly Float64Array[];
    readonly lnConcentrations: Float64Array;
  };
}

/** A sum of weighted concentrations whose logarithm stands in an equation with a sign. */
interface Sum {
  readonly sign: number;
  readonly species: Int32Array;
  readonly weights: Float64Array;
}

/** Writes a problem without solids as equations: a balance for each component, of charge for H+, and ionic strength. */
export function equationsOf(problem: Problem): Equations {
  const { system, conditions } = problem;
  const { speciesNames, componentNames, speciesCharges, speciesRows, logK } = system;
  const model = conditions.activity;
  if (isInteraction(model)) throw new Error("equations are written for a model of the ionic strength");
  const species = speciesNames.length;
  const components = componentNames.length;
  const size = components + 1;
  const proton = componentNames.indexOf("H+");
  const totals = componentNames.map((name) => conditions.totals_molPerL[name] ?? 0);
  const coefficientOf = (i: number, k: number): number => {
    for (let e = speciesRows.start[i]!; e < speciesRows.start[i + 1]!; e++)
      if (speciesRows.index[e] === k) return speciesRows.value[e]!;
    return 0;
  };
  /** Species with a positive weight, and the weights: one sum of an equation. */
  const sumOf = (sign: number, weight: (i: number) => number): Sum => {
    const terms = speciesNames.map((_, i) => i).filter((i) => weight(i) > 0);
    return { sign, species: Int32Array.from(terms), weights: Float64Array.from(terms, weight) };
  };
  const charge = (i: number): number => speciesCharges[i]!;
  const sums: readonly (readonly Sum[])[] = [
    ...componentNames.map((_, k) =>
      k === proton
        ? [sumOf(1, charge), sumOf(-1, (i) => -charge(i))]
        : [sumOf(1, (i) => coefficientOf(i, k))],
    ),
    [sumOf(1, (i) => 0.5 * charge(i) ** 2)],
  ];

  return {
    size,
    start: [
      ...totals.map((total, k) => (k === proton ? Math.log(1e-7) : Math.log(total))),
      Math.log(0.5 * totals.reduce((sum, total) => sum + total, 0)),
    ],
    startFrom: (answer) => [
      ...Array.from(answer.log10Activities, (value) => value * Math.LN10),
      Math.log(answer.ionicStrength_molPerL),
    ],
    evaluate: (unknowns) => {
      const I = Math.exp(unknowns[components]!);
      const lnConcentrations = new Float64Array(species);
      const c = new Float64Array(species);
      const byStrength = new Float64Array(species);
      for (let i = 0; i < species; i++) {
        let value = logK[i]! * Math.LN10 - model.lnGamma(charge(i), speciesNames[i]!, I);
        for (let e = speciesRows.start[i]!; e < speciesRows.start[i + 1]!; e++)
          value += speciesRows.value[e]! * unknowns[speciesRows.index[e]!]!;
        lnConcentrations[i] = value;
        c[i] = Math.exp(value);
        byStrength[i] = -model.dLnGamma(charge(i), speciesNames[i]!, I) * I;
      }
      const residuals = new Float64Array(size);
      const jacobian = sums.map((parts, equation) => {
        const line = new Float64Array(size);
        for (const { sign, species: terms, weights } of parts) {
          let sum = 0;
          for (let t = 0; t < terms.length; t++) sum += weights[t]! * c[terms[t]!]!;
          residuals[equation] = residuals[equation]! + sign * Math.log(sum);
          for (let t = 0; t < terms.length; t++) {
            const i = terms[t]!;
            const part = (sign * weights[t]! * c[i]!) / sum;
            line[components] = line[components]! + part * byStrength[i]!;
            for (let e = speciesRows.start[i]!; e < speciesRows.start[i + 1]!; e++) {
              const k = speciesRows.index[e]!;
              line[k] = line[k]! + part * speciesRows.value[e]!;
            }
          }
        }
        return line;
      });
      for (let k = 0; k < components; k++)
        if (k !== proton) residuals[k] = residuals[k]! - Math.log(totals[k]!);
      residuals[components] = residuals[components]! - unknowns[components]!;
      jacobian[components]![components] = jacobian[components]![components]! - 1;
      return { residuals, jacobian, lnConcentrations };
    },
  };
}

/**
 * Solves the equations by a general Levenberg–Marquardt library, as the least squares of their residuals.
 *
 * @returns what it came to; null when it gave up with an error of its own
 */
export function solveGenerally(
  equations: Equations,
  start: readonly number[],
  settings: Settings = "best found",
): GeneralAnswer | null {
  const index = Array.from({ length: equations.size }, (_, k) => k);
  // The library asks for one equation at a time: one evaluation serves them all.
  let last: { readonly at: readonly number[]; readonly of: ReturnType<Equations["evaluate"]> } | null = null;
  const at = (unknowns: readonly number[]): ReturnType<Equations["evaluate"]> => {
    if (last === null || unknowns.some((value, k) => value !== last?.at[k]))
      last = { at: [...unknowns], of: equations.evaluate(unknowns) };
    return last.of;
  };
  let found;
  try {
    found = levenbergMarquardt(
      { x: index, y: index.map(() => 0) },
      (unknowns) => {
        const { residuals } = at(unknowns);
        return (k) => residuals[k]!;
      },
      {
        initialValues: [...start],
        jacobianFunction: (unknowns) => {
          const { jacobian } = at(unknowns);
          return (k) => Array.from(jacobian[k]!);
        },
        ...SETTINGS[settings],
        errorTolerance: SQUARED_TOLERANCE,
        maxIterations: MOST_ITERATIONS,
      },
    );
  } catch {
    return null;
  }
  const unknowns = [...found.parameterValues];
  const { residuals, lnConcentrations } = equations.evaluate(unknowns);
  const residual = residuals.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return { unknowns, lnConcentrations, residual, iterations: found.iterations };
}
