import { readFileSync, readdirSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { builtInTrade, readJob } from "../../src/agronomy/index.ts";
import { parseText } from "../../src/cli/document.ts";

const folder = new URL("../../", import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, folder), "utf8");
const schema = (name: string): object => JSON.parse(text(`schemas/${name}.schema.json`)) as object;

const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
const fitsJob = ajv.compile(schema("job"));
const trade = builtInTrade();

const jobs = readdirSync(new URL("examples/jobs/", folder));

function documentOf(path: string): unknown {
  const read = parseText(text(path), path);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

test("there are examples of each kind", () => {
  expect(jobs.length).toBeGreaterThanOrEqual(7);
  expect(jobs.filter((name) => name.startsWith("real-")).length).toBeGreaterThanOrEqual(2);
});

test.each(jobs)("example %s fits the schema and reads without an error", (name) => {
  const document = documentOf(`examples/jobs/${name}`);
  expect(fitsJob(document), JSON.stringify(fitsJob.errors)).toBe(true);
  const read = readJob(document, { trade });
  expect(read.issues.filter((issue) => issue.severity === "error")).toEqual([]);
  expect(read.ok).toBe(true);
});

type Change = (job: Record<string, never>) => void;

/** A job that both accept, as free data to be changed. */
function sample(): Record<string, never> {
  return structuredClone(documentOf("examples/jobs/top-bore.yaml")) as Record<string, never>;
}

/** Sets or, with undefined, removes what stands at a path. */
const set =
  (path: string, value: unknown): Change =>
  (job) => {
    const keys = path.split("/");
    let at: Record<string, unknown> = job;
    for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
    const last = keys.at(-1) ?? "";
    if (value === undefined) delete at[last];
    else at[last] = value;
  };

const RAIN = { source: "Rain tank", readings: [{ parameter: "hardness", value: 10, unit: "mg/L as CaCO3" }] };

const GOOD: readonly (readonly [string, Change])[] = [
  ["as it stands", () => undefined],
  ["no conditioners named", set("conditioners", undefined)],
  ["no conditioners wanted", set("conditioners", [])],
  [
    "a product by its label",
    set("conditioners", [
      {
        product: "Blend",
        composition: [
          { chemistry: "citric acid", amount: "30 % w/w" },
          { chemistry: "ammonium sulfate", amount: 40, unit: "g/L" },
        ],
        density: "1.2 kg/L",
        "most dose": "1 L/100 L",
        price: "3 /L",
        undisclosed: "wetting agent",
      },
      { product: "Secret", undisclosed: true },
    ]),
  ],
  ["no aim", set("aim", undefined)],
  ["an aim in per cent", set("aim/free share", "95 %")],
  ["a site", set("site", { "volatility rules": false })],
  [
    "a least volume and a jar",
    set("spray", {
      volume: "200 L/ha",
      "least volume": "80 L/ha",
      tank: "3000 L",
      area: "38 ha",
      jar: "500 mL",
    }),
  ],
  ["a reading that was not measured", set("water/readings/0/value", null)],
  ["a reading as a limit", set("water/readings/0/value", "<5")],
  ["a water without a name", set("water/source", undefined)],
  [
    "an active entered by hand",
    set("mix/0/active", { name: "testamine", "molar mass": "312.41 g/mol", pKa: 3.1 }),
  ],
  [
    "an active entered by hand with all that can be said",
    set("mix/0/active", {
      name: "testamine",
      "molar mass": "312 g/mol",
      pKa: [2.3, 5.9, 10.1],
      "affinity class": "aminophosphonate",
      "half-lives": [{ pH: 7, "half-life": "30 h", temperature: "25 °C" }],
    }),
  ],
  ["a product with name and price", set("mix/0/name", "shed drum")],
  ["a strength as salt", set("mix/0/strength", "480 g/L salt")],
  [
    "a solid product",
    set("mix/0", {
      active: "glyphosate",
      form: "ammonium",
      strength: "700 g/kg ae",
      rate: "1 kg/ha",
      formulation: "SG",
      price: "9 /kg",
    }),
  ],
  [
    "a leaf feed",
    set("mix/1", { feed: "manganese sulfate", form: "monohydrate", rate: "2 kg/ha", name: "Mn" }),
  ],
  ["a leaf feed by its strength", set("mix/1", { feed: "zinc EDTA", strength: "90 g/L", rate: "1 L/ha" })],
  ["dose limits", set("conditioners/0/most dose", "2 kg/100 L")],
  ["another water with a price", set("other waters", [{ ...RAIN, price: "3 /m3" }])],
  ["no other waters", set("other waters", [])],
  ["a highest rate", set("mix/0/most rate", "3 L/ha")],
  ["a season area", set("spray/season area", "400 ha")],
  ["partners", set("partners", ["manganese", "chelated zinc", "lime"])],
  ["what was done to the water", set("site", { "water treatments": ["softener"], metals: ["brass"] })],
  ["the air", set("site", { "air temperature": "31 °C" })],
  ["facts of the sprayer", set("spray/output", "45 L/min")],
];

const BAD: readonly (readonly [string, Change])[] = [
  ["no version", set("hardstand", undefined)],
  ["another version", set("hardstand", 2)],
  ["a version as text", set("hardstand", "1")],
  ["no water", set("water", undefined)],
  ["no readings", set("water/readings", undefined)],
  ["readings as an object", set("water/readings", {})],
  ["an empty list of readings", set("water/readings", [])],
  ["a reading without a name", set("water/readings/0/parameter", undefined)],
  ["a reading with a strange key", set("water/readings/0/units", "mg/L")],
  ["a strange method", set("water/method", "guess")],
  ["a date in words", set("water/sampled", "second of March")],
  ["a strange key in the water", set("water/bore", "top")],
  ["no spray", set("spray", undefined)],
  ["no volume", set("spray/volume", undefined)],
  ["a bare volume", set("spray/volume", 200)],
  ["a volume without a unit", set("spray/volume", "200")],
  ["a strange key in the spray", set("spray/speed", "8 km/h")],
  ["no mix", set("mix", undefined)],
  ["an empty mix", set("mix", [])],
  ["a mix that is no list", set("mix", {})],
  ["no active", set("mix/0/active", undefined)],
  ["no strength", set("mix/0/strength", undefined)],
  ["no rate", set("mix/0/rate", undefined)],
  ["no formulation", set("mix/0/formulation", undefined)],
  ["a strange key in a product", set("mix/0/colour", "red")],
  ["leaf feeds only", set("mix", [{ feed: "zinc sulfate", rate: "1 kg/ha" }])],
  ["a leaf feed without a rate", set("mix/1", { feed: "zinc sulfate" })],
  ["a strange key in a leaf feed", set("mix/1", { feed: "zinc sulfate", rate: "1 kg/ha", price: "3 /kg" })],
  ["conditioners as a text", set("conditioners", "all")],
  ["an active entered without a molar mass", set("mix/0/active", { name: "testamine" })],
  ["an active entered with a bare molar mass", set("mix/0/active", { name: "t", "molar mass": 300 })],
  ["a strange key in an active", set("mix/0/active", { name: "t", "molar mass": "300 g/mol", pka: 3 })],
  ["a pKa beyond water", set("mix/0/active", { name: "t", "molar mass": "300 g/mol", pKa: 19 })],
  [
    "a half-life without its pH",
    set("mix/0/active", { name: "t", "molar mass": "300 g/mol", "half-lives": [{ "half-life": "3 h" }] }),
  ],
  ["a conditioner without a chemistry", set("conditioners/0/chemistry", undefined)],
  ["a bare price", set("conditioners/0/price", 0.55)],
  ["a strange key in a conditioner", set("conditioners/0/cost", "1 /kg")],
  ["a product without a composition", set("conditioners", [{ product: "Blend" }])],
  [
    "a product with nothing left open, and no composition",
    set("conditioners", [{ product: "P", undisclosed: false }]),
  ],
  ["a product without a name", set("conditioners", [{ undisclosed: true }])],
  [
    "an ingredient without an amount",
    set("conditioners", [{ product: "P", composition: [{ chemistry: "citric acid" }] }]),
  ],
  [
    "a strange key in a product of its label",
    set("conditioners", [{ product: "P", undisclosed: true, form: "x" }]),
  ],
  ["a strange place", set("aim/where", "in the sky")],
  ["a share above one", set("aim/free share", 95)],
  ["a strange key in the aim", set("aim/share", 0.9)],
  ["a site in words", set("site", { "volatility rules": "yes" })],
  ["a strange key at the top", set("farm", "home")],
  ["an empty title", set("title", " ")],
  ["another water without readings", set("other waters", [{ source: "Rain tank" }])],
  ["another water with a strange key", set("other waters", [{ ...RAIN, cost: "3 /m3" }])],
  ["other waters as a block", set("other waters", RAIN)],
  ["a bare price of water", set("other waters", [{ ...RAIN, price: 3 }])],
  ["a bare highest rate", set("mix/0/most rate", 3)],
  ["an unknown partner", set("partners", ["magic"])],
  ["partners in words", set("partners", "lime")],
  ["an unknown treatment", set("site", { "water treatments": ["blessed"] })],
  ["an unknown metal", set("site", { metals: ["gold"] })],
  ["a bare air temperature", set("site", { "air temperature": 31 })],
  ["a bare output", set("spray/output", 45)],
];

test.each(GOOD)("reader and schema both accept: %s", (_, change) => {
  const job = sample();
  change(job);
  const read = readJob(job, { trade });
  expect(read.issues.filter((issue) => issue.severity === "error")).toEqual([]);
  expect(fitsJob(job), JSON.stringify(fitsJob.errors)).toBe(true);
});

test.each(BAD)("reader and schema both refuse: %s", (_, change) => {
  const job = sample();
  change(job);
  expect(readJob(job, { trade }).ok).toBe(false);
  expect(fitsJob(job)).toBe(false);
});

test.each(["job", "case", "plan", "water"])("the schema of a %s describes every key", (name) => {
  const missing: string[] = [];
  const walk = (node: unknown, path: string): void => {
    if (node === null || typeof node !== "object") return;
    const { properties } = node as { readonly properties?: Record<string, object> };
    for (const [key, value] of Object.entries(properties ?? {})) {
      const said =
        ["description", "$ref", "const", "enum"].some((one) => one in value) ||
        "items" in value ||
        "properties" in value;
      if (!said) missing.push(`${path}.${key}`);
    }
    for (const [key, value] of Object.entries(node)) walk(value, `${path}/${key}`);
  };
  walk(schema(name), name);
  expect(missing).toEqual([]);
});
