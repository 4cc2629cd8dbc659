import type { Translated } from "../en/index.ts";

export const FIGURES: Translated<"figures"> = {
  allOfIt: "alles",
  none: "nichts",
  inHundred: "{count} von 100",
  days: "{count} Tage",
  years: "{count} Jahre",
  notKnown: "nicht bekannt",
};
