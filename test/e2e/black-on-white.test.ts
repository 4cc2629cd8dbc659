import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { brightLightOf, unfold } from "./look.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** Least size [px] and weight of text, and least width of a line [px], that are read outdoors. */
const LEAST = { size_px: 18, weight: 500, line_px: 2 } as const;

/** What of a page is grey, small, light or thin, each in words; shadow roots are looked into. */
function hardToSee({ size_px, weight, line_px }: typeof LEAST): readonly string[] {
  const found: string[] = [];
  let texts = 0;
  let lines = 0;
  const nameOf = (one: Element): string =>
    `${one.tagName.toLowerCase()}${[...one.classList].map((name) => `.${name}`).join("")} in ${
      one.closest("section[id], header, nav, .follows, .know")?.id ?? ""
    }`;
  /** Red, green, blue [0 to 255] and opacity; null where nothing is drawn. */
  const channels = (colour: string): readonly number[] | null => {
    const numbers = /^rgba?\(([^)]*)\)$/.exec(colour)?.[1]?.split(",").map(Number);
    return numbers === undefined || numbers[3] === 0 ? null : numbers;
  };
  const isGrey = (colour: string): boolean => {
    const [red = 0, green = 0, blue = 0, opacity = 1] = channels(colour) ?? [];
    const alike = Math.max(red, green, blue) - Math.min(red, green, blue) < 24;
    return opacity < 1 || (alike && red > 0 && red < 255);
  };
  const look = (one: Element): void => {
    const style = getComputedStyle(one);
    const said = (what: string): void => void found.push(`${nameOf(one)}: ${what}`);
    const inSvg = one instanceof SVGElement;
    const writes =
      one.matches("input:not([type=radio], [type=checkbox], [type=color], [type=range]), select") ||
      [...one.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? "").trim() !== "",
      );
    if (writes && !one.matches("title, desc, style, option, .visually-hidden, .visually-hidden *")) {
      texts += 1;
      const colour = inSvg ? style.fill : style.color;
      if (!/^rgb\((?:0, 0, 0|255, 255, 255)\)$/.test(colour)) said(`text ${colour}`);
      // The small figures of a formula are as small as a formula has them.
      if (!one.matches("sub, sup") && parseFloat(style.fontSize) < size_px) said(`text of ${style.fontSize}`);
      if (Number(style.fontWeight) < weight) said(`weight ${style.fontWeight}`);
    }
    for (const side of ["Top", "Right", "Bottom", "Left"] as const) {
      const width = parseFloat(style[`border${side}Width`]);
      const colour = style[`border${side}Color`];
      if (width === 0 || style[`border${side}Style`] === "none" || channels(colour) === null) continue;
      lines += 1;
      if (width < line_px) said(`border of ${String(width)} px`);
      if (isGrey(colour)) said(`border ${colour}`);
    }
    if (isGrey(style.backgroundColor)) said(`ground ${style.backgroundColor}`);
    if (inSvg && one.matches("line, path, circle, rect, polyline") && style.stroke !== "none") {
      lines += 1;
      if (parseFloat(style.strokeWidth) < line_px) said(`line of ${style.strokeWidth}`);
      if (isGrey(style.stroke)) said(`line ${style.stroke}`);
    }
    if (style.textDecorationLine === "underline" && parseFloat(style.textDecorationThickness) < line_px)
      said(`underline of ${style.textDecorationThickness}`);
  };
  const walk = (root: Element | ShadowRoot): void => {
    for (const one of root.querySelectorAll("*")) {
      // What a flask looks like is its own colour, drawn as on paper; the words below it say it.
      if (!one.checkVisibility() || one.closest(".flasks-drawing") !== null) continue;
      look(one);
      if (one.shadowRoot !== null) walk(one.shadowRoot);
    }
  };
  walk(document.body);
  if (texts < 10 || lines < 10) found.push(`only ${String(texts)} texts and ${String(lines)} lines`);
  if (getComputedStyle(document.body).backgroundColor !== "rgb(255, 255, 255)")
    found.push("the page is not white");
  return [...new Set(found)];
}

async function brightAt(address: string, ready: string): Promise<Page> {
  const page = await (await stage.newContext({ viewport: { width: 360, height: 740 } })).newPage();
  await page.goto(`${stage.address}${address}`);
  await page.waitForSelector(ready, { timeout: 90_000 });
  await brightLightOf(page).check();
  await unfold(page);
  return page;
}

test("in bright light nothing of the plan is grey, small, light or thin", async () => {
  const page = await brightAt("", '[data-state="done"]');
  await page.waitForSelector('[data-testid="workings"] figure', { timeout: 90_000 });
  expect(await page.evaluate(hardToSee, LEAST)).toEqual([]);
  // Without it there is all of that: what is measured is there to be found.
  await brightLightOf(page).uncheck();
  const usual = (await page.evaluate(hardToSee, LEAST)).join("\n");
  for (const what of [
    "text rgb(69, 82, 94)",
    "text of 15.64px",
    "weight 400",
    "border of 1 px",
    "line of 1px",
  ])
    expect(usual).toContain(what);
});

test.each([
  ["a complaint", "#complaint", '[data-complaint="done"]'],
  ["the flasks", "#flasks", '[data-flasks="done"]'],
])("nor of %s", async (_what, address, ready) => {
  const page = await brightAt(address, ready);
  expect(await page.evaluate(hardToSee, LEAST)).toEqual([]);
});
