import type { Translated } from "../en/index.ts";

export const ISSUES: Translated<"issues"> = {
  at: "{path}: {sentence}",
  received: "Erhalten: {text}",
  expected: "Erwartet: {text}",
  needed: "nötig.",
  neededSuchAs: "nötig, zum Beispiel {example}.",
  neededThis: "nötig: {what}.",
};
