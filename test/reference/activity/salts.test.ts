import { describe, expect, it } from "vitest";
import {
  builtInPitzer,
  builtInThermo,
  compileSystem,
  DROPLET_SOLIDS,
  dryDown,
  equilibrate,
  systemFor,
} from "../../../src/chem/index.ts";
import type { Equilibrium } from "../../../src/chem/index.ts";
import { isWithin, record } from "../validation-recorder.ts";
import { modelAt } from "./saturation.ts";

const thermo = builtInThermo();
const interactions = builtInPitzer();
const HANDBOOK =
  "CRC Handbook of Chemistry and Physics, 98th ed. (2017), Aqueous solubility of inorganic compounds";

/** Saturation molality [mol/kg] each constant was derived from, so that the loop through the solver closes. */
const SATURATED: Readonly<Record<string, number>> = {
  halite: 6.154,
  sylvite: 4.767,
  "ammonium chloride": 7.393,
  "ammonium nitrate": 26.548,
  "sodium nitrate": 10.731,
  "ammonium sulfate": 5.779,
  arcanite: 0.688,
  mirabilite: 1.979,
  epsomite: 2.965,
  bischofite: 5.882,
  nitrocalcite: 8.77,
  "potassium dihydrogen phosphate": 1.834,
  "ammonium dihydrogen phosphate": 3.516,
};

/** Total over saturation: enough for a solid, and within what the parameters bear. */
const EXCESS = 1.2;

function saturatedWith(id: string): Equilibrium {
  const record_ = thermo.solids.find((solid) => solid.id === id)!;
  const { H2O: _water, "H+": _protons, ...ions } = record_.formation;
  const system = compileSystem(
    systemFor(thermo, {
      components: Object.keys(ions),
      temperature_C: 25,
      solids: [id],
      carbonate: "closed",
      interactions,
    }),
  );
  const plenty = EXCESS * SATURATED[id]!;
  const totals = Object.fromEntries(Object.entries(ions).map(([name, n]) => [name, n * plenty]));
  const result = equilibrate(system, {
    totals_molPerL: totals,
    electroneutral: "H+",
    activity: modelAt(25),
  });
  if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
  return result.value;
}

describe("soluble salts", () => {
  it.each(Object.entries(SATURATED))(
    "%s dissolves to the molality its constant was derived from",
    (id, m) => {
      const ours = EXCESS * m - saturatedWith(id).solids[0]!;
      const tolerance = 0.01 * m;
      const within = isWithin(m, ours, tolerance);
      record({
        group: "solubility of salts (Pitzer, constants derived from it)",
        what: `${id}, 25 °C`,
        published: m,
        ours,
        unit: "mol/kg",
        tolerance,
        within,
        source: HANDBOOK,
      });
      expect(within).toBe(true);
    },
  );

  // Appelo (2015), the parameter set carried with it; within 0.05, as the two sets of parameters differ.
  it.each([
    ["halite", 1.57],
    ["arcanite", -1.776],
    ["epsomite", -1.881],
  ])("derived log Ksp of %s agrees with the published one", (id, published) => {
    const ours = thermo.solids.find((solid) => solid.id === id)!.logKsp.value;
    const within = isWithin(published, ours, 0.05);
    record({
      group: "solubility of salts (Pitzer, constants derived from it)",
      what: `log Ksp of ${id}, 25 °C`,
      published,
      ours,
      unit: "",
      tolerance: 0.05,
      within,
      source: "Appelo (2015) Appl. Geochem. 55:62–71, parameter set",
    });
    expect(within).toBe(true);
  });

  it("every salt of a droplet has a derived constant that is checked here", () => {
    for (const id of DROPLET_SOLIDS) expect(Object.keys(SATURATED)).toContain(id);
  });
});

describe("a droplet with ammonium sulfate dried per kg of water left", () => {
  it("reaches the water activity of the saturated salt, stays there, and gives all sulfate back in solids", () => {
    const system = compileSystem(
      systemFor(thermo, {
        components: ["NH4+", "SO4-2", "Ca+2", "Na+", "Cl-"],
        temperature_C: 25,
        solids: ["gypsum", ...DROPLET_SOLIDS],
        carbonate: "closed",
        interactions,
      }),
    );
    const result = dryDown(
      system,
      {
        totals_molPerL: { "NH4+": 0.1514, "SO4-2": 0.0787, "Ca+2": 3e-3, "Na+": 1e-5, "Cl-": 1e-5 },
        electroneutral: "H+",
        activity: modelAt(25),
      },
      { factors: [1, 5, 20, 60, 100, 300, 1000] },
    );
    if (!result.ok) throw new Error(`${result.reason}: ${result.detail}`);
    const activities = result.steps.map((step) => step.equilibrium.waterActivity!);
    for (let k = 1; k < activities.length; k++) {
      expect(activities[k]).toBeLessThan(activities[k - 1]! + 1e-9);
    }
    const names = (k: number): readonly string[] =>
      system.solidNames.filter((_, s) => result.steps[k]!.equilibrium.solids[s]! > 0);
    expect(names(0)).toEqual([]);
    expect(names(3)).toEqual(["gypsum"]);
    expect(names(5)).toEqual(["gypsum", "ammonium sulfate"]);
    // Deliquescence of ammonium sulfate: 81 % (CRC Handbook).
    expect(activities.at(-2)).toBeGreaterThan(0.78);
    expect(activities.at(-2)).toBeLessThan(0.81);
  });
});
