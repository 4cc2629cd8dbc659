import { expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Loads } from "./types.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };

function loadsOf(spray: Record<string, unknown>): Loads {
  const read = readJob(
    {
      hardstand: 1,
      water: {
        source: "bore",
        method: "laboratory",
        readings: [
          { parameter: "hardness", value: 200, unit: "mg/L as CaCO3" },
          { parameter: "pH", value: 7.5 },
        ],
      },
      spray,
      mix: [{ active: "glyphosate", strength: "360 g/L ae", rate: "2 L/ha", formulation: "SL" }],
    },
    data,
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws: 0, waysOut: false });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value.loads;
}

test("loads are told in the measures the tank is said in, whatever the volume per area is in", () => {
  const area = "5 ha";
  expect(loadsOf({ volume: "200 L/ha", tank: "1000 L", area }).measures).toBe("metric");
  expect(loadsOf({ volume: "10 gal/ac", tank: "1000 L", area }).measures).toBe("metric");
  expect(loadsOf({ volume: "10 gal/ac", tank: "200 imp gal", area }).measures).toBe("imperial");
  const us = loadsOf({ volume: "200 L/ha", tank: "150 US gal", area });
  expect(us.measures).toBe("US");
  // 150 gal · 3.785412 L: the amounts stay metric, whoever reads them.
  expect(us.full.volume_L).toBeCloseTo(567.81, 1);
  expect(us.full.area_ha).toBeCloseTo(2.839, 3);
});
