import type { Page } from "playwright-core";
import { expect } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import { unfold, violationsInBrightLight, violationsInEveryLook } from "./look.ts";
import { SOON, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

const LONG = { timeout: 90_000 } as const;
const CALCIUM = "#field-water-readings-0-value:visible";

/** A screen in a state: how it is come to from where its address leads. */
export interface Scene {
  readonly address: "" | "#complaint" | "#flasks";
  /** What the page does before any script of its own. */
  readonly before?: () => void;
  readonly come: (page: Page) => Promise<unknown>;
  /** The part that is in this state, where the rest is as in another scene; all of it when left out. */
  readonly within?: string;
}

const PHONE = { width: 360, height: 740 } as const;
export const LAPTOP = { width: 1280, height: 900 } as const;

/** The page of somebody new in a scene. */
export async function sceneOf(
  stage: Stage,
  { address, before, come }: Scene,
  viewport: { width: number; height: number } = PHONE,
  tag = "en-GB",
): Promise<Page> {
  const context = await stage.newContext({ viewport });
  await context.addInitScript((kept) => {
    window.localStorage.setItem("hardstand language", kept);
  }, tag);
  if (before !== undefined) await context.addInitScript(before);
  const page = await context.newPage();
  await page.goto(`${stage.address}${address}`);
  await come(page);
  return page;
}

/** What is wrong with a scene in any look, bright light included. */
export async function violationsOfScene(stage: Stage, scene: Scene): Promise<readonly string[]> {
  const page = await sceneOf(stage, scene);
  const found = await violationsInEveryLook(page, scene.within);
  const inBrightLight = await violationsInBrightLight(page, scene.within);
  await page.context().close();
  return [...found, ...inBrightLight];
}

export const planned = (page: Page): Promise<unknown> => page.waitForSelector('[data-state="done"]', LONG);

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

export const complaintAnswered = (page: Page): Promise<unknown> =>
  page.waitForSelector('[data-complaint="done"]', LONG);

async function recordOpened(page: Page): Promise<void> {
  await page
    .getByLabel("Record file")
    .setInputFiles(inProject("examples/complaints/low-rate-hard-bore.yaml"));
  await expect.poll(() => page.inputValue("#complaint-title"), SOON).toContain("Ryegrass");
  await complaintAnswered(page);
  await unfold(page);
}

export const shown = (page: Page): Promise<unknown> => page.waitForSelector('[data-flasks="done"]', LONG);

/** A device without room: the browser refuses whatever is to be kept. */
function withoutRoom(): void {
  IDBObjectStore.prototype.put = () => {
    throw new DOMException("no room", "QuotaExceededError");
  };
}

/** The plan in every state it can be in. */
export const PLAN_SCENES: Readonly<Record<string, Scene>> = {
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
};

/** The other screens in every state they can be in. */
export const OTHER_SCENES: Readonly<Record<string, Scene>> = {
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
