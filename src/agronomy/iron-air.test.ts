import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { ferrousHalfLife_h } from "./iron-air.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Plan } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const BORE = [
  { parameter: "calcium", value: 60, unit: "mg/L" },
  { parameter: "magnesium", value: 20, unit: "mg/L" },
  { parameter: "alkalinity", value: 250, unit: "mg/L as CaCO3" },
  { parameter: "iron", value: 4, unit: "mg/L" },
  { parameter: "pH", value: 7.3 },
];
/** An alkaline tank: 2,4-D amine leaves the water's pH nearly as it is. */
const AMINE = {
  active: "2,4-D",
  form: "dimethylammonium",
  strength: "500 g/L ae",
  rate: "1 L/ha",
  formulation: "SL",
};
const GLYPHOSATE = {
  active: "glyphosate",
  form: "isopropylammonium",
  strength: "360 g/L ae",
  rate: "2 L/ha",
  formulation: "SL",
};

function planOf(water: object, spray: object, mix: readonly object[], draws = 0): Plan {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "Bore", readings: BORE, ...water },
      spray: { volume: "150 L/ha", tank: "1500 L", area: "10 ha", temperature: "20 °C", ...spray },
      mix,
      conditioners: [],
    },
    { trade: data.trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

describe("the form of iron", () => {
  const ions = (water: object): Readonly<Record<string, number>> =>
    planOf(water, {}, [GLYPHOSATE]).water.ions_molPerL;

  test("said, it is taken and nothing is assumed", () => {
    const ferrous = planOf({ "iron form": "ferrous" }, {}, [GLYPHOSATE]).water;
    expect(ferrous.ions_molPerL["Fe+2"]).toBeCloseTo(4 / 55.845 / 1000, 6);
    expect(ferrous.ions_molPerL["Fe+3"]).toBeUndefined();
    expect(ferrous.assumptions.map(({ code }) => code)).not.toContain("iron-form");
    expect(ions({ "iron form": "ferric" })["Fe+3"]).toBeCloseTo(4 / 55.845 / 1000, 6);
  });

  test("not said, it is assumed and said so", () => {
    const { assumptions } = planOf({}, {}, [GLYPHOSATE]).water;
    expect(assumptions.map(({ code }) => code)).toContain("iron-form");
  });
});

describe("iron(II) in air", () => {
  const ferrous = { "iron form": "ferrous" };

  test("half-lives are those of the rate law, with the slow path of acid water below it", () => {
    // Two powers of ten in OH- for each pH; at pH 3 only the slow path is left: ln 2 / 2.91e-9 s = 7.5 years.
    expect(ferrousHalfLife_h(6, 20.5) / ferrousHalfLife_h(7, 20.5)).toBeCloseTo(100, 0);
    expect(ferrousHalfLife_h(3, 20.5) / 8766).toBeCloseTo(7.5, 1);
    expect(ferrousHalfLife_h(2, 20.5) / ferrousHalfLife_h(3, 20.5)).toBeCloseTo(1, 1);
  });

  test("stays as tested unless the tank is said to be aerated, and its half-life is given", () => {
    const { tank, programmes } = planOf(ferrous, { "holding time": "2 h" }, [AMINE]);
    expect(tank.ferrousIron?.oxidised).toBe(0);
    expect(tank.ferrousIron?.halfLife_h).toBeCloseTo(ferrousHalfLife_h(tank.pH, 20), 9);
    expect(tank.solids.map(({ name }) => name)).not.toContain("Fe(OH)3(am)");
    const remark = programmes
      .find(({ kind }) => kind === "none")!
      .remarks.find((r) => r.code === "iron-in-air");
    expect(remark?.text).toContain("stay as tested");
  });

  test("turns to rust in an alkaline aerated tank, and stays in an acid one", () => {
    const alkaline = planOf(ferrous, { aerated: true, "holding time": "2 h" }, [AMINE]).tank;
    expect(alkaline.ferrousIron?.oxidised).toBeGreaterThan(0.99);
    const rust = alkaline.solids.find(({ name }) => name === "Fe(OH)3(am)");
    expect(rust?.amount_molPerL).toBeGreaterThan(0.9 * 7e-5);
    const acid = planOf(ferrous, { aerated: true, "holding time": "2 h" }, [GLYPHOSATE]).tank;
    expect(acid.ferrousIron?.oxidised).toBeLessThan(0.01);
    expect(acid.ferrousIron?.halfLife_h).toBeGreaterThan(1000);
  });

  test("draws follow the tank: ranges hold the central answer", () => {
    const { actives } = planOf(ferrous, { aerated: true, "holding time": "2 h" }, [GLYPHOSATE], 100);
    const { free, low, high } = actives[0]!.inTank;
    expect(low).toBeLessThanOrEqual(free!);
    expect(high).toBeGreaterThanOrEqual(free!);
  });

  test("a tank without iron(II) has none to speak of", () => {
    expect(
      planOf({ "iron form": "ferric" }, { aerated: true, "holding time": "2 h" }, [AMINE]).tank.ferrousIron,
    ).toBeNull();
  });
});

describe("aluminium and manganese", () => {
  const held = (parameter: string): number => {
    const extra = { parameter, value: 2, unit: "mg/L" };
    const plan = planOf({ readings: [...BORE, extra] }, {}, [GLYPHOSATE]);
    return plan.actives[0]!.inTank.heldBy[parameter] ?? 0;
  };

  test("take part: each holds some of the glyphosate", () => {
    // 2 mg/L are 74 µmol/L of aluminium and 36 of manganese beside 28 mmol/L of glyphosate.
    expect(held("aluminium")).toBeGreaterThan(1e-4);
    expect(held("aluminium")).toBeLessThan((2 * 74e-6) / 28e-3 + 1e-4);
    expect(held("manganese")).toBeGreaterThan(1e-4);
    expect(held("manganese")).toBeLessThan(36e-6 / 28e-3 + 1e-4);
  });

  test("where nothing holds it, aluminium comes out as its hydroxide", () => {
    const extra = { parameter: "aluminium", value: 2, unit: "mg/L" };
    const { tank } = planOf({ readings: [...BORE, extra] }, {}, [AMINE]);
    expect(tank.solids.map(({ name }) => name)).toContain("Al(OH)3(am)");
  });
});
