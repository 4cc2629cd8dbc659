import file from "./real-waters.json" with { type: "json" };

/** What was measured or published for an analysis. */
export type Column =
  | "calcium"
  | "magnesium"
  | "sodium"
  | "potassium"
  | "ammonium"
  | "chloride"
  | "sulfate"
  | "nitrate"
  | "alkalinity"
  | "pH"
  | "conductivity"
  | "publishedBalance_percent"
  | "publishedCationSum"
  | "publishedAnionSum"
  | "publishedPlainConductivity"
  | "publishedOnsagerConductivity"
  | "hydrogen"
  | "hydroxide";

/** A real analysis reduced to major ions [µeq/L]; null: not measured. */
export type RealWater = Readonly<Record<Column, number | null>> & {
  readonly set: string;
  readonly id: string;
};

/** All analyses of the fixture. */
export const REAL_WATERS: readonly RealWater[] = file.waters.map(
  (row) => Object.fromEntries(file.columns.map((column, i) => [column, row[i]])) as unknown as RealWater,
);

/** Value of one analysis; throws where it was not measured. */
export function value(water: RealWater, column: Column): number {
  const found = water[column];
  if (found === null) throw new Error(`${water.id}: no ${column}`);
  return found;
}

/** Ions of an analysis [mol/L] for the conductivity formulas, alkalinity as hydrogen carbonate. */
export function conductingIonsOf(water: RealWater): Record<string, number> {
  const eq = (column: Column): number => Math.max(0, water[column] ?? 0) * 1e-6;
  return {
    "Ca+2": eq("calcium") / 2,
    "Mg+2": eq("magnesium") / 2,
    "Na+": eq("sodium"),
    "K+": eq("potassium"),
    "NH4+": eq("ammonium"),
    "H+": eq("hydrogen"),
    "Cl-": eq("chloride"),
    "SO4-2": eq("sulfate") / 2,
    "NO3-": eq("nitrate"),
    "HCO3-": eq("alkalinity"),
    "OH-": eq("hydroxide"),
  };
}
