/** What is said around the sentences of an issue. */
export const ISSUES = {
  at: "{path}: {sentence}",
  received: "Received: {text}",
  expected: "Expected: {text}",
  needed: "needed.",
  neededSuchAs: "needed, such as {example}.",
  neededThis: "needed: {what}.",
} as const;
