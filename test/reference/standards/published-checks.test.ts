import { describe, expect, test } from "vitest";
import { isWithin, record } from "../validation-recorder.ts";
import { BALANCE_HANDLERS } from "./balance-handlers.ts";
import { CONDUCTIVITY_HANDLERS } from "./conductivity-handlers.ts";
import { HARDNESS_HANDLERS } from "./hardness-handlers.ts";
import { PUBLISHED_CHECKS } from "./published-check.ts";
import type { Handler, PublishedCheck } from "./published-check.ts";
import { UNIT_HANDLERS } from "./unit-handlers.ts";

const HANDLERS: Readonly<Record<string, Handler>> = {
  ...UNIT_HANDLERS,
  ...HARDNESS_HANDLERS,
  ...CONDUCTIVITY_HANDLERS,
  ...BALANCE_HANDLERS,
};

function run(check: PublishedCheck): void {
  const handler = HANDLERS[check.id];
  if (handler === undefined) throw new Error(`no handler for ${check.id}`);
  const pairs = handler(check);
  expect(pairs.length).toBeGreaterThan(0);
  for (const pair of pairs) {
    if (typeof pair.published === "string") {
      expect(pair.ours, pair.label).toBe(pair.published);
      continue;
    }
    if (!("tolerance" in pair)) throw new Error(`${check.id}: a number without a tolerance`);
    const within = isWithin(pair.published, pair.ours, pair.tolerance);
    record({
      group: `water tests: ${check.group.toLowerCase()}`,
      what: pair.label === undefined ? check.what : `${check.what}: ${pair.label}`,
      published: pair.published,
      ours: pair.ours,
      unit: pair.unit,
      tolerance: pair.tolerance,
      within,
      ...(pair.reason === undefined ? {} : { reason: pair.reason }),
      source: check.fromMemory ? `${check.source} (from memory)` : check.source,
    });
    // A stated miss must be a miss, so that a reason never outlives its cause.
    expect(within, `${check.id} ${pair.label ?? ""}: published ${pair.published}, ours ${pair.ours}`).toBe(
      pair.reason === undefined,
    );
  }
}

describe("published values and worked examples of water tests", () => {
  test("every check of the fixture has a handler, and every handler a check", () => {
    expect(Object.keys(HANDLERS).sort()).toEqual(PUBLISHED_CHECKS.map(({ id }) => id).sort());
  });

  test.each(PUBLISHED_CHECKS.map((check) => [check.id, check] as const))("%s", (_id, check) => {
    run(check);
  });
});
