import type { LanguageTag } from "../../words/index.ts";

/** Units a field offers first; any other that the engine reads may be typed into its box. */
export const UNITS = {
  strength: ["g/L", "g/L ae", "g/L salt", "g/kg", "g/kg ae", "% w/w", "lb/US gal", "lb/US gal ae"],
  rate: ["L/ha", "kg/ha", "g/ha", "fl oz/ac", "pt/ac", "qt/ac", "lb/ac"],
  price: ["/L", "/kg"],
  dose: ["kg/100 L", "L/100 L", "g/L", "% w/v", "% v/v", "lb/100 US gal"],
  density: ["kg/L", "g/mL"],
  waterPrice: ["/m3", "/L"],
  volume: ["L", "US gal", "imp gal"],
  area: ["ha", "ac"],
  temperature: ["°C", "°F"],
  time: ["h", "min", "d"],
} as const;

/** Units of the United States among those a field offers. */
const OF_US = /US|ac$|lb|°F/;

/** Units in the order a country looks for them, each measure in its own order: US ones first in American English. */
export function unitsFor(tag: LanguageTag, units: readonly string[]): readonly string[] {
  const ofUS = tag === "en-US" ? -1 : 2;
  const rank = (unit: string): number => (/^imp/.test(unit) ? 1 : OF_US.test(unit) ? ofUS : 0);
  return [...units].sort((a, b) => rank(a) - rank(b));
}
