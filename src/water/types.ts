import type { Issue, MeasuredText, Parameter } from "../units/index.ts";

export { PARAMETERS } from "../units/index.ts";
export type { Parameter } from "../units/index.ts";

/** What a reading says. A blank is "not measured", never zero. */
export type Measured = MeasuredText;

/** One reading of a water test, in the unit it came in and in the internal one. */
export interface Reading {
  readonly parameter: Parameter;
  /** The value and unit exactly as typed. */
  readonly typed: { readonly value: string; readonly unit: string };
  /**
   * The reading in the internal unit of its parameter: mol/L for ions, boron, silica and hardness (Ca + Mg), eq/L for
   * alkalinity, bare number for pH, µS/cm at 25 °C for conductivity, °C for temperature, mg/L for dissolved and
   * suspended solids, NTU for turbidity.
   */
  readonly measured: Measured;
  /** Path of the reading in the document it came from. */
  readonly path: string;
}

/** What an iron that was reported without its form is, when somebody knows. */
export type IronForm = "ferrous" | "ferric";

export type TestMethod = "laboratory" | "strip" | "drop test" | "meter";

/** A water test as received: readings understood, nothing completed. */
export interface WaterTest {
  readonly source: string;
  /** ISO date, or null when not given. */
  readonly sampled: string | null;
  readonly method: TestMethod;
  /** Form of the reading "iron"; null when not said: then the form that binds most is assumed. */
  readonly ironForm: IronForm | null;
  readonly readings: readonly Reading[];
}

/** Something taken for granted because it was not measured. */
export interface Assumption {
  /** Stable kebab-case name. */
  readonly code: string;
  /** Component or parameter the assumption is about. */
  readonly about: string;
  /** Value taken, in the internal unit of `about`, with the range it stands for. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  /** One plain sentence. */
  readonly why: string;
  readonly evidence: "computed" | "published rule" | "common practice";
  readonly source: string;
}

/** A completed, checked and electrically neutral composition, ready to be mixed. */
export interface Water {
  readonly source: string;
  readonly temperature_C: number;
  readonly pH: number;
  /**
   * Total of each component [mol/L], by component name ("Ca+2", "CO3-2" for all dissolved inorganic carbon, …). H+ is
   * left out: its total follows from electroneutrality, TOTH = −Σ z·T over the other components.
   */
  readonly totals_molPerL: Readonly<Record<string, number>>;
  readonly alkalinity_molPerL: number;
  readonly hardness_molPerL: number;
  /** Measured or calculated conductivity [µS/cm at 25 °C]. */
  readonly conductivity_uSPerCm: number | null;
  readonly turbidity_NTU: number | null;
  readonly suspendedSolids_mgPerL: number | null;
  /** (cations − anions)/(cations + anions)·100 of the readings before completion; null when too little was measured. */
  readonly chargeBalance_percent: number | null;
  readonly assumptions: readonly Assumption[];
  readonly issues: readonly Issue[];
}
