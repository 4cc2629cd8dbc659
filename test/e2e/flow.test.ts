import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { setStage, SOON, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

const CALCIUM = "#field-water-readings-0-value";

test("the sample opens finished, with the same numbers as the engine gives", async () => {
  const page = await stage.open(1280, 900);
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the result (JSON)" }).click();
  const shown: unknown = JSON.parse(readFileSync(await (await download).path(), "utf8"));
  const document: unknown = parse(
    readFileSync(new URL("../../examples/jobs/top-bore.yaml", import.meta.url), "utf8"),
  );
  const trade = builtInTrade();
  const job = readJob(document, { trade });
  if (!job.ok) throw new Error("sample not read");
  const plan = planJob(job.value, { thermo: builtInThermo(), trade });
  if (!plan.ok) throw new Error("sample not planned");
  expect(shown).toMatchObject({
    tank: { pH: plan.value.tank.pH },
    chosen: plan.value.chosen,
    programmes: plan.value.programmes.map(({ id, dose_gPerL }) => ({ id, dose_gPerL })),
  });
});

test("a changed reading changes the answer, a bad one keeps the last and says so", async () => {
  const page = await stage.open(1280, 900);
  const figure = page.locator("#section-water-facts .figure").first();
  const before = await figure.textContent();
  await page.fill(CALCIUM, "184");
  await expect.poll(() => figure.textContent(), SOON).not.toBe(before);
  const good = await figure.textContent();
  await page.fill(CALCIUM, "-5");
  await page.waitForSelector('[data-state="blocked"]');
  expect(await figure.textContent()).toBe(good);
  expect(await page.getByTestId("waiting").textContent()).toContain("-5");
  await page.reload();
  await page.waitForSelector(CALCIUM);
  expect(await page.inputValue(CALCIUM)).toBe("-5");
});

test.each([360, 320])("nothing scrolls sideways at %i px", async (width) => {
  const page = await stage.open(width, 740);
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
});

test.each([360, 320])("the unfolded tools stay within %i px", async (width) => {
  const page = await stage.visit(width, 740);
  await unfoldTools(page);
  const ends = await page
    .locator(".toolbar :is(button, select, a, label, summary)")
    .evaluateAll((tools) =>
      tools.map((tool) => tool.getBoundingClientRect()).map(({ left, right }) => [left, right]),
    );
  expect(ends.length).toBeGreaterThan(8);
  for (const [left, right] of ends) {
    expect(left).toBeGreaterThanOrEqual(0);
    expect(right).toBeLessThanOrEqual(width);
  }
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(width);
});

test.each(["A4", "Letter"])("the card prints on exactly one page of %s", async (format) => {
  const page = await stage.open(1280, 900);
  const pdf = (await page.pdf({ format })).toString("latin1");
  expect(pdf.match(/\/Type\s*\/Page[^s]/g)).toHaveLength(1);
});
