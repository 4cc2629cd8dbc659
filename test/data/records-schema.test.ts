import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { addJob, bookFile, emptyBook, keepResult, readBookFile } from "../../src/records/index.ts";

const AT = "2026-05-04T07:30:00.000Z";
const schema = JSON.parse(
  readFileSync(new URL("../../schemas/records.schema.json", import.meta.url), "utf8"),
) as object;
const fits = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

function file(): Record<string, unknown> {
  const content = { title: "Top", document: { hardstand: 1, mix: [] }, form: { a: "1,5" }, formSteps: [] };
  const one = addJob(emptyBook(), content, { id: "a", at: AT, untouched: false });
  const two = addJob(one, { ...content, form: null }, { id: "b", at: AT, untouched: false });
  const book = keepResult(two, "a", { computed: AT, hardstand: "0.1.0", data: "1", words: "84 in 100." });
  return JSON.parse(JSON.stringify(bookFile(book, AT))) as Record<string, unknown>;
}

test("what is written fits the published schema and is read without an issue", () => {
  expect(fits(file()), JSON.stringify(fits.errors)).toBe(true);
  expect(readBookFile(JSON.stringify(file()))).toMatchObject({ ok: true, issues: [] });
});

test.each<[string, (made: { jobs: Record<string, unknown>[] } & Record<string, unknown>) => void]>([
  ["another version", (made) => (made["hardstandJobs"] = 2)],
  ["an unknown key", (made) => (made["colour"] = 1)],
  ["an unknown key of a job", (made) => (made.jobs[0]!["colour"] = 1)],
  ["no id", (made) => delete made.jobs[0]!["id"]],
  ["an empty id", (made) => (made.jobs[0]!["id"] = " ")],
  ["a date without time", (made) => (made.jobs[0]!["changed"] = "2026-05-04")],
  ["a document that is a list", (made) => (made.jobs[0]!["document"] = [])],
  ["a form that is a text", (made) => (made.jobs[0]!["form"] = "x")],
  ["a result without words", (made) => (made.jobs[0]!["result"] = { computed: AT })],
])("schema and reader both object to %s", (_, change) => {
  const made = file() as Parameters<typeof change>[0];
  change(made);
  expect(fits(made)).toBe(false);
  expect(readBookFile(JSON.stringify(made)).issues).not.toEqual([]);
});
