import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { unfold, violationsOf } from "./look.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

/** How much slower the processor is made: a cheap phone against the machine this runs on. */
const SLOWER = 4;
/** Tries: the page is as fast as its best one, since what else the machine does only slows it down. */
const TRIES = 3;
const CALCIUM = "#field-water-readings-0-value";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** What a visit and some typing were like [ms; the shift has no unit], the new answer on the machine as it is. */
interface Pace {
  readonly largestPaint: number;
  readonly layoutShift: number;
  readonly slowestEvent: number;
  readonly newAnswer: number;
}

interface Watched {
  largestPaint: number;
  layoutShift: number;
  events: number[];
}

/** Watches what the browser itself reports; installed before the page's own scripts. */
function watch(): void {
  const seen: Watched = { largestPaint: 0, layoutShift: 0, events: [] };
  Object.assign(window, { watched: seen });
  const on = (type: string, take: (entry: PerformanceEntry) => void): void => {
    new PerformanceObserver((list) => {
      list.getEntries().forEach(take);
    }).observe({ type, buffered: true, durationThreshold: 16 } as PerformanceObserverInit);
  };
  on("largest-contentful-paint", (entry) => (seen.largestPaint = entry.startTime));
  on("layout-shift", (entry) => {
    const { value, hadRecentInput } = entry as PerformanceEntry & { value: number; hadRecentInput: boolean };
    if (!hadRecentInput) seen.layoutShift += value;
  });
  on("event", (entry) => seen.events.push(entry.duration));
}

/** Time from a keystroke until the answers of the planned tank are new ones and painted. */
async function timeToNewAnswer(page: Page, key: string): Promise<number> {
  await page.evaluate(() => {
    let typed: number | null = null;
    document.addEventListener("input", () => (typed = performance.now()), { once: true, capture: true });
    const answers = document.querySelector("#section-answers");
    if (answers === null) throw new Error("no answers to watch");
    const answered = new Promise<number>((resolve) => {
      const observer = new MutationObserver(() => {
        if (typed === null) return;
        const since = typed;
        observer.disconnect();
        requestAnimationFrame(() => {
          resolve(performance.now() - since);
        });
      });
      observer.observe(answers, { subtree: true, childList: true, characterData: true });
    });
    Object.assign(window, { answered });
  });
  await page.keyboard.press(key);
  const time = await page.evaluate(() => (window as unknown as { answered: Promise<number> }).answered);
  await settled(page);
  return time;
}

/** Waits until the ranges and ways out of the latest keystroke are there too. */
async function settled(page: Page): Promise<void> {
  await page.waitForSelector('[data-state="working"]', { timeout: 2_000 }).catch(() => null);
  await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });
}

async function visitSlowly(context: BrowserContext): Promise<Pace> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  await page.addInitScript(watch);
  await page.goto(stage.address);
  await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });
  const watched = (): Promise<Watched> =>
    page.evaluate(() => (window as unknown as { watched: Watched }).watched);
  const { largestPaint, layoutShift } = await watched();
  await page.locator(CALCIUM).click();
  await page.keyboard.press("End");
  await page.keyboard.press("Backspace");
  await settled(page);
  for (const key of ["4", "Backspace"]) {
    await page.keyboard.press(key);
    await settled(page);
  }
  const { events } = await watched();
  await session.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  const times: number[] = [];
  for (const key of ["4", "Backspace", "5", "Backspace"]) times.push(await timeToNewAnswer(page, key));
  return {
    largestPaint,
    layoutShift,
    slowestEvent: Math.max(...events),
    newAnswer: Math.max(...times),
  };
}

test("on a processor four times as slow the page is there, lies still, and answers keys", async () => {
  const paces: Pace[] = [];
  for (let k = 0; k < TRIES; k++) {
    const context = await stage.browser.newContext({ viewport: { width: 360, height: 740 } });
    paces.push(await visitSlowly(context));
    await context.close();
  }
  const best = (of: (pace: Pace) => number): number => Math.min(...paces.map(of));
  expect(Math.max(...paces.map(({ layoutShift }) => layoutShift)), "layout shift").toBeLessThanOrEqual(0.1);
  expect(
    best(({ largestPaint }) => largestPaint),
    "largest paint [ms]",
  ).toBeLessThanOrEqual(2500);
  expect(
    best(({ slowestEvent }) => slowestEvent),
    "slowest event [ms]",
  ).toBeLessThanOrEqual(200);
  // On this machine as it is: the slowest of four keystrokes.
  expect(
    best(({ newAnswer }) => newAnswer),
    "keystroke to new answer [ms]",
  ).toBeLessThanOrEqual(100);
});

test("in bright light all text has seven times the brightness of its ground, or its ground of it", async () => {
  const page = await stage.open(360, 740);
  await page.getByLabel("Bright light").check();
  await unfold(page);
  expect(await violationsOf(page, "body", "bright colours")).toEqual([]);
});
