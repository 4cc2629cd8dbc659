import type { ThermoData } from "../../chem/index.ts";
import { inverseNormal, latinColumn } from "../../numerics/index.ts";
import { drawWaters, readingUncertainty } from "../../water/index.ts";
import type { Water, WaterTest } from "../../water/index.ts";
import { recent } from "../recent.ts";

/** Draws of everything uncertain, the same ones for every programme of a plan. */
export interface Draws {
  readonly count: number;
  readonly seed: string;
  /** Keys of the uncertain inputs that the completion of the water used. */
  readonly waterKeys: readonly string[];
  /** Total of each component in the water of each draw [mol/L]. */
  readonly waterTotals: ReadonlyMap<string, Float64Array>;
  /** Totals of the central water [mol/L]. */
  readonly centralTotals: Readonly<Record<string, number>>;
  /** Sources of how well the readings are known that were drawn. */
  readonly readingSources: readonly string[];
  /** Draws of the water whose readings contradicted one another, replaced by the next one. */
  readonly replaced: number;
  /** Places in (0, 1) of an input in its distribution; of one of `waterKeys` see `ofWater`. */
  uniform(key: string): Float64Array;
  /** Places in (0, 1) of an input of the water, which several draws share. */
  ofWater(key: string): Float64Array;
  /** The same as standard normal numbers. */
  normal(key: string): Float64Array;
}

/** Draws of a plan: enough for a 5th percentile to stand on 25 of them. */
export const USUAL_DRAWS = 500;
/** Draws that share one completed water, each with its own constants and air: completing a water takes longest. */
const DRAWS_PER_WATER = 2;
const USUAL_SEED = "hardstand";

/** Columns kept between plans; the seed and the key alone decide them. */
const columns = new Map<string, Float64Array>();
const MOST_COLUMNS = 2000;

function column(key: string, make: () => Float64Array): Float64Array {
  let found = columns.get(key);
  if (found === undefined) {
    if (columns.size >= MOST_COLUMNS) columns.clear();
    found = make();
    columns.set(key, found);
  }
  return found;
}

/** Totals of the draws of a water [mol/L], by component. */
interface DrawnTotals {
  readonly keys: readonly string[];
  readonly totals: ReadonlyMap<string, Float64Array>;
  readonly replaced: number;
}

/** Waters as drawn before: the next plan is mostly about the same ones, and completing them takes longest of all. */
const known = new WeakMap<ThermoData, Map<string, DrawnTotals>>();
const MOST_WATERS = 6;

function totalsOf(waters: readonly Water[], count: number): ReadonlyMap<string, Float64Array> {
  const found = new Map<string, Float64Array>();
  for (let i = 0; i < count; i++) {
    for (const [component, total] of Object.entries(waters[i % waters.length]!.totals_molPerL)) {
      let totals = found.get(component);
      if (totals === undefined) found.set(component, (totals = new Float64Array(count)));
      totals[i] = total;
    }
  }
  return found;
}

/** Draws a water test and opens the columns for everything else. */
export function drawInputs(
  test: WaterTest,
  central: Water,
  options: {
    readonly thermo: ThermoData;
    readonly temperature_C: number | null;
    /** Name of a further source, whose readings are drawn apart; left out for the job's own water. */
    readonly source?: string;
  },
  count = USUAL_DRAWS,
  seed = USUAL_SEED,
): Draws {
  const columnOf = (length: number, key: string): Float64Array =>
    column(`u|${seed}|${String(length)}|${key}`, () => latinColumn(length, `${seed}|${key}`));
  const uniform = (key: string): Float64Array => columnOf(count, key);
  // Asked for many times over: found by its key as it is.
  const normals = new Map<string, Float64Array>();
  const normal = (key: string): Float64Array => {
    const found =
      normals.get(key) ?? column(`n|${seed}|${String(count)}|${key}`, () => uniform(key).map(inverseNormal));
    normals.set(key, found);
    return found;
  };
  const waters = Math.ceil(count / DRAWS_PER_WATER);
  // Two sources are read apart: their readings are drawn apart, while everything else is common to both. What the
  // job's own water is called changes nothing.
  const apart = options.source === undefined ? "" : `${options.source}|`;
  const ofThisWater = (key: string): Float64Array => columnOf(waters, `${apart}${key}`);
  const { method, ironForm, readings } = test;
  const asked = JSON.stringify({ method, ironForm, readings, ...options, thermo: null, count, seed });
  const ofThermo = known.get(options.thermo) ?? new Map<string, DrawnTotals>();
  known.set(options.thermo, ofThermo);
  const drawn = recent(ofThermo, asked, MOST_WATERS, () => {
    const { keys, waters: completed, replaced } = drawWaters(test, options, central, waters, ofThisWater);
    return { keys, replaced, totals: totalsOf(completed, count) };
  });
  return {
    count,
    seed,
    waterKeys: drawn.keys,
    waterTotals: drawn.totals,
    centralTotals: central.totals_molPerL,
    readingSources: readingSources(test, drawn.keys),
    replaced: drawn.replaced,
    uniform,
    ofWater: (key) => {
      const ofWaters = ofThisWater(key);
      return Float64Array.from({ length: count }, (_, i) => ofWaters[i % waters]!);
    },
    normal,
  };
}

/** Sources of the uncertainty of the plain readings among these inputs; a range or a limit has none but itself. */
function readingSources(test: WaterTest, keys: readonly string[]): readonly string[] {
  const drawn = test.readings.filter(({ parameter }) => keys.includes(`digits:${parameter}`));
  return [...new Set(drawn.map((reading) => readingUncertainty(reading, test.method).source))];
}
