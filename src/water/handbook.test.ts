import { describe, expect, test } from "vitest";
import { alkalinityForms, alkalinityFromTitration_meqPerL } from "./alkalinity.ts";
import {
  chargeOfName,
  conductivityFromIons_uSPerCm,
  conductivityTriage,
  sodiumAdsorptionRatio,
} from "./conductivity.ts";
import { edtaStrength_mgPerMl, hardnessClass, hardnessFromEdta_mmolPerL } from "./hardness.ts";
import { chargeBalanceError_percent, judgeBalance } from "./ion-balance.ts";
import { ISSUE_CODES_WATER } from "./issue-codes.ts";
import { langelier, saturationIndexByFactors } from "./langelier.ts";

describe("handbook calculations at their edges", () => {
  test("a class is never given without its scale", () => {
    expect(hardnessClass(200, "usgs")).toEqual({
      scale: "US Geological Survey",
      class: "very hard",
      source: "usgs-hardness-classes",
    });
    expect(() => hardnessClass(200, "mine")).toThrow(/scale-unknown/);
  });

  test("titrations that cannot be are the programmer's fault", () => {
    expect(() => hardnessFromEdta_mmolPerL({ titrant_mL: 1, blank_mL: 2, sample_mL: 50 }, 10)).toThrow(
      /titration/,
    );
    expect(() => edtaStrength_mgPerMl({ standard_mL: 10, standard_mgPerMl: 1, titrant_mL: 0 })).toThrow(
      /titration/,
    );
    expect(() => alkalinityFromTitration_meqPerL(1, 0.02, 0)).toThrow(/titration/);
    expect(() => alkalinityForms(80, 50)).toThrow(/alkalinity-forms/);
  });

  test("what is not defined is null, never NaN", () => {
    expect(sodiumAdsorptionRatio({ sodium: 1, calcium: 0, magnesium: 0 })).toBeNull();
    expect(chargeBalanceError_percent({ cations_meqPerL: 0, anions_meqPerL: 0 })).toBeNull();
    const input = {
      pH: 7,
      dissolvedSolids_mgPerL: 0,
      calciumHardness_mgPerL_asCaCO3: 1,
      alkalinity_mgPerL_asCaCO3: 1,
      temperature_C: 20,
    };
    expect(langelier(input)).toBeNull();
  });

  test("a brine is judged by the last band", () => {
    expect(judgeBalance({ cations_meqPerL: 2040, anions_meqPerL: 2000 })).toMatchObject({
      accepted: true,
      limit: 5,
    });
  });

  test("charges are read off names", () => {
    expect(["Ca+2", "Cl-", "PO4-3", "Na+", "H4SiO4"].map(chargeOfName)).toEqual([2, -1, -3, 1, 0]);
  });

  test("conductivity rises with every ion and stays finite in a brine", () => {
    const brine = { "Na+": 4, "Cl-": 4 };
    expect(conductivityFromIons_uSPerCm({ "Na+": 0.01, "Cl-": 0.01 })).toBeLessThan(
      conductivityFromIons_uSPerCm({ "Na+": 0.02, "Cl-": 0.02 }),
    );
    expect(Number.isFinite(conductivityFromIons_uSPerCm(brine))).toBe(true);
    expect(conductivityTriage(1e9)).toBe("identify the salts; serious");
  });

  test("factors come from the nearest step", () => {
    const input = {
      pH: 7,
      temperature_F: 20,
      calciumHardness_mgPerL_asCaCO3: 1e4,
      alkalinity_mgPerL_asCaCO3: 1,
    };
    expect(saturationIndexByFactors(input)).toMatchObject({ temperature: 0, calcium: 2.5, alkalinity: 0.7 });
  });
});

test("codes are kebab-case and each has its line", () => {
  for (const [code, line] of Object.entries(ISSUE_CODES_WATER)) {
    expect(code).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
    expect(line.length).toBeGreaterThan(10);
  }
});
