/** Words beside numbers. */
export const FIGURES = {
  allOfIt: "all of it",
  none: "none",
  inHundred: "{count} in 100",
  days: "{count} days",
  years: "{count} years",
  notKnown: "not known",
} as const;
