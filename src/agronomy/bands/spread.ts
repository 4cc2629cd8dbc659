import { correlationOf, quantileOf, ranksOf } from "../../numerics/index.ts";
import { CHEAP_TESTS, readingUncertainty } from "../../water/index.ts";
import type { WaterTest } from "../../water/index.ts";
import type { InputSpread, MeasureNext } from "../types.ts";
import type { Draws } from "./draws.ts";
import { DRYING_TESTS } from "./model-uncertainty.ts";
import { HUMIDITY_ASSUMED_KEY, HUMIDITY_MEASURED_KEY, NUCLEATION_KEY } from "./programme-draws.ts";

/** Inputs named at most. */
const NAMED = 6;
/** A part of the spread below this is not told from chance: squared rank correlation of as many draws as there are waters. */
const CHANCE = 0.02;
/** Least part of the spread that a test must remove to be advised. Our choice: beneath it what chance gives is as large. */
const WORTH = 0.05;
/** Least by which a test must narrow the range [share] to be advised. Our choice: one in 100, the least that is shown. */
const NARROWS = 0.01;

/** Rank of each draw by the columns, kept beside the columns themselves. */
const ranked = new WeakMap<Float64Array, Float64Array>();

function rankOf(column: Float64Array): Float64Array {
  let ranks = ranked.get(column);
  if (ranks === undefined) ranked.set(column, (ranks = ranksOf(column)));
  return ranks;
}

/**
 * Part of the spread of a result that each uncertain input explains: its squared rank correlation with the result over
 * the draws. Readings count with their rounding; parts below what chance gives are left out.
 *
 * @param values result of each draw
 * @param chemistryKeys keys of the uncertain constants and activity coefficients
 * @param substanceOf what people call the substance that a key is about; null where it is about none
 * @returns largest first. The parts need not add up to 1: what is left comes from inputs acting together
 */
export function spreadOf(
  values: Float64Array,
  draws: Draws,
  chemistryKeys: Iterable<string>,
  substanceOf: (key: string) => string | null,
): readonly InputSpread[] {
  const ranks = ranksOf(values);
  const parts = new Map<string, number>();
  const add = (key: string, column: Float64Array): void => {
    const part = correlationOf(ranks, rankOf(column)) ** 2;
    const group = groupOf(key);
    if (part > CHANCE) parts.set(group, (parts.get(group) ?? 0) + part);
  };
  for (const key of draws.waterKeys) add(key, draws.ofWater(key));
  const rest = new Set([NUCLEATION_KEY, HUMIDITY_ASSUMED_KEY, HUMIDITY_MEASURED_KEY, ...chemistryKeys]);
  for (const key of rest) add(key, draws.uniform(key));
  return [...parts]
    .map(([key, part]): InputSpread => ({ input: key, part, of: substanceOf(key) }))
    .sort((a, b) => b.part - a.part)
    .slice(0, NAMED);
}

/** A reading and its rounding are one input. */
function groupOf(key: string): string {
  return key.startsWith("digits:") ? `reading:${key.slice("digits:".length)}` : key;
}

/** From the 5th to the 95th percentile. */
export function rangeWidth(values: Float64Array): number {
  const sorted = values.slice().sort();
  return quantileOf(sorted, 0.95) - quantileOf(sorted, 0.05);
}

/**
 * The tests that would narrow a result most, with what the range would be then; none that narrows it by less than can be
 * shown.
 */
export function measureNext(
  values: Float64Array,
  spread: readonly InputSpread[],
  test: WaterTest,
): readonly MeasureNext[] {
  const width = rangeWidth(values);
  const advised = (test: string, words: string, source: string, removed: number): MeasureNext[] => {
    const then = width * Math.sqrt(Math.max(0, 1 - removed));
    return removed < WORTH || width - then < NARROWS
      ? []
      : [{ test, words, removes: Math.min(1, removed), width: then, source }];
  };
  const ofWater = CHEAP_TESTS.flatMap((cheap) => {
    let removed = 0;
    for (const { input, part } of spread) {
      const [kind, name = ""] = input.split(":");
      if (kind === "assumed" && cheap.settles.includes(name)) removed += part;
      if (kind === "reading" && cheap.readings.includes(name))
        removed += part * shrinks(name, test, cheap.method);
    }
    return advised(cheap.id, cheap.words, cheap.source, removed);
  });
  const ofDrying = DRYING_TESTS.flatMap((dry) => {
    const removed = spread
      .filter(({ input }) => dry.settles.some((name) => input === `assumed:${name}`))
      .reduce((sum, { part }) => sum + part, 0);
    return advised(dry.id, dry.words, dry.source, removed);
  });
  return [...ofWater, ...ofDrying].sort((a, b) => b.removes - a.removes);
}

/** Part of the variance of a reading that goes when the same thing is measured by a better method; 0 by a worse one. */
function shrinks(
  parameter: string,
  test: WaterTest,
  method: Parameters<typeof readingUncertainty>[1],
): number {
  const reading = test.readings.find((r) => r.parameter === parameter);
  if (reading === undefined) return 1;
  if (reading.measured.kind !== "value") return 1;
  const size = (by: Parameters<typeof readingUncertainty>[1]): number => {
    const { relative, absolute } = readingUncertainty(reading, by);
    const value = Math.abs(reading.measured.kind === "value" ? reading.measured.value : 0);
    return parameter === "pH" || value === 0 ? absolute : Math.hypot(relative, absolute / value);
  };
  const now = size(test.method);
  return now > 0 ? Math.max(0, 1 - (size(method) / now) ** 2) : 0;
}
