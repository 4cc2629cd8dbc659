import { mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import formats from "ajv-formats";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, readJob } from "../../src/agronomy/index.ts";
import type { Plan } from "../../src/agronomy/index.ts";
import { cardText, fillCard, planHtml, planText } from "../../src/report/index.ts";
import { runBin } from "./run-bin.ts";

const files = (folder: string): string[] =>
  readdirSync(inProject("examples", folder)).filter((name) => /\.(?:json|yaml)$/.test(name));
const jobs = files("jobs");
const waters = files("waters");

const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
formats.default(ajv);
for (const name of ["plan", "water"]) {
  ajv.addSchema(JSON.parse(readFileSync(inProject("schemas", `${name}.schema.json`), "utf8")) as object);
}

/** Fails with what the schema says when a document does not fit it. */
function expectToFit(document: unknown, schema: "plan" | "water"): void {
  const fits = ajv.validate(`urn:hardstand:${schema}:1`, document);
  expect(fits, JSON.stringify(ajv.errors?.slice(0, 5), null, 2)).toBe(true);
}

/** Fails when a text meant for a person is empty or shows a value that was never put into words. */
function expectToRead(text: string, mentions: string): void {
  expect(text).toContain(mentions);
  expect(text.split("\n").length).toBeGreaterThan(5);
  expect(text).not.toMatch(/\bundefined\b|\bNaN\b|\bInfinity\b|\[object /);
}

/** Fails when a page would fetch anything when it is opened. */
function expectToStandAlone(html: string): void {
  expect(html).toMatch(/^<!doctype html>/i);
  expect(html.trimEnd()).toMatch(/<\/html>$/i);
  expect(html).not.toMatch(/<(?:script|link|iframe|object|embed|img|base)\b[^>]*\b(?:src|href|data)\s*=/i);
  expect(html).not.toMatch(/@import|url\(\s*["']?(?!data:|#)/i);
}

let folder = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "hardstand-"));
  // The first run may build; the others then only run.
  expect((await runBin(["--version"])).code).toBe(0);
}, 120_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe.each(jobs)("example job %s", (name) => {
  const path = join("examples", "jobs", name);
  const job = parse(readFileSync(inProject(path), "utf8")) as { title: string; water: { source: string } };
  let plan: Plan;

  test("as data fits the schema, and the exit code says whether a programme meets the aim", async () => {
    const run = await runBin(["plan", path, "--json"]);
    plan = JSON.parse(run.out) as Plan;
    expectToFit(plan, "plan");
    expect(run.code, run.talk).toBe(plan.chosen === null ? 3 : 0);
    const chosen = plan.programmes.find((programme) => programme.id === plan.chosen);
    expect(chosen?.meetsAim ?? null).toBe(plan.chosen === null ? null : true);
  });

  test("as text, card and page is whole in itself", () => {
    const facts = { date: "2026-01-01", title: job.title, sampled: null };
    expectToRead(cardText(fillCard(plan, facts)), job.water.source);
    const read = readJob(job, { trade: builtInTrade() });
    if (!read.ok) throw new Error("the job is not read");
    expectToRead(planText(plan, read.value.aim.where), job.water.source);
    const page = planHtml(plan, read.value, facts);
    expectToRead(page, job.water.source);
    expectToStandAlone(page);
  });
});

test("text, card and page come out of the command as they are made from the data", async () => {
  const path = "examples/jobs/us-units.yaml";
  const page = join(folder, "plan.html");
  const data = await runBin(["plan", path, "--json"]);
  const plan = JSON.parse(data.out) as Plan;
  const text = await runBin(["plan", path]);
  const read = readJob(parse(readFileSync(inProject(path), "utf8")), { trade: builtInTrade() });
  if (!read.ok) throw new Error("the job is not read");
  expect(text.out).toBe(planText(plan, read.value.aim.where));
  const card = await runBin(["plan", path, "--card"]);
  expectToRead(card.out, plan.water.source);
  const html = await runBin(["plan", path, "--html", page]);
  expect(html.out).toBe("");
  const written = readFileSync(page, "utf8");
  expectToRead(written, plan.water.source);
  expectToStandAlone(written);
  expect([text.code, card.code, html.code]).toEqual([data.code, data.code, data.code]);
});

describe.each([
  ...jobs.map((name) => join("examples", "jobs", name)),
  ...waters.map((name) => join("examples", "waters", name)),
])("the water of %s", (path) => {
  test("fits the schema as data and reads as text", async () => {
    const source = (parse(readFileSync(inProject(path), "utf8")) as { water: { source: string } }).water
      .source;
    const [data, text] = await Promise.all([runBin(["water", path, "--json"]), runBin(["water", path])]);
    expect([data.code, text.code], data.talk).toEqual([0, 0]);
    const water = JSON.parse(data.out) as { source: string };
    expectToFit(water, "water");
    expect(water.source).toBe(source);
    expectToRead(text.out, source);
  });
});

describe("exit codes", () => {
  interface Sample {
    spray: Record<string, unknown>;
    conditioners: unknown[];
    aim: Record<string, unknown>;
    [key: string]: unknown;
  }
  /** The first sample job with nothing to add and a change, as text for standard input. */
  function changed(change: (job: Sample) => void): string {
    const job = parse(readFileSync(inProject("examples/jobs/top-bore.yaml"), "utf8")) as Sample;
    job.conditioners = [];
    change(job);
    return stringify(job);
  }
  const plan = (input: string, ...options: string[]): ReturnType<typeof runBin> =>
    runBin(["plan", "-", "--json", ...options], input);

  test("0: an aim that is met with nothing added", async () => {
    const run = await plan(changed((job) => (job.aim = { "free share": 0.5, where: "in the tank" })));
    expect(run.code, run.talk).toBe(0);
    expect((JSON.parse(run.out) as Plan).chosen).not.toBeNull();
  });

  test("2: a job that cannot be used, with nothing on the result channel", async () => {
    const run = await plan(changed((job) => (job.spray["volume"] = "200")));
    expect(run.code).toBe(2);
    expect(run.out).toBe("");
    expect(run.talk).toContain("spray.volume");
  });

  test("2: no such file, no such option, no such command", async () => {
    const runs = await Promise.all([
      runBin(["plan", "examples/jobs/none-such.yaml"]),
      runBin(["plan", "examples/jobs/top-bore.yaml", "--jsn"]),
      runBin(["plann", "examples/jobs/top-bore.yaml"]),
    ]);
    expect(runs.map((run) => run.code)).toEqual([2, 2, 2]);
    expect(runs.map((run) => run.out)).toEqual(["", "", ""]);
    expect(runs[1]?.talk).toContain("--json");
    expect(runs[2]?.talk).toContain("plan");
  });

  test("3: no programme meets the aim, and the plan is still given", async () => {
    const run = await plan(changed((job) => (job.aim["free share"] = 0.9999)));
    expect(run.code, run.talk).toBe(3);
    const given = JSON.parse(run.out) as Plan;
    expectToFit(given, "plan");
    expect(given.chosen).toBeNull();
    expect(run.talk).toContain("No programme meets the aim");
  });

  test("4: only under --strict, where a figure lies outside the fitted range", async () => {
    const beyond = changed((job) => (job.spray["temperature"] = "39 °C"));
    const [strict, plain] = await Promise.all([plan(beyond, "--strict"), plan(beyond)]);
    expect(strict.code, strict.talk).toBe(4);
    expect([0, 3]).toContain(plain.code);
    expect(strict.out).toBe(plain.out);
  });
});
