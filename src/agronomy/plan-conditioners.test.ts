import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { builtInTrade, planJob, readJob } from "./index.ts";
import type { Plan } from "./index.ts";

const trade = builtInTrade();
const base = {
  hardstand: 1,
  water: {
    readings: [
      { parameter: "hardness", value: 400, unit: "mg/L as CaCO3" },
      { parameter: "alkalinity", value: 240, unit: "mg/L as CaCO3" },
      { parameter: "pH", value: 7.6 },
    ],
  },
  spray: { volume: "200 L/ha", tank: "3000 L", area: "30 ha", temperature: "12 °C" },
  mix: [
    {
      active: "glyphosate",
      form: "isopropylammonium",
      strength: "360 g/L ae",
      rate: "2 L/ha",
      formulation: "SL",
    },
  ],
};

function planOf(document: object): Plan {
  const job = readJob(document, { trade });
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  const plan = planJob(job.value, { thermo: builtInThermo(), trade }, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

describe("conditioners a plan searches", () => {
  it("are those offered by default when the job lists none", () => {
    const tried = planOf(base)
      .programmes.filter((p) => p.kind === "conditioner")
      .map((p) => p.conditioner);
    const byDefault = trade.conditioners.filter((c) => c.offered === "by default").map((c) => c.id);
    expect(tried.toSorted()).toEqual(byDefault.toSorted());
    expect(tried).not.toContain("malic-acid");
  });

  it("are those the job lists, whatever is offered by default", () => {
    const plan = planOf({ ...base, conditioners: [{ chemistry: "malic acid" }] });
    const programmes = plan.programmes.filter((p) => p.kind === "conditioner");
    expect(programmes.map((p) => p.conditioner)).toEqual(["malic-acid"]);
    // What it leaves behind is said with every programme it is in.
    const remark = programmes[0]?.remarks.find((r) => r.code === "conditioner-environment");
    expect(remark?.text).toMatch(/biodegradable/i);
  });

  it("say so when what they do to a metal of the water cannot be computed", () => {
    const readings = [...base.water.readings, { parameter: "iron", value: 3, unit: "mg/L" }];
    const plan = planOf({ ...base, water: { readings }, conditioners: [{ chemistry: "lactic acid" }] });
    const remarks = plan.programmes.find((p) => p.conditioner === "lactic-acid")?.remarks ?? [];
    expect(remarks.filter((r) => r.code === "binding-not-computed").map((r) => r.text)).toEqual([
      expect.stringContaining("How lactate binds iron is not computed."),
    ]);
  });
});
