import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { faultsOf, tabTo, unfoldByKeys, walk } from "./focus.ts";
import { setStage, SOON } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const CALCIUM = "#field-water-readings-0-value";

/** Stands for the printer, in the page and in the frames it makes: what was printed is kept by its title. */
function watchPrinter(): void {
  window.print = () => {
    const top = window.top as unknown as { printed?: string[] };
    top.printed = [...(top.printed ?? []), window.document.title];
    window.dispatchEvent(new Event("afterprint"));
  };
}

const printed = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as { printed?: string[] }).printed ?? []);

/** The page of somebody new, with its printer watched. */
async function open(width: number, height: number): Promise<Page> {
  const context = await stage.newContext({ viewport: { width, height } });
  await context.addInitScript(watchPrinter);
  const page = await context.newPage();
  await page.goto(stage.address);
  await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });
  return page;
}

/** What a button that has the focus saves when Enter is pressed on it. */
async function savedByEnter(page: Page): Promise<string> {
  const download = page.waitForEvent("download");
  await page.keyboard.press("Enter");
  return readFileSync(await (await download).path(), "utf8");
}

describe.each([
  [1280, 900],
  [360, 740],
])("with the keyboard alone, at %i × %i", (width, height) => {
  test("from a sample to the card, the report and the copies", async () => {
    const page = await open(width, height);
    const title = (): Promise<string> => page.inputValue("#field-title");
    expect(await title()).toBe("Fallow, top paddocks");
    if (width < 700) {
      await tabTo(page, ".tools-fold > summary");
      await page.keyboard.press("Enter");
    }
    // One arrow, one sample further.
    await tabTo(page, ".tools select");
    await page.keyboard.press("ArrowDown");
    await expect.poll(title, SOON).toBe("Iron bore, orchard floor");
    await page.keyboard.press("ArrowDown");
    await expect.poll(title, SOON).toBe("Strip from the house dam");
    await page.keyboard.press("ArrowUp");
    await expect.poll(title, SOON).toBe("Iron bore, orchard floor");
    await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });

    const hardness = page.locator("#section-water-facts .figure").first();
    const before = await hardness.textContent();
    await tabTo(page, CALCIUM);
    await page.keyboard.type("184,5");
    await expect.poll(() => hardness.textContent(), SOON).not.toBe(before);
    await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });

    const way = page.locator('input[name="way-out"]:checked');
    const first = await way.inputValue();
    await tabTo(page, 'input[name="way-out"]');
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => way.inputValue(), SOON).not.toBe(first);
    const picked = await page.locator(".way-picked strong").first().textContent();
    await expect
      .poll(() => page.getByTestId("card").locator(".programme").textContent(), SOON)
      .toContain(picked);

    await tabTo(page, "#section-card button", "Print the card");
    await page.keyboard.press("Enter");
    expect(await printed(page)).toEqual(["Hardstand"]);
    await tabTo(page, "#section-report button", "Print the report");
    await page.keyboard.press("Enter");
    await expect.poll(() => printed(page), SOON).toHaveLength(2);
    expect((await printed(page))[1]).toContain("Iron bore");
    expect(await page.locator(".print-frame").count()).toBe(0);
    await tabTo(page, "#section-report button", "Save the report");
    const [conditioner = ""] = (picked ?? "").split(",");
    expect(await savedByEnter(page)).toContain(`The same with ${conditioner}`);

    // Round the page's end to its head, where the tools are still unfolded.
    await tabTo(page, ".tools button", "Save job");
    expect(JSON.parse(await savedByEnter(page))).toMatchObject({
      title: "Iron bore, orchard floor",
      water: { readings: expect.arrayContaining([expect.objectContaining({ value: "184,5" })]) },
    });
    await tabTo(page, ".jobs-head button", "All jobs");
    await page.keyboard.press("Space");
    await page.waitForSelector(".job-list");
    await tabTo(page, "#jobs-panel button", "Save a copy");
    const copy = JSON.parse(await savedByEnter(page)) as { jobs: readonly { title: string }[] };
    expect(copy.jobs.map((job) => job.title)).toEqual(["Iron bore, orchard floor"]);
    await page.context().close();
  }, 240_000);
});

/** Looks of the page at a size, each with the key that goes through it. */
const LOOKS_AT = [
  {
    width: 1280,
    height: 900,
    looks: [{ name: "light", key: "Tab", media: {} }],
  },
  {
    width: 360,
    height: 740,
    looks: [
      { name: "forced colours", key: "Tab", media: { forcedColors: "active" } },
      { name: "bright light", key: "Shift+Tab", media: { forcedColors: "none" } },
    ],
  },
] as const;

test.each(LOOKS_AT)(
  "every stop at $width × $height has a mark that is seen, and nothing covers it",
  async ({ width, height, looks }) => {
    const page = await open(width, height);
    expect(await unfoldByKeys(page)).toBeGreaterThan(20);
    const counts: number[] = [];
    for (const { name, key, media } of looks) {
      await page.emulateMedia(media);
      if (name === "bright light") {
        await tabTo(page, ".tool-check input");
        await page.keyboard.press("Space");
        await page.waitForSelector(".outdoor");
      }
      const stops = await walk(page, key);
      expect(faultsOf(stops), name).toEqual([]);
      counts.push(stops.length);
    }
    expect(counts[0]).toBeGreaterThan(200);
    expect(new Set(counts).size, `stops: ${counts.join(", ")}`).toBe(1);
    await page.context().close();
  },
  240_000,
);
