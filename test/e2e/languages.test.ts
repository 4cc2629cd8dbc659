import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** Chooses a language and waits until the card is in it, which is the last to follow. */
async function choose(page: Page, tag: string, onCard: string): Promise<void> {
  await page.locator(`select:has(option[value="${tag}"])`).selectOption(tag);
  await page.getByTestId("card").getByText(onCard).first().waitFor({ timeout: 90_000 });
}

test("the main flow runs in German on a phone: a reading, the answer, the card; and it is kept", async () => {
  const page = await stage.open(360, 740);
  await choose(page, "de", "Vor dem Start");
  expect(await page.getAttribute("html", "lang")).toBe("de");
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(360);

  const figure = page.locator("#section-water-facts .figure").first();
  const before = await figure.textContent();
  await page.getByLabel("Calcium", { exact: true }).fill("184,5");
  await expect.poll(() => figure.textContent(), SOON).not.toBe(before);
  expect(await page.getByTestId("card").locator("footer").textContent()).toMatch(/pH \d,\d/);

  await page.getByLabel("Calcium", { exact: true }).fill("-5");
  await page.waitForSelector('[data-state="blocked"]');
  expect(await page.getByTestId("waiting").textContent()).toContain("Es fehlt noch:");

  await page.reload();
  await page.waitForSelector("#field-title");
  expect(await page.getAttribute("html", "lang")).toBe("de");
  expect(await page.getByRole("heading", { name: "Wasseranalyse" }).count()).toBe(1);
});

test.each(["de", "fr", "es"])("in %s no rule of accessibility is broken", async (tag) => {
  const page = await stage.open(360, 740);
  await choose(page, tag, { de: "Halt.", fr: "Pause.", es: "Pausa." }[tag] ?? "");
  const { violations } = await new AxeBuilder({ page }).withTags(["wcag2a", "wcag2aa", "wcag22aa"]).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
});

test.each([
  ["en-US", "Before you start"],
  ["de", "Vor dem Start"],
  ["fr", "Avant de commencer"],
  ["es", "Antes de empezar"],
])("the card in %s prints on exactly one page, A4 and Letter", async (tag, onCard) => {
  const page = await stage.open(1280, 900);
  await choose(page, tag, onCard);
  for (const format of ["A4", "Letter"]) {
    const pdf = (await page.pdf({ format })).toString("latin1");
    expect(pdf.match(/\/Type\s*\/Page[^s]/g), format).toHaveLength(1);
  }
});
