import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import { workingsOf } from "./workings.ts";

const trade = builtInTrade();
const job = readJob(
  parse(readFileSync(new URL("../../examples/jobs/top-bore.yaml", import.meta.url), "utf8")),
  { trade },
);
if (!job.ok) throw new Error("the sample is not read");
const read = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
if (!read.ok) throw new Error("the sample is not planned");
const plan = read.value;
const dosed = plan.programmes.find(({ conditioner }) => conditioner === "ammonium-sulfate");
const planned = plan.programmes.find(({ kind }) => kind === "none");
if (dosed === undefined || planned === undefined) throw new Error("the sample has lost its ways out");

describe("the mass balance of an active", () => {
  const balances = plan.programmes.flatMap((programme) =>
    (workingsOf(programme)?.balances ?? []).map((balance) => ({ programme, balance })),
  );

  it("stands for each active in the tank and on the leaf", () => {
    expect(balances.map(({ balance }) => balance.where)).toEqual(
      plan.programmes.flatMap(() => ["in the tank", "on the leaf"]),
    );
  });

  it("comes to the share that the plan gives", () => {
    for (const { programme, balance } of balances) {
      const verdict = programme.actives.find(({ active }) => active === balance.active);
      const share = balance.where === "in the tank" ? verdict?.inTank : verdict?.onLeaf;
      expect(balance.free_molPerL / balance.total_molPerL).toBeCloseTo(share?.free ?? NaN, 6);
      const sum = (lines: typeof balance.lines): number =>
        lines.reduce((total, { active_molPerL }) => total + active_molPerL, 0);
      expect(sum(balance.lines) / balance.total_molPerL).toBeCloseTo(1, 4);
      const free = balance.lines.filter(({ holders }) => holders.length === 0);
      expect(sum(free) / balance.total_molPerL).toBeCloseTo(balance.free, 4);
    }
  });

  it("has every dissolved form as its constant, activities and coefficient give it", () => {
    for (const { balance } of balances) {
      for (const line of balance.lines.filter(({ isSolid }) => !isSolid)) {
        const log10 = line.from.reduce(
          (sum, { times, log10Activity }) => sum + times * log10Activity,
          (line.logK ?? NaN) - (line.log10Gamma ?? NaN),
        );
        const expected = 10 ** log10;
        const times = line.from.find(({ component }) => component.startsWith("Gly"))?.times ?? 1;
        expect(line.active_molPerL / times / expected, `${balance.where}: ${line.form}`).toBeCloseTo(1, 6);
      }
    }
  });

  it("names the source of every constant", () => {
    for (const { balance } of balances)
      for (const { source, from } of balance.lines) if (from.length > 1) expect(source).not.toBeNull();
  });
});

describe("the dose curve", () => {
  const curve = workingsOf(dosed)?.curve;

  it("runs from nothing added through the dose of the programme", () => {
    expect(curve?.points[0]).toMatchObject({ dose_gPerL: 0 });
    expect(curve?.points[0]?.onLeaf).toBeCloseTo(planned.actives[0]?.onLeaf.free ?? NaN, 6);
    const at = curve?.points.find(({ dose_gPerL }) => dose_gPerL === dosed.dose_gPerL);
    expect(at?.inTank).toBeCloseTo(dosed.actives[0]?.inTank.free ?? NaN, 6);
    expect(at?.onLeaf).toBeCloseTo(dosed.actives[0]?.onLeaf.free ?? NaN, 6);
    expect(curve?.points.at(-1)?.dose_gPerL).toBeGreaterThan(dosed.dose_gPerL);
    const doses = curve?.points.map(({ dose_gPerL }) => dose_gPerL.toPrecision(3));
    expect(new Set(doses).size).toBe(doses?.length);
  });

  it("carries the aim and the published rule", () => {
    expect(curve?.aim).toEqual({ freeShare: job.value.aim.freeShare, where: job.value.aim.where });
    expect(curve?.publishedRule_gPerL).toBe(dosed.publishedRuleDose?.dose_gPerL);
  });

  it("is left out where nothing is dosed", () => {
    expect(workingsOf(planned)?.curve).toBeNull();
  });
});

it("knows nothing of a plan that was read from a file", () => {
  expect(workingsOf(structuredClone(dosed))).toBeNull();
});
