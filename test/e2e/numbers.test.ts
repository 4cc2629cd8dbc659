import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage, SOON, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await setStage();
  page = await stage.open(1280, 900);
});
afterAll(async () => {
  await stage.close();
});

const CALCIUM = "#field-water-readings-0-value";
const hardness = (): Promise<string | null> =>
  page.locator("#section-water-facts .figure").first().textContent();
const echo = (): Promise<string | null> => page.locator(`${CALCIUM}-about`).textContent();

/** The first reading as the job that would be saved holds it. */
async function savedReading(): Promise<unknown> {
  const download = page.waitForEvent("download");
  await unfoldTools(page);
  await page.getByRole("button", { name: "Save job" }).click();
  const saved = JSON.parse(readFileSync(await (await download).path(), "utf8")) as {
    water: { readings: unknown[] };
  };
  return saved.water.readings[0];
}

test("both decimal signs give the same answer, with the echo in a second unit", async () => {
  await page.fill(CALCIUM, "184.5");
  expect(await echo()).toBe("= 4.604 mmol/L");
  // 184.5 / 40.078 mmol/L of calcium and 31 / 24.305 of magnesium, as CaCO3 of 100.086 g/mol.
  await expect.poll(hardness, SOON).toBe("588");
  await page.fill(CALCIUM, "99");
  await expect.poll(hardness, SOON).not.toBe("588");
  await page.fill(CALCIUM, "184,5");
  expect(await echo()).toBe("= 4.604 mmol/L");
  await expect.poll(hardness, SOON).toBe("588");
});

test.each(["1,250", "1.250"])("%s is asked, never guessed", async (text) => {
  await page.fill(CALCIUM, text);
  await page.locator(CALCIUM).blur();
  await page.waitForSelector('[data-state="blocked"]');
  const group = page.getByRole("group", { name: "Which number is meant" });
  expect(await group.getByRole("button").allTextContents()).toEqual(["1250", "1.25"]);
  await group.getByRole("button", { name: "1.25", exact: true }).click();
  expect(await page.inputValue(CALCIUM)).toBe("1.25");
  await page.waitForSelector('[data-state="done"]');
});

test("a limit, a range and a unit typed into the box are taken", async () => {
  for (const [typed, shown] of [
    ["<0,5", "= <0.0125 mmol/L"],
    ["80–120", "= 2–2.99 mmol/L"],
    ["2.3 mmol/L", "= 92.2 mg/L"],
  ] as const) {
    await page.fill(CALCIUM, typed);
    expect(await echo()).toBe(shown);
    await page.waitForSelector('[data-state="done"]');
  }
});

test("a change of unit is asked about, and the typed text is what is kept", async () => {
  await page.fill(CALCIUM, "92,0");
  const unit = page.getByLabel("Unit of Calcium");
  await unit.selectOption("mmol/L");
  const asked = page.getByRole("group", { name: "Unit changed" });
  await asked.getByRole("button", { name: "The same amount: 2.30 mmol/L" }).click();
  expect(await page.inputValue(CALCIUM)).toBe("2.30");
  expect(await savedReading()).toEqual({ parameter: "calcium", value: "92,0", unit: "mg/L" });
  await unit.selectOption("mg/L");
  await asked.getByRole("button", { name: "The same amount: 92,0 mg/L" }).click();
  expect(await page.inputValue(CALCIUM)).toBe("92,0");
  await unit.selectOption("mmol/L");
  await asked.getByRole("button", { name: "The same number: 92,0 mmol/L" }).click();
  expect(await savedReading()).toEqual({ parameter: "calcium", value: "92,0", unit: "mmol/L" });
});

test("a blank is not measured, which is not nought", async () => {
  await page.fill(CALCIUM, "");
  expect(await echo()).toBe("Blank: not measured.");
  expect(await savedReading()).toMatchObject({ parameter: "calcium", value: "" });
  // A blank is completed from what was measured; a nought leaves only the 31 mg/L of magnesium: 128 as CaCO3.
  await expect.poll(hardness, SOON).toBe("319");
  await page.fill(CALCIUM, "0");
  await expect.poll(hardness, SOON).toBe("128");
});
