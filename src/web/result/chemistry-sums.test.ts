import { readFileSync } from "node:fs";
import { describe, expect, it, test } from "vitest";
import { parse } from "yaml";
import { workedOut } from "../../../test/worked-out.ts";
import { builtInTrade, byClock, planJob, readJob } from "../../agronomy/index.ts";
import type { Job, Plan } from "../../agronomy/index.ts";
import { builtInThermo } from "../../chem/index.ts";
import { loadLanguage } from "../../words/index.ts";
import { alkalinitySum, clockSums, ruleSum } from "./chemistry-sums.ts";
import type { Sum } from "./sums.ts";

const trade = builtInTrade();
const thermo = builtInThermo();

type Document = Record<string, unknown> & { readonly water: { readonly readings: readonly unknown[] } };
const example = (name: string): Document =>
  parse(readFileSync(new URL(`../../../examples/jobs/${name}.yaml`, import.meta.url), "utf8")) as Document;

function planned(document: unknown): { readonly job: Job; readonly plan: Plan } {
  const job = readJob(document, { trade });
  if (!job.ok) throw new Error(`the job is not read: ${JSON.stringify(job.issues)}`);
  const plan = planJob(job.value, { thermo, trade }, { draws: 0 });
  if (!plan.ok) throw new Error("the job is not planned");
  return { job: job.value, plan: plan.value };
}

/** Results show three figures, numbers put in have four: they meet within half a hundredth. */
function expectMet(sum: Sum, engine: number): void {
  expect(Math.abs(workedOut(sum.numbers) / engine - 1), `${sum.numbers} for ${String(engine)}`).toBeLessThan(
    5e-3,
  );
  expect(Math.abs(workedOut(sum.result.split(" = ")[0] ?? "") / engine - 1), sum.result).toBeLessThan(6e-3);
}

describe("alkalinity", () => {
  const { water, ...rest } = example("top-bore");
  const withReadings = (readings: readonly object[]): { readonly job: Job; readonly plan: Plan } =>
    planned({ ...rest, water: { ...water, readings } });
  const others = [
    { parameter: "calcium", value: 80, unit: "mg/L" },
    { parameter: "magnesium", value: 30, unit: "mg/L" },
    { parameter: "pH", value: 7.6 },
  ];

  it.each([
    ["titrated", [{ parameter: "alkalinity", value: 14.2, unit: "°dH" }]],
    [
      "by hydrogen carbonate and carbonate",
      [
        { parameter: "bicarbonate", value: 288, unit: "mg/L" },
        { parameter: "carbonate", value: 6, unit: "mg/L" },
      ],
    ],
    ["assumed from the hardness", []],
    [
      "by the balance of the ions",
      [
        { parameter: "sodium", value: 90, unit: "mg/L" },
        { parameter: "chloride", value: 70, unit: "mg/L" },
        { parameter: "sulfate", value: 60, unit: "mg/L" },
      ],
    ],
  ])("%s comes to the engine's figure", (_, readings) => {
    const { job, plan } = withReadings([...others, ...readings]);
    expectMet(alkalinitySum(job, plan), plan.water.alkalinity_mgPerL_asCaCO3);
  });

  it("names the source of what was assumed", () => {
    const { job, plan } = withReadings(others);
    const assumed = plan.water.assumptions.find(({ about }) => about === "alkalinity");
    expect(assumed).toBeDefined();
    expect(alkalinitySum(job, plan).source).toBe(assumed?.source);
  });
});

describe("by the clock", () => {
  const broken = trade.actives.filter(
    ({ rateLaw, halfLives }) => rateLaw !== null || halfLives.some(({ halfLife_h }) => halfLife_h !== null),
  );

  test.each(broken.map(({ id }) => id))(
    "%s: rate, half-life and share come to the engine's figures",
    (id) => {
      const active = broken.find((one) => one.id === id)!;
      let seen = 0;
      for (const [pH, temperature_C] of [
        [4.9, 12],
        [7.137, 25],
        [8.4, 31],
      ] as const) {
        const clock = byClock(active, "SL", pH, temperature_C, 3);
        const sums = clockSums(clock, 3);
        expect(sums.length).toBe(clock.halfLife_h === null ? 0 : 3);
        const [rate, halfLife, share] = sums;
        if (rate === undefined || halfLife === undefined || share === undefined) continue;
        seen += 1;
        expectMet(rate, Math.LN2 / clock.halfLife_h!);
        expectMet(halfLife, clock.halfLife_h!);
        expectMet(share, clock.intact!);
        expect(
          trade.actives
            .flatMap((one) => one.halfLives.map(({ source }) => source))
            .concat(active.rateLaw?.source ?? []),
        ).toContain(rate.source);
      }
      expect(seen).toBeGreaterThan(0);
    },
  );

  it("says nothing where no half-life is known", () => {
    expect(clockSums(byClock(broken[0]!, "SL", 7, 25, null), null)).toHaveLength(2);
    const glyphosate = trade.actives.find(({ id }) => id === "glyphosate")!;
    expect(clockSums(byClock(glyphosate, "SL", 7, 25, 3), 3)).toEqual([]);
  });
});

describe("the published rule", () => {
  const { plan } = planned(example("top-bore"));
  const ruled = plan.programmes.filter(({ publishedRuleDose }) => publishedRuleDose !== null);

  it("comes to the dose that stands beside ammonium sulfate, with its place in the source", () => {
    expect(ruled.length).toBeGreaterThan(0);
    for (const programme of ruled) {
      const sum = ruleSum(programme)!;
      expectMet(sum, programme.publishedRuleDose!.dose_gPerL);
      expect(sum.source).toBe("nalewaja-matysiak-1993");
      expect(sum.place).toMatch(/p\. 72, item 11/);
    }
  });

  it("is not there for a way without it", () => {
    expect(ruleSum(plan.programmes.find(({ kind }) => kind === "none")!)).toBeNull();
  });
});

test("numbers follow the language", async () => {
  const { plan, job } = planned(example("top-bore"));
  const german = await loadLanguage("de");
  expect(alkalinitySum(job, plan, german).numbers).toMatch(/\d,\d/);
  expect(alkalinitySum(job, plan, german).numbers).not.toMatch(/\d\.\d/);
});
