/** A laboratory sheet as its cells, in the forms that laboratories use. The figures are made up for the tests. */
export const SHEET_CELLS = [
  ["Sample: Top bore"],
  ["Date sampled: 2026-03-02"],
  ["Parameter", "Result", "Unit", "Method"],
  ["Calcium", "92", "mg/L", "ICP-OES"],
  ["Magnesium", "31", "mg/L", "ICP-OES"],
  ["Total hardness as CaCO3", "357", "mg/L", "calculated"],
  ["Alkalinity, total (as CaCO3)", "240", "mg/L", "titration"],
  ["Iron, total", "< 0.05", "mg/L", "ICP-OES"],
  ["Nitrate", "12", "mg/L", "IC"],
  ["Electrical conductivity at 25 °C", "780", "µS/cm", "probe"],
  ["Arsenic", "< 1", "µg/L", "ICP-MS"],
  ["pH", "7.6", "", "probe"],
] as const;
