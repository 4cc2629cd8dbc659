import { afterAll, beforeAll, expect, test } from "vitest";
import { unfold } from "./look.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/**
 * Texts in the colour of a page's ground: with its own colours the system lays that ground behind every text, whatever
 * lies under it, so that such a text is not there to be read.
 */
function swallowed(): readonly string[] {
  const probe = document.createElement("p");
  probe.style.color = "Canvas";
  document.body.append(probe);
  const ground = getComputedStyle(probe).color;
  probe.remove();
  return [...document.querySelectorAll("body *")]
    .filter((one) => one.checkVisibility() && !(one instanceof SVGElement))
    .filter((one) =>
      [...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim()),
    )
    .filter((one) => getComputedStyle(one).color === ground)
    .map((one) => `${one.tagName} ${one.textContent.slice(0, 40)}`);
}

test.each([
  ["the plan", "", '[data-state="done"]'],
  ["a complaint", "#complaint", '[data-complaint="done"]'],
  ["the flasks", "#flasks", '[data-flasks="done"]'],
])("with the system's colours every text of %s stands out from its ground", async (_what, hash, ready) => {
  const page = await (await stage.newContext({ viewport: { width: 360, height: 740 } })).newPage();
  await page.emulateMedia({ forcedColors: "active" });
  await page.goto(`${stage.address}${hash}`);
  await page.waitForSelector(ready, { timeout: 90_000 });
  await unfold(page);
  expect(await page.evaluate(swallowed)).toEqual([]);
  // What is looked for is there to be found.
  await page.addStyleTag({ content: "h1 { color: Canvas; }" });
  expect((await page.evaluate(swallowed)).length).toBeGreaterThan(0);
  await page.context().close();
});
