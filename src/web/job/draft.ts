import type { ConditionerEntry } from "./draft-conditioners.ts";
import type { MixEntry } from "./draft-mix.ts";
import { blankProduct } from "./draft-mix.ts";
import { blank, newKey } from "./typed.ts";
import type { Rest, Ticked, Typed } from "./typed.ts";

/** One row of the readings table, as typed. */
export interface ReadingRow {
  /** Stable key of the row on the page; never part of the document. */
  readonly key: string;
  readonly parameter: string;
  readonly value: Typed;
  readonly rest: Rest;
}

/** A water test, as typed. */
export interface WaterTyped {
  readonly source: string;
  readonly sampled: string;
  readonly method: string;
  /** "ferrous", "ferric" or "" for not said. */
  readonly ironForm: string;
  readonly readings: readonly ReadingRow[];
  readonly rest: Rest;
}

/** A further source, with what it costs. */
export interface OtherWaterRow extends WaterTyped {
  readonly key: string;
  readonly price: Typed;
}

/** Where a draft came from, so that a sample stays labelled as one. */
export type Origin = "sample" | "file" | "own";

/** The job as the form holds it: every text exactly as typed. */
export interface Draft {
  readonly origin: Origin;
  readonly title: string;
  readonly water: WaterTyped;
  readonly otherWaters: readonly OtherWaterRow[];
  readonly spray: {
    readonly volume: Typed;
    readonly leastVolume: Typed;
    readonly tank: Typed;
    readonly area: Typed;
    readonly temperature: Typed;
    readonly humidity: Typed;
    readonly holdingTime: Typed;
    readonly jar: Typed;
    readonly seasonArea: Typed;
    readonly deadVolume: Typed;
    readonly hopper: Typed;
    readonly output: Typed;
    readonly leafCalcium: Typed;
    readonly coverage: Typed;
    /** "yes", "no" or "" for not said. */
    readonly aerated: string;
    readonly rest: Rest;
  };
  readonly mix: readonly MixEntry[];
  /** False: the built-in chemistries in common use are tried and the rows rest. */
  readonly listsConditioners: boolean;
  readonly conditioners: readonly ConditionerEntry[];
  readonly partners: Ticked;
  readonly aim: {
    readonly freeShare: string;
    readonly confidence: string;
    readonly where: string;
    readonly rest: Rest;
  };
  readonly site: {
    /** "yes", "no" or "" for not said. */
    readonly volatilityRules: string;
    readonly airTemperature: Typed;
    readonly waterTreatments: Ticked;
    readonly metals: Ticked;
    readonly rest: Rest;
  };
  readonly rest: Rest;
}

/** The readings a farm water test usually carries, in the order of a laboratory report. */
const USUAL_READINGS: readonly (readonly [parameter: string, unit: string])[] = [
  ["pH", ""],
  ["conductivity", "µS/cm"],
  ["hardness", "mg/L as CaCO3"],
  ["calcium", "mg/L"],
  ["magnesium", "mg/L"],
  ["sodium", "mg/L"],
  ["iron", "mg/L"],
  ["alkalinity", "mg/L as CaCO3"],
  ["sulfate", "mg/L"],
  ["chloride", "mg/L"],
];

/** A reading row, empty unless a parameter is named. */
export function blankReading(parameter = "", unit = "mg/L"): ReadingRow {
  return { key: newKey(), parameter, value: blank(unit), rest: {} };
}

/** A further source with the readings a strip gives. */
export function blankOtherWater(): OtherWaterRow {
  return {
    key: newKey(),
    source: "",
    sampled: "",
    method: "laboratory",
    ironForm: "",
    readings: [
      blankReading("hardness", "mg/L as CaCO3"),
      blankReading("alkalinity", "mg/L as CaCO3"),
      blankReading("pH", ""),
    ],
    price: blank("/m3"),
    rest: {},
  };
}

/** A job with nothing filled in but the usual questions. */
export function blankDraft(): Draft {
  return {
    origin: "own",
    title: "",
    water: {
      source: "",
      sampled: "",
      method: "laboratory",
      ironForm: "",
      readings: USUAL_READINGS.map(([parameter, unit]) => blankReading(parameter, unit)),
      rest: {},
    },
    otherWaters: [],
    spray: {
      volume: blank("L/ha"),
      leastVolume: blank("L/ha"),
      tank: blank("L"),
      area: blank("ha"),
      temperature: blank("°C"),
      humidity: blank("%"),
      holdingTime: blank("h"),
      jar: blank("L"),
      seasonArea: blank("ha"),
      deadVolume: blank("L"),
      hopper: blank("L"),
      output: blank("L/min"),
      leafCalcium: blank("mg/m2"),
      coverage: blank("%"),
      aerated: "",
      rest: {},
    },
    mix: [blankProduct()],
    listsConditioners: false,
    conditioners: [],
    partners: null,
    aim: { freeShare: "0.95", confidence: "0.9", where: "on the leaf", rest: {} },
    site: {
      volatilityRules: "",
      airTemperature: blank("°C"),
      waterTreatments: null,
      metals: null,
      rest: {},
    },
    rest: {},
  };
}
