import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { PARAMETER_RULES } from "../../units/index.ts";
import { quantityText } from "../job/typed.ts";
import type { Typed } from "../job/typed.ts";
import { loadLanguage } from "../../words/index.ts";
import { echoOf, familiarUnits, inUnit } from "./measure.ts";
import { UNITS, unitsFor } from "./units.ts";

const calcium = { reading: "calcium" } as const;
const typed = (text: string, unit: string): Typed => ({ text, unit });

describe("the same amount in another unit", () => {
  // 1 mmol of calcium is 40.078 mg.
  it.each([
    ["92", "mg/L", "mmol/L", "2.3"],
    ["92,5", "mg/L", "mmol/L", "2.31"],
    ["<0.05", "mg/L", "µg/L", "<50"],
    ["80–120", "mg/L", "mmol/L", "2.0–3.0"],
    ["2.30 mmol/L", "mg/L", "mg/L", "92.2"],
  ])("%s %s in %s is %s", (text, unit, to, shown) => {
    expect(inUnit(calcium, typed(text, unit), to)?.text).toBe(shown);
  });

  it("is not known for a blank, a word or a unit of another kind", () => {
    expect(inUnit(calcium, typed("", "mg/L"), "mmol/L")).toBeNull();
    expect(inUnit(calcium, typed("some", "mg/L"), "mmol/L")).toBeNull();
    expect(inUnit(calcium, typed("92", "mg/L"), "µS/cm")).toBeNull();
    expect(inUnit({ dimension: "rate" }, typed("2", "L/ha"), "kg/ha")).toBeNull();
  });

  it("a thousand changes lose neither the typed text nor what is computed with", () => {
    const units = PARAMETER_RULES.hardness.units;
    const number = fc.double({ min: 0.01, max: 5000, noNaN: true }).map((value) => value.toPrecision(3));
    fc.assert(
      fc.property(
        number,
        fc.array(fc.constantFrom(...units), { minLength: 1000, maxLength: 1000 }),
        (text, path) => {
          const start = typed(text, "mg/L as CaCO3");
          const end = path.reduce((at, unit) => inUnit({ reading: "hardness" }, at, unit) ?? at, start);
          expect(quantityText(end)).toBe(quantityText(start));
          expect(inUnit({ reading: "hardness" }, end, start.unit)?.text).toBe(text);
        },
      ),
      { numRuns: 20, endOnFailure: true },
    );
  });
});

describe("the echo under a field", () => {
  const echo = (text: string, unit: string): string | null =>
    echoOf(calcium, typed(text, unit), familiarUnits(calcium, "en-GB"));

  it("says a reading in another unit, in either decimal mark", () => {
    expect(echo("92.5", "mg/L")).toBe("= 2.31 mmol/L");
    expect(echo("92,5", "mg/L")).toBe("= 2.31 mmol/L");
    expect(echo("<0,05", "mg/L")).toBe("= <0.00125 mmol/L");
    expect(echo("250–425", "mg/L")).toBe("= 6.24–10.6 mmol/L");
  });

  it("says what a comma was read as where there is no other unit", () => {
    const pH = { reading: "pH" } as const;
    expect(echoOf(pH, typed("7,6", ""), familiarUnits(pH, "de-DE"))).toBe("Read as 7.6");
    expect(echoOf(pH, typed("7.6", ""), familiarUnits(pH, "de-DE"))).toBeNull();
  });

  it("says a foreign unit in the one that is computed with, and a metric one in the country's own", () => {
    const volume = { dimension: "volume per area" } as const;
    const words = (text: string, unit: string, language: string): string | null =>
      echoOf(volume, typed(text, unit), familiarUnits(volume, language));
    expect(words("20", "US gal/ac", "en-US")).toBe("= 187 L/ha");
    expect(words("200", "L/ha", "en-US")).toBe("= 21.4 US gal/ac");
    expect(words("200", "L/ha", "de-DE")).toBeNull();
    expect(words("20 US gal/ac", "L/ha", "de-DE")).toBe("= 187 L/ha");
  });

  it("says nothing while nothing is typed or it has two readings", () => {
    expect(echo("", "mg/L")).toBeNull();
    expect(echo("1,250", "mg/L")).toBeNull();
  });
});

describe("in a language with a decimal comma", () => {
  it("the echo has it too, and says a point as the comma it was read as", async () => {
    const german = await loadLanguage("de");
    const units = familiarUnits(calcium, "de");
    expect(echoOf(calcium, typed("92,5", "mg/L"), units, german)).toBe("= 2,31 mmol/L");
    expect(echoOf({ dimension: "area" }, typed("0,5", "ha"), ["ha"], german)).toBeNull();
    expect(echoOf({ dimension: "area" }, typed("0.5", "ha"), ["ha"], german)).toBe("Gelesen als 0,5");
  });
});

describe("the order of units", () => {
  it("has those of the country first, each measure in its own order", () => {
    expect(unitsFor("en-US", UNITS.volume)).toEqual(["US gal", "L", "imp gal"]);
    expect(unitsFor("en-GB", UNITS.volume)).toEqual(["L", "imp gal", "US gal"]);
    expect(unitsFor("de", UNITS.temperature)).toEqual(["°C", "°F"]);
    expect(unitsFor("en-US", UNITS.temperature)).toEqual(["°F", "°C"]);
    expect(unitsFor("en-US", UNITS.rate).slice(0, 5)).toEqual([
      "fl oz/ac",
      "pt/ac",
      "qt/ac",
      "lb/ac",
      "L/ha",
    ]);
    expect(unitsFor("en-US", UNITS.strength).slice(0, 2)).toEqual(["lb/US gal", "lb/US gal ae"]);
  });
});
