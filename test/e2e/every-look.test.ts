import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
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
import {
  brightLightOf,
  unfold,
  violationsInBrightLight,
  violationsInEveryLook,
  violationsOf,
} from "./look.ts";
import { setStage, SOON, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const LONG = { timeout: 90_000 } as const;
const CALCIUM = "#field-water-readings-0-value:visible";

/** A screen in a state: how it is come to from where its address leads. */
interface Scene {
  readonly address: "" | "#complaint" | "#flasks";
  /** What the page does before any script of its own. */
  readonly before?: () => void;
  readonly come: (page: Page) => Promise<unknown>;
  /** The part that is in this state, where the rest is as in another scene; all of it when left out. */
  readonly within?: string;
}

const PHONE = { width: 360, height: 740 } as const;
const LAPTOP = { width: 1280, height: 900 } as const;

/** The page of somebody new in a scene. */
async function sceneOf(
  { address, before, come }: Scene,
  viewport: { width: number; height: number } = PHONE,
  tag = "en-GB",
): Promise<Page> {
  const context = await stage.browser.newContext({ viewport });
  await context.addInitScript((kept) => {
    window.localStorage.setItem("hardstand language", kept);
  }, tag);
  if (before !== undefined) await context.addInitScript(before);
  const page = await context.newPage();
  await page.goto(`${stage.address}${address}`);
  await come(page);
  return page;
}

const planned = (page: Page): Promise<unknown> => page.waitForSelector('[data-state="done"]', LONG);

/** A job that says everything a job can say. */
async function wholePlanned(page: Page): Promise<void> {
  await page.getByLabel("Job file").setInputFiles(inProject("src/web/job/whole-job.yaml"));
  await expect.poll(() => page.inputValue("#field-title"), SOON).toBe("Everything at once");
  await planned(page);
  await unfold(page);
  await page.waitForSelector('[data-testid="workings"] .sums', LONG);
}

async function sheetOpened(page: Page): Promise<void> {
  await planned(page);
  await page.getByText("Paste or open a lab sheet").click();
  await page.waitForSelector("#sheet-text");
}

async function jobsOpened(page: Page): Promise<void> {
  await page.waitForSelector("#field-title");
  await page.getByRole("button", { name: /^All jobs/ }).click();
  await page.waitForSelector(".job-list");
}

const complaintAnswered = (page: Page): Promise<unknown> =>
  page.waitForSelector('[data-complaint="done"]', LONG);

async function recordOpened(page: Page): Promise<void> {
  await page
    .getByLabel("Record file")
    .setInputFiles(inProject("examples/complaints/low-rate-hard-bore.yaml"));
  await expect.poll(() => page.inputValue("#complaint-title"), SOON).toContain("Ryegrass");
  await complaintAnswered(page);
  await unfold(page);
}

const shown = (page: Page): Promise<unknown> => page.waitForSelector('[data-flasks="done"]', LONG);

/** A device without room: the browser refuses whatever is to be kept. */
function withoutRoom(): void {
  IDBObjectStore.prototype.put = () => {
    throw new DOMException("no room", "QuotaExceededError");
  };
}

/** Every screen in every state it can be in. */
const SCENES: Readonly<Record<string, Scene>> = {
  "a plan with everything unfolded": { address: "", come: wholePlanned },
  "a plan that something blocks": {
    address: "",
    come: async (page) => {
      await planned(page);
      await unfold(page, ".follows");
      await page.waitForSelector('[data-testid="workings"] figure', LONG);
      await page.fill(CALCIUM, "-5");
      await page.waitForSelector('[data-state="blocked"]', LONG);
    },
  },
  "a blank plan": {
    address: "",
    come: async (page) => {
      await planned(page);
      await unfoldTools(page);
      await page.getByRole("button", { name: "Blank job" }).click();
      await page.waitForSelector('[data-state="blocked"]', LONG);
      await unfold(page, ".know");
    },
  },
  "a sheet that leaves things to ask": {
    address: "",
    within: ".sheet",
    come: async (page) => {
      await sheetOpened(page);
      await page.fill(
        "#sheet-text",
        "Sample: Hill bore\nCalcium 1,250 mg/L\nNitrate 12 mg/L\nArsenic <1 µg/L\nSulfate 12",
      );
      await page.waitForSelector('[data-testid="sheet-preview"]', LONG);
      await page.waitForSelector(".sheet .message-warning");
    },
  },
  "a sheet in a file that cannot be read": {
    address: "",
    within: ".sheet",
    come: async (page) => {
      await sheetOpened(page);
      await page.setInputFiles('input[aria-label="Sheet file"]', {
        name: "photo.jpg",
        mimeType: "image/jpeg",
        buffer: Buffer.from([255, 216, 255, 224, 0, 16]),
      });
      await page.waitForSelector(".sheet [role=alert]");
    },
  },
  "several jobs, one of them deleted": {
    address: "",
    within: ".jobs",
    come: async (page) => {
      await planned(page);
      await jobsOpened(page);
      await page.fill(
        "#field-title",
        "A title that is long enough to need more than one line on a telephone",
      );
      for (const name of [/^Duplicate/, /^Duplicate/, /^Delete/])
        await page.getByRole("button", { name }).first().click();
      await expect.poll(() => page.inputValue("#job-link"), SOON).toContain("#job1=");
      await page.locator(".job-list", { hasText: "in 100 free" }).waitFor(LONG);
    },
  },
  "jobs on a device that has no room": {
    address: "",
    before: withoutRoom,
    within: ".jobs",
    come: async (page) => {
      await planned(page);
      await jobsOpened(page);
      await page.fill("#field-title", "No room for this");
      await page.waitForSelector('[data-keeping="full"]');
      await page.locator(".job-list", { hasText: "in 100 free" }).waitFor(LONG);
    },
  },
  "a complaint answered": { address: "#complaint", come: recordOpened },
  "a complaint that something blocks": {
    address: "#complaint",
    come: async (page) => {
      await complaintAnswered(page);
      await page.fill(CALCIUM, "-5");
      await page.waitForSelector('[data-complaint="blocked"]', LONG);
    },
  },
  "a complaint begun from the open job": {
    address: "#complaint",
    come: async (page) => {
      await page.getByRole("button", { name: "Begin from the open job" }).click();
      await complaintAnswered(page);
      await page.getByLabel("Record file").setInputFiles({
        name: "job.yaml",
        mimeType: "text/yaml",
        buffer: Buffer.from("hardstand: 1\n"),
      });
      await page.getByRole("alert").waitFor();
    },
  },
  "flasks with everything unfolded": {
    address: "#flasks",
    come: async (page) => {
      await shown(page);
      await unfold(page);
      await page.getByTestId("bench").waitFor(LONG);
      await page.getByTestId("farm").waitFor(LONG);
      await page.getByLabel("Colour of b. sequestrant first").fill("#80004a");
      await page.getByRole("button", { name: "Compare with what was computed" }).click();
      await page.getByTestId("seen-verdict").waitFor(LONG);
    },
  },
  "a file that is no demonstration": {
    address: "#flasks",
    come: async (page) => {
      await shown(page);
      await page
        .locator('.toolbar input[type="file"]')
        .first()
        .setInputFiles({ name: "x.yaml", mimeType: "text/yaml", buffer: Buffer.from("hardstand: 1\n") });
      await page.locator(".message-error").first().waitFor(LONG);
    },
  },
  "flasks, large for a projector": {
    address: "#flasks",
    come: async (page) => {
      await shown(page);
      await page.getByRole("button", { name: "Large, for a projector" }).click();
    },
  },
};

test.each(Object.entries(SCENES))(
  "no rule of accessibility is broken in any look: %s",
  async (_name, scene) => {
    const page = await sceneOf(scene);
    expect(await violationsInEveryLook(page, scene.within)).toEqual([]);
    expect(await violationsInBrightLight(page, scene.within)).toEqual([]);
    await page.context().close();
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
    const page = await sceneOf({ address, come: ready }, LAPTOP, tag);
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
  const page = await (await stage.browser.newContext({ viewport: { width: 794, height: 1123 } })).newPage();
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
    const page = await sceneOf({ address: "", come: planned });
    await brightLightOf(page).setChecked(bright);
    await page.emulateMedia({ media: "print", colorScheme });
    expect(await page.locator("main section[id]:visible").count()).toBe(1);
    expect(await violationsOf(page)).toEqual([]);
    await page.context().close();
  },
);
