import { MOLAR_MASSES, molarMassOf } from "../../../src/units/index.ts";
import type { ATOMIC_WEIGHTS } from "../../../src/units/index.ts";
import {
  chargeBalanceError_percent,
  conductivityFromIons_uSPerCm,
  dissolvedSolidsSum_mgPerL,
  hardnessFromMetals_mgPerL_asCaCO3,
  ionSums,
  judgeBalance,
  mayBeLeftOutOfBalance,
  plainConductivity_uSPerCm,
  sodiumAdsorptionRatio,
} from "../../../src/water/index.ts";
import type { IonSums } from "../../../src/water/index.ts";
import { expectedNumber, halfWidth, num } from "./published-check.ts";
import type { Handler, Pair, PublishedCheck } from "./published-check.ts";
import { REAL_WATERS, conductingIonsOf } from "./real-waters.ts";
import { turned } from "./unit-handlers.ts";

const CHARGES: Readonly<Record<string, readonly [charge: number, molarMass: number]>> = {
  Ca: [2, MOLAR_MASSES.Ca],
  Mg: [2, MOLAR_MASSES.Mg],
  Na: [1, MOLAR_MASSES.Na],
  K: [1, MOLAR_MASSES.K],
  Cl: [-1, MOLAR_MASSES.Cl],
  SO4: [-2, MOLAR_MASSES.SO4],
  HCO3: [-1, MOLAR_MASSES.HCO3],
};

function sumsFromMass(check: PublishedCheck): IonSums {
  return ionSums(
    Object.entries(CHARGES).flatMap(([key, [charge, molarMass]]) => {
      const mass = check.input[key];
      return typeof mass === "number" ? [{ amount: mass / molarMass, charge }] : [];
    }),
  );
}

const semarang: Handler = (check) => {
  const published = expectedNumber(check);
  const ours = chargeBalanceError_percent(sumsFromMass(check)) ?? Infinity;
  return [{ published, ours, tolerance: halfWidth(check, published), unit: "%" }];
};

const CATIONS = ["CA", "MG", "Na", "K", "NH4ION", "H"];
const ANIONS = ["CL", "SO4", "NO3", "ANC"];

const lake: Handler = (check) => {
  const tolerance = check.tolerance as {
    sumsRelative: number;
    sumsAbsolute: number;
    balance_percent: number;
  };
  const equivalents = (keys: readonly string[], sign: number) =>
    keys.map((key) => ({ amount: num(check, key) / 1000, charge: sign }));
  const sums = ionSums([...equivalents(CATIONS, 1), ...equivalents(ANIONS, -1)]);
  const pair = (label: string, ours: number): Pair => {
    const published = expectedNumber(check, label);
    const half = Math.max(tolerance.sumsAbsolute, tolerance.sumsRelative * published);
    return { label, published, ours, tolerance: half, unit: "µeq/L" };
  };
  return [
    pair("cation_sum", sums.cations_meqPerL * 1000),
    pair("anion_sum", sums.anions_meqPerL * 1000),
    {
      label: "balance",
      published: expectedNumber(check, "balance_percent"),
      ours: chargeBalanceError_percent(sums) ?? Infinity,
      tolerance: tolerance.balance_percent,
      unit: "%",
    },
  ];
};

const acceptance: Handler = (check) => {
  const sums = { cations_meqPerL: num(check, "cations_meq"), anions_meqPerL: num(check, "anions_meq") };
  return [{ published: String(check.expected), ours: judgeBalance(sums).accepted ? "accept" : "reject" }];
};

const lakeConductivity: Handler = (check) => {
  const eq = (key: string): number => num(check, key) * 1e-6;
  const ions = {
    "Ca+2": eq("CA") / 2,
    "Mg+2": eq("MG") / 2,
    "Na+": eq("Na"),
    "K+": eq("K"),
    "NH4+": eq("NH4ION"),
    "H+": eq("H"),
    "Cl-": eq("CL"),
    "SO4-2": eq("SO4") / 2,
    "NO3-": eq("NO3"),
    "HCO3-": eq("ANC"),
  };
  const { relativePlain, relativeMeasured } = check.tolerance as {
    relativePlain: number;
    relativeMeasured: number;
  };
  const plain = expectedNumber(check, "sum_of_limiting_conductances");
  const measured = expectedNumber(check, "measured");
  return [
    {
      label: "plain sum",
      published: plain,
      ours: plainConductivity_uSPerCm(ions),
      tolerance: relativePlain * plain,
      unit: "µS/cm",
    },
    {
      label: "measured",
      published: measured,
      ours: conductivityFromIons_uSPerCm(ions),
      tolerance: relativeMeasured * measured,
      unit: "µS/cm",
    },
  ];
};

/** Deviation of the plain sum from the published one over all lakes, as percentiles. */
const allLakes: Handler = (check) => {
  const deviations = REAL_WATERS.flatMap((water) => {
    const published = water.publishedPlainConductivity;
    if (published === null) return [];
    return [Math.abs(plainConductivity_uSPerCm(conductingIonsOf(water)) / published - 1)];
  }).sort((a, b) => a - b);
  const at = (share: number): number => deviations[Math.floor(share * (deviations.length - 1))] ?? Infinity;
  const { medianRelative, share95Relative } = check.tolerance as {
    medianRelative: number;
    share95Relative: number;
  };
  return [
    { label: "median relative deviation", published: 0, ours: at(0.5), tolerance: medianRelative, unit: "" },
    { label: "95th percentile of it", published: 0, ours: at(0.95), tolerance: share95Relative, unit: "" },
  ];
};

const groundWater: Handler = (check) => {
  const mg = check.input["mg_L"] as Record<string, number>;
  const alkalinity = turned("bicarbonate", mg["HCO3"] ?? 0, "mg/L", "mg/L as CaCO3");
  const others = Object.entries(mg).filter(([key]) => key !== "HCO3");
  const meq = (key: string): number => ((mg[key] ?? 0) / CHARGES[key]![1]) * CHARGES[key]![0];
  const ours: Readonly<Record<string, number>> = {
    TDS_sum_mg_L: dissolvedSolidsSum_mgPerL(
      alkalinity,
      others.map(([, amount]) => amount),
    ),
    hardness_mg_L_CaCO3: hardnessFromMetals_mgPerL_asCaCO3({
      calcium: mg["Ca"] ?? 0,
      magnesium: mg["Mg"] ?? 0,
    }),
    alkalinity_mg_L_CaCO3: alkalinity,
    SAR: sodiumAdsorptionRatio({ sodium: meq("Na"), calcium: meq("Ca"), magnesium: meq("Mg") }) ?? Infinity,
  };
  return Object.entries(ours).map(([label, value]) => {
    const published = expectedNumber(check, label);
    return { label, published, ours: value, tolerance: halfWidth(check, published, label), unit: "" };
  });
};

/** Moles of calcium and magnesium, and molar mass, of the salts that standard waters are made of. */
type Atoms = Parameters<typeof molarMassOf>[0];
const SALTS: Readonly<Record<string, Atoms>> = {
  CaCO3: { Ca: 1, C: 1, O: 3 },
  MgO: { Mg: 1, O: 1 },
  CaCl2: { Ca: 1, Cl: 2 },
  "CaCl2·2H2O": { Ca: 1, Cl: 2, H: 4, O: 2 },
  MgCl2: { Mg: 1, Cl: 2 },
  "MgCl2·6H2O": { Mg: 1, Cl: 2, H: 12, O: 6 },
  "CaSO4·2H2O": { Ca: 1, S: 1, O: 6, H: 4 },
  MgSO4: { Mg: 1, S: 1, O: 4 },
  "MgSO4·7H2O": { Mg: 1, S: 1, O: 11, H: 14 },
  NaHCO3: { Na: 1, H: 1, C: 1, O: 3 },
  KCl: { K: 1, Cl: 1 },
};

/** Amount of an element [mmol/L] that salts [mg/L] bring. */
function elementOf(salts: Readonly<Record<string, number>>, element: keyof typeof ATOMIC_WEIGHTS): number {
  return Object.entries(salts).reduce((sum, [name, mg]) => {
    const atoms = SALTS[name];
    if (atoms === undefined) throw new Error(`no salt ${name}`);
    return sum + (mg / molarMassOf(atoms)) * (atoms[element] ?? 0);
  }, 0);
}

const standardWater: Handler = (check) => {
  const salts = check.input["salts_mg_per_L"] as Record<string, number>;
  const mmol = elementOf(salts, "Ca") + elementOf(salts, "Mg");
  const ours = turned("hardness", mmol, "mmol/L", "mg/L as CaCO3");
  if (typeof check.expected === "number") {
    return [
      { published: check.expected, ours, tolerance: halfWidth(check, check.expected), unit: "mg/L as CaCO3" },
    ];
  }
  const { range, calculated } = check.expected as { range: readonly [number, number]; calculated: number };
  return [
    {
      label: "inside the published range",
      published: (range[0] + range[1]) / 2,
      ours,
      tolerance: (range[1] - range[0]) / 2,
      unit: "mg/L as CaCO3",
    },
    { label: "recomputed", published: calculated, ours, tolerance: 0.01, unit: "mg/L as CaCO3" },
  ];
};

const NAHCO3_G_PER_MOL = molarMassOf({ Na: 1, H: 1, C: 1, O: 3 });

/** Checks of ion balances, standard waters and sums, by id. */
export const BALANCE_HANDLERS: Readonly<Record<string, Handler>> = {
  ...Object.fromEntries(["sb793", "sb590", "sb321", "sb344"].map((id) => [`semarang-${id}`, semarang])),
  ...Object.fromEntries(["0001", "0002", "0003", "0175"].map((id) => [`nla-06608-${id}`, lake])),
  ...Object.fromEntries(["a", "b", "c", "d", "e", "f"].map((id) => [`1030-${id}`, acceptance])),
  "din-38402-62": (check) => [
    {
      published: String(check.expected),
      ours: mayBeLeftOutOfBalance(num(check, "share_percent")) ? "may be left out" : "must be counted",
    },
  ],
  ...Object.fromEntries(["0001", "0003", "0968"].map((id) => [`ec25-nla-06608-${id}`, lakeConductivity])),
  "limiting-conductances": allLakes,
  "sar-211401-2002-05-03": (check) => {
    const meq = (key: "Na" | "Ca" | "Mg"): number => (num(check, key) / CHARGES[key]![1]) * CHARGES[key]![0];
    const published = expectedNumber(check);
    const ours =
      sodiumAdsorptionRatio({ sodium: meq("Na"), calcium: meq("Ca"), magnesium: meq("Mg") }) ?? Infinity;
    return [{ published, ours, tolerance: halfWidth(check, published), unit: "" }];
  },
  "tds-hardness-gw1": groundWater,
  "tds-hardness-gw2": groundWater,
  ...Object.fromEntries(
    ["who-hard-342-carbonate", "who-soft-34", "cipac-d", "iso-6341-oecd", "en-1276-hard", "aoac-400"]
      .concat(["epa-very-soft", "epa-soft", "epa-hard"])
      .map((id) => [`water-${id}`, standardWater]),
  ),
  "water-stock-ca": (check) => {
    const published = expectedNumber(check);
    const ours = num(check, "g_per_L") / MOLAR_MASSES.CaCO3;
    return [{ published, ours, tolerance: halfWidth(check, published), unit: "mol/L" }];
  },
  "water-epa-alk": (check) => {
    const published = expectedNumber(check);
    const ours = turned(
      "alkalinity",
      num(check, "NaHCO3_mg_per_L") / NAHCO3_G_PER_MOL,
      "meq/L",
      "mg/L as CaCO3",
    );
    return [{ published, ours, tolerance: halfWidth(check, published), unit: "mg/L as CaCO3" }];
  },
  TC049: (check) => {
    const mmol = num(check, "NaHCO3_mg_per_L") / NAHCO3_G_PER_MOL;
    const ours: Readonly<Record<string, number>> = {
      Na_mg_per_L: turned("sodium", mmol, "mmol/L", "mg/L"),
      HCO3_mg_per_L: turned("bicarbonate", mmol, "mmol/L", "mg/L"),
      alkalinity_mg_per_L_CaCO3: turned("alkalinity", mmol, "meq/L", "mg/L as CaCO3"),
    };
    return Object.entries(ours).map(([label, value]) => {
      const published = expectedNumber(check, label);
      return { label, published, ours: value, tolerance: halfWidth(check, published), unit: "mg/L" };
    });
  },
  TC052: (check) => {
    const sums = sumsFromMass(check);
    const { sums_meqPerL, percent } = check.tolerance as { sums_meqPerL: number; percent: number };
    const pair = (label: string, ours: number, tolerance: number, unit: string): Pair => {
      return { label, published: expectedNumber(check, label), ours, tolerance, unit };
    };
    return [
      pair("cations_meq_per_L", sums.cations_meqPerL, sums_meqPerL, "meq/L"),
      pair("anions_meq_per_L", sums.anions_meqPerL, sums_meqPerL, "meq/L"),
      pair("error_percent_of_sum", chargeBalanceError_percent(sums) ?? Infinity, percent, "%"),
    ];
  },
};
