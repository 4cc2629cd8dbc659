import { describe, expect, it } from "vitest";
import { davies } from "./activity.ts";
import { compileSystem } from "./compile.ts";
import { equilibrate } from "./equilibrate.ts";
import { rebase, rebaseTotals } from "./rebase.ts";
import type { SystemDefinition } from "./system.ts";

const carbonate: SystemDefinition = {
  components: [
    { name: "H+", charge: 1 },
    { name: "CO3-2", charge: -2 },
    { name: "Ca+2", charge: 2 },
  ],
  species: [
    { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
    { name: "CO3-2", charge: -2, formation: { "CO3-2": 1 }, logK: 0 },
    { name: "Ca+2", charge: 2, formation: { "Ca+2": 1 }, logK: 0 },
    { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
    { name: "HCO3-", charge: -1, formation: { "H+": 1, "CO3-2": 1 }, logK: 10.25 },
    { name: "CO2", charge: 0, formation: { "H+": 2, "CO3-2": 1 }, logK: 16.5 },
    { name: "Ca(HCO3)2", charge: 0, formation: { "H+": 2, "CO3-2": 2, "Ca+2": 1 }, logK: 23 },
  ],
  solids: [{ name: "Calcite", formation: { "Ca+2": 1, "CO3-2": 1 }, logKsp: -8.5 }],
};
const open = rebase(carbonate, "CO3-2", "CO2");
const species = (name: string): SystemDefinition["species"][0] => open.species.find((s) => s.name === name)!;

describe("rebase", () => {
  it("writes carbonate species from carbon dioxide", () => {
    expect(open.components[1]).toEqual({ name: "CO2", charge: 0 });
    expect(species("CO2")).toMatchObject({ formation: { CO2: 1 }, logK: 0 });
    expect(species("CO3-2")).toMatchObject({ formation: { CO2: 1, "H+": -2 }, logK: -16.5 });
    expect(species("HCO3-")).toMatchObject({ formation: { CO2: 1, "H+": -1 }, logK: -6.25 });
    expect(species("Ca(HCO3)2")).toMatchObject({ formation: { CO2: 2, "H+": -2, "Ca+2": 1 }, logK: -10 });
    expect(open.solids[0]).toMatchObject({ formation: { "Ca+2": 1, CO2: 1, "H+": -2 }, logKsp: 8 });
  });

  it("comes back to where it started", () => {
    const back = rebase(open, "CO2", "CO3-2");
    expect(back.components).toEqual(carbonate.components);
    for (const [i, row] of carbonate.species.entries()) expect(back.species[i]).toEqual(row);
    expect(back.solids).toEqual(carbonate.solids);
  });

  it("describes the same solution with the totals rewritten", () => {
    const totals = { "H+": 0.002, "CO3-2": 0.003, "Ca+2": 0.002 };
    const rewritten = rebaseTotals(carbonate, "CO3-2", "CO2", totals);
    expect(rewritten).toEqual({ "H+": 0.002 - 0.006, CO2: 0.003, "Ca+2": 0.002 });
    const [a, b] = [
      equilibrate(compileSystem(carbonate), { totals_molPerL: totals, activity: davies() }),
      equilibrate(compileSystem(open), { totals_molPerL: rewritten, activity: davies() }),
    ];
    if (!a.ok || !b.ok) throw new Error("not solved");
    carbonate.species.forEach((_, i) => {
      expect(b.value.log10Concentrations[i]).toBeCloseTo(a.value.log10Concentrations[i]!, 11);
    });
    expect(b.value.solids[0]).toBeCloseTo(a.value.solids[0]!, 14);
  });

  it("makes an open solution: carbon dioxide at a fixed activity", () => {
    const result = equilibrate(compileSystem(open), {
      totals_molPerL: { "Ca+2": 0 },
      fixedLog10Activities: { CO2: -5 },
      electroneutral: "H+",
      activity: davies(),
    });
    if (!result.ok) throw new Error(result.reason);
    // Water with carbon dioxide alone: [H+] = [HCO3-], so pH = (5 + 6.25) / 2 but for water's own ions.
    expect(result.value.pH).toBeCloseTo(5.625, 2);
  });

  it("divides where one species holds two of the component", () => {
    const dimer: SystemDefinition = {
      components: [{ name: "M", charge: 1 }],
      species: [
        { name: "M", charge: 1, formation: { M: 1 }, logK: 0 },
        { name: "M2", charge: 2, formation: { M: 2 }, logK: 3 },
      ],
      solids: [],
    };
    const halves = rebase(dimer, "M", "M2");
    expect(halves.species[0]).toMatchObject({ formation: { M2: 0.5 }, logK: -1.5 });
    const result = equilibrate(compileSystem(halves), {
      totals_molPerL: rebaseTotals(dimer, "M", "M2", { M: 0.01 }),
      activity: davies(),
    });
    const before = equilibrate(compileSystem(dimer), { totals_molPerL: { M: 0.01 }, activity: davies() });
    if (!result.ok || !before.ok) throw new Error("not solved");
    expect(result.value.concentrations[0]! / before.value.concentrations[0]!).toBeCloseTo(1, 11);
  });

  it.each([
    ["an unknown species", "CO3-2", "CO"],
    ["an unknown component", "SO4-2", "CO2"],
    ["a species without the component", "CO3-2", "OH-"],
    ["a species that is another component", "CO3-2", "Ca+2"],
  ])("throws for %s", (_what, replace, by) => {
    expect(() => rebase(carbonate, replace, by)).toThrow("rebase-impossible");
    expect(() => rebaseTotals(carbonate, replace, by, {})).toThrow("rebase-impossible");
  });
});
