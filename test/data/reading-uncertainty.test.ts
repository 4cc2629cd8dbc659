import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import data from "../../data/reading-uncertainty.json" with { type: "json" };
import schema from "../../data/schemas/reading-uncertainty.schema.json" with { type: "json" };
import sources from "../../data/sources.json" with { type: "json" };
import { PARAMETERS } from "../../src/units/index.ts";

describe("uncertainty of readings as data", () => {
  it("fits its schema", () => {
    const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema);
    expect(validate(data), JSON.stringify(validate.errors)).toBe(true);
  });

  it("has a known source on every figure and names only known parameters", () => {
    const known = new Set(Object.keys(sources));
    const parameters = new Set<string>(PARAMETERS);
    for (const record of [...data.readings, ...data.tests]) expect(known.has(record.source)).toBe(true);
    for (const { parameters: named } of data.readings) {
      expect(named.filter((name) => !parameters.has(name))).toEqual([]);
    }
    for (const { readings } of data.tests) {
      expect(readings.filter((name) => !parameters.has(name))).toEqual([]);
    }
  });

  it("has one record for all other parameters of each method, behind those that name some", () => {
    for (const method of new Set(data.readings.map((record) => record.method))) {
      const ofMethod = data.readings.filter((record) => record.method === method);
      expect(ofMethod.filter((record) => record.parameters.length === 0)).toHaveLength(1);
      const named = ofMethod.flatMap((record) => record.parameters as readonly string[]);
      expect(new Set(named).size).toBe(named.length);
    }
  });
});
