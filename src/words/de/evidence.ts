import type { Translated } from "../en/index.ts";

export const EVIDENCE: Translated<"evidence"> = {
  computed: "berechnet",
  "published rule": "veröffentlichte Regel",
  "common practice": "übliche Praxis",
};
