import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await setStage();
  page = await stage.open(360, 740);
});
afterAll(async () => {
  await stage.close();
});

const CALCIUM = "#field-water-readings-0-value";

interface Watched extends Window {
  seen: { figures: Record<string, string>; touched: string[] };
}

/** Keeps how far the answer was when each of the figures of the first one changed. */
function watchFigures(selectors: readonly string[]): void {
  const seen: Watched["seen"] = { figures: {}, touched: [] };
  Object.assign(window, { seen });
  const { document } = window;
  const textOf = (selector: string): string => document.querySelector(selector)?.textContent ?? "";
  const before = new Map(selectors.map((selector) => [selector, textOf(selector)]));
  new MutationObserver(() => {
    for (const selector of selectors)
      if (textOf(selector) !== before.get(selector))
        seen.figures[selector] ??=
          document.querySelector<HTMLElement>("#what-follows")?.dataset["state"] ?? "";
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
}

test("the bar and the answer at a glance follow the first answer, before the whole plan is there", async () => {
  const figures = [
    ".bottom-bar .bar-figure",
    ".answer-line .figure",
    "#section-answers .figure",
    "#section-answers .lead",
  ];
  await page.evaluate(watchFigures, figures);
  await page.fill(CALCIUM, "920");
  const seen = (): Promise<Record<string, string>> =>
    page.evaluate(() => (window as unknown as Watched).seen.figures);
  await expect.poll(seen, SOON).toEqual(Object.fromEntries(figures.map((selector) => [selector, "working"])));
  await page.waitForSelector('[data-state="done"]');
  const [bar, line] = await Promise.all(
    figures.slice(0, 2).map((selector) => page.locator(selector).first().textContent()),
  );
  expect(bar).toBe(line);
});

test("what is taken back before it was planned gives the answer that stood there", async () => {
  await page.fill(CALCIUM, "92");
  await page.waitForSelector('[data-state="done"]');
  const bar = page.locator(".bottom-bar .bar-figure").first();
  const figure = (): Promise<string | null> => bar.textContent();
  const stood = await figure();
  await page.focus(CALCIUM);
  await page.keyboard.press("End");
  await page.keyboard.press("Backspace");
  await expect.poll(figure, { ...SOON, interval: 10 }).not.toBe(stood);
  await page.keyboard.press("2");
  await page.waitForSelector('[data-state="done"]');
  expect(await figure()).toBe(stood);
});

/**
 * Notes each field that is drawn anew: whoever draws an input gives it its type again, whether or not that is another
 * one, and its value where that changed.
 */
function watchFields(): void {
  const seen: Watched["seen"] = { figures: {}, touched: [] };
  Object.assign(window, { seen });
  for (const name of ["type", "value"]) {
    const own = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, name);
    if (own?.set === undefined) throw new Error(`an input has no ${name}`);
    const { set } = own;
    Object.defineProperty(HTMLInputElement.prototype, name, {
      ...own,
      set(this: HTMLInputElement, value: string) {
        seen.touched.push(this.id);
        set.call(this, value);
      },
    });
  }
}

test("a key draws the field typed into anew and no other", async () => {
  // What is said of the other fields is the same with a quarter of a milligram more.
  await page.fill(CALCIUM, "92.2");
  await page.waitForSelector('[data-state="done"]');
  await page.keyboard.press("End");
  await page.evaluate(watchFields);
  await page.keyboard.press("5");
  await page.waitForSelector('[data-state="working"]');
  await page.waitForSelector('[data-state="done"]');
  const { touched } = await page.evaluate(() => (window as unknown as Watched).seen);
  const fields = touched.filter((id) => id.startsWith("field-"));
  expect(fields.length).toBeGreaterThan(0);
  expect([...new Set(fields)]).toEqual([CALCIUM.slice(1)]);
});
