import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const TITLE = "#field-title";
const CALCIUM = "#field-water-readings-0-value";
const SOON = { timeout: 30_000 } as const;

async function openJobs(page: Page): Promise<void> {
  await page.getByRole("button", { name: /^All jobs/ }).click();
  await page.waitForSelector(".job-list");
}

/** A page of another person, with nothing kept. */
async function other(): Promise<Page> {
  return (await stage.newContext()).newPage();
}

async function linkOf(page: Page): Promise<string> {
  await openJobs(page);
  await expect.poll(() => page.inputValue("#job-link"), SOON).toContain("#job1=");
  return page.inputValue("#job-link");
}

test("a link holds the whole job, and what it holds is never asked of a server", async () => {
  const page = await stage.visit(1280, 900);
  await page.fill(TITLE, "Ridge – Süd");
  await page.fill(CALCIUM, "<92,5");
  const link = await linkOf(page);
  expect(new URL(link).origin).toBe(new URL(stage.address).origin);

  const receiver = await other();
  const asked: string[] = [];
  receiver.on("request", (request) => asked.push(request.url()));
  await receiver.goto(link);
  await expect.poll(() => receiver.inputValue(TITLE), SOON).toBe("Ridge – Süd");
  expect(await receiver.inputValue(CALCIUM)).toBe("<92,5");
  expect(asked.filter((address) => address.includes("job1="))).toEqual([]);
  // Out of the address: a reload goes on with what was typed since.
  expect(receiver.url()).toBe(stage.address);
  await receiver.fill(TITLE, "Ridge, mine now");
  await receiver.waitForSelector('[data-keeping="kept"]');
  await receiver.reload();
  await expect.poll(() => receiver.inputValue(TITLE), SOON).toBe("Ridge, mine now");

  // Opened once more: beside the one that was changed. And again: it is there already.
  for (let time = 0; time < 2; time++) {
    await receiver.goto(link);
    await expect.poll(() => receiver.inputValue(TITLE), SOON).toBe("Ridge – Süd");
    await receiver.waitForSelector('[data-keeping="kept"]');
  }
  await openJobs(receiver);
  expect(await receiver.locator(".job-name").count()).toBe(2);
});

test("a link is pasted into a page that is open; a broken one is refused in words", async () => {
  const link = await linkOf(await stage.visit(1280, 900));
  const page = await stage.visit(1280, 900);
  await unfoldTools(page);
  await page.getByRole("button", { name: "Blank job" }).click();
  await openJobs(page);
  const open = async (text: string): Promise<void> => {
    await page.getByLabel("A link that was sent to you").fill(text);
    await page.getByRole("button", { name: "Open the link" }).click();
  };
  await open(link.slice(0, -20));
  await page.waitForSelector("text=cut short or changed on its way");
  expect(await page.inputValue(TITLE)).toBe("");
  await open(`Look at this: ${link}`);
  await page.waitForSelector("text=came with the link");
  expect(await page.inputValue(CALCIUM)).not.toBe("");
});

test("a job goes as a file to another device, with every text", async () => {
  const page = await stage.visit(1280, 900);
  await page.fill(TITLE, "Sent as a file");
  await page.fill(CALCIUM, "92,5");
  await openJobs(page);
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as a file" }).click();
  const saved = await download;
  expect(saved.suggestedFilename()).toBe("Sent-as-a-file.json");
  const receiver = await stage.visit(1280, 900);
  await receiver.getByLabel("Job file").setInputFiles({
    name: saved.suggestedFilename(),
    mimeType: "application/json",
    buffer: readFileSync(await saved.path()),
  });
  await expect.poll(() => receiver.inputValue(TITLE), SOON).toBe("Sent as a file");
  expect(await receiver.inputValue(CALCIUM)).toBe("92,5");
});
