import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, checkComplaint, planJob, readComplaint, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { complaintHtml, planHtml } from "../../src/report/index.ts";
import { setStage } from "./page.ts";
import type { Stage } from "./page.ts";

/** Contrast of text and of what else is drawn with its ground (WCAG 2.2, 1.4.3 and 1.4.11). */
const LEAST = { text: 4.5, drawn: 3 } as const;

const trade = builtInTrade();
const thermo = builtInThermo();

let stage: Stage;
let page: Page;
beforeAll(async () => {
  stage = await setStage();
  page = await (await stage.newContext({ viewport: { width: 703, height: 900 } })).newPage();
  await page.emulateMedia({ media: "print" });
});
afterAll(async () => {
  await stage.close();
});

const read = (...path: readonly string[]): unknown =>
  parse(readFileSync(inProject("examples", ...path), "utf8"));

function planned(name: string): string {
  const job = readJob(read("jobs", name), { trade });
  if (!job.ok) throw new Error("not read");
  const plan = planJob(job.value, { thermo, trade });
  if (!plan.ok) throw new Error("not planned");
  return planHtml(plan.value, job.value, { date: "2026-01-01", title: job.value.title, sampled: null });
}

/** Least contrast of text and of lines and areas on a page in shades of grey, and how many of each were looked at. */
function contrasts(): Record<"text" | "drawn", { least: number; count: number }> {
  const found = { text: { least: Infinity, count: 0 }, drawn: { least: Infinity, count: 0 } };
  const channels = (colour: string): readonly number[] => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const isClear = (colour: string): boolean => colour === "none" || (channels(colour)[3] ?? 1) === 0;
  // A grey copy keeps of a colour its luminance alone.
  const luminance = (colour: string): number => {
    const [r = 0, g = 0, b = 0] = channels(colour)
      .map((part) => part / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const groundOf = (element: Element | null): string => {
    if (element === null) return "rgb(255, 255, 255)";
    const { backgroundColor } = getComputedStyle(element);
    return isClear(backgroundColor) ? groundOf(element.parentElement) : backgroundColor;
  };
  const look = (kind: keyof typeof found, colour: string, ground: string): void => {
    const [dark = 0, light = 0] = [luminance(colour), luminance(ground)].sort((a, b) => a - b);
    found[kind] = {
      least: Math.min(found[kind].least, (light + 0.05) / (dark + 0.05)),
      count: found[kind].count + 1,
    };
  };
  for (const one of document.querySelectorAll("body *")) {
    const style = getComputedStyle(one);
    const ground = groundOf(one);
    const hasText = [...one.childNodes].some(
      (node) => node.nodeType === 3 && node.textContent?.trim() !== "",
    );
    const isDrawing = one instanceof SVGElement;
    if (hasText && !one.matches("title, style")) look("text", isDrawing ? style.fill : style.color, ground);
    for (const side of ["Top", "Right", "Bottom", "Left"] as const)
      if (style[`border${side}Style`] !== "none" && parseFloat(style[`border${side}Width`]) > 0)
        look("drawn", style[`border${side}Color`], groundOf(one.parentElement));
    if (one.matches("svg :is(rect, circle, path, line)") && !isClear(style.stroke))
      look("drawn", style.stroke, ground);
    else if (one.matches("svg :is(circle, path)") && !isClear(style.fill)) look("drawn", style.fill, ground);
  }
  return found;
}

/** How far the most colourful dot of the page as it is printed is from a shade of grey, of 255. */
async function colourfulness(): Promise<number> {
  const picture = (await page.screenshot({ fullPage: true })).toString("base64");
  const blank = await page.context().newPage();
  const most = await blank.evaluate(async (data) => {
    const image = await createImageBitmap(await (await fetch(`data:image/png;base64,${data}`)).blob());
    const drawn = new OffscreenCanvas(image.width, image.height).getContext("2d")!;
    drawn.drawImage(image, 0, 0);
    const { data: dots } = drawn.getImageData(0, 0, image.width, image.height);
    let spread = 0;
    for (let i = 0; i < dots.length; i += 4) {
      const [r = 0, g = 0, b = 0] = dots.subarray(i, i + 3);
      spread = Math.max(spread, Math.max(r, g, b) - Math.min(r, g, b));
    }
    return spread;
  }, picture);
  await blank.close();
  return most;
}

test.each(["top-bore.yaml", "iron-bore.yaml", "dicamba.yaml"])(
  "the card and the report on %s are black on white, and lose nothing in a grey copy",
  async (name) => {
    await page.setContent(planned(name));
    const { text, drawn } = await page.evaluate(contrasts);
    expect(text.count).toBeGreaterThan(100);
    expect(drawn.count).toBeGreaterThan(50);
    expect(text.least).toBeGreaterThanOrEqual(LEAST.text);
    expect(drawn.least).toBeGreaterThanOrEqual(LEAST.drawn);
    expect(await colourfulness()).toBe(0);
  },
);

test("what holds an active is told by the texture of its part of the bar, and by its name", async () => {
  await page.setContent(planned("top-bore.yaml"));
  const bars = await page.locator("svg:has(pattern)").evaluateAll((drawings) =>
    drawings.map((drawing) => ({
      textures: [...drawing.querySelectorAll("pattern")].map((one) => one.innerHTML),
      parts: [...drawing.querySelectorAll('rect[fill^="url("]')].map((one) => one.getAttribute("fill")),
      names: [...drawing.querySelectorAll("text")].map((one) => one.textContent).join(" "),
    })),
  );
  expect(bars.length).toBeGreaterThan(0);
  for (const { textures, parts, names } of bars) {
    expect(new Set(textures).size).toBe(textures.length);
    expect(new Set(parts).size).toBeGreaterThan(1);
    for (const metal of ["calcium", "magnesium"]) expect(names).toContain(metal);
  }
});

test("the row chosen is told by its weight and in a word, and dots that count by being filled", async () => {
  await page.setContent(planned("top-bore.yaml"));
  const [row, other] = await page.locator("tr.chosen th, tr.chosen + tr th").evaluateAll((heads) =>
    heads.map((one) => ({
      weight: getComputedStyle(one.nextElementSibling!).fontWeight,
      words: one.textContent,
    })),
  );
  expect(Number(row!.weight)).toBeGreaterThan(Number(other!.weight));
  expect(row!.words).toContain("(chosen)");
  const fills = await page
    .locator(".dots circle")
    .evaluateAll((dots) =>
      dots.map((dot) => `${dot.getAttribute("class") ?? ""} ${getComputedStyle(dot).fill}`),
    );
  expect(new Set(fills)).toEqual(new Set(["dot rgb(0, 0, 0)", "ring rgb(255, 255, 255)"]));
});

test("the answer to a complaint is read as well in grey", async () => {
  const record = readComplaint(read("complaints", "low-rate-hard-bore.yaml"), { trade });
  if (!record.ok) throw new Error("not read");
  const answer = checkComplaint(record.value, { thermo, trade }, { draws: 0 });
  if (!answer.ok) throw new Error("not answered");
  await page.setContent(complaintHtml(answer.value, { date: "2026-01-01" }));
  const { text, drawn } = await page.evaluate(contrasts);
  expect(text.least).toBeGreaterThanOrEqual(LEAST.text);
  expect(drawn.least).toBeGreaterThanOrEqual(LEAST.drawn);
});
