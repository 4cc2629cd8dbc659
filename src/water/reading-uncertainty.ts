import file from "../../data/reading-uncertainty.json" with { type: "json" };
import { readingScale } from "../units/index.ts";
import type { Parameter } from "../units/index.ts";
import type { Reading, TestMethod } from "./types.ts";

/** Uncertainty of one plain reading. */
export interface ReadingUncertainty {
  /** One standard uncertainty as a share of the value, and the part that does not grow with it [internal unit]. */
  readonly relative: number;
  readonly absolute: number;
  /** Half a unit of the last digit typed [internal unit]: the value is rounded to it, evenly anywhere within. */
  readonly halfDigit: number;
  /** Key of the source of the method's figure. */
  readonly source: string;
  readonly fromMemory: boolean;
}

/** A test that is cheap enough to advise, with the readings it gives and the assumptions that fall away with it. */
export interface CheapTest {
  readonly id: string;
  readonly words: string;
  readonly method: TestMethod;
  readonly readings: readonly string[];
  readonly settles: readonly string[];
  readonly source: string;
}

/** Tests that may be advised. */
export const CHEAP_TESTS = file.tests as readonly CheapTest[];

/** Uncertainty of the method for a parameter: the first record that names both, else that for all others. */
function methodFigure(method: TestMethod, parameter: Parameter): (typeof file.readings)[number] {
  const ofMethod = file.readings.filter((record) => record.method === method);
  const named = ofMethod.find((record) => (record.parameters as readonly string[]).includes(parameter));
  return named ?? ofMethod.find((record) => record.parameters.length === 0) ?? file.readings[0]!;
}

/** Found once for each reading: hundreds of draws ask for the same ones. */
const known = new WeakMap<Reading, Map<TestMethod, ReadingUncertainty>>();

/**
 * One standard uncertainty of a plain reading by its method, and the half-width of its rounding.
 *
 * @source data/reading-uncertainty.json, with a source on every figure
 */
export function readingUncertainty(reading: Reading, method: TestMethod): ReadingUncertainty {
  const ofReading = known.get(reading) ?? new Map<TestMethod, ReadingUncertainty>();
  known.set(reading, ofReading);
  const found = ofReading.get(method) ?? uncertaintyBy(method, reading);
  ofReading.set(method, found);
  return found;
}

function uncertaintyBy(method: TestMethod, reading: Reading): ReadingUncertainty {
  const figure = methodFigure(method, reading.parameter);
  const scale = readingScale(reading.parameter, figure.unit === "" ? undefined : figure.unit, "");
  return {
    relative: figure.relative_percent / 100,
    absolute: figure.absolute * (scale.ok ? scale.value.factor : 0),
    halfDigit: halfLastDigit(reading),
    source: figure.source,
    fromMemory: figure.fromMemory,
  };
}

/** Half a unit of the last digit as typed, in the internal unit; 0 when the text is not a plain number. */
function halfLastDigit(reading: Reading): number {
  const digits = /^\s*\d+(?:[.,](\d+))?\s*(?:[^\d.,].*)?$/.exec(reading.typed.value);
  if (digits === null) return 0;
  const unit = reading.typed.unit.trim() === "" ? undefined : reading.typed.unit;
  const scale = readingScale(reading.parameter, unit, "");
  return scale.ok ? 0.5 * 10 ** -(digits[1]?.length ?? 0) * scale.value.factor : 0;
}
