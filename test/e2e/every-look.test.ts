import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import {
  builtInFlasks,
  builtInTrade,
  checkComplaint,
  flaskScript,
  planJob,
  readComplaint,
  readDemo,
  readJob,
  runDemo,
} from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { complaintHtml, flasksHtml, planHtml } from "../../src/report/index.ts";
import { brightLightOf, unfold, violationsOf } from "./look.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";
import {
  complaintAnswered,
  LAPTOP,
  OTHER_SCENES,
  planned,
  sceneOf,
  shown,
  violationsOfScene,
} from "./scenes.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

test.each(Object.entries(OTHER_SCENES))(
  "no rule of accessibility is broken in any look: %s",
  async (_name, scene) => {
    expect(await violationsOfScene(stage, scene)).toEqual([]);
  },
  300_000,
);

test.each([
  ["de", ""],
  ["fr", "#complaint"],
  ["es", "#flasks"],
] as const)(
  "nor in %s on a laptop, with everything unfolded",
  async (tag, address) => {
    const ready = { "": planned, "#complaint": complaintAnswered, "#flasks": shown }[address];
    const page = await sceneOf(stage, { address, come: ready }, LAPTOP, tag);
    await unfold(page);
    expect(await page.getAttribute("html", "lang")).toBe(tag);
    expect(await violationsOf(page)).toEqual([]);
    await page.context().close();
  },
  300_000,
);

/** Pages as the engine writes them, each by what it is. */
async function written(): Promise<Readonly<Record<string, string>>> {
  const [trade, thermo, flasks] = [builtInTrade(), builtInThermo(), builtInFlasks()];
  const given = (path: string): unknown => parse(readFileSync(inProject("examples", path), "utf8"));
  const of = <T>(read: { ok: true; value: T } | { ok: false }): T => {
    if (!read.ok) throw new Error("an example is not read");
    return read.value;
  };
  const date = "2026-01-01";
  const job = of(readJob(given("jobs/two-sources.yaml"), { trade }));
  const plan = of(planJob(job, { thermo, trade }));
  const complaint = of(readComplaint(given("complaints/low-rate-hard-bore.yaml"), { trade }));
  const context = { thermo, trade, flasks };
  const demo = of(readDemo(given("demos/iron-held-and-freed.yaml"), context));
  const script = of(flaskScript(demo, of(runDemo(demo, context)), context));
  const facts = { date, title: job.title, sampled: null };
  return {
    card: planHtml(plan, job, facts, { part: "card" }),
    report: planHtml(plan, job, facts, { part: "report" }),
    complaint: complaintHtml(of(checkComplaint(complaint, { thermo, trade })), { date }),
    "script of the flasks": flasksHtml(script),
  };
}

test("nor in what is printed, on paper and on a screen", async () => {
  const page = await (await stage.newContext({ viewport: { width: 794, height: 1123 } })).newPage();
  for (const [name, html] of Object.entries(await written())) {
    await page.setContent(html);
    for (const media of ["print", "screen"] as const) {
      await page.emulateMedia({ media });
      expect(await violationsOf(page), `${name}, ${media}`).toEqual([]);
    }
  }
  await page.context().close();
}, 300_000);

test.each([
  ["light", false],
  ["dark", false],
  ["dark", true],
] as const)(
  "nor where the page itself is printed, which is the card alone: %s, bright light %s",
  async (colorScheme, bright) => {
    const page = await sceneOf(stage, { address: "", come: planned });
    await brightLightOf(page).setChecked(bright);
    await page.emulateMedia({ media: "print", colorScheme });
    expect(await page.locator("main section[id]:visible").count()).toBe(1);
    expect(await violationsOf(page)).toEqual([]);
    await page.context().close();
  },
);
