import { afterAll, beforeAll, expect, test } from "vitest";
import { violationsOf } from "./look.ts";
import { setStage, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const SIZES = [
  [360, 740],
  [1280, 900],
] as const;

test.each(SIZES)("no accessibility violation at %i × %i: result, error, empty", async (width, height) => {
  const page = await stage.open(width, height);
  expect(await violationsOf(page)).toEqual([]);
  await page.fill("#field-water-readings-0-value", "-5");
  await page.waitForSelector('[data-state="blocked"]');
  expect(await violationsOf(page)).toEqual([]);
  await unfoldTools(page);
  await page.getByRole("button", { name: "Blank job" }).click();
  expect(await violationsOf(page)).toEqual([]);
});
