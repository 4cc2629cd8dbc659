import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  builtInThermo,
  compileSystem,
  davies,
  debyeHuckelA,
  equilibrate,
  systemFor,
} from "../../src/chem/index.ts";
import { PARAMETERS, PARAMETER_RULES } from "../../src/units/index.ts";
import type { Parameter } from "../../src/units/index.ts";
import { ISSUE_CODES_UNITS } from "../../src/units/index.ts";
import {
  ISSUE_CODES_WATER,
  alkalinityOf_eqPerL,
  completeWater,
  readWaterTest,
} from "../../src/water/index.ts";
import type { Water } from "../../src/water/index.ts";

const thermo = builtInThermo();
const CODES = new Set([...Object.keys(ISSUE_CODES_UNITS), ...Object.keys(ISSUE_CODES_WATER)]);

/** A reading of any parameter in one of its units, near what waters have or far from it. */
const anyReading = fc
  .tuple(
    fc.constantFrom(...PARAMETERS),
    fc.nat(),
    fc.oneof(
      fc.double({ min: 0, max: 500, noNaN: true }),
      fc.double({ min: -10, max: 1e6, noNaN: true }),
      fc.constantFrom("<0.05", "<5", ">425", "20-30", "", "ND", "1.250"),
    ),
  )
  .map(([parameter, at, value]) => {
    const { units } = PARAMETER_RULES[parameter];
    return { parameter, value, unit: units[at % units.length] ?? "" };
  });

function soundNumbers(water: Water): void {
  for (const [name, total] of Object.entries(water.totals_molPerL)) {
    expect(Number.isFinite(total) && total > 0, `${name} ${total}`).toBe(true);
  }
  for (const { low, value, high, code } of water.assumptions) {
    expect(low <= value && value <= high, `${code} ${low} ${value} ${high}`).toBe(true);
  }
  expect(alkalinityOf_eqPerL(water.totals_molPerL)).toBeCloseTo(water.alkalinity_molPerL, 9);
}

/** Charges of its species cancel at the pH that was measured. */
function neutralAtItsPH(water: Water): void {
  const { totals_molPerL, temperature_C } = water;
  const components = Object.keys(totals_molPerL);
  const system = compileSystem(
    systemFor(thermo, { components, temperature_C, solids: "none", carbonate: "closed" }),
  );
  const activity = davies({ A: debyeHuckelA(temperature_C), holdAbove_molPerL: 0.5 });
  const result = equilibrate(system, { totals_molPerL, electroneutral: "H+", activity });
  if (!result.ok) throw new Error(result.reason);
  expect(Math.abs((result.value.pH ?? 0) - water.pH)).toBeLessThan(0.01);
}

/** Tests that once made it throw. */
const ONCE_THROWN: [{ parameter: Parameter; value: number | string; unit: string }[]][] = [
  // Solids over a conductivity of next to nothing: a ratio without bound.
  [
    [
      { parameter: "conductivity", value: 5e-324, unit: "µS/cm" },
      { parameter: "dissolved solids", value: "<0.05", unit: "mg/L" },
    ],
  ],
];

describe("any water test", () => {
  test("is completed soundly or refused with reasons, and never throws", () => {
    let completed = 0;
    fc.assert(
      fc.property(fc.array(anyReading, { minLength: 1, maxLength: 10 }), (readings) => {
        const read = readWaterTest({ source: "any", method: "laboratory", readings }, "water");
        for (const { code } of read.issues) expect(CODES.has(code), code).toBe(true);
        if (!read.ok) return;
        const water = completeWater(read.value, { thermo });
        for (const { code } of water.issues) expect(CODES.has(code), code).toBe(true);
        if (!water.ok) {
          expect(water.issues.some(({ severity }) => severity === "error")).toBe(true);
          return;
        }
        completed += 1;
        soundNumbers(water.value);
        neutralAtItsPH(water.value);
      }),
      { numRuns: 400, examples: ONCE_THROWN },
    );
    expect(completed).toBeGreaterThan(0);
  });

  test("a plausible one is always completed, neutral and with its own alkalinity", () => {
    const plausible = fc.record({
      hardness: fc.double({ min: 5, max: 2000, noNaN: true }),
      alkalinity: fc.double({ min: 10, max: 600, noNaN: true }),
      pH: fc.double({ min: 6.5, max: 8.8, noNaN: true }),
      sodium: fc.option(fc.double({ min: 1, max: 500, noNaN: true }), { nil: null }),
      chloride: fc.option(fc.double({ min: 1, max: 800, noNaN: true }), { nil: null }),
      sulfate: fc.option(fc.double({ min: 1, max: 800, noNaN: true }), { nil: null }),
    });
    fc.assert(
      fc.property(plausible, ({ hardness, alkalinity, pH, ...ions }) => {
        const measured = Object.entries(ions).flatMap(([parameter, value]) =>
          value === null ? [] : [{ parameter, value, unit: "mg/L" }],
        );
        const readings = [
          { parameter: "hardness", value: hardness, unit: "mg/L as CaCO3" },
          { parameter: "alkalinity", value: alkalinity, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: pH },
          ...measured,
        ];
        const read = readWaterTest({ source: "any", method: "laboratory", readings }, "water");
        if (!read.ok) throw new Error(JSON.stringify(read.issues));
        const water = completeWater(read.value, { thermo, temperature_C: 15 });
        if (!water.ok) throw new Error(JSON.stringify(water.issues));
        soundNumbers(water.value);
        neutralAtItsPH(water.value);
        expect(water.value.alkalinity_molPerL / (alkalinity / 50_043)).toBeCloseTo(1, 9);
      }),
      { numRuns: 150 },
    );
  });
});
