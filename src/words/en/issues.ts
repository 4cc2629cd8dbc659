/** What is said around the sentences of an issue. */
export const ISSUES = {
  at: "{path}: {sentence}",
  received: "Received: {text}",
  expected: "Expected: {text}",
} as const;
