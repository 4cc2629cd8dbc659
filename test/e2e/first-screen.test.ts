import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** A visit whose scripts come when they are let in. */
async function slowVisit(context: BrowserContext, hash = ""): Promise<{ page: Page; letIn(): void }> {
  const page = await context.newPage();
  let letIn = (): void => undefined;
  const gate = new Promise<void>((resolve) => {
    letIn = resolve;
  });
  await page.route("**/*.js", async (route) => {
    await gate;
    await route.continue();
  });
  await page.goto(`${stage.address}${hash}`, { waitUntil: "commit" });
  await page.waitForSelector("#root", { state: "attached" });
  return { page, letIn };
}

/** What stands where on the first screen: its text, and where it begins and how high it is in whole pixels. */
async function places(page: Page): Promise<readonly string[]> {
  const parts = [
    "h1",
    ".jobs label",
    "h2",
    ".know h3",
    ".know .lead",
    ".know > section > form > .fields label",
  ];
  return page.locator(`#root :is(${parts.join(", ")})`).evaluateAll((shown) =>
    shown
      .map((one) => ({ text: one.textContent, box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.height > 0 && box.top < window.innerHeight)
      .map(({ text, box }) => `${text} ${[box.left, box.top, box.height].map(Math.round).join(" ")}`),
  );
}

test.each([
  [360, 740],
  [1280, 900],
])("the first screen is there before the scripts, and stays where it is: %i × %i", async (width, height) => {
  const context = await stage.newContext({ viewport: { width, height } });
  const { page, letIn } = await slowVisit(context);
  await page.locator(".first-screen .lead").waitFor();
  const before = await places(page);
  expect(before.length).toBeGreaterThan(5);
  // Nothing can be typed there that would be lost.
  await page.keyboard.press("Tab");
  expect(await page.evaluate(() => window.document.activeElement?.tagName)).toBe("BODY");
  expect(
    await page
      .locator(".first-screen input")
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value)),
  ).toEqual(["", "on", "", "", ""]);
  letIn();
  await page.waitForSelector('[data-state="done"]');
  expect(await page.locator(".first-screen").count()).toBe(0);
  expect(await places(page)).toEqual(expect.arrayContaining(before as string[]));
  await context.close();
});

test.each([
  ["in another language", "", "de"],
  ["for another screen", "#flasks", "en-GB"],
])("it is not shown %s", async (_where, hash, tag) => {
  const context = await stage.newContext({ viewport: { width: 360, height: 740 } });
  await context.addInitScript((kept) => {
    window.localStorage.setItem("hardstand language", kept);
  }, tag);
  const { page, letIn } = await slowVisit(context, hash);
  await page.locator(".first-screen").waitFor({ state: "attached" });
  expect(await page.locator(".first-screen").isVisible()).toBe(false);
  letIn();
  await page.locator("#root h1").waitFor();
  expect(await page.locator(".first-screen").count()).toBe(0);
  await context.close();
});

test("without scripts the page says what it needs, and shows nothing that does not work", async () => {
  const context = await stage.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(stage.address);
  expect(await page.locator("#root").isVisible()).toBe(false);
  expect(await page.locator("body").innerText()).toContain("needs JavaScript");
  await context.close();
});
