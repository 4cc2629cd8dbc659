import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Page } from "playwright-core";
import { violationsOf } from "./look.ts";
import { setStage, SOON } from "./page.ts";
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

const panel = '[data-testid="workings"]';

test("the dose curve of the picked way is drawn with the aim and the rule, its numbers behind it", async () => {
  await page.locator(`${panel} > summary`).click();
  await page.waitForSelector(`${panel} figure`);
  const said = await page.locator(`${panel} figure desc`).textContent();
  expect(said).toMatch(/On the leaf \S+ in 100 free with nothing added/);
  expect(said).toMatch(/The published rule gives [\d.]+ g\/L/);
  expect(await page.locator(`${panel} figure .aim`).count()).toBe(1);
  expect(await page.locator(`${panel} figure .rule-line`).count()).toBe(1);
  const table = page.locator(`${panel} [aria-label="The points of the curve"]`);
  expect(await table.locator("tbody tr").count()).toBeGreaterThan(10);
  expect(await table.textContent()).toContain("this dose");
});

test("the free share opens to its forms, constants, numbers put in and sources", async () => {
  const table = page.locator(`${panel} [aria-label="Where glyphosate is, in the tank"]`);
  const rows = await table.locator("tbody tr").allTextContents();
  expect(rows.length).toBeGreaterThan(4);
  expect(rows.some((row) => /calcium/.test(row) && /10\^\(/.test(row))).toBe(true);
  const shown = await page.locator(`${panel} .sums strong`).first().textContent();
  const tank = await page.locator("#section-answers .answer .figure").first().textContent();
  expect(await page.locator(`${panel} .source-link`).count()).toBeGreaterThan(0);
  // The answer above is of the tank as planned: nothing added.
  await page.locator('input[name="way-out"][value="none"]').check();
  await expect.poll(() => page.locator(`${panel} .sums strong`).first().textContent(), SOON).not.toBe(shown);
  const free = await page.locator(`${panel} .sums strong`).first().textContent();
  expect(Math.abs(100 * Number(free) - Number(tank))).toBeLessThanOrEqual(0.51);
  expect(await page.locator(`${panel} figure`).count()).toBe(0);
});

test("the panel keeps the rules of accessibility and the width of a phone", async () => {
  await page.locator('input[name="way-out"][value="ammonium-sulfate"]').check();
  await page.waitForSelector(`${panel} figure`);
  expect(await violationsOf(page, panel, "every rule")).toEqual([]);
  await page.setViewportSize({ width: 360, height: 740 });
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(360);
  await page.setViewportSize({ width: 1280, height: 900 });
});

test("the report is saved as one file that needs nothing else and starts in plain words", async () => {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the report (HTML)" }).click();
  const html = readFileSync(await (await download).path(), "utf8");
  expect(html).not.toMatch(/<(?:script|link|iframe|object|embed|img|base)\b/i);
  expect(html).not.toMatch(/@import|url\(\s*["']?(?!#)/i);
  expect(html).not.toMatch(/(?:href|src)="https?:/i);
  const headings = [...html.matchAll(/<h[12]>\s*([^<]+?)\s*<\/h[12]>/g)].map((match) => match[1]);
  expect(headings[1]).toBe("What was asked");
  expect(headings.indexOf("The reasoning")).toBeGreaterThan(headings.indexOf("Cautions"));
  expect(headings.at(-1)).toBe("Sources used");
});

test("printing the report prints it and not the page around it", async () => {
  await page.evaluate(() => {
    const own = document.createElement.bind(document);
    document.createElement = ((name: string) => {
      const element = own(name);
      if (element instanceof HTMLIFrameElement)
        element.addEventListener("load", () => {
          document.body.dataset["printed"] = element.contentDocument?.querySelector("h1")?.textContent ?? "";
        });
      return element;
    }) as typeof document.createElement;
  });
  await page.getByRole("button", { name: "Print the report" }).click();
  await expect.poll(() => page.evaluate("document.body.dataset.printed"), SOON).toBe("Fallow, top paddocks");
});
