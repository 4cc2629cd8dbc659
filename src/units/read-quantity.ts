import { done, failed } from "./issue-helpers.ts";
import type { Issue, Read } from "./issue.ts";
import { QUANTITY_TABLES, QUANTITY_UNITS, foldUnit, packSize } from "./quantity-units.ts";
import type { QuantityUnit } from "./quantity-units.ts";
import { failedUnit, splitQuantity } from "./split-quantity.ts";
import type { QuantityOptions } from "./split-quantity.ts";
import { foldText, shownValue } from "./text.ts";

/** Amount of product or active per litre or per kilogram. */
export interface PerLitreOrKilogram {
  readonly value: number;
  readonly per: "L" | "kg";
}

/** Content of a product [g/L or g/kg] and what the text says it counts. */
export interface Content extends PerLitreOrKilogram {
  /** null when the text does not say. */
  readonly basis: "acid equivalent" | "active" | "salt" | null;
}

/** Dose of a conditioner: grams per litre of spray, or litres per litre of spray. */
export interface Dose {
  readonly value: number;
  readonly unit: "g/L" | "L/L";
}

/** What each dimension of a job is read into, in internal units. */
export interface QuantityOf {
  /** L/ha. */
  "volume per area": number;
  /** L. */
  volume: number;
  /** ha. */
  area: number;
  /** °C. */
  temperature: number;
  /** h. */
  time: number;
  /** L/min. */
  flow: number;
  /** L/ha of product. */
  "liquid rate": number;
  /** kg/ha of product. */
  "solid rate": number;
  /** L/ha or kg/ha of product. */
  rate: PerLitreOrKilogram;
  /** g/L or g/kg. */
  content: Content;
  dose: Dose;
  /** Currency per L or per kg. */
  price: PerLitreOrKilogram;
  /** 0–1. */
  share: number;
  /** g/mol. */
  "molar mass": number;
}

/** Kind of quantity. */
export type Dimension = keyof QuantityOf;

/**
 * Reads a quantity of a job: a number followed by a unit, as text ("200 L/ha"), in the internal unit of its dimension
 * (see `QuantityOf`). A gallon, pint, quart or fluid ounce without a country is the US one.
 *
 * @param value what the document holds
 * @param path where it stands, for the issues
 */
export function readQuantity<D extends Dimension>(
  value: unknown,
  dimension: D,
  path: string,
  options: QuantityOptions = {},
): Read<QuantityOf[D]> {
  // The table of readers is checked against QuantityOf; the compiler cannot follow the key into a generic.
  const reader = READERS[dimension] as (
    value: unknown,
    path: string,
    options: QuantityOptions,
  ) => Read<QuantityOf[D]>;
  return reader(value, path, options);
}

const READERS: {
  readonly [D in Dimension]: (value: unknown, path: string, options: QuantityOptions) => Read<QuantityOf[D]>;
} = {
  "volume per area": scalar("volume per area"),
  volume: scalar("volume"),
  area: scalar("area"),
  temperature: scalar("temperature"),
  time: scalar("time"),
  flow: scalar("flow"),
  "liquid rate": scalar("liquid rate"),
  "solid rate": scalar("solid rate"),
  rate: (value, path, options) => {
    const read = readIn("rate", value, path, options);
    return read.ok ? done({ value: read.value.value, per: read.value.per ?? "L" }, read.issues) : read;
  },
  content: readContent,
  dose: (value, path, options) => {
    const read = readIn("dose", value, path, options);
    if (!read.ok) return read;
    return done({ value: read.value.value, unit: read.value.per === "L" ? "L/L" : "g/L" }, read.issues);
  },
  price: readPrice,
  share: readShare,
  "molar mass": scalar("molar mass"),
};

function scalar(dimension: keyof typeof QUANTITY_TABLES) {
  return (value: unknown, path: string, options: QuantityOptions): Read<number> => {
    const read = readIn(dimension, value, path, options);
    return read.ok ? done(read.value.value, read.issues) : read;
  };
}

type Found = { readonly value: number; readonly per: "L" | "kg" | null };

function readIn(
  dimension: keyof typeof QUANTITY_TABLES,
  value: unknown,
  path: string,
  options: QuantityOptions,
): Read<Found> {
  const expected = `a number with ${QUANTITY_UNITS[dimension].join(", ")}`;
  const parts = splitQuantity(value, path, expected, options);
  if (!parts.ok) return parts;
  const table: (unit: string) => QuantityUnit | null = QUANTITY_TABLES[dimension];
  const unit = table(foldUnit(parts.value.unit));
  if (unit === null) return failedUnit(dimension, value, parts.value.unit, path);
  const converted = (parts.value.number - (unit.offset ?? 0)) * unit.factor;
  const sign = signIssue(dimension, converted, shownValue(value), path, options);
  if (sign !== null) return { ok: false, issues: [sign] };
  return done({ value: converted, per: unit.per ?? null }, parts.issues);
}

function signIssue(
  dimension: Dimension,
  converted: number,
  received: string,
  path: string,
  options: QuantityOptions,
): Issue | null {
  if (dimension === "temperature") return null;
  if (converted < 0)
    return { code: "number-negative", path, received, expected: "zero or more", severity: "error" };
  const zeroFits =
    options.allowZero === true || dimension === "price" || dimension === "dose" || dimension === "time";
  if (converted > 0 || zeroFits) return null;
  return { code: "number-not-positive", path, received, expected: "more than zero", severity: "error" };
}

const BASES: readonly (readonly [RegExp, Exclude<Content["basis"], null>])[] = [
  [/\s*\(?\b(?:a\.?\s?e\.?|acid equivalent|acid)\)?$/i, "acid equivalent"],
  [/\s*\(?\b(?:a\.?\s?[is]\.?|active(?: ingredient| substance)?)\)?$/i, "active"],
  [/\s*\(?\b(?:as )?(?:the )?salt\)?$/i, "salt"],
];

function readContent(value: unknown, path: string, options: QuantityOptions): Read<Content> {
  let text: unknown = value;
  let basis: Content["basis"] = null;
  if (typeof value === "string") {
    for (const [pattern, name] of BASES) {
      const stripped: string = value.replace(pattern, "");
      if (stripped === value || stripped.trim() === "") continue;
      text = stripped;
      basis = name;
      break;
    }
    // "lb ae/US gal" carries the basis inside the unit.
    if (basis === null) {
      const inside = /\s(a\.?e\.?|a\.?[is]\.?)\s*\//i.exec(value);
      if (inside !== null) {
        text = value.replace(inside[0], "/");
        basis = /e/i.test(inside[1] ?? "") ? "acid equivalent" : "active";
      }
    }
  }
  const read = readIn("content", text, path, options);
  if (!read.ok) return read;
  const content: Content = { value: read.value.value, per: read.value.per ?? "L", basis };
  const most = content.per === "kg" ? 1000 : 2500;
  if (content.value > most) {
    const expected = content.per === "kg" ? "at most 1000 g/kg" : "at most 2500 g/L";
    const hint = "More than the product can hold: is the unit right?";
    return failed("number-too-large", path, { received: shownValue(value), expected, hint });
  }
  return done(content, read.issues);
}

function readPrice(value: unknown, path: string, options: QuantityOptions): Read<PerLitreOrKilogram> {
  const expected = "a price such as 0.55 /kg, 1.20 /L or 12 /20 kg";
  // The currency is the job's; a sign or a three-letter code is not needed and not converted.
  const bare = typeof value === "string" ? value.replace(/[$€£¥]|\b[A-Z]{3}\b/g, " ") : value;
  const parts = splitQuantity(bare, path, expected, options);
  if (!parts.ok) return parts;
  const received = shownValue(value);
  const pack = packSize(foldUnit(parts.value.unit));
  if (pack === null || !(pack.size > 0)) return failed("unit-unknown", path, { received, expected });
  const price = parts.value.number / pack.size;
  const sign = signIssue("price", price, received, path, options);
  return sign === null ? done({ value: price, per: pack.per }) : { ok: false, issues: [sign] };
}

function readShare(value: unknown, path: string, options: QuantityOptions): Read<number> {
  const expected = "a share such as 0.95 or 95 %";
  const received = shownValue(value);
  let share: number;
  if (typeof value === "number") {
    share = value;
  } else {
    const parts = splitQuantity(value, path, expected, { ...options, unit: options.unit ?? "1" });
    if (!parts.ok) return parts;
    const unit = foldText(parts.value.unit).toLowerCase();
    if (unit !== "1" && unit !== "%" && unit !== "percent") {
      return failed("unit-wrong-kind", path, { received, expected });
    }
    share = unit === "1" ? parts.value.number : parts.value.number / 100;
  }
  if (share >= 0 && share <= 1) return done(share);
  const hint = share > 1 && share <= 100 ? `Did you mean ${received.replace("%", "").trim()} %?` : undefined;
  return failed("share-out-of-range", path, { received, expected, ...(hint === undefined ? {} : { hint }) });
}
