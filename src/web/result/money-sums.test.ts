import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { parse } from "yaml";
import { builtInTrade, planJob, readJob } from "../../agronomy/index.ts";
import { builtInThermo } from "../../chem/index.ts";
import { moneySums } from "./money-sums.ts";

const trade = builtInTrade();
const document = parse(
  readFileSync(new URL("../../../examples/jobs/two-sources.yaml", import.meta.url), "utf8"),
) as { spray: Record<string, unknown> };
const job = readJob({ ...document, spray: { ...document.spray, "season area": "310 ha" } }, { trade });
if (!job.ok) throw new Error(JSON.stringify(job.issues));
const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
if (!plan.ok) throw new Error("the example is not planned");
const { programmes } = plan.value;
const nothing = programmes.find(({ kind }) => kind === "none")!;

/** Numbers of a sum worked out from left to right, units left away. */
function workedOut(numbers: string): number {
  const [first = "", ...rest] = numbers.split(/(?=[×÷])/);
  return rest.reduce((result, part) => {
    const term = Number.parseFloat(part.slice(1));
    return part.startsWith("×") ? result * term : result / term;
  }, Number.parseFloat(first));
}

it("come to what they say when worked out by hand, and end in the money of the programme", () => {
  const picked = programmes.filter(({ kind, cost }) => kind === "conditioner" && cost.perHa !== null);
  expect(picked.length).toBeGreaterThan(1);
  for (const programme of picked) {
    const sums = moneySums(job.value, nothing, programme);
    for (const { what, numbers, result } of sums) {
      const shown = Number.parseFloat(result);
      // Results are in hundredths; the numbers put in have four figures, each good to 5 in 10 000.
      const bound = 0.005 + 0.0015 * Math.abs(shown);
      expect(Math.abs(workedOut(numbers) - shown), `${what}: ${numbers} = ${result}`).toBeLessThanOrEqual(
        bound,
      );
    }
    const end = (what: string): number =>
      Number.parseFloat(sums.find((sum) => sum.what === what)?.result ?? "NaN");
    expect(end("Cost, per load")).toBeCloseTo(programme.cost.perLoad!, 2);
    expect(end("Cost, per season")).toBeCloseTo(programme.cost.perSeason!, 2);
    expect(end("Active held as planned, per season")).toBeCloseTo(nothing.heldValue.perSeason!, 2);
    expect(end("Active held with the row picked, per load")).toBeCloseTo(programme.heldValue.perLoad!, 2);
  }
});
