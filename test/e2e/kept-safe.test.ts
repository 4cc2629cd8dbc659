import { readFileSync } from "node:fs";
import type { Download, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { setStage, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";
import { newProfile } from "./profile.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const SOURCE = "#field-water-source";
const TITLE = "#field-title";
const SOON = { timeout: 30_000 } as const;

async function openJobs(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^All jobs/ }).click();
  await page.waitForSelector(".job-list");
}

async function kept(page: Page, timeout = 30_000): Promise<void> {
  await page.waitForSelector('[data-keeping="kept"]', { timeout });
}

/** How long a browser may go by the room it last looked up, before it looks again: about half a minute, and some more. */
const LOOKED_UP = 90_000;

/** Names of the jobs in the list, as shown. */
async function names(page: Page): Promise<string[]> {
  const shown = await page.locator(".job-name").allTextContents();
  return shown.map((name) => name.replace(/^Open: /, "")).sort();
}

async function savedText(page: Page, button: RegExp): Promise<string> {
  const download: Promise<Download> = page.waitForEvent("download");
  await page.getByRole("button", { name: button }).first().click();
  return readFileSync(await (await download).path(), "utf8");
}

test("a browser killed in the middle of a word loses one keystroke at most", async () => {
  const profile = newProfile();
  try {
    const first = await profile.visit(stage.address);
    await first.page.waitForSelector(SOURCE);
    await first.page.fill(SOURCE, "");
    await kept(first.page);
    const word = "tank by the old shed, east side";
    await first.page.locator(SOURCE).pressSequentially(word, { delay: 100 });
    await first.kill();
    const second = await profile.visit(stage.address);
    await second.page.waitForSelector(SOURCE);
    const found = await second.page.inputValue(SOURCE);
    expect(word.startsWith(found), found).toBe(true);
    expect(found.length).toBeGreaterThanOrEqual(word.length - 1);
    await second.kill();
  } finally {
    await profile.remove();
  }
});

test("each keystroke is there after a reload, also one that makes no sense, and its undo too", async () => {
  const page = await stage.visit(1280, 900);
  const first = await page.inputValue("#field-water-readings-0-value");
  await page.locator("#field-water-readings-1-value").fill("9,2 o'clock");
  await page
    .getByRole("button", { name: /^Remove / })
    .first()
    .click();
  await kept(page);
  await page.reload();
  await page.waitForSelector(SOURCE);
  expect(await page.inputValue("#field-water-readings-0-value")).toBe("9,2 o'clock");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect(await page.inputValue("#field-water-readings-0-value")).toBe(first);
  expect(await page.inputValue("#field-water-readings-1-value")).toBe("9,2 o'clock");
});

test("a new job leaves the others alone; a reload opens the one that was open", async () => {
  const page = await stage.visit(1280, 900);
  await page.fill(TITLE, "North block");
  await unfoldTools(page);
  await page.getByRole("button", { name: "Blank job" }).click();
  expect(await page.inputValue(TITLE)).toBe("");
  await page.fill(TITLE, "South block");
  await kept(page);
  await page.reload();
  await page.waitForSelector(TITLE);
  expect(await page.inputValue(TITLE)).toBe("South block");
  await openJobs(page);
  expect(await names(page)).toEqual(["North block", "South block"]);
  await page.getByRole("button", { name: "North block", exact: true }).click();
  expect(await page.inputValue(TITLE)).toBe("North block");
  await page.getByRole("button", { name: "Duplicate North block" }).click();
  expect(await page.inputValue(TITLE)).toBe("North block (copy)");
  expect(await names(page)).toEqual(["North block", "North block (copy)", "South block"]);
});

test("a deleted job comes back after a reload", async () => {
  const page = await stage.visit(1280, 900);
  await page.fill(TITLE, "West block");
  await page.fill(SOURCE, "dam");
  await openJobs(page);
  await page.getByRole("button", { name: "Delete West block" }).click();
  await expect.poll(() => page.inputValue(TITLE), SOON).toBe("");
  await kept(page);
  await page.reload();
  await page.waitForSelector(TITLE);
  await openJobs(page);
  expect(await names(page)).not.toContain("West block");
  await page.getByRole("button", { name: "Undo: “West block” deleted" }).click();
  await page.getByRole("button", { name: "West block", exact: true }).click();
  expect(await page.inputValue(SOURCE)).toBe("dam");
});

test("all jobs go out as one file and come in on another device, each text as typed", async () => {
  const page = await stage.visit(1280, 900);
  await page.fill(TITLE, "Ridge");
  await page.fill("#field-water-readings-0-value", " 92,5mg/L");
  await unfoldTools(page);
  await page.getByRole("button", { name: "Blank job" }).click();
  await page.fill(TITLE, "Flat");
  await openJobs(page);
  const text = await savedText(page, /^Save a copy/);
  await page.waitForSelector("text=last copy today");

  const other = await stage.visit(1280, 900);
  await openJobs(other);
  const copy = { name: "copy.json", mimeType: "application/json", buffer: Buffer.from(text) };
  await other.getByLabel("Copy of all jobs").setInputFiles(copy);
  await other.waitForSelector("text=2 jobs taken in.");
  await other.getByRole("button", { name: "Ridge", exact: true }).click();
  expect(await other.inputValue("#field-water-readings-0-value")).toBe(" 92,5mg/L");

  // Typed over here, then taken in again: both are kept.
  await other.fill(SOURCE, "changed here");
  await other.getByLabel("Copy of all jobs").setInputFiles(copy);
  await other.waitForSelector("text=1 job differed from yours; both are kept.");
  expect(await names(other)).toEqual(["Flat", "Ridge", "Ridge"]);

  // Taking it in is one step to undo.
  await other.getByRole("button", { name: "Undo: 1 job taken in from a file" }).click();
  expect(await names(other)).toEqual(["Flat", "Ridge"]);
});

test("a file that is no copy is refused in words", async () => {
  const page = await stage.visit(1280, 900);
  await openJobs(page);
  const give = (text: string): Promise<void> =>
    page
      .getByLabel("Copy of all jobs")
      .setInputFiles({ name: "x.json", mimeType: "application/json", buffer: Buffer.from(text) });
  await give("{");
  await page.waitForSelector("text=This file cannot be read as JSON.");
  await give(`{"hardstandJobs": 9, "jobs": []}`);
  await page.waitForSelector("text=made by a newer Hardstand");
  expect(await names(page)).toHaveLength(1);
});

/** On a full device the record of a complaint and a demonstration are told as well, with a copy of each. */
async function refusedElsewhere(page: Page): Promise<void> {
  const told = async (): Promise<void> => {
    await page.waitForSelector('[data-keeping="full"]:visible', SOON);
    expect(await page.getByRole("alert").textContent()).toContain("no room left");
  };
  await page.goto(`${stage.address}#complaint`);
  await page.fill("#complaint-title", "Nowhere to go");
  await told();
  expect(await savedText(page, /^Save the record/)).toContain("Nowhere to go");
  await page.goto(`${stage.address}#flasks`);
  const own = "hardstand-flasks: 1\ntitle: no room\n";
  await page
    .locator('.flasks-page input[type="file"]')
    .first()
    .setInputFiles({ name: "own.yaml", mimeType: "text/yaml", buffer: Buffer.from(own) });
  await told();
  expect(JSON.parse(await savedText(page, /^Save the demonstration/))).toEqual(parse(own));
  await page.goto(`${stage.address}#plan`);
}

test("a full device is said, and a copy holds what could not be kept", async () => {
  const context = await stage.newContext();
  const page = await context.newPage();
  const devtools = await context.newCDPSession(page);
  const { origin } = new URL(stage.address);
  await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  await page.goto(stage.address);
  // The browser looks up its room in its own time: what it takes before that is kept, as it should be.
  let tried = 0;
  const refused = async (): Promise<string | null> => {
    await page.fill(TITLE, `No room for this, ${String((tried += 1))}`);
    await page.waitForSelector('[data-keeping]:not([data-keeping="keeping"])');
    return page.getAttribute("[data-keeping]", "data-keeping");
  };
  await expect.poll(refused, { timeout: LOOKED_UP, interval: 500 }).toBe("full");
  expect(await page.getByRole("alert").textContent()).toContain("no room left");
  const copy = JSON.parse(await savedText(page, /^Save a copy of all jobs/)) as { jobs: { title: string }[] };
  expect(copy.jobs[0]?.title).toBe(await page.inputValue(TITLE));
  await refusedElsewhere(page);
  await devtools.send("Storage.overrideQuotaForOrigin", { origin });
  await page.fill(TITLE, "Room again");
  await kept(page, LOOKED_UP);
  await page.reload();
  await page.waitForSelector(TITLE);
  expect(await page.inputValue(TITLE)).toBe("Room again");
}, 300_000);

test("two windows of one device show the same job, and neither takes from the other", async () => {
  const page = await stage.visit(1280, 900);
  await page.fill(TITLE, "One");
  await kept(page);
  const second = await page.context().newPage();
  await second.goto(page.url());
  await second.waitForSelector(TITLE);
  expect(await second.inputValue(TITLE)).toBe("One");
  await second.fill(SOURCE, "typed in the second");
  await expect.poll(() => page.inputValue(SOURCE), SOON).toBe("typed in the second");
  await page.fill(TITLE, "Two");
  await expect.poll(() => second.inputValue(TITLE), SOON).toBe("Two");
  expect(await page.inputValue(SOURCE)).toBe("typed in the second");
});

test.each([
  [360, 740],
  [1280, 900],
])("the list of jobs fits at %i × %i", async (width, height) => {
  const page = await stage.visit(width, height);
  await page.fill(TITLE, "A title that is long enough to need more than one line on a telephone");
  await openJobs(page);
  await page
    .getByRole("button", { name: /^Duplicate/ })
    .first()
    .click();
  await page
    .getByRole("button", { name: /^Delete/ })
    .first()
    .click();
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
});
