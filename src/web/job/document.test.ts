import { readFileSync, readdirSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { builtInTrade, readJob } from "../../agronomy/index.ts";
import { ownName } from "./draft-mix.ts";
import { draftOf } from "./from-document.ts";
import { isDraft, jobReducer } from "./job-state.ts";
import { documentOf } from "./to-document.ts";
import type { JobDocument } from "./to-document.ts";

const trade = builtInTrade();
const folder = new URL("../../../examples/jobs/", import.meta.url);
const examples = readdirSync(folder).map(
  (name) => [name, parse(readFileSync(new URL(name, folder), "utf8")) as JobDocument] as const,
);

const throughForm = (document: unknown): JobDocument => documentOf(draftOf(document, "file"));
const understood = (document: unknown): unknown => readJob(document, { trade });

/** A job that says everything the format can hold. */
const whole = parse(readFileSync(new URL("whole-job.yaml", import.meta.url), "utf8")) as JobDocument;

test.each([...examples, ["whole-job.yaml", whole] as const])(
  "%s is the same job after the form as before",
  (_, document) => {
    const saved: unknown = JSON.parse(JSON.stringify(throughForm(document)));
    expect(understood(document)).toMatchObject({ ok: true });
    expect(understood(saved)).toEqual(understood(document));
    expect(throughForm(saved)).toEqual(saved);
  },
);

interface Schema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
}

const schema = JSON.parse(
  readFileSync(new URL("../../../schemas/job.schema.json", import.meta.url), "utf8"),
) as Schema;

/** Every key that a schema gives a name, as a path without the places in lists. */
function keysOf(part: Schema, path = ""): readonly string[] {
  if (part.$ref !== undefined) {
    const at = part.$ref.replace("#/", "").split("/");
    const found = at.reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], schema);
    return keysOf(found as Schema, path);
  }
  return [
    ...Object.entries(part.properties ?? {}).flatMap(([key, inner]) => [
      `${path}.${key}`,
      ...keysOf(inner, `${path}.${key}`),
    ]),
    ...(part.items === undefined ? [] : keysOf(part.items, path)),
    ...(part.anyOf ?? []).flatMap((inner) => keysOf(inner, path)),
  ];
}

function keysSaid(value: unknown, path = ""): readonly string[] {
  if (Array.isArray(value)) return value.flatMap((entry: unknown) => keysSaid(entry, path));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [
    `${path}.${key}`,
    ...keysSaid(inner, `${path}.${key}`),
  ]);
}

test("the whole job says every key of the published schema, and the form has a box for each", () => {
  const keys = new Set(keysOf(schema));
  expect(new Set(keysSaid(whole))).toEqual(keys);
  const rests = (value: unknown): readonly unknown[] =>
    typeof value !== "object" || value === null
      ? []
      : Object.entries(value).flatMap(([key, inner]) => (key === "rest" ? [inner as unknown] : rests(inner)));
  const kept = rests(draftOf(whole, "file"));
  expect(kept.length).toBeGreaterThan(15);
  expect(kept.every((rest) => Object.keys(rest as object).length === 0)).toBe(true);
});

test("a number that would have two readings as text has one after the form", () => {
  const readings = [{ parameter: "iron", value: 1.125, unit: "mg/L" }];
  const document = { ...whole, water: { source: "dam", readings } };
  const measured = (job: unknown): unknown => {
    const read = readJob(job, { trade });
    return read.ok ? read.value.water.readings.map((reading) => ({ ...reading, typed: null })) : read.issues;
  };
  expect(measured(throughForm(document))).toEqual(measured(document));
});

test("what the form has no box for is kept, and said to be wrong by the engine alone", () => {
  const odd = {
    ...whole,
    hardstand: 2,
    comment: "ask first",
    partners: "manganese",
    spray: { ...(whole["spray"] as object), nozzles: ["a", "b"] },
    mix: [{ active: "glyphosate", rate: { value: 2 }, batch: 7 }],
    site: { "volatility rules": "perhaps" },
  };
  const saved = throughForm(odd);
  const { hardstand, comment, partners, mix, site } = odd;
  expect(saved).toMatchObject({ hardstand, comment, partners, mix, site, spray: { nozzles: ["a", "b"] } });
  expect(isDraft(JSON.parse(JSON.stringify(draftOf(odd, "file"))))).toBe(true);
});

/** Nothing said is nothing to keep; blanks say nothing. */
const saysNothing = (value: unknown): boolean =>
  typeof value === "string"
    ? value.trim() === ""
    : typeof value === "object" && Object.keys(value ?? {}).length === 0;

test("a title of blanks is no title", () => {
  expect(throughForm({ ...whole, title: "  " })).not.toHaveProperty("title");
});

test("anything at all goes through the form and comes out with every key of its own", () => {
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...Object.keys(whole), "x"), fc.jsonValue()), (document) => {
      const plain = JSON.parse(JSON.stringify(document)) as Record<string, unknown>;
      const saved = throughForm(plain);
      for (const [key, value] of Object.entries(plain)) {
        if (saysNothing(value)) continue;
        expect(Object.keys(saved)).toContain(key);
        if (typeof value === "boolean") expect(saved[key]).toBe(value);
      }
      expect(throughForm(saved)).toEqual(saved);
    }),
    { numRuns: 300, examples: [[{ title: " " }]] },
  );
});

test("a leaf feed that was removed is gone", () => {
  const feeds = draftOf(whole, "file").mix.filter(({ kind }) => kind === "feed");
  const state = { draft: draftOf(whole, "file"), undo: [] };
  const next = jobReducer(state, {
    type: "step",
    what: "feeds removed",
    change: (draft) => ({ ...draft, mix: draft.mix.filter(({ kind }) => kind !== "feed") }),
  });
  expect(feeds.length).toBeGreaterThan(0);
  expect((documentOf(next.draft)["mix"] as object[]).some((entry) => "feed" in entry)).toBe(false);
});

test.each([
  ["3,1", 3.1],
  ["2.3; 5.9 10.5", [2.3, 5.9, 10.5]],
  ["2.3, 5.9", [2.3, 5.9]],
  ["3.125", 3.125],
  ["about 3", "about 3"],
])("acid constants typed as “%s” are %j", (text, expected) => {
  const draft = draftOf({ mix: [{ active: { name: "testamine" } }] }, "file");
  const [row] = draft.mix;
  if (row?.kind !== "product" || row.own === null) throw new Error("no active of its own");
  expect(ownName(row)).toBe("testamine");
  const typed = { ...draft, mix: [{ ...row, own: { ...row.own, pKa: text } }] };
  expect(documentOf(typed)["mix"]).toEqual([{ active: { name: "testamine", pKa: expected } }]);
});
