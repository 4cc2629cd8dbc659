import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Plan } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };

function jobOf(spray: object): ReturnType<typeof readJob> {
  return readJob(
    {
      hardstand: 1,
      water: {
        source: "Rain",
        readings: [
          { parameter: "hardness", value: 5, unit: "mg/L as CaCO3" },
          { parameter: "alkalinity", value: 8, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: 6.5 },
        ],
      },
      spray: { volume: "100 L/ha", tank: "1000 L", area: "10 ha", temperature: "18 °C", ...spray },
      mix: [
        {
          active: "glyphosate",
          form: "isopropylammonium",
          strength: "360 g/L ae",
          rate: "1 L/ha",
          formulation: "SL",
        },
      ],
      conditioners: [],
    },
    { trade: data.trade },
  );
}

function planOf(spray: object, draws = 0): Plan {
  const read = jobOf(spray);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

describe("calcium of the leaf", () => {
  const clean = planOf({});
  const leafy = planOf({ "leaf calcium": "50 mg/m2", coverage: "20 %" }, 60);

  test("is on the leaf and not in the tank", () => {
    expect(leafy.actives[0]!.inTank.free).toBeCloseTo(clean.actives[0]!.inTank.free!, 9);
    expect(leafy.tank.pH).toBeCloseTo(clean.tank.pH, 9);
    const held = (plan: Plan): number => plan.actives[0]!.onLeaf.heldBy["calcium"] ?? 0;
    expect(held(leafy)).toBeGreaterThan(held(clean) + 0.01);
    // 50 mg/m2 on a fifth of the leaf under 10 mL/m2 of spray: 1 g/L, 25 mmol/L, beside 21 mmol/L of glyphosate.
    const planned = leafy.programmes.find(({ kind }) => kind === "none")!;
    const remark = planned.remarks.find(({ code }) => code === "leaf-calcium");
    expect(remark?.text).toContain("25 mmol");
  });

  test("is in the ranges too", () => {
    const { free, low, high } = leafy.actives[0]!.onLeaf;
    expect(low).toBeLessThanOrEqual(free! + 0.02);
    expect(high).toBeLessThan(clean.actives[0]!.onLeaf.free!);
  });

  test("needs the coverage, and is off by default", () => {
    const read = jobOf({ "leaf calcium": "5 mg/m2" });
    expect(read.ok).toBe(false);
    expect(read.issues.map(({ code, path }) => [code, path])).toContainEqual([
      "key-missing",
      "spray.coverage",
    ]);
    expect(clean.programmes[0]!.remarks.map(({ code }) => code)).not.toContain("leaf-calcium");
  });
});
