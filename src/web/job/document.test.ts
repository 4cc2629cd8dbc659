import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
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
