import type { ColourLook, Lab } from "../../colour/index.ts";
import type { ThermoData } from "../../chem/index.ts";
import type { Water } from "../../water/index.ts";
import type { TitledJob } from "../job.ts";
import type { TradeData } from "../trade-data.ts";
import type { SourceUsed } from "../types.ts";
import type { SeenColours } from "./check-show.ts";
import type { FlaskData, IndicatorRecord } from "./flask-data.ts";

/** Everything a demonstration is read and computed with. */
export interface FlaskContext {
  readonly thermo: ThermoData;
  readonly trade: TradeData;
  readonly flasks: FlaskData;
}

/** Something that can be put into a flask. */
export interface Substance {
  readonly id: string;
  /** Name with its hydrate or salt, as it stands on the bottle. */
  readonly name: string;
  readonly kind: "reagent" | "conditioner" | "active";
  /** Components [mol per mol counted] besides H+. */
  readonly released: Readonly<Record<string, number>>;
  /** Mass of a mole as it is counted in a strength [g/mol]. */
  readonly molarMass_gPerMol: number;
  /** Share by mass of what is counted in the thing as bought [1]. */
  readonly assay: number;
  /** Density as bought [g/mL]; null for a solid. */
  readonly density_gPerMl: number | null;
  /** What a strength counts, where that is not plain from the name. */
  readonly countedAs: string | null;
}

/** How strong the thing added is. */
export type Strength =
  | { readonly kind: "as bought" }
  | { readonly kind: "mol/L"; readonly value: number }
  | { readonly kind: "g/L"; readonly value: number }
  | { readonly kind: "g/kg"; readonly value: number };

/** Something measured into a flask. */
export interface Addition {
  readonly kind: "add";
  readonly substance: Substance;
  readonly strength: Strength;
  /** The strength as it was written; null for the thing as bought. */
  readonly strengthText: string | null;
  readonly amount: { readonly value: number; readonly unit: "mL" | "g" };
  /** Amount as it was written, e.g. "0.5 mL" or "3 drops". */
  readonly amountText: string;
  /** Substance [mol]. */
  readonly amount_mol: number;
  /** By how much the flask fills [mL]; what dissolves as a solid is taken to have no volume. */
  readonly volume_mL: number;
  /** Acid or alkali the stock is kept in; null for water. */
  readonly medium: { readonly substance: Substance; readonly molPerL: number } | null;
  /** What to say to the audience; null for nothing special. */
  readonly say: string | null;
  readonly path: string;
}

/** The pH set by hand, drop by drop, with 1 mol/L acid or alkali and a meter or strip. */
export interface Adjustment {
  readonly kind: "adjust";
  readonly pH: number;
  readonly say: string | null;
  readonly path: string;
}

export type FlaskStep = Addition | Adjustment;

/** What a flask starts with. */
export interface FlaskStart {
  /** null: deionised. */
  readonly water: Water | null;
  readonly waterName: string;
  readonly volume_mL: number;
}

/** One flask and what is put into it, in order. */
export interface Flask {
  readonly name: string;
  /** What it shows, in the words of the document; null when not said. */
  readonly shows: string | null;
  readonly start: FlaskStart;
  readonly steps: readonly FlaskStep[];
  readonly path: string;
}

/** A demonstration as understood: nothing computed yet. */
export interface Demo {
  readonly title: string | null;
  /** What the demonstration is about, in the words of the document. */
  readonly about: string | null;
  /** Way of the light through a flask [cm]. */
  readonly path_cm: number;
  readonly temperature_C: number;
  readonly flasks: readonly Flask[];
  /** Indicators typed in by hand. */
  readonly ownIndicators: readonly IndicatorRecord[];
  /** The audience's own job, for "from flask to farm"; null when not given. */
  readonly farm: TitledJob | null;
  /** Colours as they were seen at the show; null when none were given. */
  readonly seen: SeenColours | null;
}

/** A colour with its figures and what it looks like. */
export interface FlaskColour extends Lab {
  readonly hex: string;
  /** False when the true colour is stronger than a screen can show. */
  readonly inGamut: boolean;
  readonly look: ColourLook;
}

/** Solid matter in suspension. */
export interface Cloud {
  readonly solid: string;
  /** mg per L of liquid. */
  readonly mgPerL: number;
}

/** How cloudy a liquid is, and of what, most first. */
export type Cloudiness =
  | { readonly kind: "clear" }
  | { readonly kind: "faint" | "cloudy" | "thick"; readonly solids: readonly [string, ...string[]] };

/** Acid or alkali that a stock is kept in. */
export interface StockMedium {
  readonly substance: string;
  readonly molPerL: number;
}

/** What went into a flask: the water it starts with, something measured in, or acid or alkali that sets its pH. */
export type Added =
  | { readonly kind: "water"; readonly water: string; readonly volume_mL: number }
  | {
      readonly kind: "measured";
      /** Amount and strength as they were written; no strength for the thing as bought. */
      readonly amount: string;
      readonly substance: string;
      readonly strength: string | null;
      /** null for water. */
      readonly medium: StockMedium | null;
    }
  | {
      readonly kind: "pH set";
      readonly pH: number;
      readonly substance: string;
      readonly molPerL: number;
      /** About how much it takes [mL]. */
      readonly about_mL: number;
    };

/** How the colour may differ over the published spread of constants and optical figures. */
export interface ColourBand {
  /** Lightest and darkest colour of nine in ten draws. */
  readonly lightest: FlaskColour;
  readonly darkest: FlaskColour;
  /** Colour difference from the central colour that nine in ten draws keep within. */
  readonly deltaE00: number;
  /** Share of draws in which something fell out. */
  readonly cloudy: number;
}

/** A remark about a step: something the model does not compute, or a limit it is near. */
export interface FlaskRemark {
  readonly text: string;
  readonly source: string | null;
}

/** A flask after one step. */
export interface FlaskState {
  readonly added: Added;
  readonly say: string | null;
  readonly volume_mL: number;
  readonly pH: number;
  readonly ionicStrength_molPerL: number;
  /** Colour of the clear liquid against white. */
  readonly colour: FlaskColour;
  /** null where no spread was asked for. */
  readonly band: ColourBand | null;
  readonly cloudy: boolean;
  readonly clouds: readonly Cloud[];
  readonly cloudiness: Cloudiness;
  readonly species_molPerL: Readonly<Record<string, number>>;
  /** Of each metal, which share [1] each partner holds; "free" for the hydrated ion and its hydroxo forms. */
  readonly heldBy: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly remarks: readonly FlaskRemark[];
  readonly extrapolated: boolean;
}

/** A flask with its states, one per step; the first is the water it starts with. */
export interface FlaskShown {
  readonly name: string;
  readonly shows: string | null;
  readonly start: FlaskState;
  readonly steps: readonly FlaskState[];
}

/** Two flasks side by side after their last steps. */
export interface FlaskPair {
  readonly a: string;
  readonly b: string;
  readonly deltaE00: number;
  /** 5th and 95th percentile; equal to the central value where no spread was asked for. */
  readonly low: number;
  readonly high: number;
  /** Share of draws in which `a` is the darker one. */
  readonly aDarker: number;
  readonly verdict: string;
}

/** Two flasks that end with the same things in them. */
export interface SameContents {
  readonly a: string;
  readonly b: string;
}

/** The flasks from dark to light, and how sure that is. */
export interface DarknessOrder {
  /** Groups of flasks, darkest first; flasks of a group look the same. */
  readonly groups: readonly (readonly string[])[];
  /** Share of draws that give the same order of the groups. */
  readonly sure: number;
}

/** One optical figure in use, for the list of where figures come from. */
export interface OpticsUsed {
  readonly species: string;
  readonly what: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
  readonly locator: string | null;
  readonly estimate: boolean;
  readonly fromMemory: boolean;
}

/** A demonstration computed. */
export interface FlaskShow {
  readonly "hardstand-flasks": 1;
  readonly title: string | null;
  readonly about: string | null;
  readonly path_cm: number;
  readonly temperature_C: number;
  readonly flasks: readonly FlaskShown[];
  readonly pairs: readonly FlaskPair[];
  readonly order: DarknessOrder;
  readonly optics: readonly OpticsUsed[];
  readonly draws: number;
  readonly sameContents: readonly SameContents[];
  readonly sources: readonly SourceUsed[];
  readonly versions: { readonly hardstand: string; readonly data: string };
}
