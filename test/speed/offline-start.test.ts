import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { expect, test } from "vitest";
import { servePage } from "../../src/server/index.ts";
import { newProfile } from "../e2e/profile.ts";
import type { Profile } from "../e2e/profile.ts";
import { best, TIMEOUT_MS } from "./quiet.ts";

/** From opening the page in a fresh browser without a network to a figure typed into its first field [ms]; our choice. */
const FIRST_FIELD = { bound: 2000, whenBusy: 8000, tries: 3 } as const;

const BUILT = fileURLToPath(new URL("../../dist/web", import.meta.url));
const CALCIUM = "#root .page:not(.first-screen *) #field-water-readings-0-value";

/** One start of the browser, the network gone: how long it took until a figure was typed [ms]. The figure is kept. */
async function start(profile: Profile, address: string, typed: string): Promise<number> {
  const { port, kill } = await profile.start();
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${String(port)}`);
  const page = await browser.contexts()[0]!.newPage();
  await page.goto(address, { waitUntil: "commit" });
  await page.locator(CALCIUM).click();
  await page.keyboard.press("End");
  await page.keyboard.type(typed);
  const time_ms = await page.evaluate(() => performance.now());
  const value = await page.inputValue(CALCIUM);
  expect(value.endsWith(typed), value).toBe(true);
  await page.waitForSelector('[data-state="done"]', { timeout: 90_000 });
  await page.waitForSelector('[data-keeping="kept"]');
  expect(await page.inputValue(CALCIUM)).toBe(value);
  await kill();
  return Math.round(time_ms);
}

test(
  "started anew without a network, the first field takes a figure within 2 s",
  async () => {
    const server = await servePage({ root: BUILT, port: 0, furtherPorts: 0 });
    const profile = newProfile();
    try {
      const first = await profile.visit(server.address);
      await first.page.waitForSelector('[data-offline="ready"]', { timeout: 90_000 });
      await first.kill();
      await server.close();
      const { value, bound, said } = await best("first field without a network [ms]", FIRST_FIELD, () =>
        start(profile, server.address, "5"),
      );
      expect(value, `first field [ms] ${said}`).toBeLessThanOrEqual(bound);
    } finally {
      await profile.remove();
      await server.close();
    }
  },
  TIMEOUT_MS,
);
