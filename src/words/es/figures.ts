import type { Translated } from "../en/index.ts";

export const FIGURES: Translated<"figures"> = {
  allOfIt: "todo",
  none: "nada",
  inHundred: "{count} de cada 100",
  days: "{count} días",
  years: "{count} años",
  notKnown: "no se sabe",
};
