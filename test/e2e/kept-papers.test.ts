import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";
import { newProfile } from "./profile.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const TITLE = "#complaint-title";
const kept = (page: Page): Promise<unknown> => page.waitForSelector('[data-keeping="kept"]');

test("a record of a complaint loses one keystroke at most when the browser is killed in the middle of a word", async () => {
  const profile = newProfile();
  try {
    const first = await profile.visit(`${stage.address}#complaint`);
    await first.page.fill(TITLE, "");
    await kept(first.page);
    const word = "ryegrass behind the second dam";
    await first.page.locator(TITLE).pressSequentially(word, { delay: 100 });
    await first.kill();
    const second = await profile.visit(`${stage.address}#complaint`);
    await second.page.waitForSelector(TITLE);
    const found = await second.page.inputValue(TITLE);
    expect(word.startsWith(found), found).toBe(true);
    expect(found.length).toBeGreaterThanOrEqual(word.length - 1);
    await second.kill();
  } finally {
    await profile.remove();
  }
});

test("what was taken from a record comes back after a reload", async () => {
  const page = await (await stage.newContext()).newPage();
  await page.goto(`${stage.address}#complaint`);
  await page.fill(TITLE, "Stripes in the north block");
  await page.fill("#field-water-readings-0-value", "9,2 o'clock");
  await page.getByRole("button", { name: "Remove Calcium" }).click();
  await page.fill("#field-water-source", "dam");
  await kept(page);
  await page.reload();
  await page.waitForSelector(TITLE);
  expect(await page.inputValue(TITLE)).toBe("Stripes in the north block");
  expect(await page.inputValue("#field-water-readings-0-value")).not.toBe("9,2 o'clock");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect(await page.inputValue("#field-water-readings-0-value")).toBe("9,2 o'clock");
  await page.context().close();
});

test("a demonstration of one's own is there again when the browser was killed after it was opened", async () => {
  const text = readFileSync(inProject("examples", "demos", "salicylate.yaml"), "utf8").replace(
    /^title: .*$/m,
    "title: Shown in the shed",
  );
  const profile = newProfile();
  try {
    const first = await profile.visit(`${stage.address}#flasks`);
    await first.page.waitForSelector('[data-flasks="done"]');
    await first.page
      .locator('input[type="file"]')
      .first()
      .setInputFiles({ name: "shed.yaml", mimeType: "text/yaml", buffer: Buffer.from(text) });
    const title = (page: Page): Promise<string | null> =>
      page.locator(".flasks-main h2").first().textContent();
    await expect.poll(() => title(first.page), SOON).toBe("Shown in the shed");
    await kept(first.page);
    await first.kill();
    const second = await profile.visit(`${stage.address}#flasks`);
    await second.page.waitForSelector('[data-flasks="done"]');
    expect(await title(second.page)).toBe("Shown in the shed");
    await second.kill();
  } finally {
    await profile.remove();
  }
});
