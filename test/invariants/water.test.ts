import { describe, expect, test } from "vitest";
import gypsumWell from "../../examples/waters/gypsum-well.json" with { type: "json" };
import hydrogenCarbonateWell from "../../examples/waters/hydrogen-carbonate-well.json" with { type: "json" };
import lake from "../../examples/waters/lake.json" with { type: "json" };
import {
  builtInThermo,
  compileSystem,
  davies,
  debyeHuckelA,
  equilibrate,
  log10Kw,
  systemFor,
} from "../../src/chem/index.ts";
import {
  alkalinityOf_eqPerL,
  alkalinity_mgPerL_asCaCO3,
  blendWaters,
  chargeOfName,
  completeWater,
  hardness_mgPerL_asCaCO3,
  readWaterTest,
} from "../../src/water/index.ts";
import type { Water } from "../../src/water/index.ts";

const thermo = builtInThermo();

function complete(block: unknown, temperature_C = 20): Water {
  const read = readWaterTest(block, "water");
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const water = completeWater(read.value, { thermo, temperature_C });
  if (!water.ok) throw new Error(JSON.stringify(water.issues));
  return water.value;
}

/** The composition's own equilibrium, as a tank would compute it. */
function atEquilibrium(water: Water) {
  const components = Object.keys(water.totals_molPerL);
  const system = compileSystem(
    systemFor(thermo, {
      components,
      temperature_C: water.temperature_C,
      solids: "none",
      carbonate: "closed",
    }),
  );
  const result = equilibrate(system, {
    totals_molPerL: water.totals_molPerL,
    electroneutral: "H+",
    activity: davies({ A: debyeHuckelA(water.temperature_C), holdAbove_molPerL: 0.5 }),
  });
  if (!result.ok) throw new Error(result.reason);
  return result.value;
}

const EXAMPLES = [
  ["gypsum well", gypsumWell.water],
  ["hydrogen carbonate well", hydrogenCarbonateWell.water],
  ["lake", lake.water],
] as const;

const STRIP = {
  source: "dam",
  method: "strip",
  readings: [
    { parameter: "hardness", value: "120-250", unit: "mg/L as CaCO3" },
    { parameter: "pH", value: 7.4 },
  ],
};

describe.each([...EXAMPLES, ["a strip", STRIP] as const])("completed water: %s", (_name, block) => {
  const water = complete(block);

  test("equilibrating its totals gives the measured pH back", () => {
    const { pH } = atEquilibrium(water);
    expect(Math.abs((pH ?? 0) - water.pH)).toBeLessThan(0.01);
    // The search is exact; only rounding is left.
    expect(Math.abs((pH ?? 0) - water.pH)).toBeLessThan(1e-6);
  });

  test("its species carry no charge in sum", () => {
    const { concentrations, system } = atEquilibrium(water);
    let charge = 0;
    let size = 0;
    concentrations.forEach((c, i) => {
      charge += c * system.speciesCharges[i]!;
      size += c * Math.abs(system.speciesCharges[i]!);
    });
    expect(Math.abs(charge)).toBeLessThan(1e-10 * size);
  });

  test("the strong ions carry the alkalinity", () => {
    const { totals_molPerL } = water;
    const strong = Object.entries(totals_molPerL)
      .filter(([name]) => !["CO3-2", "Fe+3", "Al+3", "PO4-3"].includes(name))
      .reduce((sum, [name, total]) => sum + chargeOfName(name) * total, 0);
    const phosphate = totals_molPerL["PO4-3"] ?? 0;
    expect(strong - phosphate).toBeCloseTo(water.alkalinity_molPerL, 12);
    expect(alkalinityOf_eqPerL(totals_molPerL)).toBeCloseTo(water.alkalinity_molPerL, 12);
  });

  test("an acid titration of it to pH 4.5 finds the alkalinity", () => {
    const titrated = atEquilibriumOfPH(water, 4.5);
    // Acid to be added: the charge the water is short of at pH 4.5, carbon dioxide kept in.
    let charge = 0;
    titrated.concentrations.forEach((c, i) => {
      charge += c * titrated.system.speciesCharges[i]!;
    });
    // The end point leaves some hydrogen carbonate untitrated and some hydrogen ion free; both are small here.
    expect(charge).toBeGreaterThan(0.9 * water.alkalinity_molPerL);
    expect(charge).toBeLessThan(1.1 * water.alkalinity_molPerL + 1e-4);
  });

  test("hardness is calcium and magnesium", () => {
    const { totals_molPerL } = water;
    expect(totals_molPerL["Ca+2"]! + totals_molPerL["Mg+2"]!).toBeCloseTo(water.hardness_molPerL, 12);
  });

  test("a blend with itself changes nothing", () => {
    const blend = blendWaters(water, water, 0.37, thermo);
    expect(blend.totals_molPerL).toEqual(water.totals_molPerL);
    expect(blend.pH).toBeCloseTo(water.pH, 6);
    expect(blend.alkalinity_molPerL).toBeCloseTo(water.alkalinity_molPerL, 12);
    expect(blend.conductivity_uSPerCm).toBe(water.conductivity_uSPerCm);
    expect(blend.assumptions).toEqual(water.assumptions);
  });
});

function atEquilibriumOfPH(water: Water, pH: number) {
  const components = Object.keys(water.totals_molPerL);
  const system = compileSystem(
    systemFor(thermo, {
      components,
      temperature_C: water.temperature_C,
      solids: "none",
      carbonate: "closed",
    }),
  );
  const result = equilibrate(system, {
    totals_molPerL: water.totals_molPerL,
    fixedLog10Activities: { "H+": -pH },
    activity: davies({ A: debyeHuckelA(water.temperature_C), holdAbove_molPerL: 0.5 }),
  });
  if (!result.ok) throw new Error(result.reason);
  return result.value;
}

describe("completed waters", () => {
  test("the unit system is irrelevant", () => {
    const block = (unit: string, values: readonly number[], alkalinityUnit: string, alkalinity: number) => ({
      source: "bore",
      method: "laboratory",
      readings: [
        { parameter: "calcium", value: values[0], unit },
        { parameter: "magnesium", value: values[1], unit },
        { parameter: "alkalinity", value: alkalinity, unit: alkalinityUnit },
        { parameter: "pH", value: 7.6 },
      ],
    });
    const a = complete(block("mg/L", [92, 31], "mg/L as CaCO3", 240));
    const b = complete(block("meq/L", [(2 * 92) / 40.078, (2 * 31) / 24.305], "meq/L", 240 / 50.043));
    for (const [name, total] of Object.entries(a.totals_molPerL)) {
      expect(b.totals_molPerL[name], name).toBeCloseTo(total, 9);
    }
  });

  test("the order of the readings is irrelevant", () => {
    const turned = { ...lake.water, readings: [...lake.water.readings].reverse() };
    const [a, b] = [complete(lake.water), complete(turned)];
    for (const [name, total] of Object.entries(a.totals_molPerL)) {
      expect(b.totals_molPerL[name], name).toBeCloseTo(total, 12);
    }
  });

  test("hardness and alkalinity shown are those measured", () => {
    const water = complete(gypsumWell.water);
    expect(hardness_mgPerL_asCaCO3(water) / 3440).toBeCloseTo(1, 1);
    expect(alkalinity_mgPerL_asCaCO3(water)).toBeCloseTo(185, 6);
  });

  test("the inorganic carbon of a dilute water is that of the closed formula", () => {
    const water = complete(
      {
        source: "tap",
        method: "laboratory",
        readings: [
          { parameter: "calcium", value: 5, unit: "mg/L" },
          { parameter: "magnesium", value: 1, unit: "mg/L" },
          { parameter: "sodium", value: 20, unit: "mg/L" },
          { parameter: "potassium", value: 1, unit: "mg/L" },
          { parameter: "chloride", value: 10, unit: "mg/L" },
          { parameter: "sulfate", value: 5, unit: "mg/L" },
          { parameter: "alkalinity", value: 45, unit: "mg/L as CaCO3" },
          { parameter: "iron", value: 0, unit: "mg/L" },
          { parameter: "pH", value: 7.5 },
        ],
      },
      25,
    );
    // Plummer & Busenberg (1982) at 25 °C: log K1 −6.352, log K2 −10.329; Davies for the activity coefficients.
    const I = atEquilibrium(water).ionicStrength_molPerL;
    const gamma = (z: number): number =>
      10 ** (-debyeHuckelA(25) * z * z * (Math.sqrt(I) / (1 + Math.sqrt(I)) - 0.3 * I));
    const h = 10 ** -7.5;
    const bicarbonateOverCO2 = 10 ** -6.352 / h / gamma(1);
    const carbonateOverBicarbonate = ((10 ** -10.329 / h) * gamma(1)) / gamma(2);
    const hydroxide = 10 ** log10Kw(25) / h / gamma(1);
    const carbonAlkalinity = water.alkalinity_molPerL - hydroxide + h / gamma(1);
    const bicarbonate = carbonAlkalinity / (1 + 2 * carbonateOverBicarbonate);
    const total = bicarbonate * (1 + carbonateOverBicarbonate + 1 / bicarbonateOverCO2);
    // Ion pairs of calcium and magnesium, left out of the formula, change a dilute water by less than half a percent.
    expect(water.totals_molPerL["CO3-2"]! / total).toBeCloseTo(1, 2);
  });

  test("half and half is half of each", () => {
    const [a, b] = [complete(gypsumWell.water), complete(lake.water)];
    const blend = blendWaters(a, b, 0.5, thermo);
    expect(blend.hardness_molPerL).toBeCloseTo((a.hardness_molPerL + b.hardness_molPerL) / 2, 12);
    expect(blend.alkalinity_molPerL).toBeCloseTo((a.alkalinity_molPerL + b.alkalinity_molPerL) / 2, 12);
    const { pH } = atEquilibrium(blend);
    expect(blend.pH).toBeCloseTo(pH ?? 0, 9);
    expect(blend.issues.map(({ code }) => code)).toContain("blend-of-waters");
    expect(blendWaters(a, b, 1, thermo).pH).toBeCloseTo(a.pH, 6);
    expect(() => blendWaters(a, b, 1.1, thermo)).toThrow(/share-invalid/);
  });
});
