import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Plan, Programme } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const HARD = [
  { parameter: "calcium", value: 180, unit: "mg/L" },
  { parameter: "magnesium", value: 70, unit: "mg/L" },
  { parameter: "alkalinity", value: 320, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.4 },
];
const MIDDLING = [
  { parameter: "calcium", value: 120, unit: "mg/L" },
  { parameter: "magnesium", value: 45, unit: "mg/L" },
  { parameter: "alkalinity", value: 220, unit: "mg/L as CaCO3" },
  { parameter: "pH", value: 7.6 },
];

function planOf(conditioner: object, other: object = {}): Plan {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "House bore", readings: HARD },
      "other waters": [{ source: "Dam", readings: MIDDLING, ...other }],
      spray: { volume: "100 L/ha", tank: "2500 L", area: "50 ha", temperature: "15 °C" },
      mix: [
        {
          active: "glyphosate",
          form: "isopropylammonium",
          strength: "360 g/L ae",
          rate: "1 L/ha",
          formulation: "SL",
        },
      ],
      conditioners: [conditioner],
      aim: { "free share": 0.97, where: "in the tank" },
    },
    { trade: data.trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

const withBoth = ({ programmes }: Plan): readonly Programme[] =>
  programmes.filter(({ kind, parts }) => (kind === "other source" || kind === "blend") && parts.length > 0);

describe("another water and a conditioner together", () => {
  /** Enough for the dam, not for the bore. */
  const little = { chemistry: "disodium EDTA", "most dose": "3 g/L" };
  const plan = planOf(little);

  test("are a way out where neither is enough", () => {
    const alone = plan.programmes.filter(({ kind, parts }) => kind !== "none" && parts.length < 2);
    expect(
      alone.filter(({ id }) => id === "source Dam" || id === "edta-disodium").map((p) => p.meetsAim),
    ).toEqual(expect.arrayContaining([false, false]));
    const both = withBoth(plan);
    expect(both.length).toBeGreaterThan(0);
    for (const { meetsAim, parts, waters } of both) {
      expect(meetsAim).toBe(true);
      expect(parts[0]!.dose_gPerL).toBeLessThanOrEqual(3);
      expect(waters.some(({ water }) => water === "Dam")).toBe(true);
    }
    expect(plan.chosen).toBe(both[0]!.id);
  });

  test("say how to fill: the water first, then the conditioner", () => {
    const { filling } = withBoth(plan)[0]!;
    expect(filling.order[0]!.what).toContain("Dam");
    expect(filling.order.some(({ adds }) => adds === "edta-disodium")).toBe(true);
  });

  test("are not shown where the conditioner alone is enough and nothing tells that they cost less", () => {
    const enough = planOf({ chemistry: "disodium EDTA" });
    expect(enough.programmes.some(({ id, meetsAim }) => id === "edta-disodium" && meetsAim === true)).toBe(
      true,
    );
    expect(withBoth(enough)).toEqual([]);
  });

  test("are shown where they cost less than the conditioner alone", () => {
    const priced = planOf({ chemistry: "disodium EDTA", price: "9 /kg" }, { price: "0.10 /m3" });
    const alone = priced.programmes.find(({ id }) => id === "edta-disodium")!;
    const both = withBoth(priced);
    expect(both.length).toBeGreaterThan(0);
    for (const { cost } of both) expect(cost.perHa!).toBeLessThan(alone.cost.perHa!);
  });
});
