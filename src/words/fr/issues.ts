import type { Translated } from "../en/index.ts";

export const ISSUES: Translated<"issues"> = {
  at: "{path} : {sentence}",
  received: "Reçu : {text}",
  expected: "Attendu : {text}",
  needed: "nécessaire.",
  neededSuchAs: "nécessaire, par exemple {example}.",
  neededThis: "nécessaire : {what}.",
};
