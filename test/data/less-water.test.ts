import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { fillCard, planText } from "../../src/report/index.ts";

const trade = builtInTrade();

/** The sample job with its tank and volume said in gallons. */
function planned() {
  const document = parse(readFileSync(inProject("examples", "jobs", "top-bore.yaml"), "utf8")) as {
    readonly spray: Readonly<Record<string, unknown>>;
  };
  const { spray } = document;
  const inGallons = { ...spray, tank: "800 US gal", volume: "20 US gal/ac", "least volume": "10 US gal/ac" };
  const job = readJob({ ...document, spray: inGallons }, { trade });
  if (!job.ok) throw new Error("the job cannot be read");
  const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
  if (!plan.ok) throw new Error("the job cannot be planned");
  return plan.value;
}

test("less water is told in the measures of the job, the metric one beside; the plan itself stays in SI", () => {
  const plan = planned();
  const way = plan.programmes.find(({ kind }) => kind === "less water");
  expect(way?.name).toMatch(/^less water: [\d.]+ L\/ha$/);
  const facts = { date: "2026-01-01", title: null, sampled: null };
  expect(planText(plan, "on the leaf")).toMatch(/less water: [\d.]+ US gal\/ac \([\d.]+ L\/ha\)/);
  const card = fillCard(plan, { ...facts, programme: way?.id ?? "" });
  expect(card.waterVolume).toMatch(/^[\d.]+ US gal\/ac \([\d.]+ L\/ha\)$/);
});
