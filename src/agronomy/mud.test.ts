import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import matter from "../../data/suspended-matter.json" with { type: "json" };
import schema from "../../data/schemas/suspended-matter.schema.json" with { type: "json" };
import sources from "../../data/sources.json" with { type: "json" };
import { builtInThermo } from "../chem/index.ts";
import { suspendedSolids_mgPerL } from "./mud.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { ActiveVerdict } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const CREEK = [
  { parameter: "hardness", value: 80, unit: "mg/L as CaCO3" },
  { parameter: "alkalinity", value: 70, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.4 },
];
const PARAQUAT = { active: "paraquat", strength: "250 g/L", rate: "2 L/ha", formulation: "SL" };

function answerOf(readings: readonly object[], product: object = PARAQUAT): ActiveVerdict {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "Creek", readings: [...CREEK, ...readings] },
      spray: { volume: "200 L/ha", tank: "2000 L", area: "10 ha" },
      mix: [product],
      conditioners: [],
    },
    { trade: data.trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value.actives[0]!;
}

test("the data follow their schema, with a known source on every figure and ends in order", () => {
  const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema);
  expect(validate(matter), JSON.stringify(validate.errors)).toBe(true);
  for (const { source } of [matter.turbidity, matter.organicCarbon, ...matter.capacity])
    expect(Object.keys(sources)).toContain(source);
  const actives = new Set(data.trade.actives.map(({ id }) => id));
  for (const { active, low_gPerKg, high_gPerKg } of matter.capacity) {
    expect(actives.has(active), active).toBe(true);
    expect(low_gPerKg).toBeLessThanOrEqual(high_gPerKg);
  }
});

test("the capacities of the bipyridyls are those of the exchange capacities published", () => {
  const ends = [0.13 * 1.63, 1.03];
  const grams = (molarMass: number): number[] => ends.map((eqPerKg) => (eqPerKg / 2) * molarMass);
  const of = (id: string): number[] => {
    const { low_gPerKg, high_gPerKg } = matter.capacity.find(({ active }) => active === id)!;
    return [low_gPerKg, high_gPerKg];
  };
  grams(186.25).forEach((expected, i) => expect(of("paraquat")[i]).toBeCloseTo(expected, 1));
  grams(184.24).forEach((expected, i) => expect(of("diquat")[i]).toBeCloseTo(expected, 1));
});

describe("what mud takes", () => {
  test("suspended solids are as weighed, else from turbidity; not tested, nothing is said", () => {
    expect(suspendedSolids_mgPerL({ turbidity_NTU: 40, suspendedSolids_mgPerL: 90 })).toEqual({
      low: 90,
      high: 90,
    });
    expect(suspendedSolids_mgPerL({ turbidity_NTU: 40, suspendedSolids_mgPerL: null })).toEqual({
      low: 40,
      high: 100,
    });
    expect(answerOf([]).onMud).toBeNull();
  });

  test("of paraquat in a tank is what the clay can hold, whatever its affinity", () => {
    // 2.5 g/L of paraquat and 400 mg/L of mud in 198/200 of the spray: at most 400e-6 · 0.99 · 95.9 / 2.5.
    const { onMud, inTank } = answerOf([{ parameter: "suspended solids", value: 400, unit: "mg/L" }]);
    expect(onMud?.limitedBy).toBe("capacity");
    expect(onMud?.high).toBeCloseTo((400e-6 * 0.99 * 95.9) / 2.5, 3);
    expect(onMud?.low).toBeCloseTo((400e-6 * 0.99 * 19.7) / 2.5, 3);
    expect(onMud?.sources).toContain("weed-weber-1969");
    expect(inTank.heldBy).toEqual(answerOf([]).inTank.heldBy);
  });

  test("is nothing in clear water and rises with the mud", () => {
    const high = (value: number): number =>
      answerOf([{ parameter: "turbidity", value, unit: "NTU" }]).onMud!.high!;
    expect(high(0)).toBe(0);
    expect(high(50)).toBeGreaterThan(0);
    expect(high(200)).toBeCloseTo(4 * high(50), 6);
  });

  test("of an active without a capacity follows from its affinity, and is said to be too high", () => {
    // Koc 100 and 10 % of organic carbon: K·S = 10 · 500e-6 at the high end.
    const imazapyr = { active: "imazapyr", strength: "250 g/L ae", rate: "2 L/ha", formulation: "SL" };
    const form = data.trade.actives.find(({ id }) => id === "imazapyr")!.forms[0]!.id;
    const { onMud } = answerOf([{ parameter: "suspended solids", value: 500, unit: "mg/L" }], {
      ...imazapyr,
      form,
    });
    expect(onMud?.limitedBy).toBe("affinity");
    expect(onMud?.high).toBeCloseTo((10 * 500e-6) / (1 + 10 * 500e-6), 3);
    expect(onMud?.why).toContain("not found");
  });

  test("of glyphosate at most what ferrihydrite was found to take, and says which end is from memory", () => {
    // 54.88 µg/mg (Pereira and others 2019), 360 g/L at 2 L in 200 L of spray.
    const glyphosate = { active: "glyphosate", strength: "360 g/L ae", rate: "2 L/ha", formulation: "SL" };
    const form = data.trade.actives.find(({ id }) => id === "glyphosate")!.forms[0]!.id;
    const { onMud } = answerOf([{ parameter: "suspended solids", value: 500, unit: "mg/L" }], {
      ...glyphosate,
      form,
    });
    expect(onMud?.limitedBy).toBe("capacity");
    expect(onMud?.high).toBeCloseTo((500e-6 * 0.99 * 54.88) / 3.6, 4);
    expect(onMud?.fromMemory).toBe(true);
    expect(onMud?.sources).toEqual(expect.arrayContaining(["maqueda-2002", "pereira-2019"]));
  });

  test("of paraquat both ends are what clay can hold, and published", () => {
    const { onMud } = answerOf([{ parameter: "suspended solids", value: 400, unit: "mg/L" }]);
    expect(onMud?.fromMemory).toBe(false);
  });
});
