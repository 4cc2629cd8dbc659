import type { ActivityModel } from "./activity.ts";

/** Why a number rests on more than measured parameters. */
export interface RangeNote {
  /** The salt ("NH4+ SO4-2") or species concerned. */
  readonly what: string;
  readonly why: "above the fitted molality" | "away from the fitted temperature" | "held";
  /** Limit of the fit [mol/kg ionic strength, or °C]; null when it is not known. */
  readonly limit: number | null;
}

/** How the activity coefficient of a species was come by, where not from published parameters of its own. */
export interface EstimateNote {
  /** The species, or the pair of ions ("Na+ SO4-2") that a single coefficient is about. */
  readonly species: string;
  /** Ion whose parameters stand in, "charge type", or "Davies"; of a pair: what its coefficient rests on. */
  readonly as: string;
}

/**
 * Activity coefficients and water activity of one system as functions of the whole composition. Molal scale: the
 * numbers it is given are mol per kg of water. Arrays are in the order of the species it was compiled for.
 */
export interface CompiledInteractions {
  readonly lnGamma: Float64Array;
  /** ∂ ln γ_i / ∂ m_j at [i · columns + b], of the species j = by[b] of the `columns` asked for last. */
  readonly jacobian: Float64Array;
  /** ∂ ln a_w / ∂ m_j at [b]; as `jacobian`. */
  readonly waterSlope: Float64Array;
  lnWaterActivity: number;
  osmoticCoefficient: number;
  /** Evaluates at molalities `m` [mol/kg]; with derivatives by the molalities of the species `by` (indices). */
  evaluate(m: Float64Array, by: Int32Array): void;
  /** What lies outside the range of the fit at molalities `m`. */
  rangeNotes(m: Float64Array): readonly RangeNote[];
  /** Species that carry weight at molalities `m` and rest on estimates. */
  estimateNotes(m: Float64Array): readonly EstimateNote[];
}

/** A species whose effect interaction parameters contain, because they were fitted with its ions free. */
export interface ContainedSpecies {
  readonly species: string;
  readonly why: string;
}

/** An activity model in which every coefficient depends on the molalities of all species. */
export interface InteractionModel {
  readonly name: string;
  readonly kind: "interaction";
  readonly ideal: false;
  /** Species that its parameters already contain, each with the reason: never to be counted again. */
  readonly contained: readonly ContainedSpecies[];
  /** The model of ionic strength a cold start begins with. */
  readonly startModel: ActivityModel;
  /** Lays the parameters out for the species of one system. */
  compile(speciesNames: readonly string[], charges: Float64Array): CompiledInteractions;
}

/** True for a model that needs the whole composition. */
export function isInteraction(model: ActivityModel | InteractionModel): model is InteractionModel {
  return "kind" in model;
}
