import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import data from "../../data/model-uncertainty.json" with { type: "json" };
import schema from "../../data/schemas/model-uncertainty.schema.json" with { type: "json" };
import sources from "../../data/sources.json" with { type: "json" };
import { builtInPitzer, builtInThermo, pitzer } from "../../src/chem/index.ts";

const salts = builtInPitzer();
const model = pitzer(salts, { temperature_C: 25 });

function chargeOf(ion: string): number {
  const [, sign, size] = /([+-])(\d*)$/.exec(ion)!;
  return (sign === "+" ? 1 : -1) * (size === "" ? 1 : Number(size));
}

/** log10 of the mean activity coefficients of the salts of a charge type at an ionic strength within their range. */
function meanCoefficients(cation: number, anion: number, ionicStrength: number): readonly number[] {
  return salts.binaries.flatMap((salt) => {
    if (chargeOf(salt.cation) !== cation || chargeOf(salt.anion) !== -anion) return [];
    const molality = ionicStrength / (0.5 * cation * anion * (cation + anion));
    if (salt.maxMolality_molPerKg !== null && salt.maxMolality_molPerKg < molality) return [];
    const terms = model.compile([salt.cation, salt.anion], Float64Array.of(cation, -anion));
    terms.evaluate(Float64Array.of(anion * molality, cation * molality), new Int32Array(0));
    const mean = (anion * terms.lnGamma[0]! + cation * terms.lnGamma[1]!) / (cation + anion);
    return [mean / Math.LN10];
  });
}

function standardDeviation(values: readonly number[]): number {
  const mean = values.reduce((sum, v) => sum + v, 0) / values.length;
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (values.length - 1));
}

describe("uncertainty of the model as data", () => {
  it("fits its schema and has a known source on every figure", () => {
    const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema);
    expect(validate(data), JSON.stringify(validate.errors)).toBe(true);
    const known = new Set(Object.keys(sources));
    const records = [
      ...Object.values(data.assumptions),
      ...Object.values(data.standards),
      ...data.borrowedActivity,
      ...data.mixing,
      ...data.solids,
      ...data.tests,
    ];
    for (const { source } of records) expect(known.has(source), source).toBe(true);
    for (const { low, central, high } of Object.values(data.assumptions)) {
      expect(low).toBeLessThan(central);
      expect(central).toBeLessThan(high);
    }
    for (const { solid, low, central, high } of data.solids) {
      expect(low).toBeLessThan(central);
      expect(central).toBeLessThan(high);
      expect(builtInThermo().solids.find(({ id }) => id === solid)?.logKsp.value).toBe(central);
    }
    for (const { settles } of data.tests) {
      for (const name of settles) expect(Object.keys(data.assumptions)).toContain(name);
    }
  });

  it.each([1, 3, 6])(
    "gives borrowed coefficients the spread of the salts of their charge type at %s mol/kg",
    (ionicStrength) => {
      for (const { charge, coefficient, power } of data.borrowedActivity) {
        const found = standardDeviation(meanCoefficients(1, charge, ionicStrength));
        const said = coefficient * ionicStrength ** power;
        expect(said / found, `charge ${String(charge)}: ${found.toFixed(3)}`).toBeGreaterThan(0.85);
        expect(said / found, `charge ${String(charge)}: ${found.toFixed(3)}`).toBeLessThan(1.18);
      }
    },
  );
});
