import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Plan } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const RAIN = [
  { parameter: "calcium", value: 2, unit: "mg/L" },
  { parameter: "magnesium", value: 0.5, unit: "mg/L" },
  { parameter: "alkalinity", value: 8, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 6.6 },
];
const HARD = [
  { parameter: "calcium", value: 92, unit: "mg/L" },
  { parameter: "magnesium", value: 31, unit: "mg/L" },
  { parameter: "alkalinity", value: 240, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.6 },
];
const GLYPHOSATE = {
  active: "glyphosate",
  form: "isopropylammonium",
  strength: "360 g/L ae",
  rate: "2 L/ha",
  formulation: "SL",
};
const AMINE = {
  active: "2,4-D",
  form: "dimethylammonium",
  strength: "500 g/L ae",
  rate: "1 L/ha",
  formulation: "SL",
};

function planOf(readings: readonly object[], mix: readonly object[], conditioners: readonly object[]): Plan {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "Water", readings },
      spray: { volume: "100 L/ha", tank: "1000 L", area: "10 ha", temperature: "18 °C" },
      mix,
      conditioners,
      aim: { "free share": 0.95, where: "on the leaf" },
    },
    { trade: data.trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

describe("an active that comes out as its own acid", () => {
  const { actives } = planOf(RAIN, [GLYPHOSATE, AMINE], []);
  const amine = actives[1]!;

  test("on the leaf nothing of a soft water holds it: it counts as free, and is told apart", () => {
    expect(amine.onLeaf.free).toBeGreaterThan(0.99);
    expect(amine.onLeaf.ownAcid).toBeGreaterThan(0.9);
    expect(amine.onLeaf.ownAcid).toBeLessThanOrEqual(amine.onLeaf.free!);
    expect(Object.keys(amine.onLeaf.heldBy)).not.toContain("undissolved acid");
    const held = Object.values(amine.onLeaf.heldBy).reduce((sum, share) => sum + share, 0);
    expect(amine.onLeaf.free! + held).toBeCloseTo(1, 9);
  });

  test("a solid acid is no salt of a metal", () => {
    expect(amine.onLeaf.solidForms).toBe(false);
    expect(amine.inTank.ownAcid).toBe(0);
    expect(actives[0]!.onLeaf.ownAcid).toBe(0);
  });

  test("in the tank it is lost: acid beside an amine is no way out", () => {
    const acid = { chemistry: "phosphoric acid", "least dose": "3 g/L" };
    const acidified = planOf(HARD, [AMINE], [acid]).programmes.find(({ kind }) => kind === "conditioner")!;
    const { inTank } = acidified.actives[0]!;
    expect(inTank.ownAcid).toBeGreaterThan(0.5);
    expect(inTank.heldBy["undissolved acid"]).toBeCloseTo(inTank.ownAcid!, 12);
    expect(inTank.free).toBeLessThan(0.5);
  });
});

test("where a conditioner works on the leaf by borrowed activity alone, that is said", () => {
  const conditioners = [{ chemistry: "potassium acetate" }, { chemistry: "ammonium sulfate" }];
  const { programmes } = planOf(HARD, [{ ...GLYPHOSATE, rate: "1 L/ha" }], conditioners);
  const codes = (id: string): readonly string[] =>
    programmes.find(({ conditioner }) => conditioner === id)!.remarks.map(({ code }) => code);
  expect(codes("potassium-acetate")).toContain("borrowed-activity");
  expect(codes("ammonium-sulfate")).not.toContain("borrowed-activity");
});
