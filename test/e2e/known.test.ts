import { afterAll, beforeAll, expect, test } from "vitest";
import { fileURLToPath } from "node:url";
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

const TWO_SOURCES = fileURLToPath(new URL("../../examples/jobs/two-sources.yaml", import.meta.url));

test("money for a season, and what is published of the actives, on a phone", async () => {
  const page = await stage.visit(360, 740);
  await page.getByLabel("Job file").setInputFiles(TWO_SOURCES);
  await expect.poll(() => page.inputValue("#field-title"), SOON).toContain("rain tank");
  await page.waitForSelector('[data-state="done"]', { timeout: 110_000 });
  const money = page.locator("#section-money");
  // 1.6 L/ha at 6.20 per litre and 480 ha: what is held is worth less than all of it, in proportion to the hectare.
  const held = await money.locator("tbody tr").first().locator("td").allTextContents();
  const [perHa = NaN, , perSeason = NaN] = held.map(Number);
  expect(perHa).toBeGreaterThan(0);
  expect(perHa).toBeLessThan(1.6 * 6.2);
  expect(Math.abs(perSeason / 480 - perHa)).toBeLessThan(0.006);
  const known = page.locator("#section-known");
  await known.getByText("glyphosate", { exact: true }).press("Enter");
  for (const words of [
    "hardness",
    "Held by mud",
    "published rule",
    "galvanised",
    "Give the suspended solids",
  ])
    expect(await known.textContent()).toContain(words);
  await unfold(page, "#section-known");
  expect(await smallControls(page)).toEqual([]);
  expect(await overhang(page)).toBe(0);
}, 300_000);
