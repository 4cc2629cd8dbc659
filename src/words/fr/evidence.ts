import type { Translated } from "../en/index.ts";

export const EVIDENCE: Translated<"evidence"> = {
  computed: "calculé",
  "published rule": "règle publiée",
  "common practice": "pratique courante",
};
