import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { format, resolveConfig } from "prettier";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { parseText } from "../../src/cli/document.ts";
import { differences, summaryOf, threeFigures } from "./summary.ts";

/** A kept summary, with why this job is kept and why its figures are what they are. */
interface Golden {
  readonly job: string;
  readonly shows: string;
  /** Why the figures moved when they last did. */
  readonly reason: string;
  readonly summary: object;
}

const names = readdirSync(inProject("test", "golden")).filter((name) => name.endsWith(".json"));
const pathOf = (name: string): string => inProject("test", "golden", name);
const read = (name: string): Golden => JSON.parse(readFileSync(pathOf(name), "utf8")) as Golden;
const data = { thermo: builtInThermo(), trade: builtInTrade() };

function summaryNow(path: string): object {
  const document = parseText(readFileSync(inProject(path), "utf8"), path);
  if (!document.ok) throw new Error(JSON.stringify(document.issues));
  const job = readJob(document.value, { trade: data.trade });
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  const plan = planJob(job.value, data);
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return summaryOf(plan.value);
}

/** Keeps the new figures; any value but 1 is the reason that is kept with them. */
async function keep(name: string, summary: object, update: string): Promise<void> {
  const golden = read(name);
  const reason = update === "1" ? golden.reason : update;
  const path = pathOf(name);
  const text = JSON.stringify({ ...golden, reason, summary });
  writeFileSync(path, await format(text, { ...(await resolveConfig(path)), filepath: path }));
}

test("three jobs at least are kept, each with its reason", () => {
  expect(names.length).toBeGreaterThanOrEqual(3);
  for (const { shows, reason } of names.map(read)) {
    expect(shows).toMatch(/\w{3}/);
    expect(reason).toMatch(/\w{3}/);
  }
});

test.each(names)("%s: the figures are those that were kept", async (name) => {
  const { job, summary } = read(name);
  const now = summaryNow(job);
  const moved = differences(summary, now);
  const update = process.env["UPDATE_GOLDEN"] ?? "";
  if (update !== "" && moved.length > 0) {
    await keep(name, now, update);
    console.log(`${name} now holds:\n${moved.join("\n")}`);
    return;
  }
  const how = `${moved.length} figures of ${job} moved. Where that is meant: UPDATE_GOLDEN="why they moved" npx vitest run test/golden`;
  expect(moved, how).toEqual([]);
});

describe("the comparison", () => {
  test("names what moved, what is new and what is gone", () => {
    const kept = { tank: { pH: 5, solids: "" }, chosen: "none", gone: { a: null } };
    const now = { tank: { pH: 5.1, solids: "" }, chosen: "none", added: 1 };
    expect(differences(kept, now)).toEqual([
      "tank.pH: 5 → 5.1",
      "gone.a: null → nothing",
      "added: nothing → 1",
    ]);
    expect(differences(now, structuredClone(now))).toEqual([]);
  });
  test("keeps three figures, and what is not known as not known", () => {
    expect([0.93541, 1234.5, 0, null, "x"].map(threeFigures)).toEqual([0.935, 1230, 0, null, "x"]);
  });
});
