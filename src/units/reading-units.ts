import { MOLAR_MASSES } from "./masses.ts";
import type { Basis } from "./masses.ts";
import { foldText, lookUp } from "./text.ts";

/** Mass of one grain [mg]. @source international yard and pound agreement (1959): 1 grain = 64.79891 mg, exact */
export const GRAIN_MG = 64.79891;
/** Volume of one US gallon [L]. @source 231 cubic inches, exact; NIST Handbook 44, appendix C */
export const US_GALLON_L = 3.785411784;
/** Volume of one imperial gallon [L]. @source UK Weights and Measures Act 1985: 4.54609 L, exact */
export const IMPERIAL_GALLON_L = 4.54609;

/** What a unit of a water test means. */
export type ReadingUnit =
  /** `toBase` mg/L per unit; `basis` null when the unit does not say what it counts. */
  | { readonly kind: "mass"; readonly toBase: number; readonly basis: Basis | null }
  /** mol/L per unit. */
  | { readonly kind: "amount"; readonly toBase: number; readonly basis: Basis | null }
  /** eq/L per unit. */
  | { readonly kind: "equivalents"; readonly toBase: number }
  /** mol/L of calcium plus magnesium per unit, by the definition of a hardness degree. */
  | { readonly kind: "degree"; readonly toBase: number }
  /** µS/cm per unit. */
  | { readonly kind: "conductivity"; readonly toBase: number }
  /** °C = (value − offset) · toBase. */
  | { readonly kind: "temperature"; readonly toBase: number; readonly offset: number }
  | { readonly kind: "turbidity"; readonly toBase: number }
  | { readonly kind: "pH" };

const mass = (toBase: number): ReadingUnit => ({ kind: "mass", toBase, basis: null });
const amount = (toBase: number): ReadingUnit => ({ kind: "amount", toBase, basis: null });
const equivalents = (toBase: number): ReadingUnit => ({ kind: "equivalents", toBase });
const conductivity = (toBase: number): ReadingUnit => ({ kind: "conductivity", toBase });
/** A degree defined as `mg` of a compound with one calcium in one litre. */
const degree = (mg_perL: number, compound: "CaCO3" | "CaO"): ReadingUnit => ({
  kind: "degree",
  toBase: mg_perL / 1000 / MOLAR_MASSES[compound],
});

/** German degree: 10 mg CaO per litre. */
const GERMAN = degree(10, "CaO");
/** French degree: 10 mg CaCO3 per litre. */
const FRENCH = degree(10, "CaCO3");
/** English or Clark degree: one grain of CaCO3 per imperial gallon. */
const ENGLISH = degree(GRAIN_MG / IMPERIAL_GALLON_L, "CaCO3");
/** Grain of CaCO3 per US gallon. */
const GRAIN_PER_US_GALLON = degree(GRAIN_MG / US_GALLON_L, "CaCO3");

const FAHRENHEIT: ReadingUnit = { kind: "temperature", toBase: 5 / 9, offset: 32 };
const CELSIUS: ReadingUnit = { kind: "temperature", toBase: 1, offset: 0 };

/** Spellings after folding to lower case and dropping spaces; a spelling may have two meanings. */
const SPELLINGS: Readonly<Record<string, readonly ReadingUnit[]>> = {
  ...each(["mg/l", "ppm", "ppm(w/v)", "g/m3", "ug/ml", "mg/dm3", "milligrams/l", "mgl"], mass(1)),
  ...each(["ug/l", "ppb", "mg/m3", "ug/dm3", "mcg/l", "micrograms/l"], mass(1e-3)),
  ...each(["ng/l"], mass(1e-6)),
  ...each(["g/l", "kg/m3", "g/dm3", "mg/ml"], mass(1000)),
  ...each(["mol/l", "mol/dm3"], amount(1)),
  ...each(["mmol/l", "mol/m3", "mmol/dm3"], amount(1e-3)),
  ...each(["umol/l", "mmol/m3", "umol/dm3"], amount(1e-6)),
  ...each(["eq/l", "val/l"], equivalents(1)),
  ...each(
    [
      "meq/l",
      "me/l",
      "mval/l",
      "mmolc/l",
      "mmol(c)/l",
      "mmol(+)/l",
      "mmol(-)/l",
      "mmol(c)/l",
      "mmol(eq)/l",
      "epm",
      "meq/dm3",
      "eq/m3",
    ],
    equivalents(1e-3),
  ),
  ...each(["ueq/l", "ue/l", "uval/l", "meq/m3"], equivalents(1e-6)),
  ...each(
    ["°dh", "dh", "dgh", "°dgh", "gdh", "degdh", "germandegrees", "germandegree", "°d", "dkh", "°dkh"],
    GERMAN,
  ),
  ...each(["°fh", "fh", "°th", "degfh", "frenchdegrees", "frenchdegree"], FRENCH),
  "°f": [FAHRENHEIT, FRENCH],
  ...each(
    [
      "°e",
      "°clark",
      "clark",
      "clarkdegrees",
      "clarkdegree",
      "englishdegrees",
      "englishdegree",
      "°eh",
      "eh",
      "°eng",
    ],
    ENGLISH,
  ),
  ...each(
    ["gr/impgal", "grains/impgal", "grains/imperialgallon", "gpg(imp)", "gpg(uk)", "gr/gal(imp)"],
    ENGLISH,
  ),
  ...each(
    [
      "gpg",
      "gr/gal",
      "grains/gal",
      "grains/gallon",
      "grain/gallon",
      "gr/usgal",
      "grains/usgal",
      "grains/usgallon",
    ],
    GRAIN_PER_US_GALLON,
  ),
  ...each(["gpg(us)", "gr/gal(us)"], GRAIN_PER_US_GALLON),
  ...each(["us/cm", "umho/cm", "umhos/cm", "microsiemens/cm", "ecunits", "ecunit"], conductivity(1)),
  ...each(["ms/cm", "ds/m", "mmho/cm", "mmhos/cm", "millisiemens/cm"], conductivity(1000)),
  ...each(["ms/m"], conductivity(10)),
  ...each(["us/m"], conductivity(0.01)),
  ...each(["s/m"], conductivity(10_000)),
  ...each(["s/cm"], conductivity(1e6)),
  ...each(["°c", "c", "degc", "celsius", "cel"], CELSIUS),
  ...each(["f", "degf", "fahrenheit"], FAHRENHEIT),
  k: [{ kind: "temperature", toBase: 1, offset: 273.15 }],
  // ISO 7027-1:2016 takes the two nephelometric units as numerically equal.
  ...each(["ntu", "fnu"], { kind: "turbidity", toBase: 1 }),
  ...each(["", "ph", "phunits", "phunit", "standardunits", "s.u.", "su", "none", "-"], { kind: "pH" }),
  ...each(["unitéph", "unitésph", "unitédeph", "unitésdeph", "uph"], { kind: "pH" }),
  ...each(["ud.ph", "u.ph", "uds.ph", "unidaddeph", "unidadesdeph", "unidadesph", "unitàph", "unitàdiph"], {
    kind: "pH",
  }),
  ...each(["ph-einheiten", "ph-einheit", "pheinheiten", "ph-wert"], { kind: "pH" }),
};

/** Spellings in which case carries the meaning, before folding to lower case. */
const EXACT: Readonly<Record<string, readonly ReadingUnit[]>> = {
  M: [amount(1)],
  mM: [amount(1e-3)],
  uM: [amount(1e-6)],
};

/** Turbidity units of other methods, with no conversion to nephelometric ones. */
const OTHER_METHODS: Readonly<Record<string, string>> = {
  fau: "FAU measures how much light is lost through the sample, NTU and FNU how much is scattered: there is no factor.",
  jtu: "JTU is read by eye over a candle: there is no factor to NTU.",
  ftu: "FTU names the standard suspension, not the method: ask whether the meter gives NTU, FNU or FAU.",
};

const BASIS_SPELLINGS: Readonly<Record<string, Basis>> = {
  ...Object.fromEntries(Object.keys(MOLAR_MASSES).map((basis) => [basis.toLowerCase(), basis as Basis])),
  "no3-n": "N",
  "no2-n": "N",
  "nh4-n": "N",
  "nh3-n": "N",
  nitrogen: "N",
  "so4-s": "S",
  sulfur: "S",
  sulphur: "S",
  "po4-p": "P",
  phosphorus: "P",
  "calcium carbonate": "CaCO3",
  "ca co3": "CaCO3",
  bicarbonate: "HCO3",
  "hydrogen carbonate": "HCO3",
};

function each(spellings: readonly string[], unit: ReadingUnit): Record<string, readonly ReadingUnit[]> {
  return Object.fromEntries(spellings.map((spelling) => [spelling, [unit]]));
}

/** What a typed unit may mean. */
export type UnitReading =
  | { readonly kind: "meanings"; readonly meanings: readonly ReadingUnit[] }
  | { readonly kind: "other method"; readonly why: string }
  | { readonly kind: "unknown" };

/** The meanings of a unit as typed on a report, in whatever of the usual spellings. */
export function readReadingUnit(typed: string): UnitReading {
  const folded = foldText(typed)
    .replace(/[µμ]/g, "u")
    .replace(/\s*(?:@|at)\s*25\s*°?\s*c$/i, "");
  const exact = lookUp(EXACT, folded);
  if (exact !== undefined) return { kind: "meanings", meanings: exact };
  const text = perLitre(folded.toLowerCase());
  const key = text.replace(/ /g, "");
  const why = lookUp(OTHER_METHODS, key);
  if (why !== undefined) return { kind: "other method", why };
  const plain = lookUp(SPELLINGS, key);
  if (plain !== undefined) return { kind: "meanings", meanings: plain };
  return withBasis(text);
}

/** "mg l-1", "mg per litre", "mg.l-1" and the like as "mg/l". */
function perLitre(text: string): string {
  return text
    .replace(/lit(?:re|er)s?\b/g, "l")
    .replace(/\s+per\s+/g, "/")
    .replace(
      /[ ·.*]?\b(dm|cm|m|l)-?\^?\(?-([13])\)?(?![\d])/g,
      (_all, unit: string, power: string) => `/${unit}${power === "3" ? "3" : ""}`,
    )
    .replace(/deg(?:rees?)?\.?\s*([cf])\b/g, "deg$1")
    .replace(/\s*\/\s*/g, "/")
    .trim();
}

/** "As" in front of a basis, in the languages sheets are printed in. */
const OTHER_AS = /([ (])(?:als|en|comme|como|exprim[eé] en|expresad[oa] como|berechnet als) /;

/** "mg/l as caco3", "ppm caco3", "mg caco3/l", "mg/l (as n)", "mg/l no3-n", "mgn/l", "mg(no3)/l": a mass or an amount with its basis. */
function withBasis(given: string): UnitReading {
  const text = given.replace(OTHER_AS, "$1as ");
  const after = /^(.+?) ?(?:\(as |\(|, ?as |, | as | )([a-z0-9_+ -]+?)\)?$/.exec(text);
  const inside = /^([mun]?(?:g|mol)) ?\(?([a-z0-9+-]+)\)?\/(l|dm3)$/.exec(text);
  const pairs: (readonly [string, string])[] = [];
  if (after !== null) pairs.push([after[1] ?? "", after[2] ?? ""]);
  if (inside !== null) pairs.push([`${inside[1] ?? ""}/${inside[3] ?? ""}`, inside[2] ?? ""]);
  for (const [unitText, basisText] of pairs) {
    const unit = lookUp(SPELLINGS, unitText.replace(/ /g, ""))?.[0];
    const basis = basisNamed(basisText);
    if (basis === null || unit === undefined) continue;
    if (unit.kind === "equivalents") return { kind: "meanings", meanings: [unit] };
    if (unit.kind === "mass" || unit.kind === "amount")
      return { kind: "meanings", meanings: [{ ...unit, basis }] };
  }
  return { kind: "unknown" };
}

function basisNamed(text: string): Basis | null {
  // The charge of an ion ("hco3-", "ca2+", "so4--") says nothing about the basis.
  const name = text.trim().replace(/(?:\d?[+]+|[-]+)$/, "");
  return lookUp(BASIS_SPELLINGS, name) ?? lookUp(BASIS_SPELLINGS, text.trim()) ?? null;
}

/** Spellings offered when an unknown unit is near one of them. */
export const KNOWN_UNITS: readonly string[] = [
  "mg/L",
  "µg/L",
  "g/L",
  "ppm",
  "ppb",
  "mol/L",
  "mmol/L",
  "µmol/L",
  "meq/L",
  "µeq/L",
  "mg/L as CaCO3",
  "ppm as CaCO3",
  "mg/L as CaO",
  "mg/L as N",
  "mg/L as NO3",
  "mg/L as NH4",
  "mg/L as S",
  "mg/L as SO4",
  "mg/L as HCO3",
  "mg/L as P",
  "mg/L as PO4",
  "mg/L as SiO2",
  "mg/L as Si",
  "°dH",
  "°fH",
  "°e",
  "gpg",
  "gr/imp gal",
  "µS/cm",
  "mS/cm",
  "dS/m",
  "mS/m",
  "µmho/cm",
  "°C",
  "°F",
  "NTU",
  "FNU",
];
