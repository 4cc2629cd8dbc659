import { expect, test } from "vitest";
import { isWaterAlone, readWaterAlone } from "./job.ts";

const water = { source: "Top bore", method: "meter", readings: [{ parameter: "pH", value: 7.6 }] };

test("a water alone is told from a job, however incomplete the job", () => {
  expect(isWaterAlone({ hardstand: 1, water })).toBe(true);
  expect(isWaterAlone({ hardstand: 1, title: "Spring", water })).toBe(true);
  expect(isWaterAlone({ hardstand: 1, water, spray: {} })).toBe(false);
  expect(isWaterAlone({ hardstand: 1, water, sprya: {} })).toBe(false);
  for (const other of [null, "water", [], { hardstand: 1 }]) expect(isWaterAlone(other)).toBe(false);
});

test("a water alone is read with its version, all problems at once", () => {
  const read = readWaterAlone({ hardstand: 1, water });
  expect(read.ok && read.value.source).toBe("Top bore");
  const wrong = readWaterAlone({ hardstand: 2, water: { ...water, method: "guess" } });
  expect(wrong.ok).toBe(false);
  expect(wrong.issues.map((issue) => issue.path)).toEqual(["hardstand", "water.method"]);
  expect(readWaterAlone({ water }).issues.map((issue) => issue.path)).toEqual(["hardstand"]);
});
