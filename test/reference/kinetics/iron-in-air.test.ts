import { describe, expect, it } from "vitest";
import { ferrousHalfLife_h } from "../../../src/agronomy/iron-air.ts";
import { isWithin, record } from "../validation-recorder.ts";

const SOURCE =
  "Parkhurst & Appelo (1999) User's guide to PHREEQC (version 2), USGS Water-Resources Investigations Report 99-4259, example 9, after Singer & Stumm (1970)";
/** Rate [1/s] of the example at 25 °C, where the ion product of water is 1e-14; the air has 0.21 atm of oxygen. */
const rate_perS = (pH: number): number => 2.91e-9 + 1.33e12 * (10 ** (pH - 14)) ** 2 * 0.21;

/** Relative: Stumm and Lee (1961) give their constant within 31 % (from memory); a tenth is asked for. */
const TOLERANCE = 0.1;

describe("half-life of iron(II) in water full of air", () => {
  it.each([3, 6, 7, 8])("at pH %d and 25 °C", (pH) => {
    const theirs = Math.LN2 / rate_perS(pH) / 60;
    const ours = 60 * ferrousHalfLife_h(pH, 25);
    const within = isWithin(theirs, ours, TOLERANCE * theirs);
    record({
      group: "iron(II) with air",
      what: `half-life at pH ${String(pH)}, 25 °C, 0.21 atm of oxygen`,
      published: theirs,
      ours,
      unit: "min",
      tolerance: TOLERANCE * theirs,
      within,
      source: SOURCE,
    });
    expect(within).toBe(true);
  });
});
