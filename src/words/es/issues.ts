import type { Translated } from "../en/index.ts";

export const ISSUES: Translated<"issues"> = {
  at: "{path}: {sentence}",
  received: "Recibido: {text}",
  expected: "Esperado: {text}",
};
