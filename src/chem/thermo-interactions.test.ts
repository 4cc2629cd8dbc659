import { describe, expect, it } from "vitest";
import { co2Log10Activity, systemFor, withoutContained } from "./thermo-system.ts";
import { builtInThermo } from "./thermo.ts";
import { builtInPitzer } from "./pitzer-data.ts";
import { pitzer } from "./pitzer.ts";
import { compileSystem } from "./compile.ts";
import { equilibrate } from "./equilibrate.ts";
import { rebase } from "./rebase.ts";

const thermo = builtInThermo();
const interactions = builtInPitzer();
const request = {
  components: ["Ca+2", "SO4-2", "NH4+", "CO3-2", "Gly-3"],
  temperature_C: 25,
  solids: ["gypsum", "calcite"],
  carbonate: "closed",
} as const;

describe("a system for interaction parameters", () => {
  const plain = systemFor(thermo, request);
  const matched = systemFor(thermo, { ...request, interactions });

  it("leaves out what the parameters contain, and keeps complexes they know nothing of", () => {
    const names = (definition: typeof plain): readonly string[] => definition.species.map((s) => s.name);
    const gone = names(plain).filter((name) => !names(matched).includes(name));
    expect(gone.sort()).toEqual(["CaHCO3+", "CaOH+", "CaSO4", "NH4SO4-"]);
    expect(names(matched)).toEqual(expect.arrayContaining(["CaHGly", "CaCO3", "HSO4-", "CO2"]));
  });

  it("takes the solubility product that belongs to the parameters, here gypsum's only", () => {
    const logKsp = (definition: typeof plain, name: string): number =>
      definition.solids.find((solid) => solid.name === name)!.logKsp;
    expect(logKsp(plain, "gypsum")).toBeCloseTo(-4.61, 6);
    expect(logKsp(matched, "gypsum")).toBeCloseTo(-4.58, 6);
    expect(logKsp(matched, "calcite")).toBe(logKsp(plain, "calcite"));
  });

  it("changes that product with temperature as the parameters were fitted with it", () => {
    const at = (temperature_C: number): number =>
      systemFor(thermo, { ...request, temperature_C, interactions }).solids.find(
        (solid) => solid.name === "gypsum",
      )!.logKsp;
    // Appelo (2015): log Ksp = 82.381 - 3804.5/T - 29.9952 log10 T, worked out apart at 288.15, 298.15 and 313.15 K.
    expect(at(15) - at(25)).toBeCloseTo(0.001577, 6);
    expect(at(40) - at(25)).toBeCloseTo(-0.0282, 6);
  });

  it("carries the water of each species and solid, through a change of components as well", () => {
    const water = (definition: typeof plain, name: string): number | undefined =>
      [...definition.species, ...definition.solids].find((row) => row.name === name)!.water;
    expect(water(matched, "OH-")).toBe(1);
    expect(water(matched, "CO2")).toBe(-1);
    expect(water(matched, "gypsum")).toBe(2);
    expect(water(matched, "CaHGly")).toBeUndefined();
    // CO3-2 = CO2 + H2O − 2 H+
    for (const open of [
      systemFor(thermo, { ...request, carbonate: "open", interactions }),
      rebase(matched, "CO3-2", "CO2"),
    ]) {
      expect(water(open, "CO3-2")).toBe(1);
      expect(water(open, "CO2")).toBeUndefined();
      expect(water(open, "calcite")).toBe(1);
      expect(water(open, "gypsum")).toBe(2);
    }
  });

  it("gives the same concentrated solution whether carbonate or carbon dioxide is the component", () => {
    const activity = pitzer(interactions);
    const closed = compileSystem(matched);
    const totals = { "Ca+2": 0.02, "SO4-2": 3.1, "NH4+": 6.2, "CO3-2": 0.01, "Gly-3": 0.3 };
    const first = equilibrate(closed, { totals_molPerL: totals, electroneutral: "H+", activity });
    if (!first.ok) throw new Error(first.detail);
    const open = compileSystem(systemFor(thermo, { ...request, carbonate: "open", interactions }));
    const at = closed.speciesIndex.get("CO2")!;
    const logActivity = first.value.log10Concentrations[at]! + first.value.lnGamma[at]! / Math.LN10;
    expect(logActivity).not.toBeCloseTo(co2Log10Activity(thermo, 25), 1);
    const { "CO3-2": _carbonate, ...rest } = totals;
    const second = equilibrate(open, {
      totals_molPerL: rest,
      fixedLog10Activities: { CO2: logActivity },
      electroneutral: "H+",
      activity,
    });
    if (!second.ok) throw new Error(second.detail);
    closed.speciesNames.forEach((name, i) => {
      const other = second.value.log10Concentrations[open.speciesIndex.get(name)!]!;
      expect(other).toBeCloseTo(first.value.log10Concentrations[i]!, 7);
    });
    expect(second.value.waterActivity).toBeCloseTo(first.value.waterActivity!, 9);
  });

  it("takes contained species out of a definition from elsewhere by name and charge", () => {
    const odd = {
      ...plain,
      species: [...plain.species, { name: "NaSO4-", charge: 1, formation: { "H+": 1, "NH4+": 0 }, logK: 0 }],
    };
    const { definition, leftOut } = withoutContained(odd, interactions);
    expect([...leftOut].sort()).toEqual(["CaHCO3+", "CaOH+", "CaSO4", "NH4SO4-"]);
    expect(definition.species).toHaveLength(odd.species.length - 4);
    expect(withoutContained(odd, pitzer(interactions))).toEqual({ definition, leftOut });
    expect(withoutContained(odd, { contained: [] }).leftOut).toEqual([]);
  });
});
