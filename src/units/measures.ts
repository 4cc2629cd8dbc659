import { ACRE_HA, POUND_KG } from "./quantity-units.ts";
import { IMPERIAL_GALLON_L, US_GALLON_L } from "./reading-units.ts";

/** Which measures a sprayer is filled by. */
export type Measures = "metric" | "US" | "imperial";

/** What an amount may be of. */
export type MeasuredUnit = "L" | "kg" | "ha" | "L/ha";

/** An amount in the measures of a country. */
export interface Measured {
  readonly value: number;
  readonly unit: string;
}

/** Units that no metric job uses: of volume, and of the ground they are spread on. */
const CUSTOMARY = /(?<![a-z])(?:gal|(?:pint|pt|quart|qt|ac|acre)s?\b|fl\.?\s?oz|fluid oun)/i;

/**
 * The measures that a typed volume, rate or volume per area is in: "150 US gal" and "2 pt/ac" are in US ones,
 * "90 imp gal/ac" in imperial ones.
 */
export function measuresOf(typed: unknown): Measures {
  if (typeof typed !== "string" || !CUSTOMARY.test(typed)) return "metric";
  return /imp|uk/i.test(typed) ? "imperial" : "US";
}

/** Parts of a gallon that are measured out: fluid ounces below a quart, quarts below a gallon; imperial ones: pints. */
const PARTS = {
  US: { gallon_L: US_GALLON_L, gallon: "US gal", ounces: 128, ounce: "US fl oz", parts: 4, part: "US qt" },
  imperial: {
    gallon_L: IMPERIAL_GALLON_L,
    gallon: "imp gal",
    ounces: 160,
    ounce: "imp fl oz",
    parts: 8,
    part: "imp pt",
  },
} as const;
const OUNCES_PER_POUND = 16;
/** A whole unit may come out of a conversion a rounding error short. */
const WHOLE = 1 - 1e-9;

/**
 * An amount in the measures of a country, in the unit a person would measure it out by. Metric amounts come back as they
 * are.
 */
export function inMeasures(amount: number, unit: MeasuredUnit, measures: Measures): Measured {
  if (measures === "metric") return { value: amount, unit };
  const of = PARTS[measures];
  switch (unit) {
    case "ha":
      return { value: amount / ACRE_HA, unit: "ac" };
    case "L/ha":
      return { value: (amount / of.gallon_L) * ACRE_HA, unit: `${of.gallon}/ac` };
    case "kg": {
      const pounds = amount / POUND_KG;
      return pounds < WHOLE
        ? { value: pounds * OUNCES_PER_POUND, unit: "oz" }
        : { value: pounds, unit: "lb" };
    }
    case "L": {
      const gallons = amount / of.gallon_L;
      if (gallons >= WHOLE) return { value: gallons, unit: of.gallon };
      if (gallons * of.parts >= WHOLE) return { value: gallons * of.parts, unit: of.part };
      return { value: gallons * of.ounces, unit: of.ounce };
    }
  }
}

/** A rate of product in the measures of a country, per acre in the unit a person would measure it out by: "24 US fl oz/ac". */
export function rateInMeasures(perHa: number, of: "L" | "kg", measures: Measures): Measured {
  if (measures === "metric") return { value: perHa, unit: `${of}/ha` };
  const { value, unit } = inMeasures(perHa * ACRE_HA, of, measures);
  return { value, unit: `${unit}/ac` };
}
