import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { builtInTrade, checkComplaint, readComplaint } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { complaintHeadline } from "../../src/report/index.ts";
import { overhang, smallControls, unfold } from "./look.ts";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const RECORD = fileURLToPath(new URL("../../examples/complaints/low-rate-hard-bore.yaml", import.meta.url));
const LONG = { timeout: 90_000 } as const;

async function openComplaint(width: number, height: number): Promise<Page> {
  const page = await (await stage.newContext({ viewport: { width, height } })).newPage();
  await page.goto(`${stage.address}#complaint`);
  await page.waitForSelector("#complaint-title", LONG);
  return page;
}

async function openRecord(page: Page): Promise<void> {
  await page.getByLabel("Record file").setInputFiles(RECORD);
  await expect.poll(() => page.inputValue("#complaint-title"), SOON).toContain("Ryegrass");
  await page.waitForSelector('[data-complaint="done"]', LONG);
}

test("a record of a file is answered as the command line answers it, and is never called proof", async () => {
  const page = await openComplaint(360, 740);
  await openRecord(page);
  const trade = builtInTrade();
  const record = readComplaint(parse(readFileSync(RECORD, "utf8")), { trade });
  if (!record.ok) throw new Error("record not read");
  const answer = checkComplaint(record.value, { thermo: builtInThermo(), trade });
  if (!answer.ok) throw new Error("record not answered");
  const said = page.getByTestId("complaint-headline");
  await expect.poll(() => said.textContent(), LONG).toContain(complaintHeadline(answer.value));
  expect(await said.textContent()).toContain("This is no proof.");
  expect(await page.locator(".follows .order > li").count()).toBe(answer.value.causes.length);

  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the record" }).click();
  const saved: unknown = JSON.parse(readFileSync(await (await download).path(), "utf8"));
  expect(readComplaint(saved, { trade })).toEqual(record);
});

test("a key is answered without ranges at once, and only the last of a row of keys with them", async () => {
  const page = await openComplaint(360, 740);
  await openRecord(page);
  const engine = page.workers().at(-1)!;
  await engine.evaluate(() => {
    const said: { id: number; isWhole: boolean }[] = [];
    const post = self.postMessage.bind(self);
    Object.assign(self, {
      said,
      postMessage: (message: { type: string; id: number; isWhole: boolean }) => {
        if (message.type === "complaint") said.push({ id: message.id, isWhole: message.isWhole });
        post(message);
      },
    });
  });
  await page.locator("#field-water-readings-0-value").focus();
  for (const key of ["End", "1", "2", "Backspace", "Backspace", "3", "4"]) await page.keyboard.press(key);
  await page.waitForSelector('[data-complaint="working"]');
  await page.waitForSelector('[data-complaint="done"]', LONG);
  const said = await engine.evaluate(
    () => (self as unknown as { said: { id: number; isWhole: boolean }[] }).said,
  );
  const last = said.at(-1)!;
  expect(said.slice(-2)).toEqual([
    { ...last, isWhole: false },
    { ...last, isWhole: true },
  ]);
  expect(said.filter(({ isWhole }) => isWhole).length).toBeLessThan(3);
  expect(said.filter(({ isWhole }) => !isWhole).length).toBeGreaterThan(3);
});

test("on a phone: large enough, nothing sideways at 320 px, kept over a reload", async () => {
  const page = await openComplaint(360, 740);
  await openRecord(page);
  await unfold(page);
  expect(await smallControls(page)).toEqual([]);
  expect(await overhang(page)).toBe(0);
  await page.setViewportSize({ width: 320, height: 740 });
  expect(await overhang(page)).toBe(0);
  await page.reload();
  await page.waitForSelector("#complaint-title", LONG);
  expect(await page.inputValue("#complaint-title")).toContain("Ryegrass");
});

test("by keyboard: a conditioner that went in, what was seen, a cause excluded; then an undo", async () => {
  const page = await openComplaint(360, 740);
  // The choices come with the engine.
  await page.waitForFunction(
    () => document.querySelectorAll("#field-seen-pattern option").length > 1,
    null,
    LONG,
  );
  await page.getByRole("button", { name: "Add a conditioner used" }).press("Enter");
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.id), SOON)
    .toBe("field-used-0-chemistry");
  await page.keyboard.type("citric");
  await page.locator("#field-used-0-dose").focus();
  await page.keyboard.type("2");
  await page.locator("#field-seen-pattern").focus();
  await page.keyboard.type("str");
  await page.locator("#field-checked-weed-and-stage").focus();
  await page.keyboard.type("ex");
  const saved = async (): Promise<unknown> => {
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save the record" }).press("Enter");
    return JSON.parse(readFileSync(await (await download).path(), "utf8"));
  };
  expect(await saved()).toMatchObject({
    used: [{ chemistry: "citric-acid", dose: "2 kg/100 L" }],
    seen: { pattern: "strips" },
    checked: { excluded: ["weed and stage"] },
  });
  await page.getByRole("button", { name: "Remove citric acid" }).press("Enter");
  expect(await saved()).not.toHaveProperty("used");
  await page.getByRole("button", { name: "Undo", exact: true }).press("Enter");
  expect(await saved()).toMatchObject({ used: [{ chemistry: "citric-acid" }] });
});
