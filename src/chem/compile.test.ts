import { describe, expect, it } from "vitest";
import { HardstandError } from "../units/index.ts";
import { compileSystem } from "./compile.ts";
import type { SystemDefinition } from "./system.ts";

const water: SystemDefinition = {
  components: [
    { name: "H+", charge: 1 },
    { name: "Ca+2", charge: 2 },
  ],
  species: [
    { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
    { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
    { name: "Ca+2", charge: 2, formation: { "Ca+2": 1 }, logK: 0 },
  ],
  solids: [{ name: "Portlandite", formation: { "Ca+2": 1, "H+": -2 }, logKsp: 22.8 }],
};
const [proton, hydroxide, calcium] = water.species as [
  SystemDefinition["species"][0],
  SystemDefinition["species"][0],
  SystemDefinition["species"][0],
];
const withSpecies = (extra: Partial<SystemDefinition["species"][0]>): SystemDefinition => ({
  ...water,
  species: [...water.species, { name: "X", charge: 0, formation: { "Ca+2": 1 }, logK: 0, ...extra }],
});

function codesOf(definition: SystemDefinition): unknown {
  try {
    compileSystem(definition);
  } catch (error) {
    if (!(error instanceof HardstandError)) throw error;
    expect(error.code).toBe("system-definition-invalid");
    return (error.details["problems"] as { code: string; path: string }[]).map((p) => `${p.code} ${p.path}`);
  }
  return [];
}

describe("compileSystem", () => {
  it("keeps the order of the definition and indexes it by name", () => {
    const system = compileSystem(water);
    expect(system.componentNames).toEqual(["H+", "Ca+2"]);
    expect(system.speciesIndex.get("Ca+2")).toBe(2);
    expect(system.solidIndex.get("Portlandite")).toBe(0);
    expect(system.coefficientScale).toBe(1);
  });

  it("notes whether charges add up", () => {
    expect(compileSystem(water).chargeConserved).toBe(true);
    const charged = { ...water.solids[0]!, formation: { "Ca+2": 1, "H+": -1 } };
    expect(compileSystem({ ...water, solids: [charged] }).chargeConserved).toBe(false);
    expect(compileSystem(withSpecies({ charge: 1 })).chargeConserved).toBe(false);
  });

  it("finds the factor that makes fractions whole", () => {
    expect(compileSystem(withSpecies({ formation: { "Ca+2": 0.5 } })).coefficientScale).toBe(2);
    expect(compileSystem(withSpecies({ formation: { "Ca+2": 1 / 3, "H+": 0.25 } })).coefficientScale).toBe(
      12,
    );
    expect(compileSystem(withSpecies({ formation: { "Ca+2": Math.SQRT2 } })).coefficientScale).toBe(0);
  });

  it.each<[string, SystemDefinition, string]>([
    ["a species twice", { ...water, species: [proton, proton] }, "name-duplicate species[1].name"],
    [
      "a component twice",
      { ...water, components: [...water.components, { name: "H+", charge: 1 }] },
      "name-duplicate components[2].name",
    ],
    ["an empty name", withSpecies({ name: "" }), "name-empty species[3].name"],
    [
      "an unknown component",
      withSpecies({ formation: { "Mg+2": 1 } }),
      "component-unknown species[3].formation.Mg+2",
    ],
    ["a constant that is no number", withSpecies({ logK: NaN }), "number-not-finite species[3].logK"],
    [
      "an infinite coefficient",
      withSpecies({ formation: { "Ca+2": Infinity } }),
      "number-not-finite species[3].formation.Ca+2",
    ],
    [
      "a species of nothing",
      withSpecies({ formation: { "Ca+2": 0 } }),
      "formation-empty species[3].formation",
    ],
    [
      "water that ionises without limit",
      withSpecies({ formation: { "H+": 2 } }),
      "water-artefact species[3].formation",
    ],
    ["no species", { ...water, species: [], solids: [] }, "system-empty species"],
  ])("refuses %s", (_what, definition, problem) => expect(codesOf(definition)).toContain(problem));

  it("tells all faults at once", () => {
    const species = [hydroxide, { ...calcium, logK: NaN, formation: { "Sr+2": 1 } }];
    expect(codesOf({ ...water, species })).toHaveLength(2);
  });
});
