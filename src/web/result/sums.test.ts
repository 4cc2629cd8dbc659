import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { builtInTrade, planJob, readJob } from "../../agronomy/index.ts";
import { builtInThermo } from "../../chem/index.ts";
import { workedOut } from "../../../test/worked-out.ts";
import { moneySums } from "./money-sums.ts";
import { fillingSums, hardnessSum } from "./sums.ts";

const trade = builtInTrade();
const job = readJob(
  parse(readFileSync(new URL("../../../examples/jobs/top-bore.yaml", import.meta.url), "utf8")),
  { trade },
);
if (!job.ok) throw new Error("the sample is not read");
const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
if (!plan.ok) throw new Error("the sample is not planned");

describe("money opened to its sums", () => {
  const two = readJob(
    parse(readFileSync(new URL("../../../examples/jobs/two-sources.yaml", import.meta.url), "utf8")),
    { trade },
  );
  if (!two.ok) throw new Error("the example is not read");
  const job = { ...two.value, spray: { ...two.value.spray, seasonArea_ha: 310 } };
  const planned = planJob(job, { thermo: builtInThermo(), trade }, { draws: 0 });
  if (!planned.ok) throw new Error("the example is not planned");
  const { programmes } = planned.value;
  const nothing = programmes.find(({ kind }) => kind === "none")!;
  const picked = programmes.filter(({ kind, cost }) => kind === "conditioner" && cost.perHa !== null);

  it("comes to what it says when worked out by hand", () => {
    expect(picked.length).toBeGreaterThan(1);
    for (const { what, numbers, result } of picked.flatMap((one) => moneySums(job, nothing, one))) {
      const shown = Number.parseFloat(result);
      // Results are in hundredths; the numbers put in have four figures, each good to 5 in 10 000.
      const bound = 0.005 + 0.0015 * Math.abs(shown);
      expect(Math.abs(workedOut(numbers) - shown), `${what}: ${numbers} = ${result}`).toBeLessThanOrEqual(
        bound,
      );
    }
  });

  it("ends in the money that the engine gives", () => {
    for (const programme of picked) {
      const sums = moneySums(job, nothing, programme);
      const of = (what: RegExp): readonly number[] =>
        sums.filter((one) => what.test(one.what)).map(({ result }) => Number.parseFloat(result));
      const sum = (what: RegExp): number => of(what).reduce((all, one) => all + one, 0);
      expect(of(/held as planned, per hectare/).length).toBe(job.mix.length);
      expect(sum(/held as planned, per hectare/)).toBeCloseTo(nothing.heldValue.perHa!, 2);
      expect(sum(/held with the row picked, per hectare/)).toBeCloseTo(programme.heldValue.perHa!, 2);
      expect(of(/^Cost, per load/)).toEqual([expect.closeTo(programme.cost.perLoad!, 2)]);
      expect(of(/^Cost, per season/)).toEqual([expect.closeTo(programme.cost.perSeason!, 2)]);
      expect(of(/^Active held as planned, per season/)).toEqual([
        expect.closeTo(nothing.heldValue.perSeason!, 2),
      ]);
      expect(of(/^Active held with the row picked, per load/)).toEqual([
        expect.closeTo(programme.heldValue.perLoad!, 2),
      ]);
    }
  });
});

describe("results opened to their sums", () => {
  const sums = [hardnessSum(plan.value), ...plan.value.programmes.flatMap((p) => fillingSums(job.value, p))];

  it("cover the water, loads, products, dose and cost", () => {
    const names = sums.map((sum) => sum.what);
    for (const name of ["Hardness", "Area of a full tank", "Loads", "Cost per hectare"]) {
      expect(names).toContain(name);
    }
    expect(names.some((name) => name.includes("glyphosate"))).toBe(true);
  });

  it("give the result that the engine gives when worked out by hand", () => {
    for (const sum of sums) {
      const byHand = workedOut(sum.numbers);
      const shown = Number.parseFloat(sum.result);
      const wanted = sum.what === "Loads" ? Math.ceil(byHand - 1e-9) : byHand;
      // Three figures are shown; costs are shown in hundredths.
      const bound = sum.what.startsWith("Cost") ? 0.006 : Math.abs(shown) * 0.006;
      expect(Math.abs(wanted - shown), `${sum.what}: ${sum.numbers} = ${sum.result}`).toBeLessThanOrEqual(
        bound,
      );
    }
  });
});
