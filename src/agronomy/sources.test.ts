import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readingUncertainty } from "../water/index.ts";
import { MODEL_SOURCES } from "./bands/model-uncertainty.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";

const trade = builtInTrade();
const read = readJob(
  {
    hardstand: 1,
    water: {
      source: "bore",
      method: "laboratory",
      readings: [
        { parameter: "calcium", value: 92, unit: "mg/L" },
        { parameter: "magnesium", value: 31, unit: "mg/L" },
        { parameter: "iron", value: "<0.05", unit: "mg/L" },
        { parameter: "pH", value: 7.6 },
      ],
    },
    spray: { volume: "200 L/ha", tank: "1000 L", area: "5 ha" },
    mix: [{ active: "glyphosate", strength: "360 g/L ae", rate: "2 L/ha", formulation: "SL" }],
    conditioners: [{ chemistry: "ammonium sulfate" }],
  },
  { trade },
);
if (!read.ok) throw new Error(JSON.stringify(read.issues));
const job = read.value;

function keysOf(draws: number): readonly string[] {
  const plan = planJob(job, { thermo: builtInThermo(), trade }, { draws });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value.sources.map(({ key }) => key);
}

describe("the sources of a plan", () => {
  it("name those of the interaction parameters its drop was dried with", () => {
    expect(keysOf(0)).toEqual(expect.arrayContaining(["may-2011", "harvie-moller-weare-1984"]));
  });

  it("name with ranges, and only then, those of how well readings and the model are known", () => {
    const measured = job.water.readings.filter(({ measured }) => measured.kind === "value");
    const behindReadings = measured.map((reading) => readingUncertainty(reading, "laboratory").source);
    const withRanges = keysOf(60);
    expect(withRanges).toEqual(expect.arrayContaining([...behindReadings, ...MODEL_SOURCES]));
    const without = keysOf(0);
    expect(withRanges.filter((key) => !without.includes(key)).length).toBeGreaterThan(0);
    expect(without.filter((key) => !withRanges.includes(key))).toEqual([]);
  });
});
