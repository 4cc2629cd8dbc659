import { describe, expect, it } from "vitest";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import type { ActiveRecord, ActiveVerdict, Plan } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { planText } from "../../src/report/index.ts";

const trade = builtInTrade();
const thermo = builtInThermo();

const water = {
  source: "Bore",
  method: "laboratory",
  readings: [
    { parameter: "calcium", value: 92, unit: "mg/L" },
    { parameter: "magnesium", value: 31, unit: "mg/L" },
    { parameter: "sodium", value: 40, unit: "mg/L" },
    { parameter: "alkalinity", value: 240, unit: "mg/L as CaCO3" },
    { parameter: "iron", value: 0.3, unit: "mg/L" },
    { parameter: "pH", value: 7.6 },
  ],
};

/** The smallest job with this active: its first typical strength, at the low end of the rates of handbooks. */
function jobOf(active: ActiveRecord, form: string | undefined): Record<string, unknown> {
  const strength = active.typicalStrengths[0];
  if (strength === undefined) throw new Error(`no strength for ${active.id}`);
  const rate = Math.max(0.01, Math.round(((active.typicalRate?.low_gPerHa ?? 0) / strength.low) * 100) / 100);
  return {
    hardstand: 1,
    water,
    spray: { volume: "200 L/ha", tank: "3000 L", area: "20 ha", temperature: "15 °C", "holding time": "3 h" },
    mix: [
      {
        active: active.name,
        ...(form === undefined ? {} : { form }),
        strength: `${String(strength.low)} g/${strength.per}`,
        rate: `${String(rate)} ${strength.per}/ha`,
        formulation: strength.formulation,
      },
    ],
    conditioners: [],
  };
}

function planned(active: ActiveRecord, form: string | undefined): Plan {
  const job = readJob(jobOf(active, form), { trade });
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  expect(job.issues.filter((issue) => issue.severity !== "note")).toEqual([]);
  const plan = planJob(job.value, { thermo, trade }, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

/** Every number below a value. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

const isShare = (x: number | null): boolean => x === null || (x >= 0 && x <= 1);

function expectHonest(verdict: ActiveVerdict | undefined, active: ActiveRecord): void {
  expect(verdict?.active).toBe(active.id);
  if (verdict === undefined) return;
  expect(verdict.concentration_molPerL).toBeGreaterThan(0);
  for (const share of [verdict.inTank, verdict.onLeaf]) {
    expect(isShare(share.free)).toBe(true);
    // Either a number, or a sentence that says why there is none.
    if (share.free === null) expect(share.why).toMatch(/\.$/);
  }
  expect(isShare(verdict.byClock.intact)).toBe(true);
  if (verdict.byClock.intact === null) expect(verdict.byClock.why).toMatch(/\.$/);
}

describe("every active can be planned", () => {
  it.each(trade.actives.map((a) => [a.id, a] as const))("%s", (_id, active) => {
    const form = active.forms[0]?.id;
    const plan = planned(active, active.forms.length > 1 ? form : undefined);
    expect(plan.issues).toEqual([]);
    expect(numbersIn(plan).filter((x) => !Number.isFinite(x))).toEqual([]);
    expect(plan.tank.pH).toBeGreaterThan(2);
    expect(plan.tank.pH).toBeLessThan(9);
    expectHonest(plan.actives[0], active);
    expect(planText(plan, "on the leaf")).not.toMatch(/NaN|undefined|\bnull\b/);
  });

  it("a salt makes the tank less acid than the acid itself", () => {
    const imazethapyr = trade.actives.find((a) => a.id === "imazethapyr");
    if (imazethapyr === undefined) throw new Error("not there");
    const pHs = ["ammonium", "parent"].map((form) => planned(imazethapyr, form).tank.pH);
    expect(pHs[1]).toBeLessThan(pHs[0] ?? 0);
  });
});
