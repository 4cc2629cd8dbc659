import type { Translated } from "../en/index.ts";

export const ISSUES: Translated<"issues"> = {
  at: "{path}: {sentence}",
  received: "Recibido: {text}",
  expected: "Esperado: {text}",
  needed: "hace falta.",
  neededSuchAs: "hace falta, por ejemplo {example}.",
  neededThis: "hace falta: {what}.",
};
