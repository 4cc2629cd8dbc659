import { readdirSync, readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, checkComplaint, planJob, readComplaint, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { complaintHtml, planHtml } from "../../src/report/index.ts";
import { loadLanguage } from "../../src/words/index.ts";
import { badBreaks } from "./breaks.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

const trade = builtInTrade();
const thermo = builtInThermo();

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await setStage();
  page = await (await stage.newContext()).newPage();
});
afterAll(async () => {
  await stage.close();
});

const jobs = readdirSync(inProject("examples", "jobs")).filter((name) => /\.(?:json|yaml)$/.test(name));
const complaints = readdirSync(inProject("examples", "complaints"));
const read = (...path: readonly string[]): unknown =>
  parse(readFileSync(inProject("examples", ...path), "utf8"));

test("what is cut, and a heading left alone, are found", async () => {
  const style = "<style>@page { size: A4; margin: 12mm; } p { height: 200mm; margin: 0; }</style>";
  await page.setContent(`${style}<p>one</p><ul><li><div style="height: 150mm">two</div>three</li></ul>`);
  expect(await badBreaks(page)).toEqual({ pages: 2, faults: ["1 × LI in 2 parts"] });
  await page.setContent(`${style}<p>one</p><h2 style="height: 60mm">two</h2><p>three</p>`);
  expect(await badBreaks(page)).toEqual({ pages: 2, faults: ["H2 is the last on page 1"] });
});

describe.each(jobs)("the report on %s", (name) => {
  test("breaks between its blocks on both papers, in English and in the longest language", async () => {
    const job = readJob(read("jobs", name), { trade });
    if (!job.ok) throw new Error("not read");
    const plan = planJob(job.value, { thermo, trade }, { draws: 0 });
    if (!plan.ok) throw new Error("not planned");
    const facts = { date: "2026-01-01", title: job.value.title, sampled: null };
    for (const [paper, tag] of [
      ["A4", "en-GB"],
      ["Letter", "en-GB"],
      ["A4", "fr"],
    ] as const) {
      const language = await loadLanguage(tag);
      await page.setContent(planHtml(plan.value, job.value, facts, { part: "report", paper, language }));
      const { pages, faults } = await badBreaks(page);
      expect(faults, `${paper} ${tag}`).toEqual([]);
      expect(pages).toBeGreaterThan(2);
    }
  });
});

test.each(complaints)("the answer to the complaint %s breaks between its blocks", async (name) => {
  const record = readComplaint(read("complaints", name), { trade });
  if (!record.ok) throw new Error("not read");
  const answer = checkComplaint(record.value, { thermo, trade }, { draws: 0 });
  if (!answer.ok) throw new Error("not answered");
  await page.setContent(complaintHtml(answer.value, { date: "2026-01-01" }));
  expect((await badBreaks(page)).faults).toEqual([]);
});
