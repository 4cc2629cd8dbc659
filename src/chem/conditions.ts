import type { ActivityModel } from "./activity.ts";
import type { CompiledSystem } from "./compile.ts";
import type { EstimateNote, InteractionModel, RangeNote } from "./interaction-model.ts";

/** What is known about the solution to be brought to equilibrium. */
export interface Conditions {
  /** Totals [mol/L] of every component that is not fixed; the one named by `electroneutral` may be left out. */
  readonly totals_molPerL: Readonly<Record<string, number>>;
  /** log10 of a fixed component activity, e.g. {"H+": -5}; no balance is kept for it. */
  readonly fixedLog10Activities?: Readonly<Record<string, number>>;
  /**
   * Name of the component ("H+") whose total is set to −Σ z_j T_j / z over the other components, so that the charge
   * balance closes. Any total given for it is ignored.
   */
  readonly electroneutral?: string | null;
  /**
   * A model of the ionic strength (concentrations in mol/L) or an interaction model (then totals and all
   * concentrations are mol per kg of water; see `waterInLitre_kgPerL`).
   */
  readonly activity: ActivityModel | InteractionModel;
  /** Formation constants (log10) to use instead of the definition's, by species name. */
  readonly logK?: Readonly<Record<string, number>>;
  /** Solubility products (log10) to use instead of the definition's, by solid name. */
  readonly logKsp?: Readonly<Record<string, number>>;
  /** Names of the solids that may form; left out: all of the definition. */
  readonly solids?: readonly string[];
  /** An answer for similar conditions to start from. It changes the time taken, not the answer. */
  readonly start?: Equilibrium;
  /** Most Newton steps in all; default 2000. */
  readonly maxIterations?: number;
  /** Largest mismatch left in a balance or mass action [ln]; default 1e-12. For answers of which few digits count. */
  readonly tolerance?: number;
}

/** A solution at equilibrium. Arrays are in the order of the system's name lists and are the caller's own. */
export interface Equilibrium {
  readonly system: CompiledSystem;
  /** mol/L; exactly zero for species of an absent component. */
  readonly concentrations: Float64Array;
  /** −Infinity for species of an absent component only. */
  readonly log10Concentrations: Float64Array;
  /** Of components; −Infinity for absent ones only. */
  readonly log10Activities: Float64Array;
  /** Natural log of the activity coefficients; zero for species of an absent component. */
  readonly lnGamma: Float64Array;
  readonly ionicStrength_molPerL: number;
  /** Amounts of solids [mol per litre of solution]. */
  readonly solids: Float64Array;
  /** log10 (ion activity product / Ksp) of all solids of the definition, allowed or not; −Infinity with an absent component. */
  readonly saturationIndices: Float64Array;
  /** −log10 of the activity of the component "H+"; null if the system has none or it is absent. */
  readonly pH: number | null;
  readonly iterations: number;
  /** Largest balance residual relative to the size of its terms, in the basis of abundant species. */
  readonly residual: number;
  /** Activity of water [1]; null where the activity model has no sound value. */
  readonly waterActivity: number | null;
  /** Osmotic coefficient [1]; null as `waterActivity`. */
  readonly osmoticCoefficient: number | null;
  /** True when the solution lies outside the range the activity model was fitted to. */
  readonly extrapolated: boolean;
  /** Which salts or limits of an interaction model the solution is outside of. */
  readonly rangeNotes: readonly RangeNote[];
  /** Ions of weight whose interaction parameters are estimates. */
  readonly estimates: readonly EstimateNote[];
}

/** Why no equilibrium was found. */
export type EquilibriumFailure =
  | "unknown-component"
  | "unknown-species"
  | "unknown-solid"
  | "missing-total"
  | "number-not-finite"
  | "charge-not-conserved"
  | "electroneutral-with-fixed-charge"
  | "infeasible-total"
  | "inconsistent-solids"
  | "redundant-component"
  | "not-converged";

/** An equilibrium, or the reason there is none. */
export type EquilibriumResult =
  | { readonly ok: true; readonly value: Equilibrium }
  | {
      readonly ok: false;
      readonly reason: EquilibriumFailure;
      readonly detail: string;
      readonly residual: number | null;
      readonly iterations: number;
    };
