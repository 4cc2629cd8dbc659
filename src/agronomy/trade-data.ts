import actives from "../../data/actives.json" with { type: "json" };
import affinityClasses from "../../data/affinity-classes.json" with { type: "json" };
import cautions from "../../data/cautions.json" with { type: "json" };
import complaintCauses from "../../data/complaint-causes.json" with { type: "json" };
import conditioners from "../../data/conditioners.json" with { type: "json" };
import doseRules from "../../data/dose-rules.json" with { type: "json" };
import feeds from "../../data/feeds.json" with { type: "json" };
import formulations from "../../data/formulations.json" with { type: "json" };
import otherForms from "../../data/other-forms.json" with { type: "json" };
import rules from "../../data/rules.json" with { type: "json" };
import type {
  ActiveRecord,
  ConditionerRecord,
  FeedRecord,
  Provenance,
  RuleCondition,
  RuleRecord,
} from "./data-types.ts";
import type { Evidence } from "./types.ts";

/** A formulation type code and where it goes in the mixing order. */
export interface FormulationType extends Provenance {
  readonly code: string;
  readonly name: string;
  /** What it is, in plain words. */
  readonly plain: string;
  readonly inTank: string;
  readonly mixingGroup: string;
  /** Other codes in use for the same type. */
  readonly also: readonly string[];
  readonly note: string | null;
}

/** One place in the mixing order; `say` holds {label} where the product's name goes. */
export interface OrderRule extends Provenance {
  readonly group: string;
  readonly say: string;
  readonly why: string;
  readonly evidence: Evidence;
}

/** A published mixing order as mixing groups; those of one step go in together. */
export interface OrderSequence extends Provenance {
  readonly id: string;
  /** Short name for a sentence. */
  readonly who: string;
  readonly steps: readonly (readonly string[])[];
}

/** Formulation types and the order of mixing. */
export interface Formulations {
  readonly types: readonly FormulationType[];
  readonly bagSuffix: Provenance & {
    readonly code: string;
    readonly plain: string;
    readonly mixingGroup: string;
  };
  /** Share of the load filled with water before anything else, and where sources differ. */
  readonly firstFill: Provenance & {
    readonly share: number;
    readonly text: string;
    readonly evidence: Evidence;
  };
  /** In the order of filling. */
  readonly order: readonly OrderRule[];
  readonly sequences: readonly OrderSequence[];
  /** What the products of a mixing group are called in a sentence. */
  readonly groupNames: Readonly<Record<string, string>>;
}

/** A caution and when it is said. */
export interface CautionRecord extends Provenance {
  readonly id: string;
  readonly scope: "always" | "conditioner" | "demonstration" | "reagent";
  /** Condition on the facts of one conditioner; null when the scope alone decides. */
  readonly if: RuleCondition | null;
  /** Reagents of a demonstration it is about. */
  readonly reagents: readonly string[];
  readonly text: string;
}

/** Ions of the cation formula. */
export type FormulaIon = "K" | "Na" | "Ca" | "Mg" | "Fe";

/** The published linear formula for ammonium sulfate. */
export interface CationFormula extends Provenance {
  readonly id: string;
  readonly conditioner: string;
  /** Pounds of ammonium sulfate per 100 US gal for each mg/L of the ion. */
  readonly coefficients_lbPer100USgal_per_mgPerL: Readonly<Record<FormulaIon, number>>;
  readonly text: string;
  readonly evidence: Evidence;
}

/** A published range of doses. */
export interface DoseRange extends Provenance {
  readonly id: string;
  readonly conditioner: string;
  readonly low_lbPer100USgal: number;
  readonly high_lbPer100USgal: number;
  readonly text: string;
  readonly evidence: Evidence;
}

/** Published dose rules. */
export interface DoseRules {
  readonly cationFormula: CationFormula;
  readonly ranges: readonly DoseRange[];
}

/** Another form of an active that a published source reports as less moved by hard water. */
export interface OtherForm extends Provenance {
  /** Active in a form that ionises. */
  readonly active: string;
  readonly insteadActive: string;
  readonly insteadForm: string;
  /** Formulation code it is usually sold as. */
  readonly formulation: string;
  readonly text: string;
  readonly evidence: Evidence;
}

/** A class of affinity for metals, and the measured chemistry that stands in for actives of it entered by hand. */
export interface AffinityClass extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  /** Ligand of the thermodynamic data that stands in; null: nothing is computed. */
  readonly ligand: string | null;
  /** What the stand-in is called; null without one. */
  readonly standIn: string | null;
  /** How many acid constants an active of this class may give; null: any number. */
  readonly acids: { readonly least: number; readonly most: number } | null;
  /** Half-width of the borrowed metal constants [log10 K]; null without a stand-in. */
  readonly halfWidth_logK: number | null;
  readonly note: string;
}

/** A usual cause of a spray that failed, and what speaks for and against it in the field. */
export interface ComplaintCause extends Provenance {
  readonly id: string;
  readonly name: string;
  /** What to ask or look at. */
  readonly check: string;
  readonly signs: readonly {
    readonly about: "pattern" | "plants" | "loads";
    readonly is: readonly string[];
    readonly says: "for" | "against";
    readonly text: string;
  }[];
  readonly evidence: Evidence;
}

/** Everything the trade knows: actives, conditioners, leaf feeds, rules, formulations, cautions and published doses. */
export interface TradeData {
  readonly version: string;
  readonly actives: readonly ActiveRecord[];
  readonly affinityClasses: readonly AffinityClass[];
  readonly conditioners: readonly ConditionerRecord[];
  readonly feeds: readonly FeedRecord[];
  readonly rules: readonly RuleRecord[];
  readonly formulations: Formulations;
  readonly cautions: readonly CautionRecord[];
  readonly doseRules: DoseRules;
  readonly otherForms: readonly OtherForm[];
  /** In the order in which advisers exclude them, the water last. */
  readonly complaintCauses: readonly ComplaintCause[];
}

/** Version of the trade data set. */
export const TRADE_DATA_VERSION = "1.0.0";

/**
 * The trade data that ship with the program. The files are checked against their schemas by the tests, which is why
 * they are taken here at their word.
 */
export function builtInTrade(): TradeData {
  return {
    version: TRADE_DATA_VERSION,
    actives: actives.actives as unknown as readonly ActiveRecord[],
    affinityClasses: affinityClasses.classes,
    conditioners: conditioners.conditioners as unknown as readonly ConditionerRecord[],
    feeds: feeds.feeds as unknown as readonly FeedRecord[],
    rules: rules.rules as unknown as readonly RuleRecord[],
    formulations: formulations as unknown as Formulations,
    cautions: cautions.cautions as unknown as readonly CautionRecord[],
    doseRules: doseRules as unknown as DoseRules,
    complaintCauses: complaintCauses.causes as unknown as readonly ComplaintCause[],
    otherForms: otherForms.forms as unknown as readonly OtherForm[],
  };
}
