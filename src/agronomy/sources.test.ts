import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { completeWater, readWaterTest } from "../water/index.ts";
import { drawInputs } from "./bands/draws.ts";
import { drawSetting } from "./bands/programme-draws.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { SourceUsed } from "./types.ts";

const trade = builtInTrade();
const thermo = builtInThermo();

const BORE = [
  { parameter: "calcium", value: 92, unit: "mg/L" },
  { parameter: "magnesium", value: 31, unit: "mg/L" },
  { parameter: "alkalinity", value: 240, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.6 },
];
const GLYPHOSATE = { active: "glyphosate", strength: "360 g/L ae", rate: "2 L/ha", formulation: "SL" };

const keysOf = (change: Record<string, unknown> = {}, draws = 60): readonly string[] =>
  sourcesOf(change, draws).map(({ key }) => key);

function sourcesOf(change: Record<string, unknown>, draws: number): readonly SourceUsed[] {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "bore", method: "laboratory", readings: BORE },
      spray: { volume: "200 L/ha", tank: "1000 L", area: "5 ha" },
      mix: [GLYPHOSATE],
      conditioners: [{ chemistry: "ammonium sulfate" }],
      ...change,
    },
    { trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, { thermo, trade }, { draws });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value.sources;
}

/** A laboratory's water with readings in place of others or beside them. */
const waterWith = (...readings: readonly Record<string, unknown>[]): Record<string, unknown> => ({
  water: {
    source: "bore",
    method: "laboratory",
    readings: [...BORE.filter((one) => !readings.some((r) => r["parameter"] === one.parameter)), ...readings],
  },
});
describe("the sources of a plan", () => {
  it("name those of the interaction parameters its drop was dried with", () => {
    expect(keysOf({}, 0)).toEqual(expect.arrayContaining(["may-2011", "harvie-moller-weare-1984"]));
  });

  it("mark a work that a figure of the plan is cited after from memory, and no other", () => {
    const marked = new Map(sourcesOf({}, 0).map(({ key, fromMemory }) => [key, fromMemory]));
    // The term between calcium and ammonium is fitted to values of this work that were remembered.
    expect(marked.get("sullivan-1905")).toBe(true);
    expect(marked.get("harvie-moller-weare-1984")).toBe(false);
    expect(marked.get("appelo-2015")).toBe(false);
  });

  it("name with ranges, and only then, how well the readings are known", () => {
    const withRanges = keysOf();
    const without = keysOf({}, 0);
    // Alkalinity by a laboratory: data/reading-uncertainty.json.
    expect(withRanges).toContain("standard-methods-2320b");
    expect(without).not.toContain("standard-methods-2320b");
    expect(without.filter((key) => !withRanges.includes(key))).toEqual([]);
  });

  it("name the figure of a method only for what it was used to read", () => {
    // A laboratory's figure for hardness differs from that for calcium, and that of a strip from both.
    const hardness = { parameter: "hardness", value: 357, unit: "mg/L as CaCO3" };
    expect(keysOf()).not.toContain("standard-methods-2340");
    expect(keysOf(waterWith(hardness))).toContain("standard-methods-2340");
    const strip = { water: { source: "bore", method: "strip", readings: [...BORE, hardness] } };
    const byStrip = keysOf(strip);
    expect(byStrip).not.toContain("standard-methods-2340");
    expect(byStrip).not.toContain("standard-methods-2320b");
  });

  it("name constants of iron only where there is iron", () => {
    // Hydroxide complexes of iron(II) in data/aqueous.json; no other record is from that work.
    expect(keysOf()).not.toContain("king-1998");
    const iron = { parameter: "ferrous iron", value: 0.8, unit: "mg/L" };
    expect(keysOf(waterWith(iron))).toContain("king-1998");
  });

  it("have the air as it was told: assumed by us, or measured with what a hygrometer is good for", () => {
    const read = readWaterTest({ source: "bore", method: "laboratory", readings: BORE }, "water");
    if (!read.ok) throw new Error("no water test");
    const options = { thermo, temperature_C: 15 };
    const water = completeWater(read.value, options);
    if (!water.ok) throw new Error("no water");
    const draws = drawInputs(read.value, water.value, options, 20);
    // data/model-uncertainty.json
    expect(drawSetting(draws, 0.7, false).humiditySource).toBe("common-practice");
    expect(drawSetting(draws, 0.7, true).humiditySource).toBe("from-memory");
  });

  it("name readings of another source only where a way out takes its water", () => {
    const other = (pH: number): Record<string, unknown> => ({
      water: { source: "bore", method: "strip", readings: BORE },
      "other waters": [
        {
          source: "pond",
          method: "laboratory",
          readings: [...BORE.filter((r) => r.parameter !== "pH"), { parameter: "pH", value: pH }],
        },
      ],
    });
    expect(keysOf(other(7.6))).toContain("standard-methods-2320b");
    // At pH 13 hydroxide alone is more than the alkalinity: no such water is completed, no way out takes it.
    expect(keysOf(other(13))).not.toContain("standard-methods-2320b");
  });

  it("name a work behind one conditioner only where that conditioner is looked at", () => {
    const gluconate = trade.conditioners.find(({ id }) => id.includes("gluconate"))!;
    const only = keysOf({ conditioners: [{ chemistry: gluconate.name }] });
    expect(only).toContain("van-loon-1999");
    expect(keysOf()).not.toContain("van-loon-1999");
  });
});
