import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import lighthouse from "lighthouse";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage } from "../e2e/page.ts";
import type { Stage } from "../e2e/page.ts";
import { newProfile } from "../e2e/profile.ts";
import { countOwnTimeOnly } from "./own-time.ts";
import { best, TIMEOUT_MS } from "./quiet.ts";

/** Least score for speed; Lighthouse works out how the visit would go on a cheap phone with a slow line. */
const SPEED = { bound: 95, whenBusy: 80, larger: true, tries: 4 } as const;

const CATEGORIES = ["performance", "accessibility", "best-practices"] as const;
type Scores = Readonly<Record<(typeof CATEGORIES)[number], number>>;

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

interface Judged {
  /** Out of 100. */
  readonly scores: Scores;
  /** What was marked down of the two that are not of speed. */
  readonly faults: readonly string[];
}

/** What Lighthouse makes of a visit whose records lie in a folder. */
async function judge(folder: string): Promise<Judged> {
  const run = await lighthouse(stage.address, {
    auditMode: folder,
    logLevel: "error",
    onlyCategories: [...CATEGORIES],
  });
  if (run === undefined) throw new Error("Lighthouse gave no result");
  const { categories, audits } = run.lhr;
  const scores = Object.fromEntries(
    CATEGORIES.map((name) => [name, Math.round((categories[name]?.score ?? 0) * 100)]),
  ) as Scores;
  const faults = CATEGORIES.slice(1).flatMap((name) =>
    (categories[name]?.auditRefs ?? []).flatMap(({ id, weight }) => {
      const score = audits[id]?.score ?? 1;
      return weight > 0 && score < 1 ? [id] : [];
    }),
  );
  return { scores, faults };
}

/** A first visit by phone, judged as it went, and as it goes where the page has a processor to itself. */
async function visit(): Promise<{ readonly asItWent: Judged; readonly byItself: Judged }> {
  const profile = newProfile();
  const folder = mkdtempSync(join(tmpdir(), "hardstand-lighthouse-"));
  try {
    const { port } = await profile.start();
    await lighthouse(stage.address, {
      port,
      gatherMode: folder,
      logLevel: "error",
      onlyCategories: [...CATEGORIES],
    });
    const asItWent = await judge(folder);
    countOwnTimeOnly(join(folder, "defaultPass.trace.json"));
    return { asItWent, byItself: await judge(folder) };
  } finally {
    await profile.remove();
    rmSync(folder, { recursive: true });
  }
}

test(
  "Lighthouse, by phone: accessibility and best practices 100, performance 95 where the page has a processor to itself",
  async () => {
    const { value, bound, said } = await best("Lighthouse, performance", SPEED, async () => {
      const { asItWent, byItself } = await visit();
      for (const { scores, faults } of [asItWent, byItself]) {
        expect(faults).toEqual([]);
        expect(scores).toMatchObject({ accessibility: 100, "best-practices": 100 });
      }
      console.log(`Lighthouse, performance by the clock on the wall: ${String(asItWent.scores.performance)}`);
      return byItself.scores.performance;
    });
    expect(value, said).toBeGreaterThanOrEqual(bound);
  },
  TIMEOUT_MS,
);
