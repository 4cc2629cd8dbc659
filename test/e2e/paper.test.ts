import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { parse } from "yaml";
import type { Page } from "playwright-core";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import type { Plan, TitledJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { planHtml } from "../../src/report/index.ts";
import type { Paper, PlanPart } from "../../src/report/index.ts";
import { runBin } from "../cli/run-bin.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

const PAPERS = ["A4", "Letter"] as const;
const trade = builtInTrade();
const thermo = builtInThermo();

let stage: Stage;
let sheet: Page;
let folder = "";
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "hardstand-paper-"));
  stage = await setStage();
  // As wide as the text on A4, the narrower of the two.
  sheet = await (await stage.newContext({ viewport: { width: 703, height: 900 } })).newPage();
  await sheet.emulateMedia({ media: "print" });
});
afterAll(async () => {
  await stage.close();
  rmSync(folder, { recursive: true, force: true });
});

interface Answer {
  readonly job: TitledJob;
  readonly plan: Plan;
}

const answers = new Map<unknown, Answer>();

/** The answer to a job, worked out once. */
function answerTo(document: unknown): Answer {
  const known = answers.get(document);
  if (known !== undefined) return known;
  const job = readJob(document, { trade });
  if (!job.ok) throw new Error("the job is not read");
  const plan = planJob(job.value, { thermo, trade }, { draws: 0 });
  if (!plan.ok) throw new Error("the job is not planned");
  const answer = { job: job.value, plan: plan.value };
  answers.set(document, answer);
  return answer;
}

/** A part of an answer on paper, for the way out named or the one chosen. */
function pageOf({ job, plan }: Answer, part: PlanPart, paper: Paper, programme?: string): string {
  const facts = { date: "2026-01-01", title: job.title, sampled: null };
  const named = programme === undefined ? facts : { ...facts, programme };
  return planHtml(plan, job, named, { part, paper });
}

/** Height of a part of a page as it is printed, against what a sheet holds on both papers [1]. */
async function filled(html: string, part: string): Promise<number> {
  await sheet.setContent(html);
  const height_px = await sheet.locator(part).evaluate((element) => element.scrollHeight);
  return height_px / ((255 / 25.4) * 96);
}

async function sheetsOf(html: string): Promise<number> {
  await sheet.setContent(html);
  return countSheets(await sheet.pdf({ preferCSSPageSize: true }));
}

function countSheets(pdf: Buffer): number {
  return pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
}

/** Width and height of the first sheet [mm]. */
function sizeOf(pdf: Buffer): readonly number[] {
  const box = /\/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]/.exec(pdf.toString("latin1"));
  return [Number(box?.[1]), Number(box?.[2])].map((points) => Math.round((points / 72) * 25.4));
}

const jobs = readdirSync(inProject("examples", "jobs")).filter((name) => /\.(?:json|yaml)$/.test(name));
const read = (name: string): unknown => parse(readFileSync(inProject("examples", "jobs", name), "utf8"));

/** A tank fuller than most: eight products, two feeds, two conditioners, long names. */
const FULL: unknown = {
  hardstand: 1,
  title: "Everything at once: a full tank for the long paddock behind the second dam, and the lane",
  water: {
    source: "The old bore by the second dam, pumped to the header tank",
    readings: [
      { parameter: "hardness", value: 480, unit: "mg/L as CaCO3" },
      { parameter: "alkalinity", value: 310, unit: "mg/L as CaCO3" },
      { parameter: "iron", value: 2, unit: "mg/L" },
      { parameter: "pH", value: 8.1 },
    ],
  },
  spray: { volume: "80 L/ha", tank: "3000 L", area: "100 ha", temperature: "15 °C", "holding time": "3 h" },
  mix: ["glyphosate", "2,4-D", "dicamba", "glufosinate", "MCPA", "clopyralid", "mecoprop-P", "bentazone"].map(
    (active) => ({ active, strength: "400 g/L", rate: "1 L/ha", formulation: "SL" }),
  ),
  conditioners: [{ chemistry: "ammonium sulfate" }, { chemistry: "citric acid" }],
  aim: { "free share": 0.97, confidence: 0.9, where: "on the leaf" },
};

describe.each([...jobs.map((name) => [name, read(name)] as const), ["a full tank", FULL] as const])(
  "%s on paper",
  (_name, document) => {
    test("has a card and a first page in plain words that fit one sheet, for every way out", async () => {
      const answer = answerTo(document);
      for (const { id } of answer.plan.programmes) {
        expect(await filled(pageOf(answer, "card", "auto", id), ".card"), id).toBeLessThanOrEqual(1);
        expect(await filled(pageOf(answer, "report", "auto", id), ".plain"), id).toBeLessThanOrEqual(1);
      }
    });
  },
);

describe.each(PAPERS)("on %s", (paper) => {
  test.each([
    ["a usual job", read("top-bore.yaml")],
    ["a full tank", FULL],
  ])("the card of %s is exactly one sheet and the report starts on the next", async (_name, document) => {
    const answer = answerTo(document);
    expect(await sheetsOf(pageOf(answer, "card", paper))).toBe(1);
    const report = await sheetsOf(pageOf(answer, "report", paper));
    expect(report).toBeGreaterThan(2);
    expect(await sheetsOf(pageOf(answer, "all", paper))).toBe(1 + report);
  });
});

test.each([
  { args: ["--card", "--paper", "Letter"], size: [216, 279], least: 1, most: 1 },
  { args: [], size: [210, 297], least: 4, most: 20 },
])("the command line prints a PDF with %j", async ({ args, size, least, most }) => {
  const file = join(folder, "plan.pdf");
  const run = await runBin(["plan", "examples/jobs/us-units.yaml", "--pdf", file, ...args]);
  expect([run.code, run.out], run.talk).toEqual([0, ""]);
  const pdf = readFileSync(file);
  expect(sizeOf(pdf)).toEqual(size);
  expect(countSheets(pdf)).toBeGreaterThanOrEqual(least);
  expect(countSheets(pdf)).toBeLessThanOrEqual(most);
});

test("without a browser nothing is written, and it is said what to do", async () => {
  const before = process.env["HARDSTAND_BROWSER"];
  process.env["HARDSTAND_BROWSER"] = join(folder, "no-such-browser");
  try {
    const file = join(folder, "none.pdf");
    const run = await runBin(["plan", "examples/jobs/us-units.yaml", "--pdf", file]);
    expect(run.code).toBe(2);
    expect(run.talk).toContain("HARDSTAND_BROWSER");
    expect(run.talk).toContain("--html FILE");
    expect(() => readFileSync(file)).toThrow();
  } finally {
    if (before === undefined) delete process.env["HARDSTAND_BROWSER"];
    else process.env["HARDSTAND_BROWSER"] = before;
  }
});
