import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Plan } from "./types.ts";

const trade = builtInTrade();
const CAPTAN = { active: "captan", strength: "800 g/kg", rate: "1 kg/ha", formulation: "WG" };
const CLETHODIM = { active: "clethodim", strength: "240 g/L", rate: "0.5 L/ha", formulation: "EC" };

function planOf(mix: readonly object[], more: Readonly<Record<string, unknown>> = {}): Plan {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "bore", readings: [{ parameter: "hardness", value: 400, unit: "mg/L as CaCO3" }] },
      spray: { volume: "200 L/ha", tank: "1000 L", area: "5 ha" },
      mix,
      ...more,
    },
    { trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, { thermo: builtInThermo(), trade });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

const planned = (plan: Plan) => plan.programmes.find(({ id }) => id === "none")!;

describe("what metals cannot take", () => {
  it("is free of them, and needs nothing added", () => {
    const plan = planOf([CAPTAN]);
    expect(plan.actives[0]!.inTank).toMatchObject({ free: 1, heldBy: {}, low: null, high: null });
    expect(plan.actives[0]!.onLeaf.free).toBe(1);
    expect(plan.chosen).toBe("none");
  });

  it("says nothing of an active beside it that is not known", () => {
    const plan = planOf([CAPTAN, CLETHODIM]);
    expect(plan.actives.map(({ inTank }) => inTank.free)).toEqual([1, null]);
    expect(planned(plan).meetsAim).toBeNull();
    expect(plan.chosen).toBeNull();
  });
});

describe("a dose that cannot be computed", () => {
  it("is the usual one where that is published; other conditioners are left out unless asked for", () => {
    const plan = planOf([CLETHODIM]);
    const shown = plan.programmes.filter(({ kind }) => kind === "conditioner");
    expect(shown.map(({ conditioner }) => conditioner)).toContain("ammonium-sulfate");
    for (const { conditioner } of shown) {
      const usual = trade.conditioners.find(({ id }) => id === conditioner)?.usualDose;
      expect(usual, conditioner).not.toBeNull();
    }
  });

  it("is never called usual where no usual one is known", () => {
    const asked = { conditioners: [{ chemistry: "citric acid" }] };
    const remarks = planOf([CLETHODIM], asked).programmes.flatMap((one) => one.remarks);
    const said = remarks.filter(({ code }) => code === "dose-not-from-binding").map(({ text }) => text);
    expect(said).toEqual([expect.stringContaining("No usual dose is known: shown at the highest dose")]);
  });
});
