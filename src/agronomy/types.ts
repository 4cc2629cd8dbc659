import type { FeedItem } from "./feed.ts";
import type { OwnProduct } from "./own-product.ts";
import type { OwnActive } from "./own-active.ts";
import type { Issue, Measures } from "../units/index.ts";
import type { Assumption, WaterTest } from "../water/index.ts";

/** How a statement shown to a person is known. */
export type Evidence = "computed" | "published rule" | "common practice";

/** Where the aim has to be met. */
export type Place = "in the tank" | "on the leaf";

/** One product of the planned tank. */
export interface MixItem {
  /** Id of the active in the data set, or of the one entered by hand. */
  readonly active: string;
  /** The active when the job describes it; null for one of the data set. */
  readonly own: OwnActive | null;
  /** Id of the salt or ester; null when the active has only one form or it was not stated. */
  readonly form: string | null;
  /** Content of active [g per L for liquids, g per kg for solids], on the basis named. */
  readonly strength: {
    readonly value: number;
    readonly per: "L" | "kg";
    readonly basis: "acid equivalent" | "salt" | "active";
  };
  /** Product per area [L/ha for liquids, kg/ha for solids]. */
  readonly rate: { readonly value: number; readonly per: "L" | "kg" };
  /** Highest rate the label allows, in the unit of the rate; null when not said: more active is then not proposed. */
  readonly mostRate: number | null;
  /** Formulation type code, e.g. "SL". */
  readonly formulation: string;
  /** What the person calls the product; never needed. */
  readonly name: string | null;
  /** Price per L or kg of product in the job's currency; null when not given. */
  readonly price: number | null;
  readonly path: string;
}

/** A conditioner the adviser is willing to use. */
export interface ConditionerChoice {
  /** Id of the chemistry in the data set, or of the own product. */
  readonly chemistry: string;
  /** Id of the physical form sold; null for the first one of the data set. */
  readonly form: string | null;
  /** Price per kg or per L of the form sold; null when not given: cost is then not known, not zero. */
  readonly price: { readonly value: number; readonly per: "kg" | "L" } | null;
  /** Label limits of the dose [g of the form sold per L of spray]; null when not given. */
  readonly leastDose_gPerL: number | null;
  readonly mostDose_gPerL: number | null;
  /** The product when the job describes it by its label; null for a chemistry of the data set. */
  readonly own: OwnProduct | null;
  readonly path: string;
}

/** Facts about the place and the sprayer that published rules may ask for; null is "not said", never "no". */
export interface Site {
  /** Rules on dicamba volatility apply here. */
  readonly volatilityRules: boolean | null;
  /** What was done to the water: "alum", "softener", "chlorinated". */
  readonly waterTreatments: readonly string[] | null;
  /** Metals that the spray touches. */
  readonly metals: readonly string[] | null;
  readonly airTemperature_C: number | null;
}

/** Another water the adviser could use, alone or blended with the planned one. */
export interface OtherWater {
  readonly water: WaterTest;
  /** Price per L of this water; null when not given: cost is then not known, not zero. */
  readonly price_perL: number | null;
  readonly path: string;
}

/** A job as understood: quantities in internal units, nothing computed yet. */
export interface Job {
  readonly water: WaterTest;
  /** Further sources; empty when there is only the planned one. */
  readonly otherWaters: readonly OtherWater[];
  readonly spray: {
    readonly volume_LPerHa: number;
    /** Least volume the adviser would go down to; null when not said (then "less water" is not searched below it). */
    readonly leastVolume_LPerHa: number | null;
    readonly tank_L: number;
    readonly area_ha: number;
    /** The measures the tank is said in: amounts to measure out are told in these as well. */
    readonly measures: Measures;
    readonly temperature_C: number | null;
    /** Relative humidity of the air while drops dry [1]; null when not said. */
    readonly humidity: number | null;
    /** Calcium on the leaves that drops take up [kg/ha of leaf]; null when not said: then none. */
    readonly leafCalcium_kgPerHa: number | null;
    /** Share of the leaf surface that the spray covers [1]; null when not said. */
    readonly coverage: number | null;
    /** Whether the tank is full of air (open, splashing return): iron(II) is then oxidised; null when not said. */
    readonly aerated: boolean | null;
    /** From mixed to last sprayed; null when not said: then by `output_LPerMin`, where that is. */
    readonly holdingTime_h: number | null;
    readonly jar_L: number;
    /** Ground sprayed like this in a season; null when not said: cost per season is then not known. */
    readonly seasonArea_ha: number | null;
    /** What stays in tank, pump and lines when the sprayer runs dry; null when not said. */
    readonly deadVolume_L: number | null;
    /** What the induction hopper holds; null when not said, or there is none. */
    readonly hopper_L: number | null;
    /** What all nozzles put out together while spraying; null when not said. */
    readonly output_LPerMin: number | null;
  };
  readonly mix: readonly MixItem[];
  /** Leaf feeds that go in with the products. */
  readonly feeds: readonly FeedItem[];
  /** null: every built-in chemistry offered by default is tried. */
  readonly conditioners: readonly ConditionerChoice[] | null;
  /** Feeds and other partners of the tank that published rules speak of; null is "not said", never "none". */
  readonly partners: readonly string[] | null;
  readonly aim: { readonly freeShare: number; readonly confidence: number; readonly where: Place };
  readonly site: Site;
}

/** Share of an active that is free, and what holds the rest. */
export interface Share {
  /** Free share 0…1 (bound to nothing but protons, sodium, potassium or ammonium); null: not known, `why` says so. */
  readonly free: number | null;
  /** 5th and 95th percentile over the draws of everything uncertain; null when nothing was drawn. */
  readonly low: number | null;
  readonly high: number | null;
  /** Held share by what holds it ("calcium", "magnesium", "iron", …); absent keys are zero. Sums to 1 − free. */
  readonly heldBy: Readonly<Record<string, number>>;
  /**
   * Share that has come out of solution as the active's own acid; null when `free` is. In the tank it is held, as
   * "undissolved acid"; on the leaf nothing of the water holds it, so there it is part of `free`.
   */
  readonly ownAcid: number | null;
  readonly evidence: Evidence;
  /** One sentence when `free` is null or rests on an analogy. */
  readonly why: string | null;
}

/** One end of the leaf answer. */
export type LeafEnd = Pick<Share, "heldBy"> & { readonly free: number; readonly ownAcid: number };

/** The leaf answer with its two ends. */
export interface LeafShare extends Share {
  /** No calcium salt of the active ever forms. */
  readonly withoutSolid: LeafEnd | null;
  /** The calcium salt of the active forms as soon as it is saturated. */
  readonly withSolid: LeafEnd | null;
  /** True when a salt of a metal with the active forms in the central answer. */
  readonly solidForms: boolean;
  /** Free share when nine tenths of the water are gone, for comparison; null: not known, or dry before that. */
  readonly tenfold: number | null;
}

/** The two ends of a range. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** What the mud of the water takes of an active in the tank; in no other answer. */
export interface OnMud {
  /** Share of the active at the low and the high end of what is published; null: not known, `why` says so. */
  readonly low: number | null;
  readonly high: number | null;
  /** Suspended solids of the spray: weighed, or from the turbidity. */
  readonly suspendedSolids_mgPerL: Ends;
  /** What sets the high end: how strongly mud holds it, or how much mud can take. */
  readonly limitedBy: "affinity" | "capacity" | null;
  /** True where a figure that sets an end is from memory. */
  readonly fromMemory: boolean;
  readonly evidence: Evidence;
  readonly why: string | null;
  readonly sources: readonly string[];
}

/** How much of the active is still intact when the last of the load is sprayed. */
export interface ClockShare {
  /** Half-life [h] at the tank's pH and temperature; null: not known, or stable (see `stable`). */
  readonly halfLife_h: number | null;
  /** True when the sources call the active stable over this range. */
  readonly stable: boolean;
  readonly intact: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly evidence: Evidence;
  readonly why: string | null;
  readonly sources: readonly string[];
  /** What the half-life was worked out from; null where there is none. */
  readonly rate: ClockRate | null;
}

/** A half-life as published, with the temperature it was measured at. */
export interface TimedHalfLife {
  readonly pH: number;
  readonly temperature_C: number;
  readonly halfLife_h: number;
}

/** What a rate of hydrolysis was worked out from: the active's rate law, else one published half-life or two. */
export interface ClockRate {
  /** Of the tank. */
  readonly pH: number;
  readonly temperature_C: number;
  readonly activationEnergy_kJPerMol: number;
  /** k = kA·[H+]/(1 + [H+]/Ka) + kN + kB·[OH−] at its own temperature; null where half-lives are read between. */
  readonly law: {
    readonly kA_LPerMolH: number;
    readonly kN_perH: number;
    readonly kB_LPerMolH: number;
    readonly pKaCap: number | null;
    readonly temperature_C: number;
  } | null;
  /** Half-lives on either side of the tank's pH, or the nearest; empty with a law. */
  readonly between: readonly TimedHalfLife[];
  /** Key of the source of the law or of the first half-life, and the place in it; null: the work as a whole. */
  readonly source: string;
  readonly locator: string | null;
}

/** A published rule or practice that applies to this water and active. */
export interface RuleVerdict {
  readonly id: string;
  readonly level: "block" | "warn" | "note";
  readonly text: string;
  readonly evidence: Evidence;
  readonly source: string;
  readonly contradictedBy: string | null;
}

/** The three answers for one active, never blended. */
export interface ActiveVerdict {
  readonly active: string;
  readonly name: string;
  readonly concentration_molPerL: number;
  readonly inTank: Share;
  /** null where the water was tested neither for turbidity nor for suspended solids. */
  readonly onMud: OnMud | null;
  readonly onLeaf: LeafShare;
  readonly byClock: ClockShare;
  readonly rules: readonly RuleVerdict[];
}

/** A solid present at equilibrium [mol per L of spray]. */
export interface SolidAmount {
  readonly name: string;
  readonly amount_molPerL: number;
}

/** One step of the drying path. */
export interface DryingStep {
  /** Concentration factor: kg of water at first per kg of liquid water left. */
  readonly factor: number;
  readonly pH: number;
  readonly ionicStrength_molPerL: number;
  /** Free share by active id. */
  readonly free: Readonly<Record<string, number | null>>;
  readonly heldBy: Readonly<Record<string, Readonly<Record<string, number>>>>;
  readonly solids: readonly SolidAmount[];
  /** Activity of the water left [1]; null where the activity model has none. */
  readonly waterActivity: number | null;
  readonly extrapolated: boolean;
}

/** Where the drying path ended, and what its numbers rest on there. */
export interface DryingEnd {
  /** Relative humidity of the air [1]: the drop stops drying when its water activity equals it. */
  readonly humidity: number;
  /** kg of water at first per kg of liquid water left. */
  readonly factor: number;
  readonly waterActivity: number | null;
  readonly ended: "at the humidity" | "at the most factor" | "not solved further";
  /** Salts used beyond the molality or temperature their parameters were fitted to. */
  readonly outsideRange: readonly string[];
  /** Ions whose activity parameters are borrowed from another ion. */
  readonly estimated: readonly string[];
  /** Ions whose interaction is taken from memory and tells there: "Ca+2 NH4+". */
  readonly fromMemory: readonly string[];
}

/** Iron(II) of a tank in air. */
export interface FerrousIron {
  /** Half-life [h] at the tank's pH and temperature, by a published rate law. */
  readonly halfLife_h: number;
  /** Share that is iron(III) when the last is sprayed; 0 where the job does not say that the tank is aerated. */
  readonly oxidised: number;
}

/** What a tank does, for one conditioner choice. */
export interface TankState {
  readonly pH: number;
  readonly ionicStrength_molPerL: number;
  readonly solids: readonly SolidAmount[];
  /** True when the activity model is used beyond the range it was fitted to. */
  readonly extrapolated: boolean;
  /** Ions whose interaction is taken from memory and tells in the tank; a dilute tank needs none. */
  readonly fromMemory: readonly string[];
  /** null where the tank holds no iron(II). */
  readonly ferrousIron: FerrousIron | null;
}

export interface PlannedDose {
  readonly value: number;
  readonly unit: "g/L" | "kg/100 L" | "L/100 L";
}

/** Amounts in the job's currency; null: not known, because a price or the season's area is missing. */
export interface Money {
  readonly perHa: number | null;
  /** Per full load, or the only one. */
  readonly perLoad: number | null;
  readonly perSeason: number | null;
}

/** What kind of way out a programme is. */
export type WayKind =
  | "none"
  | "less water"
  | "conditioner"
  | "two conditioners"
  | "other source"
  | "blend"
  | "iron settled"
  | "more active"
  | "other form";

/** One conditioner of a programme with its dose. */
export interface ProgrammePart {
  /** Chemistry id. */
  readonly conditioner: string;
  readonly name: string;
  readonly dose: PlannedDose;
  /** Form sold [g per L of spray]. */
  readonly dose_gPerL: number;
}

/** Share of one source in the water of a programme [1]. */
export interface WaterShare {
  /** Name of the source. */
  readonly water: string;
  readonly share: number;
}

/** One way out: conditioners (or none) with their doses, a water, a water volume and the products. */
export interface Programme {
  readonly id: string;
  /** Chemistry id, or "none"; the ids joined by " + " when there are two. */
  readonly conditioner: string;
  readonly name: string;
  readonly kind: WayKind;
  /** Dose of the one conditioner; null when there is none, or two (see `parts`). */
  readonly dose: PlannedDose | null;
  /** All conditioners together, form sold [g per L of spray]; 0 for "none". */
  readonly dose_gPerL: number;
  /** Every conditioner with its own dose. */
  readonly parts: readonly ProgrammePart[];
  /** The sources the water comes from; shares sum to 1. */
  readonly waters: readonly WaterShare[];
  readonly waterVolume_LPerHa: number;
  /**
   * True when the aim is met in at least the share of draws asked for, or, when nothing was drawn, in the central
   * answer. null when no answer could be computed for the actives the aim is about.
   */
  readonly meetsAim: boolean | null;
  /** Share of the draws that meet the aim; null when nothing was drawn or no answer could be computed. */
  readonly confidence: number | null;
  readonly blocked: boolean;
  readonly reasons: readonly RuleVerdict[];
  readonly remarks: readonly Remark[];
  readonly tank: TankState;
  readonly actives: readonly ActiveVerdict[];
  readonly path: readonly DryingStep[];
  readonly drying: DryingEnd;
  /** What it costs beyond the plan. */
  readonly cost: Money;
  /** Price of the active still held where the aim is judged. */
  readonly heldValue: Money;
  readonly publishedRuleDose: {
    readonly dose_gPerL: number;
    readonly text: string;
    readonly source: string;
    /** Page or item in that source; null: the work as a whole. */
    readonly locator: string | null;
    /** The ions that are known, each with its reading and what the rule adds for it. */
    readonly terms: readonly RuleTerm[];
  } | null;
  /** How to fill for this programme; the plan's own order, loads, jar and cautions are those of the chosen one. */
  readonly filling: Filling;
}

/** One ion of a published rule of dose. */
export interface RuleTerm {
  readonly ion: string;
  readonly reading_mgPerL: number;
  /** Added to the dose for each mg/L [lb per 100 US gal]. */
  readonly coefficient_lbPer100USgal: number;
}

/** What the operator needs for one programme. */
export interface Filling {
  readonly order: readonly OrderStep[];
  readonly loads: Loads;
  /** The tank in small, in the order of mixing. */
  readonly jar: readonly JarAmount[];
  /** What the jar holds when it is full [L]. */
  readonly jarVolume_L: number;
  readonly cautions: readonly Caution[];
  /** Where published mixing orders put two of these products the other way round. */
  readonly differences: readonly OrderDifferenceShown[];
  /** What the sprayer of the job means for these loads; empty when nothing was said of it. */
  readonly sprayer: readonly Remark[];
}

/** A point on which published mixing orders differ. */
export interface OrderDifferenceShown {
  readonly text: string;
  /** Keys of the orders compared. */
  readonly sources: readonly string[];
}

/** Something worth saying about a programme, as a code with the numbers that go into the sentence. */
export interface Remark {
  readonly code: string;
  readonly text: string;
  readonly evidence: Evidence;
  readonly source: string | null;
}

export interface Caution {
  readonly id: string;
  readonly text: string;
  readonly source: string;
  /** Ids of the products or conditioners it is about; empty for general ones. */
  readonly about: readonly string[];
}

/** One step of the mixing order. */
export interface OrderStep {
  readonly step: number;
  readonly what: string;
  readonly why: string;
  /** Product or conditioner this step adds; null for water and pauses. */
  readonly adds: string | null;
  readonly pause: boolean;
  readonly evidence: Evidence;
  readonly source: string;
}

/** Amount of one product in a load. */
export interface LoadAmount {
  readonly product: string;
  readonly label: string;
  readonly amount: number;
  readonly unit: "L" | "kg";
}

export interface Load {
  readonly volume_L: number;
  readonly area_ha: number;
  readonly amounts: readonly LoadAmount[];
}

export interface Loads {
  /** The measures the job says its tank in; all amounts here are metric. */
  readonly measures: Measures;
  /** Loads in all, the last one included. */
  readonly count: number;
  readonly full: Load;
  /** null when the area comes out in full loads. */
  readonly last: Load | null;
}

export interface JarAmount {
  readonly product: string;
  readonly label: string;
  readonly amount: number;
  readonly unit: "mL" | "g";
  /** How to measure it when it is too small to measure directly; null otherwise. */
  readonly how: string | null;
  /** How to measure it with spoons and a kitchen scale; null where a scale or a jug does. */
  readonly spoons: string | null;
}

export interface SourceUsed {
  readonly key: string;
  readonly citation: string;
  readonly fromMemory: boolean;
}

/** Part of the spread of a result that one uncertain input explains. */
export interface InputSpread {
  /** "reading:calcium", "assumed:calciumShareOfHardness", "constant:…", "solubility:…", "activity:…". */
  readonly input: string;
  /** Squared rank correlation with the result over the draws, 0…1. */
  readonly part: number;
  /** What people call the substance of a formula in `input`; null where that says enough. */
  readonly of: string | null;
}

/** A test that would narrow the range of a result. */
export interface MeasureNext {
  readonly test: string;
  readonly words: string;
  /** Part of the spread that goes, 0…1. */
  readonly removes: number;
  /** Width of the range from the 5th to the 95th percentile that would be left [share]. */
  readonly width: number;
  readonly source: string;
}

/** How the ranges were found, and what they rest on most. */
export interface PlanUncertainty {
  readonly draws: number;
  readonly seed: string;
  /** Waters whose drawn readings contradicted one another and were replaced by the next. */
  readonly replaced: number;
  /** Draws solved in full, over all programmes, and how far the others of the programme named are from that [share]. */
  readonly control: { readonly solved: number; readonly difference: number };
  /** Programme and place whose least free share `spread` and `measureNext` are about, and the width of its range. */
  readonly about: { readonly programme: string; readonly where: Place; readonly width: number };
  /** Largest first. */
  readonly spread: readonly InputSpread[];
  /** Most useful first. */
  readonly measureNext: readonly MeasureNext[];
}

/** The answer to a whole job. */
export interface Plan {
  readonly hardstand: 1;
  readonly water: {
    readonly source: string;
    readonly hardness_mgPerL_asCaCO3: number;
    readonly alkalinity_mgPerL_asCaCO3: number;
    readonly pH: number;
    readonly ions_molPerL: Readonly<Record<string, number>>;
    readonly chargeBalance_percent: number | null;
    readonly assumptions: readonly Assumption[];
    readonly issues: readonly Issue[];
  };
  /** The tank as planned, nothing added. */
  readonly tank: TankState;
  readonly actives: readonly ActiveVerdict[];
  /** Best first; blocked ones last. */
  readonly programmes: readonly Programme[];
  /** Id of the programme the order, loads and jar are written for; null when none meets the aim. */
  readonly chosen: string | null;
  readonly order: readonly OrderStep[];
  readonly loads: Loads;
  /** The tank in small, in the order of mixing. */
  readonly jar: readonly JarAmount[];
  /** What the jar holds when it is full [L]. */
  readonly jarVolume_L: number;
  readonly cautions: readonly Caution[];
  readonly differences: readonly OrderDifferenceShown[];
  readonly sprayer: readonly Remark[];
  readonly sources: readonly SourceUsed[];
  /** null when nothing was drawn, or no answer could be computed. */
  readonly uncertainty: PlanUncertainty | null;
  readonly issues: readonly Issue[];
  readonly versions: { readonly hardstand: string; readonly data: string };
}
