import type { Basis } from "./masses.ts";
import { foldText, lookUp } from "./text.ts";

/** Names of water-test readings, as written in a job. */
export const PARAMETERS = [
  "calcium",
  "magnesium",
  "hardness",
  "calcium hardness",
  "magnesium hardness",
  "sodium",
  "potassium",
  "ammonium",
  "iron",
  "ferrous iron",
  "ferric iron",
  "manganese",
  "aluminium",
  "zinc",
  "copper",
  "alkalinity",
  "phenolphthalein alkalinity",
  "bicarbonate",
  "carbonate",
  "sulfate",
  "chloride",
  "nitrate",
  "nitrite",
  "phosphate",
  "fluoride",
  "boron",
  "silica",
  "pH",
  "conductivity",
  "dissolved solids",
  "temperature",
  "turbidity",
  "suspended solids",
] as const;

/** Name of a water-test parameter, as written in a job. */
export type Parameter = (typeof PARAMETERS)[number];

/** Kind of quantity a parameter is. */
export type ParameterKind =
  "substance" | "hardness" | "alkalinity" | "pH" | "conductivity" | "solids" | "temperature" | "turbidity";

/** How a parameter is counted. */
export interface ParameterRule {
  readonly kind: ParameterKind;
  /**
   * What one unit of the internal value is in mass readings: moles of the internal unit per mole of each basis. For
   * alkalinity the internal unit is equivalents.
   */
  readonly bases: Readonly<Partial<Record<Basis, number>>>;
  /** Basis of a bare mass unit such as "mg/L". */
  readonly bareBasis: Basis | null;
  /** How sure the bare basis is: "certain" needs no word, a "note" or a "warning" is given with it. */
  readonly bare: "certain" | "note" | "warning";
  /** Equivalents per mole of the internal unit; null where the charge depends on pH or on what is not known. */
  readonly charge: number | null;
  /** Unit offered first, then other usual ones. */
  readonly units: readonly string[];
}

const IONS = ["mg/L", "mmol/L", "meq/L", "µg/L"];
const HARDNESS_UNITS = ["mg/L as CaCO3", "mmol/L", "meq/L", "°dH", "°fH", "°e", "gpg", "mg/L as CaO"];
const TRACES = ["mg/L", "µg/L", "mmol/L"];

function ion(
  basis: Basis,
  charge: number,
  units: readonly string[],
  more: Partial<ParameterRule> = {},
): ParameterRule {
  return {
    kind: "substance",
    bases: { [basis]: 1, CaCO3: 2 / charge, ...more.bases },
    bareBasis: basis,
    bare: more.bare ?? "certain",
    charge,
    units,
  };
}

function neutral(basis: Basis, units: readonly string[], more: Partial<ParameterRule> = {}): ParameterRule {
  return {
    kind: "substance",
    bases: { [basis]: 1, ...more.bases },
    bareBasis: basis,
    bare: more.bare ?? "certain",
    charge: null,
    units,
  };
}

function hardness(bases: ParameterRule["bases"]): ParameterRule {
  return { kind: "hardness", bases, bareBasis: "CaCO3", bare: "note", charge: 2, units: HARDNESS_UNITS };
}

function alkalinity(): ParameterRule {
  return {
    kind: "alkalinity",
    bases: { CaCO3: 2, CaO: 2, HCO3: 1, CO3: 2 },
    bareBasis: "CaCO3",
    bare: "warning",
    charge: 1,
    units: ["mg/L as CaCO3", "meq/L", "mmol/L", "mg/L as HCO3", "°dH", "°fH", "°e"],
  };
}

function other(kind: ParameterKind, units: readonly string[]): ParameterRule {
  return { kind, bases: {}, bareBasis: null, bare: "certain", charge: null, units };
}

const OXIDES = { CaO: 1 } as const;

/** How each parameter is counted. */
export const PARAMETER_RULES: Readonly<Record<Parameter, ParameterRule>> = {
  calcium: ion("Ca", 2, [...IONS, "mg/L as CaCO3"], { bases: OXIDES }),
  magnesium: ion("Mg", 2, [...IONS, "mg/L as CaCO3"], { bases: { MgO: 1 } }),
  hardness: hardness({ CaCO3: 1, CaO: 1 }),
  "calcium hardness": hardness({ CaCO3: 1, CaO: 1, Ca: 1 }),
  "magnesium hardness": hardness({ CaCO3: 1, CaO: 1, Mg: 1, MgO: 1 }),
  sodium: ion("Na", 1, IONS),
  potassium: ion("K", 1, IONS, { bases: { K2O: 2 } }),
  ammonium: ion("NH4", 1, ["mg/L", "mg/L as N", "µg/L", "mmol/L"], { bases: { N: 1, NH3: 1 }, bare: "note" }),
  iron: neutral("Fe", TRACES),
  "ferrous iron": ion("Fe", 2, TRACES),
  "ferric iron": ion("Fe", 3, TRACES),
  manganese: ion("Mn", 2, TRACES),
  aluminium: neutral("Al", TRACES),
  zinc: ion("Zn", 2, TRACES),
  copper: ion("Cu", 2, TRACES),
  alkalinity: alkalinity(),
  "phenolphthalein alkalinity": alkalinity(),
  bicarbonate: ion("HCO3", 1, ["mg/L", "mmol/L", "meq/L", "mg/L as CaCO3"]),
  carbonate: ion("CO3", 2, ["mg/L", "mmol/L", "meq/L", "mg/L as CaCO3"]),
  sulfate: ion("SO4", 2, [...IONS, "mg/L as S"], { bases: { S: 1 } }),
  chloride: ion("Cl", 1, IONS, { bases: { NaCl: 1 } }),
  nitrate: ion("NO3", 1, ["mg/L as NO3", "mg/L as N", "mmol/L", "meq/L"], {
    bases: { N: 1 },
    bare: "warning",
  }),
  nitrite: ion("NO2", 1, ["mg/L as NO2", "mg/L as N", "mmol/L"], { bases: { N: 1 }, bare: "note" }),
  phosphate: neutral("PO4", ["mg/L as PO4", "mg/L as P", "mmol/L"], {
    bases: { P: 1, P2O5: 2 },
    bare: "warning",
  }),
  fluoride: ion("F", 1, TRACES),
  boron: neutral("B", TRACES, { bases: { H3BO3: 1 } }),
  silica: neutral("SiO2", ["mg/L as SiO2", "mg/L as Si", "mmol/L"], {
    bases: { Si: 1, H4SiO4: 1 },
    bare: "note",
  }),
  pH: other("pH", [""]),
  conductivity: other("conductivity", ["µS/cm", "mS/cm", "dS/m", "mS/m"]),
  "dissolved solids": other("solids", ["mg/L", "g/L"]),
  temperature: other("temperature", ["°C", "°F"]),
  turbidity: other("turbidity", ["NTU", "FNU"]),
  "suspended solids": other("solids", ["mg/L", "g/L"]),
};

/** Other names in use on reports, lower case. Names with two meanings in use ("KH", "carbonate hardness") are not here. */
const ALIASES: Readonly<Record<string, Parameter>> = {
  ca: "calcium",
  "ca+2": "calcium",
  "ca2+": "calcium",
  "ca++": "calcium",
  mg: "magnesium",
  "mg+2": "magnesium",
  "mg2+": "magnesium",
  "mg++": "magnesium",
  "total hardness": "hardness",
  "hardness, total": "hardness",
  "general hardness": "hardness",
  gh: "hardness",
  "hardness, ca, mg": "hardness",
  "hardness (ca+mg)": "hardness",
  th: "hardness",
  "ca hardness": "calcium hardness",
  "mg hardness": "magnesium hardness",
  na: "sodium",
  "na+": "sodium",
  k: "potassium",
  "k+": "potassium",
  nh4: "ammonium",
  "nh4+": "ammonium",
  ammonia: "ammonium",
  "ammonia and ammonium": "ammonium",
  fe: "iron",
  "total iron": "iron",
  "iron, total": "iron",
  "dissolved iron": "iron",
  "fe(ii)": "ferrous iron",
  "fe2+": "ferrous iron",
  "fe+2": "ferrous iron",
  "iron(ii)": "ferrous iron",
  "fe(iii)": "ferric iron",
  "fe3+": "ferric iron",
  "fe+3": "ferric iron",
  "iron(iii)": "ferric iron",
  mn: "manganese",
  al: "aluminium",
  aluminum: "aluminium",
  zn: "zinc",
  cu: "copper",
  "total alkalinity": "alkalinity",
  "alkalinity, total": "alkalinity",
  "m-alkalinity": "alkalinity",
  "m alkalinity": "alkalinity",
  "m-value": "alkalinity",
  tac: "alkalinity",
  "acid capacity": "alkalinity",
  "p-alkalinity": "phenolphthalein alkalinity",
  "p alkalinity": "phenolphthalein alkalinity",
  "p-value": "phenolphthalein alkalinity",
  hco3: "bicarbonate",
  "hco3-": "bicarbonate",
  "hydrogen carbonate": "bicarbonate",
  hydrogencarbonate: "bicarbonate",
  co3: "carbonate",
  "co3-2": "carbonate",
  "co3--": "carbonate",
  so4: "sulfate",
  "so4-2": "sulfate",
  "so4--": "sulfate",
  sulphate: "sulfate",
  cl: "chloride",
  "cl-": "chloride",
  no3: "nitrate",
  "no3-": "nitrate",
  no2: "nitrite",
  "no2-": "nitrite",
  po4: "phosphate",
  orthophosphate: "phosphate",
  f: "fluoride",
  "f-": "fluoride",
  b: "boron",
  sio2: "silica",
  silicate: "silica",
  silicon: "silica",
  ec: "conductivity",
  "electrical conductivity": "conductivity",
  "specific conductance": "conductivity",
  "specific conductivity": "conductivity",
  "conductivity at 25 °c": "conductivity",
  tds: "dissolved solids",
  "total dissolved solids": "dissolved solids",
  temp: "temperature",
  "water temperature": "temperature",
  tss: "suspended solids",
  "total suspended solids": "suspended solids",
};

/** The parameter a typed name means, other names in use included; null when there is none. */
export function parameterNamed(typed: string): Parameter | null {
  const name = foldText(typed).toLowerCase();
  const own = PARAMETERS.find((parameter) => parameter.toLowerCase() === name);
  return own ?? lookUp(ALIASES, name) ?? null;
}

/** Every name a parameter may be written with, for suggestions. */
export const PARAMETER_NAMES: readonly string[] = [
  ...PARAMETERS,
  ...Object.keys(ALIASES).filter((a) => a.length > 4),
];
