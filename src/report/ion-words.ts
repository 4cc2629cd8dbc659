import { metalOf } from "../chem/index.ts";

/** Components of a water as people call them, by their formula, beside the metals that can hold an active. */
const ION_WORDS: Readonly<Record<string, string>> = {
  "Na+": "sodium",
  "K+": "potassium",
  "Cl-": "chloride",
  "SO4-2": "sulfate",
  "CO3-2": "inorganic carbon",
};

/** What an assumption or a reading is about, in English words. */
export function ionWords(about: string): string {
  return metalOf({ [about]: 1 }) ?? ION_WORDS[about] ?? about;
}
