import { readFileSync } from "node:fs";
import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";

const data = new URL("../../data/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, data), "utf8"));

describe("data of colour and demonstrations", () => {
  const ajv = new Ajv2020({ allErrors: true, allowUnionTypes: true });
  ajv.addSchema(read("schemas/thermo-definitions.schema.json") as object);

  it.each(["colour-observer"])("%s.json follows its schema", (name) => {
    const validate = ajv.compile(read(`schemas/${name}.schema.json`) as object);
    validate(read(`${name}.json`));
    expect(validate.errors ?? []).toEqual([]);
  });
});
