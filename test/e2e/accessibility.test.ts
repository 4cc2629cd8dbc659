import { AxeBuilder } from "@axe-core/playwright";
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

const SIZES = [
  [360, 740],
  [1280, 900],
] as const;

test.each(SIZES)("no accessibility violation at %i × %i: result, error, empty", async (width, height) => {
  const page = await stage.open(width, height);
  const scan = async (): Promise<string[]> => {
    const { violations } = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .analyze();
    return violations.map(
      (v) =>
        `${v.id}: ${v.nodes
          .map((n) => String(n.target))
          .slice(0, 4)
          .join(" | ")}`,
    );
  };
  expect(await scan()).toEqual([]);
  await page.fill("#field-water-readings-0-value", "-5");
  await page.waitForSelector('[data-state="blocked"]');
  expect(await scan()).toEqual([]);
  await page.getByRole("button", { name: "Blank job" }).click();
  expect(await scan()).toEqual([]);
});
