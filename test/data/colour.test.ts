import { readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { builtInFlasks } from "../../src/agronomy/index.ts";
import { builtInThermo, withLigands } from "../../src/chem/index.ts";
import { massOf } from "./formula.ts";

const data = new URL("../../data/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, data), "utf8"));

describe("data of colour and demonstrations", () => {
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
  ajv.addSchema(read("schemas/thermo-definitions.schema.json") as object);

  it.each(["colour-observer", "indicators", "reagents"])("%s.json follows its schema", (name) => {
    const validate = ajv.compile(read(`schemas/${name}.schema.json`) as object);
    validate(read(`${name}.json`));
    expect(validate.errors ?? []).toEqual([]);
  });
});

describe("indicators and reagents", () => {
  const { indicators, background, reagents, limits } = builtInFlasks();
  const thermo = withLigands(builtInThermo(), indicators);
  const species = new Map(thermo.species.map((one) => [one.id, one]));

  it("fit the constants they are used with", () => {
    const names = [...background, ...indicators.flatMap(({ optics }) => optics)].map((one) => one.species);
    expect(names.filter((name) => !species.has(name) && !(name in thermo.components))).toEqual([]);
    expect(new Set(names).size).toBe(names.length);
    const ties = indicators.flatMap(({ tied }) => tied);
    expect(ties.filter((tie) => !species.has(tie.species) || !species.has(tie.to))).toEqual([]);
    for (const { released } of reagents) {
      expect(Object.keys(released).filter((name) => !(name in thermo.components))).toEqual([]);
    }
    expect(limits.filter(({ component }) => !(component in thermo.components))).toEqual([]);
  });

  it("have the charge of what they are made of", () => {
    for (const { id, charge, formation } of indicators.flatMap((one) => one.species)) {
      const sum = Object.entries(formation).reduce(
        (total, [name, n]) => total + n * thermo.components[name]!.charge,
        0,
      );
      expect([id, charge]).toEqual([id, sum]);
    }
  });

  it("have the molar mass of their formula", () => {
    for (const { name, formula, molarMass_gPerMol } of reagents) {
      expect(Math.abs(molarMass_gPerMol - massOf(formula)), name).toBeLessThan(0.02);
    }
  });

  it("name an indicator that is there", () => {
    const known = new Set<string | null>([null, ...indicators.map(({ id }) => id)]);
    expect(reagents.filter(({ indicator }) => !known.has(indicator))).toEqual([]);
    expect(indicators.filter(({ id }) => !reagents.some((one) => one.indicator === id))).toEqual([]);
  });

  it("mark every figure of unknown origin", () => {
    const text = JSON.stringify([indicators, background, reagents, limits]);
    expect(text).not.toMatch(/"source":"from-memory","locator":[^}]*"fromMemory":false/);
    expect(text).not.toMatch(/https?:|github|\.com\b/i);
  });
});
