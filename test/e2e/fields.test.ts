import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { builtInTrade, readJob } from "../../src/agronomy/index.ts";
import { overhang, smallControls, unfold } from "./look.ts";
import { setStage, SOON, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const WHOLE = fileURLToPath(new URL("../../src/web/job/whole-job.yaml", import.meta.url));

async function savedJob(page: Page): Promise<Record<string, unknown>> {
  const download = page.waitForEvent("download");
  await unfoldTools(page);
  await page.getByRole("button", { name: "Save job" }).click();
  return JSON.parse(readFileSync(await (await download).path(), "utf8")) as Record<string, unknown>;
}

async function openWhole(width: number): Promise<Page> {
  const page = await stage.visit(width, 740);
  await page.getByLabel("Job file").setInputFiles(WHOLE);
  await expect.poll(() => page.inputValue("#field-title"), SOON).toBe("Everything at once");
  return page;
}

test("a file that says everything is the same job when the page saves it", async () => {
  const page = await openWhole(1280);
  const trade = builtInTrade();
  const saved = readJob(await savedJob(page), { trade });
  expect(saved).toEqual(readJob(parse(readFileSync(WHOLE, "utf8")), { trade }));
  expect(saved.ok).toBe(true);
});

test("every field of a whole job fits 320 and 360 px, in bright light too, and is large enough", async () => {
  const page = await openWhole(360);
  await unfold(page, ".know");
  expect(await smallControls(page)).toEqual([]);
  expect(await overhang(page)).toBe(0);
  await page.getByLabel("Bright light").check();
  expect(await overhang(page)).toBe(0);
  await page.setViewportSize({ width: 320, height: 740 });
  expect(await overhang(page)).toBe(0);
});

/** Goes on with the keyboard until a field has it, as a person does who tabs through the form. */
async function tabTo(page: Page, id: string): Promise<void> {
  for (let i = 0; i < 150; i += 1) {
    if ((await page.evaluate(() => document.activeElement?.id ?? "")) === id) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`the keyboard does not reach ${id}`);
}

test("by keyboard alone, on a phone: an active by hand, a feed, a product by its label, a second water", async () => {
  const page = await stage.visit(360, 740);
  await unfoldTools(page);
  await page.getByRole("button", { name: "Blank job" }).click();
  await page.selectOption("#field-mix-0-active", { label: "not in the list: enter it by hand" });
  await page.focus("#field-mix-0-active");
  await tabTo(page, "field-mix-0-active-name");
  await page.keyboard.type("dichlorprop-P");
  await tabTo(page, "field-mix-0-active-molar-mass");
  await page.keyboard.type("235,06");
  await tabTo(page, "field-mix-0-active-pKa");
  await page.keyboard.type("3,0");
  await page.selectOption("#field-mix-0-active-affinity-class", { label: "phenoxy acid" });

  await page.getByRole("button", { name: "Add a leaf feed" }).press("Enter");
  await page.selectOption("#field-mix-1-feed", { label: "manganese sulfate" });
  await page.focus("#field-mix-1-feed");
  await tabTo(page, "field-mix-1-rate");
  await page.keyboard.type("2.5");

  await page.getByLabel("Only these").check();
  await page.getByRole("button", { name: "Add a product by its label" }).press("Enter");
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.id), SOON)
    .toBe("field-conditioners-1-product");
  await page.keyboard.type("Acid powder");
  await page.selectOption("#field-conditioners-1-composition-0-chemistry", { label: "citric acid" });
  await page.focus("#field-conditioners-1-composition-0-chemistry");
  await tabTo(page, "field-conditioners-1-composition-0-amount");
  await page.keyboard.type("40");

  await page.locator("summary", { hasText: "Other waters you could use" }).press("Enter");
  await page.getByRole("button", { name: "Add another water" }).press("Enter");
  await page.fill("#field-other-waters-0-source", "Rain tank");
  await page.fill("#field-other-waters-0-readings-0-value", "10");
  await page.fill("#field-other-waters-0-price", "2.50");

  expect(await savedJob(page)).toMatchObject({
    mix: [
      {
        active: {
          name: "dichlorprop-P",
          "molar mass": "235,06 g/mol",
          pKa: 3,
          "affinity class": "phenoxy-acid",
        },
      },
      { feed: "manganese-sulfate", rate: "2.5 kg/ha" },
    ],
    conditioners: [
      {},
      { product: "Acid powder", composition: [{ chemistry: "citric-acid", amount: "40 % w/w" }] },
    ],
    "other waters": [
      { source: "Rain tank", price: "2.50 /m3", readings: [{ parameter: "hardness", value: "10" }, {}, {}] },
    ],
  });
}, 240_000);

test("ticks tell “none of these” from “not said”", async () => {
  const page = await stage.visit(360, 740);
  await page.locator("summary", { hasText: "Other partners in the tank" }).click();
  const none = page.locator("#section-mix").getByLabel("None of these");
  await none.check();
  expect((await savedJob(page))["partners"]).toEqual([]);
  await page.getByLabel("urea", { exact: true }).check();
  expect((await savedJob(page))["partners"]).toEqual(["urea"]);
  expect(await none.isChecked()).toBe(false);
  await page.getByLabel("urea", { exact: true }).uncheck();
  expect(await savedJob(page)).not.toHaveProperty("partners");
});

test("what blocks the answer inside a fold is reached from beside the answer", async () => {
  const page = await stage.visit(360, 740);
  await page.locator("summary", { hasText: "More about the spray" }).click();
  await page.fill("#field-spray-season-area", "abc");
  await page.locator("summary", { hasText: "More about the spray" }).click();
  await page.waitForSelector('[data-state="blocked"]', { timeout: 60_000 });
  expect(await page.locator("summary", { hasText: "More about the spray" }).textContent()).toContain(
    "to look at",
  );
  await page.getByTestId("waiting").getByRole("link", { name: "Area of a season" }).click();
  expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-spray-season-area");
});

test("a key the form has no box for is shown, kept, and can be taken away and given back", async () => {
  const page = await stage.visit(1280, 900);
  await page.getByLabel("Job file").setInputFiles({
    name: "odd.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from("hardstand: 1\nspray: { volume: 100 L/ha, nozzles: [a, b] }\n"),
  });
  const kept = page.locator(".left-over");
  await expect.poll(() => kept.textContent(), SOON).toContain("nozzles");
  expect((await savedJob(page))["spray"]).toMatchObject({ nozzles: ["a", "b"] });
  await page.getByRole("button", { name: "Remove nozzles" }).click();
  expect((await savedJob(page))["spray"]).toEqual({ volume: "100 L/ha" });
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  expect((await savedJob(page))["spray"]).toMatchObject({ nozzles: ["a", "b"] });
});
