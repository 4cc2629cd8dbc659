import { describe, expect, it } from "vitest";
import { builtInPitzer } from "../../../src/chem/index.ts";
import { isWithin, record } from "../validation-recorder.ts";
import { gypsumSolubility } from "./saturation.ts";

/** Gypsum decides how much calcium a sulfate takes from a drying drop: its constant and its solubility, by abstracts read. */
const CHECKS = [
  {
    what: "log Ksp of gypsum that belongs to the parameters, 25 °C",
    published: Math.log10(2.58e-5),
    ours: builtInPitzer().solidConstants.find(({ solid }) => solid === "gypsum")!.logKsp,
    unit: "log10",
    // The same work finds 2.13e-5 to 2.79e-5 in solutions of ionic strength 0.059 to 0.314.
    tolerance: Math.log10(2.58 / 2.13),
    source: "Bennett & Adams (1972) Soil Sci. Soc. Am. J. 36, abstract: 2.58e-5 in water",
  },
  {
    what: "gypsum in pure water, 25 °C",
    published: (0.0147 + 0.0182) / 2,
    ours: gypsumSolubility("NaCl", 0, 25),
    unit: "mol/kg",
    tolerance: (0.0182 - 0.0147) / 2,
    source:
      "Lebedev & Kosorukov (2017) Geochem. Int. 55:205-210, abstract: middle of published values from 0.0147 to 0.0182 mol/L",
  },
];

describe("gypsum against what was published of it", () => {
  it.each(CHECKS)("$what", (check) => {
    const within = isWithin(check.published, check.ours, check.tolerance);
    record({ group: "solubility of gypsum (Pitzer)", ...check, within });
    expect(within).toBe(true);
  });
});
