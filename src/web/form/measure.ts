import {
  convertQuantity,
  convertReading,
  formatNumber,
  fromInternal,
  mapMeasured,
  PARAMETER_RULES,
  parameterNamed,
  readMeasured,
  significantFigures,
} from "../../units/index.ts";
import type { Dimension, FormatOptions, MeasuredText } from "../../units/index.ts";
import { ENGLISH } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { splitTyped, typedFirst } from "../job/typed.ts";
import type { Typed } from "../job/typed.ts";
import { sayIn } from "../language/language-context.ts";

/** What a field with a unit holds: a reading of a water test, or a quantity of one dimension. */
export type Measure = { readonly reading: string } | { readonly dimension: Exclude<Dimension, "price"> };

/** Fewest figures a converted number keeps, so that a single digit is not made coarser than it was. */
const LEAST_FIGURES = 2;

/** What is typed, as numbers in another unit; null when it cannot be read or has no meaning there. */
function measuredIn(measure: Measure, typed: Typed, unit: string): MeasuredText | null {
  const { text, unit: from } = splitTyped(typed);
  const read = readMeasured(text, "value");
  if (!read.ok || read.value.kind === "not measured") return null;
  if ("dimension" in measure) {
    const { dimension } = measure;
    if (convertQuantity(1, dimension, from, unit) === null) return null;
    return mapMeasured(read.value, (value) => convertQuantity(value, dimension, from, unit) ?? value);
  }
  const parameter = parameterNamed(measure.reading);
  if (parameter === null) return null;
  const internal = convertReading(parameter, read.value, from, "unit");
  if (!internal.ok || !fromInternal(parameter, 1, unit).ok) return null;
  return mapMeasured(internal.value, (value) => {
    const shown = fromInternal(parameter, value, unit);
    return shown.ok ? shown.value : value;
  });
}

/** Figures that the typed text justifies: those of its numbers, the fewest of them. */
function figuresOf(text: string): number {
  const numbers = text.match(/\d[\d.,]*/g) ?? [];
  const figures = numbers.map((number) => significantFigures(number.replace(/[.,]$/, "")) ?? LEAST_FIGURES);
  return Math.min(15, Math.max(LEAST_FIGURES, Math.min(...figures)));
}

function words(measured: MeasuredText, options: FormatOptions): string {
  const number = (value: number): string => formatNumber(value, options);
  switch (measured.kind) {
    case "value":
      return number(measured.value);
    case "below":
      return `<${number(measured.limit)}`;
    case "above":
      return `>${number(measured.limit)}`;
    case "range":
      return `${number(measured.low)}–${number(measured.high)}`;
    case "not measured":
      return "";
  }
}

/** The same amount shown in another unit, with what was typed kept beside it; null when that makes no sense. */
export function inUnit(measure: Measure, typed: Typed, unit: string): Typed | null {
  const first = splitTyped(typedFirst(typed));
  if (unit === first.unit) return first;
  const measured = measuredIn(measure, first, unit);
  if (measured === null) return null;
  return {
    text: words(measured, { significant: figuresOf(first.text), keepZeros: true }),
    unit,
    asTyped: first,
  };
}

/**
 * What is typed, said again in the unit that is computed with or, when it stands in that, in a familiar other one, so
 * that a wrong unit is seen. A decimal sign that is not the one of the language is said as the one it was read as.
 *
 * @param familiar units to say it in, the first one that differs from the typed one is taken
 * @returns null when there is nothing to say
 */
export function echoOf(
  measure: Measure,
  typed: Typed,
  familiar: readonly string[],
  language: Language = ENGLISH,
): string | null {
  const { decimal } = language.figures;
  const first = splitTyped(typedFirst(typed));
  const shown = splitTyped(typed);
  const other = familiar.find((unit) => unit !== "" && !sameUnit(unit, shown.unit));
  const measured = other === undefined ? null : measuredIn(measure, first, other);
  if (measured !== null && other !== undefined)
    return `= ${words(measured, { significant: Math.max(3, figuresOf(first.text)), decimal })} ${other}`;
  const read = readMeasured(first.text, "value");
  if (!read.ok || !first.text.includes(decimal === "," ? "." : ",")) return null;
  const number = words(read.value, { significant: figuresOf(first.text), decimal });
  return sayIn(language)("Read as {number}", { number });
}

const sameUnit = (a: string, b: string): boolean =>
  a.toLowerCase().replaceAll(" ", "") === b.toLowerCase().replaceAll(" ", "");

/** Units in which a reading is said again: the first of its usual ones that differs is the most telling. */
export function familiarUnits(measure: Measure, language: string): readonly string[] {
  if ("reading" in measure) {
    const parameter = parameterNamed(measure.reading);
    return parameter === null ? [] : [...PARAMETER_RULES[parameter].units];
  }
  const country = language.endsWith("US") ? 0 : language.endsWith("GB") ? 1 : null;
  const units = FAMILIAR[measure.dimension];
  if (units === undefined) return [];
  const local = country === null ? [] : [units.local[country]];
  return [units.internal, ...local];
}

interface Familiar {
  readonly internal: string;
  /** In the United States, in the United Kingdom. */
  readonly local: readonly [string, string];
}

const FAMILIAR: Readonly<Partial<Record<Dimension, Familiar>>> = {
  "volume per area": { internal: "L/ha", local: ["US gal/ac", "imp gal/ac"] },
  volume: { internal: "L", local: ["US gal", "imp gal"] },
  area: { internal: "ha", local: ["ac", "ac"] },
  temperature: { internal: "°C", local: ["°F", "°F"] },
  time: { internal: "h", local: ["min", "min"] },
};
