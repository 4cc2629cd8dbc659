/** A quantity as typed: the text in the box and the unit chosen beside it ("" when the text carries its own). */
export interface Typed {
  readonly text: string;
  readonly unit: string;
  /**
   * What was typed, while the box shows the same amount in another unit. It is what is computed with, so that changing
   * the unit to and fro loses nothing; typing anew drops it.
   */
  readonly asTyped?: { readonly text: string; readonly unit: string };
}

/** One row of the readings table, as typed. */
export interface ReadingRow {
  /** Stable key of the row on the page; never part of the document. */
  readonly key: string;
  readonly parameter: string;
  readonly value: Typed;
}

/** One product of the mix, as typed. */
export interface MixRow {
  readonly key: string;
  readonly active: string;
  /** The active as a file describes it, kept as it is; null for one that is named. */
  readonly own: Readonly<Record<string, unknown>> | null;
  readonly form: string;
  readonly strength: Typed;
  readonly rate: Typed;
  readonly formulation: string;
  /** Name of the product, for the card; carried along as a file brought it. */
  readonly name: string;
  readonly price: Typed;
}

/** Name of the active a file describes; null for one that is named. */
export function ownName(row: MixRow): string | null {
  if (row.own === null) return null;
  const name = row.own["name"];
  return typeof name === "string" && name.trim() !== "" ? name : "an active without a name";
}

/** One conditioner the adviser is willing to use, as typed. */
export interface ConditionerRow {
  readonly key: string;
  readonly chemistry: string;
  readonly form: string;
  readonly price: Typed;
  /** Bounds of the dose, with their units; carried along as a file brought them. */
  readonly leastDose: string;
  readonly mostDose: string;
}

/** An entry of a file that the form has no boxes for, such as a leaf feed: kept as written. */
export interface WrittenRow {
  readonly key: string;
  readonly document: Readonly<Record<string, unknown>>;
}

/** Where a draft came from, so that a sample stays labelled as one. */
export type Origin = "sample" | "file" | "own";

/** The job as the form holds it: every text exactly as typed. */
export interface Draft {
  readonly origin: Origin;
  readonly title: string;
  readonly water: {
    readonly source: string;
    readonly sampled: string;
    readonly method: string;
    readonly readings: readonly ReadingRow[];
  };
  readonly spray: {
    readonly volume: Typed;
    readonly leastVolume: Typed;
    readonly tank: Typed;
    readonly area: Typed;
    readonly temperature: Typed;
    readonly humidity: Typed;
    readonly holdingTime: Typed;
    readonly jar: Typed;
  };
  readonly mix: readonly MixRow[];
  /** Leaf feeds of the mix; they follow the products in the document. */
  readonly feeds: readonly WrittenRow[];
  /** False: the built-in chemistries in common use are tried and the rows rest. */
  readonly listsConditioners: boolean;
  readonly conditioners: readonly ConditionerRow[];
  /** Conditioners described by their labels; they follow the rows in the document. */
  readonly ownProducts: readonly WrittenRow[];
  readonly aim: { readonly freeShare: string; readonly confidence: string; readonly where: string };
  /** "yes", "no" or "" for not said. */
  readonly volatilityRules: string;
}

let lastKey = 0;

/** A key no other row on this page has. */
export function newKey(): string {
  lastKey += 1;
  return `row-${String(Date.now())}-${String(lastKey)}`;
}

/** An empty quantity with a unit ready beside it. */
export function blank(unit: string): Typed {
  return { text: "", unit };
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
  return { key: newKey(), parameter, value: blank(unit) };
}

/** An empty product row. */
export function blankProduct(): MixRow {
  return {
    key: newKey(),
    active: "",
    own: null,
    form: "",
    strength: blank("g/L"),
    rate: blank("L/ha"),
    formulation: "",
    name: "",
    price: blank("/L"),
  };
}

/** An empty conditioner row. */
export function blankConditioner(): ConditionerRow {
  return { key: newKey(), chemistry: "", form: "", price: blank("/kg"), leastDose: "", mostDose: "" };
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
      readings: USUAL_READINGS.map(([parameter, unit]) => blankReading(parameter, unit)),
    },
    spray: {
      volume: blank("L/ha"),
      leastVolume: blank("L/ha"),
      tank: blank("L"),
      area: blank("ha"),
      temperature: blank("°C"),
      humidity: blank("%"),
      holdingTime: blank("h"),
      jar: blank("L"),
    },
    mix: [blankProduct()],
    feeds: [],
    listsConditioners: false,
    conditioners: [],
    ownProducts: [],
    aim: { freeShare: "0.95", confidence: "0.9", where: "on the leaf" },
    volatilityRules: "",
  };
}
