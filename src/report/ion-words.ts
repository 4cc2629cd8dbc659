/** Components of a water as people call them, by their formula. */
const ION_WORDS: Readonly<Record<string, string>> = {
  "Ca+2": "calcium",
  "Mg+2": "magnesium",
  "Na+": "sodium",
  "K+": "potassium",
  "Fe+3": "iron",
  "Cl-": "chloride",
  "SO4-2": "sulfate",
  "CO3-2": "inorganic carbon",
};

/** What an assumption or a reading is about, in English words. */
export function ionWords(about: string): string {
  return ION_WORDS[about] ?? about;
}
