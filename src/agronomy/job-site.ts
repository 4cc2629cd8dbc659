import { readQuantity } from "../units/index.ts";
import { describe, openFields } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import type { Site } from "./types.ts";

/** What may have been done to the water before it reached the tank. */
export const WATER_TREATMENTS = ["alum", "softener", "chlorinated"] as const;

/** Metals that the spray may touch. */
export const SPRAYER_METALS = ["galvanised steel", "mild steel", "aluminium", "brass", "copper"] as const;

/** Metals of leaf feeds; "chelated" before one of them is a feed too. */
export const FEED_METALS = ["manganese", "zinc", "copper", "iron", "calcium", "magnesium"] as const;

/** Leaf feeds in the tank. */
export const FEEDS: readonly string[] = [...FEED_METALS, ...FEED_METALS.map((metal) => `chelated ${metal}`)];

/** Other partners that published rules speak of. */
export const OTHER_PARTNERS: readonly string[] = [
  "ammonium thiosulfate",
  "borate",
  "boric acid",
  "bleach",
  "caustic",
  "lime",
  "lime sulfur",
  "live biological",
  "anionic surfactant",
  "mineral oil",
  "phosphate",
  "phosphite",
  "potassium nitrate",
  "soap",
  "sulfur",
  "urea",
  "wood ash",
];

const KEYS = ["volatility rules", "water treatments", "metals", "air temperature"];

/** Reads facts about the place and the sprayer; what is left out is not known, never "no". */
export function readSite(top: Fields, issues: IssueList): Site {
  const unsaid: Site = { volatilityRules: null, waterTreatments: null, metals: null, airTemperature_C: null };
  if (top.get("site") === undefined) return unsaid;
  const fields = openFields(top.get("site"), "site", KEYS, issues);
  if (fields === null) return unsaid;
  const air = fields.get("air temperature");
  return {
    volatilityRules: readYesOrNo(fields, "volatility rules", issues),
    waterTreatments: readWords(fields, "water treatments", WATER_TREATMENTS, issues),
    metals: readWords(fields, "metals", SPRAYER_METALS, issues),
    airTemperature_C:
      air === undefined
        ? null
        : (issues.take(readQuantity(air, "temperature", fields.at("air temperature"))) ?? null),
  };
}

/** Reads partners of the tank that are neither products nor conditioners; null when not said. */
export function readPartners(top: Fields, issues: IssueList): readonly string[] | null {
  return readWords(top, "partners", [...FEEDS, ...OTHER_PARTNERS], issues);
}

/** true or false; null when the key is left out, or not usable (then with an issue). */
export function readYesOrNo(fields: Fields, key: string, issues: IssueList): boolean | null {
  const value = fields.get(key);
  if (value === undefined || typeof value === "boolean") return value ?? null;
  issues.add("yes-or-no-expected", fields.at(key), { received: describe(value), expected: "true or false" });
  return null;
}

/** A list of words out of a choice; null when the key is left out. */
function readWords(
  fields: Fields,
  key: string,
  choice: readonly string[],
  issues: IssueList,
): readonly string[] | null {
  const list = fields.get(key);
  if (list === undefined) return null;
  if (!Array.isArray(list)) {
    issues.add("list-expected", fields.at(key), { received: describe(list), expected: choice.join(", ") });
    return null;
  }
  return list.flatMap((entry: unknown, index): readonly string[] => {
    const word = typeof entry === "string" ? entry.trim().toLowerCase() : "";
    if (choice.includes(word)) return [word];
    const parts = { received: describe(entry), expected: choice.join(", ") };
    issues.add("choice-unknown", `${fields.at(key)}[${String(index)}]`, parts);
    return [];
  });
}
