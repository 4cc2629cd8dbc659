import { MOLAR_MASSES } from "../../../src/units/index.ts";
import {
  alkalinityForms,
  alkalinityFromTitration_meqPerL,
  alkalinityFromTitration_mgPerL_asCaCO3,
  calciumAndMagnesium_mgPerL,
  edtaStrength_mgPerMl,
  hardnessClass,
  hardnessFromEdta_mgPerL_asCaCO3,
  hardnessFromEdta_mmolPerL,
  hardnessFromMetals_mgPerL_asCaCO3,
  splitHardness,
} from "../../../src/water/index.ts";
import { expectedNumber, halfWidth, list, num, pairs, single } from "./published-check.ts";
import type { Handler, Pair, PublishedCheck } from "./published-check.ts";
import { turned } from "./unit-handlers.ts";

const AS_CACO3 = "mg/L as CaCO3";
const metals = (check: PublishedCheck, Ca = "Ca_mg_per_L", Mg = "Mg_mg_per_L"): number =>
  hardnessFromMetals_mgPerL_asCaCO3({ calcium: num(check, Ca), magnesium: num(check, Mg) });
const edta = (check: PublishedCheck, titrant = "titrant_mL") => ({
  titrant_mL: num(check, titrant),
  sample_mL: num(check, "sample_mL"),
  ...(typeof check.input["blank_mL"] === "number" ? { blank_mL: check.input["blank_mL"] } : {}),
});

const HARDNESS: Readonly<Record<string, Handler>> = {
  "sm2340b-factors": (check) =>
    pairs(
      check,
      {
        Ca: hardnessFromMetals_mgPerL_asCaCO3({ calcium: 1, magnesium: 0 }),
        Mg: hardnessFromMetals_mgPerL_asCaCO3({ calcium: 0, magnesium: 1 }),
      },
      AS_CACO3,
    ),
  "sm2340b-50-10": single(AS_CACO3, metals),
  "usgs-hardness-211401-2002-05-03": single(AS_CACO3, metals),
  "usgs-hardness-211401-2001-10-23": single(AS_CACO3, metals),
  "usgs-hardness-441701-2010-06-02": single(AS_CACO3, metals),
  "edta-sm": single(AS_CACO3, (c) => hardnessFromEdta_mgPerL_asCaCO3(edta(c), num(c, "B_mg_CaCO3_per_mL"))),
  "edta-iso6059": single("mmol/L", (c) => hardnessFromEdta_mmolPerL(edta(c), num(c, "c_EDTA_mmol_per_L"))),
  "edta-iso6059-dh": (check) =>
    pairs(
      check,
      {
        mg_per_L_CaCO3: turned("hardness", num(check, "mmol_per_L"), "mmol/L", AS_CACO3),
        dH: turned("hardness", num(check, "mmol_per_L"), "mmol/L", "°dH"),
      },
      "",
    ),
  "edta-blank": single(AS_CACO3, (c) =>
    hardnessFromEdta_mgPerL_asCaCO3(edta(c), num(c, "B_mg_CaCO3_per_mL")),
  ),
  "edta-strength": single("mg/mL", (c) =>
    edtaStrength_mgPerMl({
      standard_mL: num(c, "standard_mL"),
      standard_mgPerMl: num(c, "standard_mg_per_mL"),
      titrant_mL: num(c, "titrant_mL"),
    }),
  ),
  "edta-ca-mg-split": (check) => {
    const split = calciumAndMagnesium_mgPerL(
      edta(check, "titrant_mL_Ca"),
      num(check, "B"),
      num(check, "total_hardness"),
    );
    return pairs(
      check,
      {
        Ca_mg_per_L: split.calcium,
        Ca_hardness: split.calciumHardness,
        Mg_hardness: split.magnesiumHardness,
        Mg_mg_per_L: split.magnesium,
      },
      "mg/L",
    );
  },
  "carbonate-split-soft-alk": (check) => {
    const split = splitHardness(num(check, "hardness"), num(check, "alkalinity"));
    const ours = {
      carbonate: split.carbonate,
      non_carbonate: split.nonCarbonate,
      sodium_alkalinity: split.sodiumAlkalinity,
    };
    return pairs(check, ours, AS_CACO3);
  },
  "carbonate-split-who": (check) => {
    const split = splitHardness(num(check, "hardness"), num(check, "alkalinity"));
    return pairs(check, { carbonate: split.carbonate, non_carbonate: split.nonCarbonate }, AS_CACO3);
  },
  TC039: (check) =>
    pairs(
      check,
      {
        hardness_mg_per_L_CaCO3: hardnessFromMetals_mgPerL_asCaCO3({
          calcium: num(check, "Ca_ppm"),
          magnesium: num(check, "Mg_ppm"),
          iron: num(check, "Fe_ppm"),
          manganese: num(check, "Mn_ppm"),
        }),
      },
      AS_CACO3,
    ),
  TC040: (check) =>
    pairs(
      check,
      { hardness_mg_per_L_CaCO3: metals(check), mmol_per_L: metals(check) / MOLAR_MASSES.CaCO3 },
      "",
    ),
  TC044: (check) =>
    pairs(
      check,
      { hardness_mg_per_L_CaCO3: metals(check), mmol_per_L: metals(check) / MOLAR_MASSES.CaCO3 },
      "",
    ),
  TC046: (check) =>
    pairs(
      check,
      {
        Ca_water_as_CaCO3: turned("calcium", num(check, "Ca_mg_per_L"), "mg/L", AS_CACO3),
        Mg_water_as_CaCO3: turned("magnesium", num(check, "Mg_mg_per_L"), "mg/L", AS_CACO3),
      },
      AS_CACO3,
    ),
  TC054: (check) => classes(check, "usgs", (check.expected as { class: readonly string[] }).class),
  TC055: (check) => classes(check, "montana", (check.expected as { class: readonly string[] }).class),
  TC056: (check) => {
    const { USGS, Montana } = check.expected as { USGS: string; Montana: string };
    const value = num(check, "mg_per_L_CaCO3");
    return [
      { published: USGS, ours: hardnessClass(value, "usgs").class },
      { published: Montana, ours: hardnessClass(value, "montana").class },
    ];
  },
};

function classes(check: PublishedCheck, scale: string, published: readonly string[]): readonly Pair[] {
  return list<number>(check.input["mg_per_L_CaCO3"]).map((value, i) => ({
    label: `${value}`,
    published: published[i] ?? "",
    ours: hardnessClass(value, scale).class,
  }));
}

const forms: Handler = (check) => {
  const ours = alkalinityForms(num(check, "P"), num(check, "T"));
  const named = {
    hydroxide: ours.hydroxide,
    carbonate: ours.carbonate,
    hydrogen_carbonate: ours.hydrogenCarbonate,
  };
  return pairs(check, named, AS_CACO3);
};

const ALKALINITY: Readonly<Record<string, Handler>> = {
  "alk-sm2320": single(AS_CACO3, (c) =>
    alkalinityFromTitration_mgPerL_asCaCO3(num(c, "acid_mL"), num(c, "normality"), num(c, "sample_mL")),
  ),
  "alk-iso9963": single("mmol/L", (c) =>
    alkalinityFromTitration_meqPerL(
      num(c, "acid_mL"),
      num(c, "c_acid_mmol_per_L") / 1000,
      num(c, "sample_mL"),
    ),
  ),
  "alk-iso9963-range": (check) =>
    list<number>(check.input["mmol_per_L"]).map((value, i) => ({
      published: list<number>(check.expected)[i]!,
      ours: turned("alkalinity", value, "mmol/L", AS_CACO3),
      tolerance: halfWidth(check, 1),
      unit: AS_CACO3,
    })),
  "pt-0": forms,
  "pt-lt-half": forms,
  "pt-half": forms,
  "pt-all": forms,
  "alk-charge": single("meq/L", (c) => turned("alkalinity", num(c, "alkalinity"), AS_CACO3, "meq/L")),
  "h-oh-matter": (check) => {
    const concentration = num(check, "meq_per_L") / 1000;
    return pairs(
      check,
      { pH_H: -Math.log10(concentration), pH_OH: num(check, "pKw") + Math.log10(concentration) },
      "",
    );
  },
  "alkalinity-titration": (check) => {
    const acid = num(check, "acid_N");
    const sample = num(check, "sample_mL");
    const P = alkalinityFromTitration_mgPerL_asCaCO3(num(check, "mL_to_pH_8.3"), acid, sample);
    const rest = alkalinityFromTitration_mgPerL_asCaCO3(num(check, "mL_from_8.3_to_4.5"), acid, sample);
    const ours = alkalinityForms(P, P + rest);
    const named: Record<string, number> = {
      P_alkalinity_mg_L_CaCO3: P,
      total_alkalinity_mg_L_CaCO3: P + rest,
      hydroxide_mg_L_CaCO3: ours.hydroxide,
      carbonate_mg_L_CaCO3: ours.carbonate,
      bicarbonate_mg_L_CaCO3: ours.hydrogenCarbonate,
    };
    return Object.entries(named).map(([label, value]) => ({
      label,
      published: expectedNumber(check, label),
      ours: value,
      tolerance: halfWidth(check, 1, "mg_L"),
      unit: AS_CACO3,
    }));
  },
};

/** Checks of hardness and alkalinity, by id. */
export const HARDNESS_HANDLERS: Readonly<Record<string, Handler>> = { ...HARDNESS, ...ALKALINITY };
