import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { builtInFlasks, builtInTrade, readDemo, runDemo } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { overhang, smallControls } from "./look.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** Opens the flasks by their own address and waits until they are computed. */
async function openFlasks(width: number, height: number): Promise<Page> {
  const page = await (await stage.newContext({ viewport: { width, height } })).newPage();
  await page.goto(`${stage.address}#flasks`);
  await page.waitForSelector('[data-flasks="done"]');
  return page;
}

/** Colour of the last step of every flask, as the engine gives it. */
function computed(): string[] {
  const text = readFileSync(
    new URL("../../examples/demos/iron-held-and-freed.yaml", import.meta.url),
    "utf8",
  );
  const context = { thermo: builtInThermo(), trade: builtInTrade(), flasks: builtInFlasks() };
  const demo = readDemo(parse(text), context);
  if (!demo.ok) throw new Error("not read");
  const run = runDemo(demo.value, context, { draws: 0 });
  if (!run.ok) throw new Error("not computed");
  return run.value.flasks.map(({ steps }) => steps.at(-1)!.colour.hex);
}

const drawnColours = (page: Page): Promise<string[]> =>
  page
    .locator('.flasks-drawing linearGradient stop[offset="0.3"]')
    .evaluateAll((stops: readonly { getAttribute(name: string): string | null }[]) =>
      stops.map((stop) => stop.getAttribute("stop-color") ?? ""),
    );

test("the ready demonstration is drawn in the colours the engine gives, named in words", async () => {
  const page = await openFlasks(1280, 900);
  expect(await drawnColours(page)).toEqual(computed());
  const words = (await page.locator(".flasks-drawing svg").textContent()) ?? "";
  for (const word of ["dark violet-red", "light pink", "almost clear"]) expect(words).toContain(word);
  expect(await page.getByRole("status").first().textContent()).toContain("From dark to light: a. metal");
});

test("the flasks and the spray plan lead to each other", async () => {
  const page = await stage.open(1280, 900);
  await page.getByRole("link", { name: "Flasks" }).click();
  await page.waitForSelector('[data-flasks="done"]');
  await page.getByRole("link", { name: "Back to the spray plan" }).click();
  await page.waitForSelector('[data-state="done"]');
});

test("the slider goes back to clear water and forward step by step", async () => {
  const page = await openFlasks(1280, 900);
  const slider = page.getByRole("slider");
  await slider.fill("0");
  expect(new Set(await drawnColours(page))).toEqual(new Set(["#ffffff"]));
  expect(await page.locator(".step-slider").textContent()).toContain("Step 0 of 5");
  await slider.press("End");
  expect(await drawnColours(page)).toEqual(computed());
});

test("every ready demonstration can be picked", async () => {
  const page = await openFlasks(1280, 900);
  const select = page.getByLabel("Demonstration");
  const names = await select.locator("option").allTextContents();
  expect(names.length).toBeGreaterThanOrEqual(8);
  for (const name of names.slice(1)) {
    const before = await page.locator(".flasks-main h2").textContent();
    await select.selectOption({ label: name });
    await expect
      .poll(() => page.locator(".flasks-main h2").textContent(), { timeout: 20_000 })
      .not.toBe(before);
    await page.waitForSelector('[data-flasks="done"]');
    expect(await page.locator(".message-error").count(), name).toBe(0);
  }
}, 90_000);

test("a colour seen is compared and explained", async () => {
  const page = await openFlasks(1280, 900);
  await page.getByText("Check the show").click();
  await page.getByLabel("Colour of b. sequestrant first").fill("#80004a");
  await page.getByRole("button", { name: "Compare with what was computed" }).click();
  const verdict = page.getByTestId("seen-verdict");
  await expect.poll(() => verdict.textContent(), { timeout: 20_000 }).toContain("conditioner left out");
});

test("the script can be saved, and a file that is no demonstration is said to be none", async () => {
  const page = await openFlasks(1280, 900);
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the script to print" }).click();
  const script = readFileSync(await (await download).path(), "utf8");
  expect(script).toContain("Stocks to make at home");
  const printed = await (await stage.newContext()).newPage();
  await printed.setContent(script);
  const pdf = await printed.pdf({ preferCSSPageSize: true, printBackground: true });
  expect((pdf.toString("latin1").match(/\/Type\s*\/Page[^s]/g) ?? []).length).toBe(2);
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({ name: "x.yaml", mimeType: "text/yaml", buffer: Buffer.from("hardstand: 1\n") });
  await page.waitForSelector('[data-flasks="blocked"]');
  expect(await page.locator(".message-error").first().textContent()).toContain("hardstand-flasks");
});

test("from flask to farm: the conditioners of the flasks in the open job's water, with what is not shown", async () => {
  const page = await openFlasks(360, 740);
  await page.locator(".farm-panel summary").press("Enter");
  const farm = page.getByTestId("farm");
  await farm.waitFor({ timeout: 100_000 });
  const words = (await farm.textContent()) ?? "";
  expect(words).toContain("Water: Top bore, of the open job.");
  expect(words).toContain("The flasks show iron in acid. A tank holds calcium and magnesium near pH 5");
  const rows = await farm.locator("tbody th").allTextContents();
  expect(rows.some((row) => row.startsWith("ammonium sulfate"))).toBe(true);
  expect(rows.some((row) => row.startsWith("disodium EDTA"))).toBe(true);
  expect(rows.some((row) => row.startsWith("citric acid"))).toBe(false);
});

test("the shopping list, the stocks, the amounts for each flask and the slips are on the page", async () => {
  const page = await openFlasks(360, 740);
  await page.locator(".bench-panel summary").press("Enter");
  const bench = page.getByTestId("bench");
  await bench.waitFor({ timeout: 100_000 });
  expect(await bench.locator(".slip h5").allTextContents()).toHaveLength(computed().length);
  const words = (await bench.textContent()) ?? "";
  for (const part of ["2 mL of hydrochloric acid", "Tap water instead of deionised", "goggles"])
    expect(words).toContain(part);
  expect(await smallControls(page)).toEqual([]);
  await page.setViewportSize({ width: 320, height: 740 });
  expect(await overhang(page)).toBe(0);
}, 150_000);

test.each([
  [360, 740],
  [1280, 900],
])("no sideways scrolling at %i × %i", async (width, height) => {
  const page = await openFlasks(width, height);
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
});
