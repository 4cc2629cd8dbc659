import pitzerFile from "../../data/pitzer.json" with { type: "json" };
import type { ContainedSpecies } from "./interaction-model.ts";
import type { ThermoProvenance } from "./thermo-types.ts";

/** Parameters of one salt in Pitzer's equations, at 25 °C. */
export interface BinaryRecord extends ThermoProvenance {
  readonly cation: string;
  readonly anion: string;
  /** kg/mol */
  readonly beta0: number;
  readonly beta1: number;
  readonly beta2: number;
  /** C-phi [(kg/mol)²] */
  readonly cphi: number;
  /** Exponents of beta1 and beta2 [(kg/mol)^½]. */
  readonly alpha: readonly number[];
  /** Highest molality of the salt alone in the fit [mol/kg]; null: not known. */
  readonly maxMolality_molPerKg: number | null;
  /** Change with temperature, by parameter name; null: not known. */
  readonly temperature: {
    readonly coefficients: Readonly<Partial<Record<"beta0" | "beta1" | "beta2" | "cphi", readonly number[]>>>;
    readonly source: string;
    readonly range_C: readonly number[];
  } | null;
}

/** A term between ions of like sign (theta), three ions (psi), or a neutral species and an ion (lambda). */
export interface MixingRecord extends ThermoProvenance {
  readonly kind: "theta" | "psi" | "lambda";
  readonly species: readonly string[];
  readonly value: number;
  /** Ions the value was measured on, when it is borrowed. */
  readonly analogyOf: readonly string[] | null;
}

/** An ion that stands in for one without parameters. */
export interface AnalogyRecord {
  readonly species: string;
  readonly as: string;
  readonly why: string;
}

/** A solubility product that belongs to the parameters, in place of that of the solids file. */
export interface SolidConstantRecord extends ThermoProvenance {
  readonly solid: string;
  readonly logKsp: number;
  readonly standardUncertainty: number;
  readonly why: string;
  /** log10 of the constant as A + B·T + C/T + D·log10(T) + E/T² [T in K]; only its change from 25 °C is used. */
  readonly analytic: { readonly coefficients: readonly number[]; readonly source: string };
}

/** The parameters of Pitzer's equations, with what has to be changed in a system that uses them. */
export interface PitzerData {
  readonly version: string;
  readonly binaries: readonly BinaryRecord[];
  readonly mixing: readonly MixingRecord[];
  readonly analogies: readonly AnalogyRecord[];
  /** Species that the parameters already contain: never to be counted again. */
  readonly contained: readonly ContainedSpecies[];
  readonly solidConstants: readonly SolidConstantRecord[];
}

/** The ion-interaction parameters that come with Hardstand. */
export function builtInPitzer(): PitzerData {
  // The file is checked against its schema in the tests; the compiler infers unions too narrow to use.
  return pitzerFile as unknown as PitzerData;
}
