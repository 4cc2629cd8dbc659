import { readFileSync, readdirSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parseText } from "../../src/cli/document.ts";
import type { CliIo } from "../../src/cli/io.ts";
import { runCli } from "../../src/cli/run.ts";

const folder = new URL("../../", import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, folder), "utf8");

const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
for (const name of ["job", "plan", "complaint", "complaint-answer"])
  ajv.addSchema(JSON.parse(text(`schemas/${name}.schema.json`)) as object);

const records = readdirSync(new URL("examples/complaints/", folder));

/** Runs the command line on the examples, its files kept in memory. */
async function run(argv: readonly string[]) {
  let [out, talk] = ["", ""];
  const written: Record<string, string> = {};
  const io: CliIo = {
    stdout: (part) => void (out += part),
    stderr: (part) => void (talk += part),
    readStdin: () => Promise.reject(new Error("not asked for")),
    readFile: (path) => Promise.resolve({ bytes: Buffer.from(text(path)), more: false }),
    writeFile: (path, content) => Promise.resolve(void (written[path] = String(content))),
    today: () => "2026-05-02",
    findPrinter: () => null,
    serve: () => Promise.reject(new Error("not asked for")),
  };
  const code = await runCli(argv, io);
  return { code, out, talk, written };
}

test("there is an example of a complaint", () => {
  expect(records.length).toBeGreaterThan(0);
});

test.each(records)(
  "example %s fits the schema of a record, and its answer that of an answer",
  async (name) => {
    const path = `examples/complaints/${name}`;
    const document = parseText(text(path), name);
    if (!document.ok) throw new Error(JSON.stringify(document.issues));
    expect(ajv.validate("urn:hardstand:complaint:1", document.value), JSON.stringify(ajv.errors)).toBe(true);
    const data = await run(["complaint", path, "--json"]);
    expect(data.code, data.talk).toBe(0);
    const fits = ajv.validate("urn:hardstand:complaint-answer:1", JSON.parse(data.out));
    expect(fits, JSON.stringify(ajv.errors?.slice(0, 4))).toBe(true);
  },
);

test.each(records)("example %s reads as words and as a page, and neither calls it proof", async (name) => {
  const path = `examples/complaints/${name}`;
  const words = await run(["complaint", path]);
  const page = await run(["complaint", path, "--html", "answer.html"]);
  for (const said of [words.out, page.written["answer.html"] ?? ""]) {
    expect(said.replace(/\s+/g, " ")).toContain("This is no proof.");
    expect(said).not.toMatch(/\bundefined\b|\bNaN\b|\[object /);
    expect(said.replace(/no proof/g, "")).not.toMatch(/\bproves?\b|\bproven\b|\bproof of\b/i);
  }
  expect(words.out.split("\n").every((line) => line.length <= 78)).toBe(true);
  expect(page.talk).toContain("answer.html");
});

/** Words of English that German, French and Spanish do not share. */
const ENGLISH = /\b(?:the|and|of|with|is|are|from|water|free|held|by)\b/i;

describe.each([
  ["de", "Das ist kein Beweis.", "DIE ÜBLICHEN URSACHEN"],
  ["fr", "Ce n'est pas une preuve.", "LES CAUSES HABITUELLES"],
  ["es", "No es una prueba.", "LAS CAUSAS HABITUALES"],
])("in %s", (tag, noProof, causes) => {
  test.each(records)("the answer to %s says nothing in English", async (name) => {
    const path = `examples/complaints/${name}`;
    const document = parseText(text(path), name);
    if (!document.ok) throw new Error(JSON.stringify(document.issues));
    const { title, water } = document.value as { title: string; water: { source: string } };
    const { code, out, talk } = await run(["complaint", path, "--language", tag]);
    expect(code, talk).toBe(0);
    expect(out.split("\n").filter((line) => line.length > 78)).toEqual([]);
    // The title, the name of the source and the keys of the record are the person's own.
    const said = [title, water.source, "water.readings"].reduce(
      (rest, own) => rest.replaceAll(own, ""),
      out.replace(/\s+/g, " "),
    );
    expect(said).toContain(noProof);
    expect(said).toContain(causes);
    expect(said.split(". ").filter((sentence) => ENGLISH.test(sentence))).toEqual([]);
  });

  test("the page is in it too", async () => {
    const { written } = await run([
      "complaint",
      `examples/complaints/${records[0] ?? ""}`,
      "--html",
      "a.html",
      "--language",
      tag,
    ]);
    expect(written["a.html"]).toContain(`<html lang="${tag}">`);
    expect(written["a.html"]).toContain(noProof.replaceAll("'", "&#39;"));
  });
});

test("the command says what it takes", async () => {
  expect((await run(["complaint"])).talk).toContain("record.yaml");
  expect((await run(["complaint", "x.yaml", "--card"])).code).toBe(2);
  expect((await run(["complaint", "x.yaml", "--strict"])).talk).toContain("takes no --strict");
  expect((await run(["complaint", "x.yaml", "--language", "xx"])).talk).toContain("expected one of en-GB");
  expect((await run(["complaint", "x.yaml", "--json", "--language", "de"])).code).toBe(2);
});
