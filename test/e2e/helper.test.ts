import { readFileSync } from "node:fs";
import type { Page, Worker } from "playwright-core";
import { parse } from "yaml";
import { afterAll, beforeAll, expect, test } from "vitest";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
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
const SAMPLE = new URL("../../examples/jobs/top-bore.yaml", import.meta.url);

/** Types a reading and waits for its answer. */
async function answered(page: Page, calcium: string): Promise<void> {
  await page.fill(CALCIUM, calcium);
  await page.waitForSelector('[data-state="done"]', { timeout: 60_000 });
  await expect.poll(() => page.getByTestId("waiting").count(), SOON).toBe(0);
}

/** The worker that helps with plans, by the name it bears; another gives first answers. */
async function helperOf(page: Page): Promise<Worker | undefined> {
  for (const worker of page.workers())
    if ((await worker.evaluate(() => self.name)) === "plan helper") return worker;
  return undefined;
}

/** Types readings until a second worker is there that has done tasks of a plan; counts what it does from then on. */
async function helperAtWork(page: Page): Promise<Worker> {
  await answered(page, "150");
  await expect.poll(() => helperOf(page), SOON).toBeDefined();
  const helper = (await helperOf(page))!;
  await helper.evaluate(() => {
    const count = { done: 0 };
    const post = self.postMessage.bind(self);
    Object.assign(self, {
      count,
      postMessage: (message: { type: string }) => {
        if (message.type === "done") count.done += 1;
        post(message);
      },
    });
  });
  const done = (): Promise<number> =>
    helper.evaluate(() => (self as unknown as { count: { done: number } }).count.done);
  for (let k = 0; k < 30 && (await done()) === 0; k++) await answered(page, String(151 + k));
  expect(await done()).toBeGreaterThan(0);
  return helper;
}

/** The programmes of a plan as the page saves it. */
async function shown(page: Page): Promise<unknown> {
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the result (JSON)" }).click();
  return JSON.parse(readFileSync(await (await download).path(), "utf8"));
}

/** What the engine makes of the sample in one thread, with another reading. */
function alone(calcium: number): object {
  const document = parse(readFileSync(SAMPLE, "utf8")) as { water: { readings: { value: number }[] } };
  document.water.readings[0]!.value = calcium;
  const trade = builtInTrade();
  const job = readJob(document, { trade });
  if (!job.ok) throw new Error("sample not read");
  const plan = planJob(job.value, { thermo: builtInThermo(), trade });
  if (!plan.ok) throw new Error("sample not planned");
  const { chosen, programmes } = plan.value;
  return {
    chosen,
    programmes: programmes.map(({ id, dose_gPerL, confidence }) => ({ id, dose_gPerL, confidence })),
  };
}

test("who asks about one job only has one worker; a second helps later, with the same answer", async () => {
  const page = await stage.open(1280, 900);
  expect(page.workers()).toHaveLength(1);
  await helperAtWork(page);
  await answered(page, "184");
  expect(await shown(page)).toMatchObject(alone(184));
});

test("a helper that breaks down is done without", async () => {
  const page = await stage.open(1280, 900);
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(error.message));
  const helper = await helperAtWork(page);
  await helper.evaluate(() => {
    setTimeout(() => {
      throw new Error("broken");
    });
  });
  await answered(page, "190");
  expect(await shown(page)).toMatchObject(alone(190));
  expect(errors).toEqual([]);
});
