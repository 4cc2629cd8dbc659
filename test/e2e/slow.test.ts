import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

/** How much slower the processor is made: a cheap phone against the machine this runs on. */
const SLOWER = 4;
/** Largest shift of the layout in a visit that counts as lying still (Web Vitals, cumulative layout shift). */
const MOST_SHIFT = 0.1;

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** Adds up what the browser itself reports of the layout's shifts; installed before the page's own scripts. */
function watchShifts(): void {
  const seen = { shift: 0, reports: 0 };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) {
      const { value, hadRecentInput } = entry as PerformanceEntry & {
        value: number;
        hadRecentInput: boolean;
      };
      seen.reports += 1;
      if (!hadRecentInput) seen.shift += value;
    }
  }).observe({ type: "layout-shift", buffered: true });
}

test("on a slow phone the page lies still while it comes in and is answered", async () => {
  const context = await stage.newContext({ viewport: { width: 360, height: 740 } });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  await page.addInitScript(watchShifts);
  await page.goto(stage.address);
  await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });
  const seen = await page.evaluate(
    () => (window as unknown as { seen: { shift: number; reports: number } }).seen,
  );
  expect(seen.reports).toBeGreaterThan(0);
  expect(seen.shift).toBeLessThanOrEqual(MOST_SHIFT);
  await context.close();
});
