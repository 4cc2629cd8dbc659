import indicatorFile from "../../../data/indicators.json" with { type: "json" };
import reagentFile from "../../../data/reagents.json" with { type: "json" };
import type { AddedLigand } from "../../chem/index.ts";
import type { Provenance } from "../data-types.ts";

/** One optical figure: its value, one standard uncertainty in the same unit, and where it comes from. */
export interface OpticalFigure extends Provenance {
  readonly value: number;
  readonly uncertainty: number;
  /** True when it was chosen by us so that something can be drawn; shown as an estimate wherever it is used. */
  readonly estimate: boolean;
}

/** An absorption band of a species. */
export interface BandRecord {
  readonly peak_nm: OpticalFigure;
  readonly absorptivity_LPerMolCm: OpticalFigure;
  readonly width_nm: OpticalFigure;
}

/** The foot of an ultraviolet band. */
export interface TailRecord {
  readonly at400_LPerMolCm: OpticalFigure;
  readonly decay_nm: OpticalFigure;
}

/** How one species absorbs light. */
export interface OpticsRecord {
  /** Id of the species. */
  readonly species: string;
  readonly bands: readonly BandRecord[];
  readonly tails: readonly TailRecord[];
  readonly note: string | null;
}

/** Two constants that were published against one another. */
export interface TiedConstant {
  readonly species: string;
  readonly to: string;
  /** How often the other one enters. */
  readonly times: number;
}

/** A coloured ligand that stands in for an active. */
export interface IndicatorRecord extends AddedLigand {
  readonly id: string;
  readonly name: string;
  /** Metals it shows. */
  readonly metals: readonly string[];
  /** Where its colours are known. */
  readonly pH: Provenance & { readonly low: number; readonly high: number };
  readonly tied: readonly TiedConstant[];
  readonly optics: readonly OpticsRecord[];
  readonly use: string;
  readonly notes: readonly string[];
}

/** A form in which a reagent is bought. */
export interface ReagentForm extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly assay_percent: number;
  /** null: a solid. */
  readonly density_gPerMl: number | null;
}

/** A substance of the bench that is neither an active nor a conditioner. Its name says the hydrate. */
export interface ReagentRecord extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly formula: string;
  readonly molarMass_gPerMol: number;
  /** Components [mol per mol] besides H+, which follows from the charges. */
  readonly released: Readonly<Record<string, number>>;
  /** Id of the indicator it is; null for none. */
  readonly indicator: string | null;
  readonly forms: readonly ReagentForm[];
  readonly cautions: readonly (Provenance & { readonly text: string })[];
  readonly note: string | null;
}

/** A concentration above which something happens that the model does not compute. */
export interface BenchLimit extends Provenance {
  readonly component: string;
  readonly belowPh: number;
  readonly most_molPerL: number;
  readonly say: string;
}

/** Data of demonstrations. */
export interface FlaskData {
  readonly indicators: readonly IndicatorRecord[];
  /** Colours of species of the built-in constants. */
  readonly background: readonly OpticsRecord[];
  readonly reagents: readonly ReagentRecord[];
  readonly limits: readonly BenchLimit[];
  /** Volume of a drop [mL]. */
  readonly drop_mL: number;
}

// The files are checked against their schemas in the tests; the compiler infers unions too narrow to use.
const builtIn = Object.freeze({
  indicators: indicatorFile.indicators,
  background: indicatorFile.background,
  reagents: reagentFile.reagents,
  limits: reagentFile.limits,
  drop_mL: reagentFile.drop_mL.value,
}) as unknown as FlaskData;

/** Indicators, bench reagents and their limits that come with Hardstand. */
export function builtInFlasks(): FlaskData {
  return builtIn;
}
