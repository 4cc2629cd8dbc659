import type { Translated } from "../en/index.ts";

export const FIGURES: Translated<"figures"> = {
  allOfIt: "la totalité",
  none: "rien",
  inHundred: "{count} sur 100",
  days: "{count} jours",
  years: "{count} ans",
  notKnown: "inconnu",
};
