import { MOLAR_MASSES } from "../../../src/units/index.ts";
import {
  conductivitiesAgree,
  conductivityAt25C_uSPerCm,
  conductivityFromIons_uSPerCm,
  conductivityTriage,
  dissolvedSolidsFromConductivity_mgPerL,
  dissolvedSolidsRatio,
  dissolvedSolidsSum_mgPerL,
  ionicStrengthFromConductivity_molPerL,
  ionicStrengthFromDissolvedSolids_molPerL,
  ionicStrengthOf_molPerL,
  langelier,
  plainConductivity_uSPerCm,
  saturationIndexByFactors,
} from "../../../src/water/index.ts";
import { expectedNumber, halfWidth, list, num, pairs, single } from "./published-check.ts";
import type { Handler } from "./published-check.ts";

/** mol/L of ions from mg/L, by names as the checks use them. */
const ION: Readonly<Record<string, readonly [name: string, molarMass: number]>> = {
  Ca: ["Ca+2", MOLAR_MASSES.Ca],
  Mg: ["Mg+2", MOLAR_MASSES.Mg],
  Na: ["Na+", MOLAR_MASSES.Na],
  K: ["K+", MOLAR_MASSES.K],
  HCO3: ["HCO3-", MOLAR_MASSES.HCO3],
  SO4: ["SO4-2", MOLAR_MASSES.SO4],
  Cl: ["Cl-", MOLAR_MASSES.Cl],
};
function ionsOf(mgPerL: Readonly<Record<string, number>>): Record<string, number> {
  return Object.fromEntries(
    Object.entries(mgPerL).flatMap(([key, value]) => {
      const ion = ION[key];
      return ion === undefined ? [] : [[ion[0], value / ion[1] / 1000]];
    }),
  );
}

const CONDUCTIVITY: Readonly<Record<string, Handler>> = {
  "is-from-ec": single("mol/L", (c) => ionicStrengthFromConductivity_molPerL(num(c, "EC_uS_per_cm"))),
  "is-from-tds": single("mol/L", (c) => ionicStrengthFromDissolvedSolids_molPerL(num(c, "TDS_mg_per_L"))),
  "is-from-ions-who": single("mmol/L", (c) =>
    ionicStrengthOf_molPerL({ "Ca+2": num(c, "Ca"), "Mg+2": num(c, "Mg"), "Cl-": num(c, "Cl") }),
  ),
  "ec-temp": single("µS/cm", (c) => conductivityAt25C_uSPerCm(num(c, "EC"), num(c, "t_C"))),
  "ec-ratio": (check) =>
    list<number>(check.input["ratio"]).map((ratio, i) => ({
      label: `${ratio}`,
      published: list<string>(check.expected)[i]!,
      ours: conductivitiesAgree(ratio * 1000, 1000) ? "accept" : "reject",
    })),
  "tds-ec-ratio": (check) => {
    const ours = dissolvedSolidsRatio(num(check, "TDS"), num(check, "EC"));
    return [
      {
        published: expectedNumber(check, "ratio"),
        ours: ours.ratio,
        tolerance: halfWidth(check, 1),
        unit: "mg/L per µS/cm",
      },
      { published: String((check.expected as { verdict: string }).verdict), ours: ours.band },
    ];
  },
  "tds-sum-usgs": single("mg/L", (c) =>
    dissolvedSolidsSum_mgPerL(
      num(c, "alkalinity_as_CaCO3"),
      ["Na", "K", "Ca", "Mg", "Cl", "SO4", "SiO2", "NO3", "F"].map((key) => num(c, key)),
    ),
  ),
  "ec-2510": (check) => {
    const ions = ionsOf(check.input["mg_L"] as Record<string, number>);
    return [
      ...pairs(check, { k0_uS_cm: plainConductivity_uSPerCm(ions) }, "µS/cm"),
      ...pairs(check, { k_calc_uS_cm: conductivityFromIons_uSPerCm(ions) }, "µS/cm"),
      {
        label: "ionic strength",
        published: expectedNumber(check, "ionic_strength"),
        ours: ionicStrengthOf_molPerL(ions),
        tolerance: 0.00001,
        unit: "mol/L",
      },
    ];
  },
  TC050: (check) =>
    list<number>(check.input["EC_uS_per_cm"]).map((value, i) => {
      const published = list<number>((check.expected as { TDS_mg_per_L: unknown }).TDS_mg_per_L)[i]!;
      const ours = dissolvedSolidsFromConductivity_mgPerL(value);
      return { published, ours, tolerance: halfWidth(check, published), unit: "mg/L" };
    }),
  TC051: (check) =>
    list<number>(check.input["EC_uS_per_cm"]).map((value, i) => ({
      label: `${value}`,
      published: list<string>((check.expected as { band: unknown }).band)[i]!,
      ours: conductivityTriage(value),
    })),
};

const handbookLangelier =
  (terms: readonly ("A" | "B" | "C" | "D" | "pHs")[]): Handler =>
  (check) => {
    const ours = langelier({
      pH: num(check, "pH"),
      dissolvedSolids_mgPerL: num(check, "TDS_mg_L"),
      calciumHardness_mgPerL_asCaCO3: num(check, "Ca_hardness_mg_L_CaCO3"),
      alkalinity_mgPerL_asCaCO3: num(check, "alkalinity_mg_L_CaCO3"),
      temperature_C: num(check, "T_C"),
    });
    if (ours === null) throw new Error("no index");
    // The terms are published with two decimals (one for pHs), so they agree to half of the last one.
    return [
      ...pairs(check, { LSI: ours.index }, ""),
      ...terms.map((term) => ({
        label: term,
        published: expectedNumber(check, term),
        ours: ours[term],
        tolerance: term === "pHs" ? 0.05 : 0.0055,
        unit: "",
      })),
    ];
  };

const factors: Handler = (check) => {
  const ours = saturationIndexByFactors({
    pH: num(check, "pH"),
    temperature_F: num(check, "T_F"),
    calciumHardness_mgPerL_asCaCO3: num(check, "Ca_hardness_mg_L_CaCO3"),
    alkalinity_mgPerL_asCaCO3: num(check, "alkalinity_mg_L_CaCO3"),
  });
  const exact = 1e-9;
  return [
    ...pairs(check, { SI: ours.index }, ""),
    {
      label: "TF",
      published: expectedNumber(check, "TF"),
      ours: ours.temperature,
      tolerance: exact,
      unit: "",
    },
    { label: "CF", published: expectedNumber(check, "CF"), ours: ours.calcium, tolerance: exact, unit: "" },
    {
      label: "AF",
      published: expectedNumber(check, "AF"),
      ours: ours.alkalinity,
      tolerance: exact,
      unit: "",
    },
  ];
};

/** Checks of conductivity and indices, by id. */
export const CONDUCTIVITY_HANDLERS: Readonly<Record<string, Handler>> = {
  ...CONDUCTIVITY,
  "langelier-1": handbookLangelier(["A", "B", "C", "D", "pHs"]),
  "langelier-2": handbookLangelier(["B", "pHs"]),
  "langelier-factors-1": factors,
  "langelier-factors-2": factors,
};
