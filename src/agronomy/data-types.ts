import type { Evidence } from "./types.ts";

/** Provenance that stands beside every value. */
export interface Provenance {
  /** Key in data/sources.json. */
  readonly source: string;
  /** Page, table or record in that source; null when the work is cited as a whole. */
  readonly locator: string | null;
  /** True when the figure was not seen in a public document. */
  readonly fromMemory: boolean;
}

/** An acid constant of an active, as a published figure; what is computed with stands in the thermodynamic data. */
export interface AcidConstant extends Provenance {
  readonly value: number;
  readonly temperature_C: number;
  /** Which proton, or whose form; null when nothing needs saying. */
  readonly note: string | null;
}

/** Contents of active that labels in common use have [g per L or kg, on the basis of the record]. */
export interface TypicalStrength extends Provenance {
  readonly formulation: string;
  readonly low: number;
  readonly high: number;
  readonly per: "L" | "kg";
}

/** What in a water an active may suffer from. */
export type WaterFactor =
  "hardness" | "iron" | "bicarbonate" | "alkaline water" | "acid water" | "salt" | "mud";

/** What is known of an active in a kind of water; a factor that is not listed was not found, which is not "none". */
export interface WaterSensitivity extends Provenance {
  readonly factor: WaterFactor;
  readonly level: "none" | "moderate" | "severe";
  /** From where on, in a sentence; null when no source gives it. */
  readonly threshold: string | null;
  readonly evidence: Evidence;
}

/** How strongly soil or mud holds an active: litres of water per kg of soil (Kd) or of its organic carbon (Koc). */
export interface Sorption extends Provenance {
  readonly measure: "Kd" | "Koc";
  readonly low_LPerKg: number;
  readonly high_LPerKg: number;
  readonly matrix: string;
}

/** A salt or ester of an active. */
export interface ActiveForm extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  /** Formula of the salt or ester, parts set off by a centred dot, e.g. "C3H8NO5P·C3H9N". */
  readonly formula: string;
  /** Mass of the salt or ester per mol of active [g/mol]. */
  readonly molarMass_gPerMol: number;
  /** Mass of acid (of cation, for a quaternary) per mass of salt or ester; 1 for the active itself. */
  readonly acidEquivalent: number;
  /** Components released per mole of active besides it and protons, e.g. {"IPA+": 1}; empty for esters. */
  readonly counterIons: Readonly<Record<string, number>>;
  /** False for an ester or an oil-soluble parent, which does not ionise in the tank. */
  readonly dissociates: boolean;
}

/** Half-life read from a source. */
export interface HalfLife extends Provenance {
  readonly pH: number;
  readonly temperature_C: number;
  /** null with a qualifier when the source only says "stable". */
  readonly halfLife_h: number | null;
  readonly qualifier: string | null;
}

/** k = kA·[H+]·(undissociated share) + kN + kB·[OH−], per hour. */
export interface RateLaw extends Provenance {
  readonly kA_LPerMolH: number;
  readonly kN_perH: number;
  readonly kB_LPerMolH: number;
  readonly pKaCap: number | null;
  readonly temperature_C: number;
}

export interface ActiveRecord extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly cas: string | null;
  readonly type: "herbicide" | "insecticide" | "fungicide" | "growth regulator" | "other";
  /** Resistance group by the committee that numbers it; empty where there is none. */
  readonly groups: Readonly<Record<string, string>>;
  readonly chemicalClass: string;
  /** Formula of the acid or parent. */
  readonly formula: string;
  /** Molar mass of the acid or parent [g/mol]. */
  readonly molarMass_gPerMol: number;
  /** What a strength means on its labels when nothing is said: acid, the parent itself, or the salt named. */
  readonly basis: "acid equivalent" | "active" | "salt";
  /** Ligand id of the thermodynamic data; null when no constants exist. */
  readonly ligand: string | null;
  /**
   * What is known of its binding by metals: "constants" measured on it, "analogy" borrowed ones, "none" not known,
   * "nothing to bind" for a neutral molecule, an ester or a permanent cation, which no metal ion can take.
   */
  readonly binding: "constants" | "analogy" | "none" | "nothing to bind";
  readonly bindingNote: string | null;
  readonly pKa: readonly AcidConstant[];
  readonly forms: readonly ActiveForm[];
  readonly formulations: readonly string[];
  readonly typicalStrengths: readonly TypicalStrength[];
  /** Active per area that handbooks print [g/ha, on the basis of the record], not label advice; null: not known. */
  readonly typicalRate: ({ readonly low_gPerHa: number; readonly high_gPerHa: number } & Provenance) | null;
  readonly waterSensitivities: readonly WaterSensitivity[];
  readonly halfLives: readonly HalfLife[];
  readonly rateLaw: RateLaw | null;
  readonly activationEnergy_kJPerMol: {
    readonly value: number;
    readonly low: number;
    readonly high: number;
  } & Provenance;
  readonly sorption: readonly Sorption[];
  readonly cautions: readonly (Provenance & { readonly text: string })[];
}

export interface ConditionerForm extends Provenance {
  readonly id: string;
  readonly name: string;
  /** Short words for the form, e.g. "liquid", unique within the chemistry. */
  readonly synonyms: readonly string[];
  /** Percent by mass of the substance `formula` stands for. */
  readonly assay_percent: number;
  /** g/mL at 20 °C for liquids; null for solids, which are weighed. */
  readonly density_gPerMl: number | null;
}

export interface ConditionerRecord extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly cas: string | null;
  readonly formula: string;
  readonly molarMass_gPerMol: number;
  readonly forms: readonly ConditionerForm[];
  /** For a product made of several chemistries: their ids and shares of its mass [1]; left out for a single one. */
  readonly madeOf?: readonly { readonly chemistry: string; readonly massShare: number }[];
  /** Components released per mole; protons left out (they follow from electroneutrality). */
  readonly released: Readonly<Record<string, number>>;
  readonly modes: readonly string[];
  /** Ligand ids of the thermodynamic data that it brings. */
  readonly ligands: readonly string[];
  /** Doses that published sources or habit use [g substance per L spray]. */
  readonly usualDose:
    | (Provenance & {
        readonly low_gPerL: number | null;
        readonly high_gPerL: number | null;
        readonly note: string;
      })
    | null;
  /** Highest dose the search will try [g substance per L spray] and why. */
  readonly searchLimit: Provenance & { readonly value_gPerL: number; readonly why: string };
  /** g per 100 g water by temperature [°C], as text keys. */
  readonly solubility: (Provenance & { readonly gPer100gWater: Readonly<Record<string, number>> }) | null;
  /** Whether a job that lists no conditioners has it searched, or only a job that names it. */
  readonly offered: "by default" | "when listed";
  /** What it leaves behind: persistence and load; null when not known. */
  readonly environment: (Provenance & { readonly text: string }) | null;
  readonly mixingGroup: string;
  readonly cautions: readonly (Provenance & { readonly text: string })[];
  /** Said whenever it is used: what the constants do not cover, what it does besides. */
  readonly notes: readonly (Provenance & { readonly text: string; readonly evidence: Evidence })[];
}

/** A leaf feed that may be a mix partner: its salt or chelate goes into the tank's chemistry. */
export interface FeedRecord extends Provenance {
  readonly id: string;
  readonly name: string;
  readonly synonyms: readonly string[];
  readonly cas: string | null;
  readonly formula: string;
  readonly molarMass_gPerMol: number;
  /** Element a strength counts, and the component that carries it, one atom each. */
  readonly nutrient: {
    readonly symbol: "Mn" | "Zn" | "Cu" | "Fe" | "Mg" | "Ca" | "B" | "K";
    readonly component: string;
  };
  readonly forms: readonly ConditionerForm[];
  /** Components released per mole; protons left out (they follow from electroneutrality). */
  readonly released: Readonly<Record<string, number>>;
  /** Names by which rules ask for it, e.g. "chelated zinc". */
  readonly facts: readonly string[];
  /** g per 100 g water by temperature [°C], as text keys. */
  readonly solubility: (Provenance & { readonly gPer100gWater: Readonly<Record<string, number>> }) | null;
  readonly mixingGroup: string;
  readonly cautions: readonly (Provenance & { readonly text: string })[];
}

/**
 * A leaf is {fact, op, value, unit?}; `all` and `any` nest. A list fact equals a value when it contains it, and is
 * "in" a list when the two share an element. "present" asks whether the fact is stated at all; it alone is never unknown.
 */
export type RuleCondition =
  | { readonly all: readonly RuleCondition[] }
  | { readonly any: readonly RuleCondition[] }
  | {
      readonly fact: string;
      readonly op: "=" | "!=" | "<" | "<=" | ">" | ">=" | "in" | "present";
      readonly value: string | number | boolean | readonly string[];
      readonly unit?: string;
    };

export interface RuleRecord extends Provenance {
  readonly id: string;
  readonly topic: string;
  readonly if: RuleCondition;
  readonly level: "block" | "warn" | "note";
  readonly text: string;
  readonly evidence: Evidence;
  readonly contradictedBy: string | null;
}
