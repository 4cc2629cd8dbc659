import { describe, expect, it } from "vitest";
import { builtInThermo } from "../../../src/chem/index.ts";
import { isWithin, record } from "../validation-recorder.ts";

/**
 * Recommended and provisional constants of the IUPAC critical evaluation of phosphonic acids at 25 °C and I = 0.1, an
 * independent reading of much the same literature as the compilation the data set uses. log10 of cumulative constants.
 */
const IUPAC = "Popov, Rönkkömäki & Lajunen (2001) Pure Appl. Chem. 73:1641–1677, erratum 74:2227 (2002)";
const EVALUATED: readonly (readonly [string, number])[] = [
  ["CaGly-", 3.3],
  ["CaHGly", 11.5],
  ["MgGly-", 3.3],
  ["MgHGly", 12.1],
  ["MnGly-", 5.5],
  ["Mn(Gly)2-4", 7.8],
  ["MnHGly", 12.3],
  ["CuGly-", 11.9],
  ["Cu(Gly)2-4", 16.0],
  ["CuHGly", 15.9],
  ["MgAmpa", 2.0],
  ["CuAmpa", 8.1],
  ["Cu(Ampa)2-2", 14.7],
  ["ZnAmpa", 5.0],
];
const TOLERANCE = 0.2;

describe("glyphosate and AMPA constants against the IUPAC critical evaluation", () => {
  const thermo = builtInThermo();
  it.each(EVALUATED)("%s", (id, theirs) => {
    const { value, conditions } = thermo.species.find((s) => s.id === id)!.logK;
    expect(conditions).toMatchObject({ T_C: 25, I_molPerL: 0.1 });
    const within = isWithin(theirs, value, TOLERANCE);
    record({
      group: "constants of glyphosate and AMPA",
      what: `log β of ${id}, 25 °C, I = 0.1 mol/L`,
      published: theirs,
      ours: value,
      unit: "log10",
      tolerance: TOLERANCE,
      within,
      ...(within ? {} : { reason: "evaluations of the same measurements differ" }),
      source: IUPAC,
    });
    expect(within).toBe(true);
  });
});
