/** The classes of evidence, by what the engine calls them. */
export const EVIDENCE = {
  computed: "computed",
  "published rule": "published rule",
  "common practice": "common practice",
} as const;
