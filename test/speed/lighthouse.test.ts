import lighthouse from "lighthouse";
import { afterAll, beforeAll, expect, test } from "vitest";
import { setStage } from "../e2e/page.ts";
import type { Stage } from "../e2e/page.ts";
import { newProfile } from "../e2e/profile.ts";
import { best, TIMEOUT_MS } from "./quiet.ts";

/**
 * Least score for speed. Lighthouse works out how the visit would go on a cheap phone with a slow line. The target is 95,
 * and is not held here: the same files scored 81 to 98 on one machine within an hour, with nothing else at work. What is
 * held finds a page that became much slower. Four fifths of the score do not depend on what else the machine does, which
 * is what is asked for on a busy one.
 */
const SPEED = { bound: 75, whenBusy: 60, larger: true, tries: 4 } as const;

const CATEGORIES = ["performance", "accessibility", "best-practices"] as const;
type Scores = Readonly<Record<(typeof CATEGORIES)[number], number>>;

let stage: Stage;
beforeAll(async () => {
  stage = await setStage();
});
afterAll(async () => {
  await stage.close();
});

/** Scores out of 100 of a first visit by phone, and what was marked down of the two that are not of speed. */
async function visit(): Promise<{ readonly scores: Scores; readonly faults: readonly string[] }> {
  const profile = newProfile();
  try {
    const { port } = await profile.start();
    const onlyCategories = [...CATEGORIES];
    const run = await lighthouse(stage.address, { port, logLevel: "error", onlyCategories });
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
  } finally {
    await profile.remove();
  }
}

test(
  "Lighthouse, by phone: accessibility and best practices 100, not much slower than it was",
  async () => {
    const { value, bound, said } = await best(SPEED, async () => {
      const { scores, faults } = await visit();
      expect(faults).toEqual([]);
      expect(scores).toMatchObject({ accessibility: 100, "best-practices": 100 });
      return scores.performance;
    });
    expect(value, said).toBeGreaterThanOrEqual(bound);
  },
  TIMEOUT_MS,
);
