import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { unfold } from "./look.ts";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const LONG = { timeout: 90_000 } as const;
const MAGNESIUM = "#field-water-readings-1-value";
const KEYS = ".keypad button";

/** The page on a telephone, in bright light. */
async function outside(width: number, height: number): Promise<Page> {
  const context = await stage.newContext({
    viewport: { width, height },
    hasTouch: true,
    isMobile: true,
  });
  const page = await context.newPage();
  await page.goto(stage.address);
  await page.waitForSelector('[data-state="done"]', LONG);
  await page.getByLabel("Bright light").check();
  await expect.poll(() => page.getAttribute(MAGNESIUM, "inputmode"), SOON).toBe("none");
  return page;
}

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole("button", { name, exact: true }).tap();

describe("number keys in bright light", () => {
  test("write a limit with either decimal sign, a range and a correction, and the answer follows", async () => {
    const page = await outside(360, 740);
    await page.tap(MAGNESIUM);
    const write = async (keys: readonly string[]): Promise<string> => {
      await page.fill(MAGNESIUM, "");
      for (const key of keys) await press(page, key);
      return page.inputValue(MAGNESIUM);
    };
    expect(await write(["Less than", "0", "Comma", "5"])).toBe("<0,5");
    expect(await write(["4", "Point", "9", "Delete the last", "8"])).toBe("4.8");
    expect(await write(["2", "0", "Minus, or up to", "3", "0"])).toBe("20-30");
    await expect.poll(() => page.locator(`${MAGNESIUM}-about`).textContent(), SOON).toContain("mmol/L");
    // The caret stands after the key pressed, and what is selected is replaced.
    await page.locator(MAGNESIUM).evaluate((box: HTMLInputElement) => {
      box.setSelectionRange(0, 2);
    });
    await press(page, "1");
    expect(await page.inputValue(MAGNESIUM)).toBe("1-30");
    await page.waitForSelector('[data-state="done"]', LONG);
    await page.context().close();
  });

  test("lead from box to box, to the device's own keyboard and away", async () => {
    const page = await outside(360, 740);
    await page.tap(MAGNESIUM);
    await press(page, "Next box");
    const third = "#field-water-readings-2-value";
    await expect.poll(() => page.evaluate(() => document.activeElement?.id), SOON).toBe(third.slice(1));
    await press(page, "7");
    expect(await page.inputValue(third)).toBe("7");
    await press(page, "Letters");
    expect(await page.locator(KEYS).count()).toBe(0);
    expect(await page.getAttribute(third, "inputmode")).toBe("text");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(third.slice(1));
    await page.tap(MAGNESIUM);
    expect(await page.getAttribute(third, "inputmode")).toBe("none");
    await press(page, "Close");
    expect(await page.locator(KEYS).count()).toBe(0);
    await page.tap("#field-title");
    expect(await page.locator(KEYS).count()).toBe(0);
    await page.context().close();
  });

  test.each([
    [320, 568],
    [360, 740],
    [740, 360],
  ])("are large enough at %i × %i, and cover neither box, label nor second unit", async (width, height) => {
    const page = await outside(width, height);
    await page.tap(MAGNESIUM);
    const keys = await page
      .locator(KEYS)
      .evaluateAll((list) => list.map((key) => key.getBoundingClientRect().toJSON() as DOMRect));
    expect(keys).toHaveLength(18);
    expect(Math.min(...keys.map((key) => key.width))).toBeGreaterThanOrEqual(96);
    expect(Math.min(...keys.map((key) => key.height))).toBeGreaterThanOrEqual(64);
    expect(leastGap(keys)).toBeGreaterThanOrEqual(8);
    const field = await page
      .locator(`.field:has(${MAGNESIUM})`)
      .evaluate((one) => one.getBoundingClientRect().toJSON() as DOMRect);
    expect(field.top).toBeGreaterThanOrEqual(0);
    expect(field.bottom).toBeLessThanOrEqual(Math.min(...keys.map((key) => key.top)) - 8);
    await page.context().close();
  });

  test("are not there for who has a mouse", async () => {
    const page = await stage.open(1280, 900);
    await page.getByLabel("Bright light").check();
    await page.click(MAGNESIUM);
    expect(await page.getAttribute(MAGNESIUM, "inputmode")).toBe("decimal");
    expect(await page.locator(KEYS).count()).toBe(0);
  });
});

test("bright light is kept on every screen and after a reload, whatever the device asks for", async () => {
  const page = await outside(360, 740);
  await page.emulateMedia({ colorScheme: "dark" });
  const ground = (): Promise<string> =>
    page.evaluate(() => {
      const shown = [...document.querySelectorAll(".page")].find((one) => one.checkVisibility())!;
      return getComputedStyle(shown).backgroundColor;
    });
  for (const [hash, sign] of [
    ["#complaint", "#complaint-title"],
    ["#flasks", '[data-flasks="done"]'],
    ["", "#field-title"],
  ] as const) {
    await page.goto(`${stage.address}${hash}`);
    await page.reload();
    await page.waitForSelector(sign, LONG);
    expect(await ground(), hash).toBe("rgb(255, 255, 255)");
    expect(
      await page
        .getByLabel("Bright light")
        .locator("visible=true")
        .evaluate((box: HTMLInputElement) => box.checked),
    ).toBe(true);
  }
  await page.context().close();
});

type Box = Pick<DOMRect, "left" | "right" | "top" | "bottom">;

/** Room between two boxes [px]; below nought where they lie over each other. */
const gap = (a: Box, b: Box): number =>
  Math.max(a.left - b.right, b.left - a.right, a.top - b.bottom, b.top - a.bottom);

function leastGap(boxes: readonly Box[]): number {
  let least = Infinity;
  boxes.forEach((a, i) => {
    for (const b of boxes.slice(i + 1)) least = Math.min(least, gap(a, b));
  });
  return least;
}

interface Target extends Box {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly isButton: boolean;
}

/** Everything that is pressed on the page, a choice with its label as one; links within a sentence are left out. */
function targets(page: Page): Promise<readonly Target[]> {
  return page.evaluate(() => {
    const boxes = 'input:not([type="radio"], [type="checkbox"], [type="file"])';
    const choices = 'label:has([type="radio"], [type="checkbox"])';
    const links = ":is(.tools, .tools-bar, .waiting) a";
    return [...document.querySelectorAll(`button, select, summary, textarea, ${boxes}, ${choices}, ${links}`)]
      .filter((one) => one.checkVisibility() && !one.matches(".visually-hidden, .bottom-bar *, .keypad *"))
      .map((one) => {
        const { left, right, top, bottom, width, height } = one.getBoundingClientRect();
        const name = `${one.tagName} ${one.getAttribute("aria-label") ?? (one.textContent || one.id)}`;
        return { name, left, right, top, bottom, width, height, isButton: one.tagName === "BUTTON" };
      });
  });
}

/** Browsers lay out in fractions of a pixel. */
const ROUNDING = 0.1;

const SIZES = [
  { width: 320, height: 740 },
  { width: 360, height: 740 },
  { width: 1280, height: 900 },
] as const;

describe("every control", () => {
  test.each([
    ["the plan", ""],
    ["the complaint", "#complaint"],
    ["the flasks", "#flasks"],
  ])("of %s is large enough and far enough from the next, at every size", async (_screen, hash) => {
    const page = await (await stage.newContext({ viewport: SIZES[0] })).newPage();
    await page.goto(`${stage.address}${hash}`);
    await page.waitForSelector('[data-state="done"], [data-complaint="done"], [data-flasks="done"]', LONG);
    if (hash === "") await page.getByRole("button", { name: /^All jobs/ }).click();
    await unfold(page);
    if (hash === "") await page.waitForSelector('[data-testid="workings"] figure', LONG);
    const brightLight = page.getByLabel("Bright light").locator("visible=true");
    for (const [light, least] of [
      ["as it comes", 48],
      ["bright", 64],
    ] as const) {
      await brightLight.setChecked(light === "bright");
      for (const size of SIZES) {
        await page.setViewportSize(size);
        const at = `${light}, ${String(size.width)} px`;
        const found = await targets(page);
        expect(found.length, at).toBeGreaterThan(10);
        const small = found.filter((one) => Math.min(one.width, one.height) < 48 - ROUNDING);
        expect(
          small.map(({ name }) => name),
          at,
        ).toEqual([]);
        const low = found.filter((one) => one.isButton && one.height < least - ROUNDING);
        expect(
          low.map(({ name }) => name),
          at,
        ).toEqual([]);
        const close = found.flatMap((a, i) =>
          found
            .slice(i + 1)
            .filter((b) => gap(a, b) < 8 - ROUNDING)
            .map((b) => `${a.name} | ${b.name}: ${String(gap(a, b))}`),
        );
        expect(close, at).toEqual([]);
      }
    }
    await page.context().close();
  });
});
