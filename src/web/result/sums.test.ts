import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { builtInTrade, planJob, readJob } from "../../agronomy/index.ts";
import { builtInThermo } from "../../chem/index.ts";
import { fillingSums, hardnessSum } from "./sums.ts";

const trade = builtInTrade();
const job = readJob(
  parse(readFileSync(new URL("../../../examples/jobs/top-bore.yaml", import.meta.url), "utf8")),
  { trade },
);
if (!job.ok) throw new Error("the sample is not read");
const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
if (!plan.ok) throw new Error("the sample is not planned");

/** What the numbers of a sum come to when a hand works them out; units left away. */
function workedOut(numbers: string): number {
  const terms = numbers.split(/([×÷])/).map((part) => {
    const found = part.replace("CaCO3", "").match(/\d+(?:\.\d+)?/g) ?? [];
    return found.map(Number).reduce((sum, term) => sum + term, 0);
  });
  const signs = numbers.match(/[×÷]/g) ?? [];
  const [first = NaN] = terms;
  return signs.reduce((result, sign, i) => {
    const term = terms[2 * (i + 1)] ?? NaN;
    return sign === "×" ? result * term : result / term;
  }, first);
}

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
