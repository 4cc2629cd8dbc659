import type { Translated } from "../en/index.ts";

export const EVIDENCE: Translated<"evidence"> = {
  computed: "calculado",
  "published rule": "regla publicada",
  "common practice": "práctica habitual",
};
