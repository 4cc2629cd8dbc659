import { describe, expect, it } from "vitest";
import { builtInPitzer, builtInThermo, davies, debyeHuckelA, pitzer } from "../../../src/chem/index.ts";

/**
 * Constants of the data set were measured at I = 0.1 mol/L for the most part and brought to zero with Davies' formula.
 * How far that differs from Pitzer's coefficients at the same place is what using them together costs.
 */
const thermo = builtInThermo();
const model = pitzer(builtInPitzer());
const formula = davies({ A: debyeHuckelA(25) });
const I = 0.1;

/** log10 γ of a trace ion in 0.1 mol/kg potassium nitrate, the usual medium, by the two models. */
function inMedium(species: string, charge: number): { pitzer: number; davies: number } {
  const terms = model.compile(["K+", "NO3-", species], Float64Array.of(1, -1, charge));
  terms.evaluate(Float64Array.of(I, I, 1e-9), new Int32Array(0));
  return {
    pitzer: terms.lnGamma[2]! / Math.LN10,
    davies: formula.lnGamma(charge, species, I) / Math.LN10,
  };
}

describe("Davies and Pitzer at I = 0.1, where the constants were measured", () => {
  it.each([
    ["H+", 1, 0.05],
    ["Na+", 1, 0.05],
    ["NH4+", 1, 0.05],
    ["Ca+2", 2, 0.1],
    ["Mg+2", 2, 0.1],
    ["H2Gly-", -1, 0.05],
    ["HGly-2", -2, 0.1],
    ["Gly-3", -3, 0.2],
  ])("log10 γ of %s in 0.1 mol/kg potassium nitrate", (species, charge, tolerance) => {
    const both = inMedium(species, charge);
    expect(Math.abs(both.pitzer - both.davies)).toBeLessThan(tolerance);
  });

  it("moves the constants of glyphosate with calcium and magnesium by less than their uncertainty", () => {
    for (const id of ["HGly-2", "H2Gly-", "CaHGly", "CaH2Gly+", "CaGly-", "MgHGly"]) {
      const species = thermo.species.find((one) => one.id === id)!;
      const shift = (name: string, charge: number): number => {
        const { pitzer: a, davies: b } = inMedium(name, charge);
        return charge === 0 ? 0 : a - b;
      };
      let change = -shift(id, species.charge);
      for (const [name, n] of Object.entries(species.formation)) {
        if (name !== "H2O") change += n * shift(name, thermo.components[name]!.charge);
      }
      // 0.3 is the half-width the drying answers were tested with.
      expect(Math.abs(change)).toBeLessThan(0.3);
    }
  });
});
