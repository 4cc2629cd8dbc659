import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { planHtml } from "../../src/report/index.ts";
import { loadLanguage } from "../../src/words/index.ts";
import { setStage, SOON, unfoldTools } from "./page.ts";
import type { Stage } from "./page.ts";

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** Chooses a language and waits until the card is in it, which is the last to follow. */
async function choose(page: Page, tag: string, onCard: string): Promise<void> {
  await unfoldTools(page);
  await page.locator(`select:has(option[value="${tag}"])`).selectOption(tag);
  await page.getByTestId("card").getByText(onCard).first().waitFor({ timeout: 90_000 });
}

test("the main flow runs in German on a phone: a reading, the answer, the card; and it is kept", async () => {
  const page = await stage.open(360, 740);
  await choose(page, "de", "Vor dem Start");
  expect(await page.getAttribute("html", "lang")).toBe("de");
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(360);

  const figure = page.locator("#section-water-facts .figure").first();
  const before = await figure.textContent();
  await page.getByRole("textbox", { name: "Calcium", exact: true }).fill("184,5");
  await expect.poll(() => figure.textContent(), SOON).not.toBe(before);
  expect(await page.getByTestId("card").locator("footer").textContent()).toMatch(/pH \d,\d/);

  await page.getByRole("textbox", { name: "Calcium", exact: true }).fill("-5");
  await page.waitForSelector('[data-state="blocked"]');
  expect(await page.getByTestId("waiting").textContent()).toContain("Es fehlt noch:");

  await page.reload();
  await page.waitForSelector("#field-title");
  expect(await page.getAttribute("html", "lang")).toBe("de");
  expect(await page.getByRole("heading", { name: "Wasseranalyse" }).count()).toBe(1);
});

// The titles of works stay in the language they were written in: they are listed apart.
test.each([
  ["de", "Vor dem Start", "Jedes mg/L kann etwa 3 mg/L Glyphosat binden.", "a. Metall, dann Herbizid"],
  [
    "fr",
    "Avant de commencer",
    "chaque mg/L peut retenir environ 3 mg/L de glyphosate.",
    "a. métal, puis herbicide",
  ],
  [
    "es",
    "Antes de empezar",
    "cada mg/L puede retener unos 3 mg/L de glifosato.",
    "a. metal, luego herbicida",
  ],
])(
  "in %s nothing of the known facts and of the flasks stays English",
  async (tag, onCard, fact, flask) => {
    const page = await stage.open(1280, 900);
    await choose(page, tag, onCard);
    const known = page.locator("#section-known .known");
    expect((await known.allTextContents()).join(" ")).toContain(fact);
    expect(await known.locator('span[lang="en"]').allTextContents()).toEqual([]);
    await page.goto(`${stage.address}#flasks`);
    await page.waitForSelector('[data-flasks="done"]');
    for (const panel of [".farm-panel", ".bench-panel"]) await page.locator(`${panel} summary`).click();
    await page.getByTestId("farm").waitFor({ timeout: 100_000 });
    await page.getByTestId("bench").waitFor({ timeout: 100_000 });
    const flasks = page.locator(".flasks-main");
    expect(await flasks.textContent()).toContain(flask);
    for (const part of [":scope > :not(details)", ".farm-panel", ".bench-panel", ".seen-panel"])
      expect(await flasks.locator(part).locator('span[lang="en"]').allTextContents(), part).toEqual([]);
  },
  240_000,
);

test.each(["en-US", "de", "fr", "es"] as const)(
  "the card in %s prints on exactly one page, A4 and Letter",
  async (tag) => {
    const trade = builtInTrade();
    const sample = readFileSync(inProject("examples", "jobs", "top-bore.yaml"), "utf8");
    const job = readJob(parse(sample), { trade });
    if (!job.ok) throw new Error("job not read");
    const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
    if (!plan.ok) throw new Error("job not planned");
    const language = await loadLanguage(tag);
    const facts = { date: "2026-01-01", title: job.value.title, sampled: null };
    const page = await (await stage.newContext()).newPage();
    for (const paper of ["A4", "Letter"] as const) {
      await page.setContent(planHtml(plan.value, job.value, facts, { part: "card", paper, language }));
      expect(await page.getAttribute("html", "lang")).toBe(tag);
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
      expect(pdf.match(/\/Type\s*\/Page[^s]/g), paper).toHaveLength(1);
    }
  },
);
