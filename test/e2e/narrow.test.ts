import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { overhang, unfold } from "./look.ts";
import { setStage, SOON, unfoldTools } from "./page.ts";
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

/**
 * What scrolls sideways, or would if it could: the page itself and parts of it, but for tables, boxes of text and the
 * drawing of the flasks, which stand side by side to be compared and are told in words below.
 */
async function sideways(page: Page): Promise<readonly string[]> {
  const parts = await page.evaluate(() => {
    const inside = (root: ParentNode): readonly Element[] =>
      [...root.querySelectorAll("*")].flatMap((one) => [
        one,
        ...(one.shadowRoot ? inside(one.shadowRoot) : []),
      ]);
    return inside(document.body)
      .filter(
        (one) =>
          one.checkVisibility() && !one.closest(".table, table, .flasks-drawing, .visually-hidden, svg"),
      )
      .filter((one) => !one.matches("input, select, textarea"))
      .filter((one) => /auto|scroll|hidden|clip/.test(getComputedStyle(one).overflowX))
      .filter((one) => one.scrollWidth > one.clientWidth + 1 && !one.querySelector("table"))
      .map(
        (one) =>
          `${one.tagName} ${one.className}: ${String(one.scrollWidth)} in ${String(one.clientWidth)} px`,
      );
  });
  const over = await overhang(page);
  return over > 0 ? [`the page, by ${String(over)} px`, ...parts] : parts;
}

// 1280 × 1024 at 400 % (WCAG 2.2, 1.4.10), and a small phone.
describe.each([
  [320, 256],
  [320, 740],
])("at %i × %i nothing but a table scrolls sideways", (width, height) => {
  test("from a reading to the card, the report, the jobs and a sheet", async () => {
    const page = await stage.open(width, height);
    const hardness = page.locator("#section-water-facts .figure").first();
    const before = await hardness.textContent();
    await page.fill("#field-water-readings-0-value", "1234,5678 mg/L");
    await expect.poll(() => hardness.textContent(), SOON).not.toBe(before);
    await page.waitForSelector('[data-state="done"]', LONG);
    await page.locator('input[name="way-out"]').last().check();
    expect(await sideways(page), "a row picked").toEqual([]);

    await page.locator("summary", { hasText: "Paste or open a lab sheet" }).click();
    await page.fill(
      "#sheet-text",
      "Sample: Hill bore with a long name\nCalcium 92 mg/L\nTotal dissolved solids 1234 mg/L",
    );
    await page.locator(".sheet-entries").waitFor();
    await page.getByRole("button", { name: /^All jobs/ }).click();
    await page.waitForSelector(".job-list");
    await unfoldTools(page);
    expect(await sideways(page), "jobs and sheet open").toEqual([]);
    await unfold(page);
    expect(await sideways(page), "all unfolded").toEqual([]);
    // The button that leads on is on the screen, and leaves room for what it leads to.
    const bar = await page.locator(".bottom-bar").evaluate((one) => ({
      isFixed: getComputedStyle(one).position === "fixed",
      height: one.getBoundingClientRect().height,
    }));
    expect(bar.isFixed ? bar.height : 0).toBeLessThan(0.34 * height);

    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save the report (HTML)" }).click();
    const report = readFileSync(await (await download).path(), "utf8");
    const paper = await (await stage.newContext({ viewport: { width, height } })).newPage();
    await paper.setContent(report);
    expect(await sideways(paper), "the report").toEqual([]);
    await paper.context().close();
    await page.context().close();
  }, 240_000);

  test("on the screens of a complaint and of the flasks", async () => {
    const page = await (await stage.newContext({ viewport: { width, height } })).newPage();
    await page.goto(`${stage.address}#complaint`);
    await page.waitForSelector("#complaint-title", LONG);
    await page.getByLabel("Record file").setInputFiles(RECORD);
    await expect.poll(() => page.inputValue("#complaint-title"), SOON).toContain("Ryegrass");
    await page.waitForSelector('[data-complaint="done"]', LONG);
    await unfold(page);
    expect(await sideways(page), "complaint").toEqual([]);
    await page.goto(`${stage.address}#flasks`);
    await page.waitForSelector('[data-flasks="done"]', LONG);
    await unfold(page);
    await page.getByTestId("bench").waitFor(LONG);
    await page.getByTestId("farm").waitFor(LONG);
    expect(await sideways(page), "flasks").toEqual([]);
    await page.context().close();
  }, 240_000);
});
