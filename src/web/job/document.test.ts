import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { ownName } from "./draft.ts";
import { draftOf } from "./from-document.ts";
import { documentOf } from "./to-document.ts";

const example = (name: string): Record<string, unknown> =>
  parse(readFileSync(new URL(`../../../examples/jobs/${name}.yaml`, import.meta.url), "utf8")) as Record<
    string,
    unknown
  >;

test("a leaf feed of a file stays in the job the page computes", () => {
  const job = example("manganese-feed");
  expect(documentOf(draftOf(job, "file"))["mix"]).toEqual(job["mix"]);
});

test("conditioners described by their labels stay in the job the page computes", () => {
  const job = example("own-product");
  expect(documentOf(draftOf(job, "file"))["conditioners"]).toEqual(job["conditioners"]);
});

test("a feed that was removed is gone", () => {
  const draft = draftOf(example("manganese-feed"), "file");
  const mix = documentOf({ ...draft, feeds: [] })["mix"];
  expect(mix).toHaveLength(draft.mix.length);
});

const own = {
  name: "testamine",
  "molar mass": "300 g/mol",
  pKa: [2.3, 5.9],
  "affinity class": "phenoxy acid",
};
const product = { form: "potassium", strength: "360 g/L", rate: "2 L/ha", formulation: "SL" };
const job = (active: unknown) => ({ hardstand: 1, mix: [{ active, ...product }] });

test("an active that a file describes goes through the form untouched", () => {
  const draft = draftOf(job(own), "file");
  expect(draft.mix.map(ownName)).toEqual(["testamine"]);
  expect(documentOf(draft)["mix"]).toEqual([{ active: own, ...product }]);
});

test("an active of the list goes through by its name", () => {
  const draft = draftOf(job("glyphosate"), "file");
  expect(draft.mix.map(ownName)).toEqual([null]);
  expect(documentOf(draft)["mix"]).toEqual([{ active: "glyphosate", ...product }]);
});
