import { describe, expect, it } from "vitest";
import { isWithin, record } from "../validation-recorder.ts";
import { gypsumSolubility, saltSolution } from "./saturation.ts";
import tables from "./tables.json" with { type: "json" };

interface Compared {
  readonly group: string;
  readonly what: string;
  readonly published: number;
  readonly ours: number;
  readonly unit: string;
  readonly tolerance: number;
  readonly source: string;
  readonly fromMemory: boolean;
}

const CONVENTION =
  "the table fixes the coefficient at 0.1 mol/kg by an assumption (0.150); the parameters give 0.163 there, and the ratio to it agrees";
const UPPER_END =
  "the parameters hold to 5 mol/kg, where data and fit end; at 10 mol/kg calcium and chloride pair, and the answer is marked";
const BEYOND = "the salt is saturated far above the fitted molality, and the answer is marked";
const HIGH = "the published value is 1.4 % humidity above Greenspan (1977)";
const SPREAD =
  "measured solubilities in pure water run from 0.0147 to 0.0182 mol/L (Lebedev & Kosorukov 2017, Geochem. Int. 55:205-210, abstract); this series starts at 0.0161, 6 % above the other, which ours meets";
const AMMONIUM =
  "published values from memory; so dilute the mixing terms do not matter, and in sodium sulfate ours lies below the published";

/** Ours, where it is known to lie outside the tolerance, with the reason; nothing else may. */
const OUTSIDE: Readonly<Record<string, { readonly ours: number; readonly reason: string }>> = {
  "γ± of CaCl2, 10 mol/kg, 25 °C": { ours: 239.6, reason: UPPER_END },
  "γ± of MgSO4, 0.1 mol/kg, 25 °C": { ours: 0.1634, reason: CONVENTION },
  "γ± of MgSO4, 0.5 mol/kg, 25 °C": { ours: 0.07407, reason: CONVENTION },
  "γ± of MgSO4, 1 mol/kg, 25 °C": { ours: 0.05307, reason: CONVENTION },
  "water activity over saturated CaCl2 (7.322 mol/kg), 25 °C": { ours: 0.2506, reason: BEYOND },
  "water activity over saturated NH4NO3 (26.548 mol/kg), 25 °C": { ours: 0.5848, reason: BEYOND },
  "water activity over saturated NH4Cl (7.393 mol/kg), 25 °C": { ours: 0.7707, reason: HIGH },
  "gypsum in 0 mol/kg Na2SO4, 25 °C": { ours: 0.01523, reason: SPREAD },
  "gypsum in 0.032 mol/kg Na2SO4, 25 °C": { ours: 0.01095, reason: SPREAD },
  "gypsum in 0.0498 mol/kg (NH4)2SO4, 25 °C": { ours: 0.011189, reason: AMMONIUM },
  "gypsum in 0.0997 mol/kg (NH4)2SO4, 25 °C": { ours: 0.011453, reason: AMMONIUM },
  "gypsum in 0.821 mol/kg Na2SO4, 25 °C": { ours: 0.0145, reason: SPREAD },
};

function compare(one: Compared): void {
  const within = isWithin(one.published, one.ours, one.tolerance);
  const known = within ? undefined : OUTSIDE[one.what];
  expect(within || known !== undefined, `${one.what}: ${one.ours} against ${one.published}`).toBe(true);
  if (known !== undefined) expect(Math.abs(one.ours / known.ours - 1)).toBeLessThan(1e-3);
  const { fromMemory, ...row } = one;
  record({
    ...row,
    source: fromMemory ? `${one.source} (from memory)` : one.source,
    within,
    ...(known === undefined ? {} : { reason: known.reason }),
  });
}

/** Relative tolerance by molality: how far the equations are asked to reach. */
const reach = (molality: number): number => (molality <= 1 ? 0.03 : 0.1);

describe("mean activity and osmotic coefficients at 25 °C", () => {
  it.each(tables.activity)("$quantity of $salt at $molality_molPerKg mol/kg ($source)", (row) => {
    const { gamma, phi } = saltSolution(row.salt, row.molality_molPerKg);
    compare({
      group: "activity of salts (Pitzer)",
      what: `${row.quantity === "gamma" ? "γ±" : "φ"} of ${row.salt}, ${row.molality_molPerKg} mol/kg, 25 °C`,
      published: row.value,
      ours: row.quantity === "gamma" ? gamma : phi,
      unit: "",
      tolerance: reach(row.molality_molPerKg) * row.value,
      source: row.source,
      fromMemory: row.fromMemory,
    });
  });

  it("γ± of MgSO4 relative to that at 0.1 mol/kg, which is a convention in the tables", () => {
    const rows = tables.activity.filter((row) => row.salt === "MgSO4" && row.quantity === "gamma");
    const first = rows.find((row) => row.molality_molPerKg === 0.1)!;
    for (const row of rows) {
      if (row === first) continue;
      compare({
        group: "activity of salts (Pitzer)",
        what: `ratio of γ± of MgSO4 at ${row.molality_molPerKg} and 0.1 mol/kg, 25 °C`,
        published: row.value / first.value,
        ours: saltSolution("MgSO4", row.molality_molPerKg).gamma / saltSolution("MgSO4", 0.1).gamma,
        unit: "",
        tolerance: (reach(row.molality_molPerKg) * row.value) / first.value,
        source: row.source,
        fromMemory: row.fromMemory,
      });
    }
  });
});

describe("water activity over saturated salts at 25 °C", () => {
  it.each(tables.humidity)("$salt: $relativeHumidity_percent % ($source)", (row) => {
    compare({
      group: "water activity of saturated salts (Pitzer)",
      what: `water activity over saturated ${row.salt} (${row.saturated_molPerKg} mol/kg), 25 °C`,
      published: row.relativeHumidity_percent / 100,
      ours: saltSolution(row.salt, row.saturated_molPerKg).aw,
      unit: "",
      tolerance: 0.02,
      source: row.source,
      fromMemory: row.fromMemory,
    });
  });
});

describe("solubility of gypsum", () => {
  it.each(tables.gypsum)("in $background_molPerKg mol/kg $background at $T_C °C ($source)", (row) => {
    compare({
      group: "solubility of gypsum (Pitzer)",
      what: `gypsum in ${row.background_molPerKg} mol/kg ${row.background}, ${row.T_C} °C`,
      published: row.value_molPerKg,
      ours: gypsumSolubility(row.background, row.background_molPerKg, row.T_C),
      unit: "mol/kg",
      tolerance: (row.background_molPerKg <= 1 ? 0.05 : 0.1) * row.value_molPerKg,
      source: row.background === "(NH4)2SO4" ? `${row.source}; one mixing term is fitted to it` : row.source,
      fromMemory: row.fromMemory,
    });
  });
});
