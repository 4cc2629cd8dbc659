import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { countOwnTimeOnly } from "./own-time.ts";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "hardstand-trace-"));
});
afterEach(() => {
  rmSync(folder, { recursive: true });
});

/** Events of a trace after the rewriting, as name, beginning and length [µs]. */
function rewritten(
  traceEvents: readonly object[],
): readonly (readonly [string, number, number | undefined])[] {
  const path = join(folder, "trace.json");
  writeFileSync(path, JSON.stringify({ traceEvents }));
  countOwnTimeOnly(path);
  const { traceEvents: events } = JSON.parse(readFileSync(path, "utf8")) as {
    traceEvents: { name: string; ts: number; dur?: number }[];
  };
  return events.map(({ name, ts, dur }) => [name, ts, dur] as const);
}

const page = { ph: "X", pid: 1, tid: 1 };

test("a task takes the time its thread worked, what is within it likewise less, and nothing else changes", () => {
  expect(
    rewritten([
      { ...page, name: "RunTask", ts: 1000, dur: 100, tdur: 40 },
      { ...page, name: "Layout", ts: 1050, dur: 20, tdur: 20 },
      { ...page, name: "RunTask", ts: 2000, dur: 60, tdur: 60 },
      { ...page, name: "RunTask", ts: 3000, dur: 70 },
      { ...page, tid: 2, name: "RunTask", ts: 1050, dur: 50, tdur: 25 },
      { ...page, ph: "I", name: "firstPaint", ts: 1080 },
    ]),
  ).toEqual([
    ["RunTask", 1000, 40],
    ["Layout", 1020, 8],
    ["RunTask", 2000, 60],
    ["RunTask", 3000, 70],
    ["RunTask", 1050, 25],
    ["firstPaint", 1080, undefined],
  ]);
});

test("a trace without the time of threads is refused, not taken for a quick one", () => {
  expect(() => rewritten([{ ...page, name: "RunTask", ts: 0, dur: 9 }])).toThrow("no task tells the time");
});
