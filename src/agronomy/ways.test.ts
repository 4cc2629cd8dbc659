import { describe, expect, test } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { MOLAR_MASSES } from "../units/index.ts";
import { completeWater } from "../water/index.ts";
import { chemistryOn } from "./chemistry.ts";
import { beginWork } from "./findings.ts";
import { readJob } from "./job.ts";
import { planJob } from "./plan.ts";
import { draftOf, freeIn } from "./programmes.ts";
import type { Setting } from "./programmes.ts";
import { builtInTrade } from "./trade-data.ts";
import type { Job, Plan, Programme, WayKind } from "./types.ts";
import { moreActive } from "./ways-active.ts";
import { IRON_LEFT_MG_PER_L, ironSettled } from "./ways-iron.ts";
import { ferrousHalfLife_h } from "./iron-air.ts";
import { leastBlend, otherSource } from "./ways-water.ts";
import { blendWaters } from "../water/index.ts";
import { atOnce } from "./steps.ts";

const thermo = builtInThermo();
const trade = builtInTrade();

type Block = Record<string, unknown>;

const HARD = [
  { parameter: "calcium", value: 118, unit: "mg/L" },
  { parameter: "magnesium", value: 46, unit: "mg/L" },
  { parameter: "sodium", value: 84, unit: "mg/L" },
  { parameter: "alkalinity", value: 310, unit: "mg/L as CaCO3" },
  { parameter: "sulfate", value: 96, unit: "mg/L" },
  { parameter: "pH", value: 7.4 },
];
const RAIN = {
  source: "Rain tank",
  readings: [
    { parameter: "hardness", value: 10, unit: "mg/L as CaCO3" },
    { parameter: "alkalinity", value: 15, unit: "mg/L as CaCO3" },
    { parameter: "pH", value: 6.6 },
  ],
};
const GLYPHOSATE = {
  active: "glyphosate",
  form: "isopropylammonium",
  strength: "360 g/L ae",
  rate: "1.6 L/ha",
  formulation: "SL",
};

function jobOf(changes: Block = {}, iron: readonly Block[] = []): Job {
  const read = readJob(
    {
      hardstand: 1,
      water: { source: "House bore", readings: [...HARD, ...iron] },
      spray: {
        volume: "100 L/ha",
        "least volume": "60 L/ha",
        tank: "2500 L",
        area: "62 ha",
        temperature: "15 °C",
      },
      mix: [GLYPHOSATE],
      conditioners: [],
      ...changes,
    },
    { trade },
  );
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.value;
}

function planOf(job: Job): Plan {
  const plan = planJob(job, { thermo, trade }, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

const wayOf = (plan: Plan, kind: WayKind): Programme | undefined =>
  plan.programmes.find((programme) => programme.kind === kind);

function settingOf(job: Job): Setting {
  const water = completeWater(job.water, { thermo, temperature_C: 15 });
  if (!water.ok) throw new Error("water");
  const mix = job.mix.map((item) => {
    const active = trade.actives.find((one) => one.id === item.active);
    if (active === undefined) throw new Error(item.active);
    return { item, active, form: active.forms.find((form) => form.id === item.form) ?? null };
  });
  return {
    job,
    water: water.value,
    mix,
    temperature_C: 15,
    ...beginWork(chemistryOn(thermo, 0.8)),
    drawn: null,
    feeds: [],
    plannedMeets: false,
  };
}

function free(setting: Setting): number {
  const found = atOnce(freeIn(setting, setting.job.spray.volume_LPerHa, []));
  if (!found.ok || found.value === null) throw new Error("not solved");
  return found.value;
}

describe("another source and a blend", () => {
  const job = jobOf({ "other waters": [{ ...RAIN, price: "2.50 /m3" }] });
  const setting = settingOf(job);
  const [other] = job.otherWaters;
  if (other === undefined) throw new Error("no other water");
  const rain = completeWater(other.water, { thermo, temperature_C: 15 });
  if (!rain.ok) throw new Error("rain");
  const source = { other, water: rain.value, drawn: null };

  test("the least share of the soft water meets the aim and five hundredths less do not", () => {
    const blend = atOnce(leastBlend(setting, source));
    if (!blend.ok || blend.value === null) throw new Error("no blend");
    const share = blend.value.waters[0]?.share ?? 0;
    expect(blend.value.waters.map((one) => one.water)).toEqual(["Rain tank", "House bore"]);
    expect(blend.value.waters.reduce((sum, one) => sum + one.share, 0)).toBeCloseTo(1, 12);
    const at = (part: number): number =>
      free({ ...setting, water: blendWaters(rain.value, setting.water, part, thermo) });
    expect(at(share)).toBeGreaterThanOrEqual(job.aim.freeShare);
    expect(at(share - 0.05)).toBeLessThan(job.aim.freeShare);
    expect(free(blend.value.setting)).toBeCloseTo(at(share), 9);
  });

  test("both stand in the plan with their cost, how to fetch the water, and what it is", () => {
    const plan = planOf(job);
    const blend = wayOf(plan, "blend");
    const alone = wayOf(plan, "other source");
    const share = blend?.waters[0]?.share ?? 0;
    expect(alone?.cost.perHa).toBeCloseTo(100 * 0.0025, 9);
    expect(blend?.cost.perHa).toBeCloseTo(share * 100 * 0.0025, 9);
    expect(blend?.cost.perLoad).toBeCloseTo(share * 2500 * 0.0025, 9);
    expect(blend?.filling.order[0]?.what).toContain(`${String(Math.round(100 * share))} L from Rain tank`);
    expect(blend?.filling.order.map(({ step }) => step)).toEqual(blend?.filling.order.map((_, i) => i + 1));
    expect(alone?.remarks.map(({ text }) => text).join(" ")).toContain("Hardness 10");
    expect(plan.chosen).toBe(blend?.id);
    // The planned water stays the plan's water.
    expect(plan.water.source).toBe("House bore");
  });

  test("no price is no known cost, and a water that is too hard itself is not blended", () => {
    const free_ = planOf(jobOf({ "other waters": [RAIN] }));
    expect(wayOf(free_, "other source")?.cost).toEqual({ perHa: null, perLoad: null, perSeason: null });
    const hard = planOf(jobOf({ "other waters": [{ source: "Second bore", readings: HARD }] }));
    expect(wayOf(hard, "blend")).toBeUndefined();
    expect(wayOf(hard, "other source")?.meetsAim).toBe(false);
  });

  test("the draft of the other source is the plan in that water", () => {
    const draft = otherSource(setting, source);
    expect(draft.tank.totals_molPerL["Ca+2"]).toBeLessThan(setting.water.totals_molPerL["Ca+2"] ?? 0);
    expect(draft.setting.mix).toBe(setting.mix);
  });

  test("a second water of the same name, a price by mass and a broken reading are said", () => {
    const codes = (waters: unknown): string[] => {
      const document = { hardstand: 1, water: { source: "Rain tank", readings: HARD }, mix: [GLYPHOSATE] };
      const spray = { volume: "100 L/ha", tank: "2500 L", area: "62 ha" };
      return readJob({ ...document, spray, "other waters": waters }, { trade })
        .issues.filter(({ severity }) => severity === "error")
        .map(({ code, path }) => `${code} ${path}`);
    };
    expect(codes([RAIN])).toEqual(["water-name-repeated other waters[0].source"]);
    expect(codes([{ ...RAIN, source: "Dam", price: "3 /kg" }])).toEqual([
      "water-price-by-mass other waters[0].price",
    ]);
    expect(codes([{ source: "Dam", readings: [{ parameter: "hardness", value: 10 }] }])[0]).toContain(
      "other waters[0].readings[0]",
    );
  });
});

describe("letting iron settle", () => {
  const FERROUS = [{ parameter: "ferrous iron", value: 6, unit: "mg/L" }];

  test("takes the iron down to what is left and the alkalinity down by two for each iron(II)", () => {
    const setting = settingOf(jobOf({}, FERROUS));
    const settled = ironSettled(setting);
    if (!settled.ok || settled.value === null) throw new Error("no settling");
    const { water } = settled.value.setting;
    const taken = (setting.water.totals_molPerL["Fe+2"] ?? 0) - (water.totals_molPerL["Fe+2"] ?? 0);
    expect((water.totals_molPerL["Fe+2"] ?? 0) * MOLAR_MASSES.Fe * 1000).toBeCloseTo(IRON_LEFT_MG_PER_L, 9);
    expect(setting.water.alkalinity_molPerL - water.alkalinity_molPerL).toBeCloseTo(2 * taken, 9);
    expect(water.pH).toBeLessThan(setting.water.pH);
    expect(free(settled.value.setting)).toBeGreaterThan(free(setting));
  });

  test("is not proposed where there is little to settle", () => {
    const little = ironSettled(settingOf(jobOf({}, [{ parameter: "iron", value: 0.4, unit: "mg/L" }])));
    expect(little).toEqual({ ok: true, value: null });
  });

  test("costs nothing and starts the order with airing and standing", () => {
    const way = wayOf(planOf(jobOf({}, FERROUS)), "iron settled");
    expect(way?.cost.perHa).toBe(0);
    expect(way?.filling.order[0]).toMatchObject({ pause: true, evidence: "common practice" });
    expect(way?.remarks.map(({ code }) => code)).toEqual(["iron-left", "iron-time", "iron-in-air"]);
  });

  test("iron(II) halves in minutes at pH 7, a hundred times slower one unit lower, ten times for 15 °C", () => {
    const minutes = 60 * ferrousHalfLife_h(7, 20.5);
    expect(minutes).toBeGreaterThan(4);
    expect(minutes).toBeLessThan(16);
    expect(ferrousHalfLife_h(6, 20.5) / ferrousHalfLife_h(7, 20.5)).toBeCloseTo(100, 0);
    expect(ferrousHalfLife_h(7, 5.5) / ferrousHalfLife_h(7, 20.5)).toBeCloseTo(10, 2);
  });
});

describe("more active", () => {
  const priced = { ...GLYPHOSATE, "most rate": "2.4 L/ha", price: "6.20 /L" };

  test("is the least rate that frees what the aim asks of the planned one, at the price of the extra", () => {
    const setting = settingOf(jobOf({ mix: [priced] }));
    const draft = atOnce(moreActive(setting, 0));
    if (!draft.ok || draft.value === null) throw new Error("no draft");
    const rate = draft.value.setting.mix[0]?.item.rate.value ?? 0;
    const freed = (at: number): number => {
      const mix = setting.mix.map((one) => ({
        ...one,
        item: { ...one.item, rate: { ...one.item.rate, value: at } },
      }));
      return (free({ ...setting, mix }) * at) / 1.6;
    };
    expect(rate).toBeGreaterThan(1.6);
    expect(freed(rate)).toBeGreaterThanOrEqual(0.95);
    expect(freed(rate * 0.97)).toBeLessThan(0.95);
    const way = wayOf(planOf(jobOf({ mix: [priced] })), "more active");
    expect(way?.meetsAim).toBe(true);
    expect(way?.cost.perHa).toBeCloseTo((rate - 1.6) * 6.2, 9);
    expect(way?.filling.loads.full.amounts[0]?.amount).toBeCloseTo(25 * rate, 9);
  });

  test("stops at the label, and is not proposed without one or where the plan meets the aim", () => {
    const tight = wayOf(planOf(jobOf({ mix: [{ ...priced, "most rate": "1.62 L/ha" }] })), "more active");
    expect(tight).toMatchObject({ meetsAim: false });
    expect(tight?.name).toContain("1.62 L/ha");
    expect(wayOf(planOf(jobOf()), "more active")).toBeUndefined();
    const easy = jobOf({ mix: [priced], aim: { "free share": 0.5 } });
    expect(wayOf(planOf(easy), "more active")).toBeUndefined();
  });
});

describe("another form of the active", () => {
  const amine = {
    active: "2,4-D",
    form: "dimethylammonium",
    strength: "602 g/L salt",
    rate: "1 L/ha",
    formulation: "SL",
  };

  test("the ester takes the amine's place at the same acid equivalent, as an emulsion, its price not known", () => {
    const way = wayOf(planOf(jobOf({ mix: [amine] })), "other form");
    expect(way?.actives.map((one) => one.active)).toEqual(["2-4-d-ester"]);
    // Metals have nothing to bind in an ester.
    expect(way?.actives[0]?.inTank).toMatchObject({ free: 1, heldBy: {}, evidence: "common practice" });
    expect(way?.meetsAim).toBe(true);
    expect(way?.cost.perHa).toBeNull();
    // 602 g/L as the dimethylammonium salt is 500 g/L as acid.
    expect(way?.filling.loads.full.amounts[0]?.amount).toBeCloseTo(25 * 0.602 * 0.8306, 6);
    expect(way?.remarks[0]).toMatchObject({ evidence: "published rule", source: "schortgen-patton-2021" });
  });

  test("is not proposed for an active without a published one, nor for the ester itself", () => {
    expect(wayOf(planOf(jobOf()), "other form")).toBeUndefined();
    const ester = {
      ...amine,
      active: "2,4-D ester",
      form: "2-ethylhexyl ester",
      strength: "600 g/L ae",
      formulation: "EC",
    };
    expect(wayOf(planOf(jobOf({ mix: [ester] })), "other form")).toBeUndefined();
  });
});

describe("two conditioners", () => {
  const conditioners = [
    { chemistry: "ammonium sulfate", price: "0.60 /kg" },
    { chemistry: "citric acid", price: "1.70 /kg" },
  ];

  test("stand beside single ones only where they cost less and meet the aim", () => {
    const plan = planOf(jobOf({ conditioners }));
    const pair = wayOf(plan, "two conditioners");
    const singles = plan.programmes.filter(
      ({ kind, meetsAim }) => kind === "conditioner" && meetsAim === true,
    );
    expect(pair?.meetsAim).toBe(true);
    expect(pair?.parts.map(({ conditioner }) => conditioner)).toEqual(["citric-acid", "ammonium-sulfate"]);
    expect(pair?.conditioner).toBe("citric-acid + ammonium-sulfate");
    expect(pair?.dose).toBeNull();
    expect(singles.length).toBeGreaterThan(0);
    for (const single of singles) expect(pair?.cost.perHa ?? NaN).toBeLessThan(single.cost.perHa ?? NaN);
    const doses = pair?.parts.map((part) => part.dose_gPerL) ?? [];
    expect(pair?.cost.perHa).toBeCloseTo(((doses[0] ?? 0) * 1.7 + (doses[1] ?? 0) * 0.6) * 0.1, 9);
    const adds = pair?.filling.order.flatMap(({ adds: what }) => what ?? []);
    expect(adds).toEqual(["citric-acid", "ammonium-sulfate", "glyphosate-1"]);
  });

  test("are not claimed to save anything without prices", () => {
    const plan = planOf(jobOf({ conditioners: conditioners.map(({ chemistry }) => ({ chemistry })) }));
    expect(plan.programmes.some(({ kind, meetsAim }) => kind === "conditioner" && meetsAim === true)).toBe(
      true,
    );
    expect(wayOf(plan, "two conditioners")).toBeUndefined();
  });

  test("are not tried where a rule blocks ammonium", () => {
    const dicamba = {
      active: "dicamba",
      form: "dimethylammonium",
      strength: "480 g/L ae",
      rate: "0.5 L/ha",
      formulation: "SL",
    };
    const plan = planOf(jobOf({ conditioners, mix: [GLYPHOSATE, dicamba] }));
    expect(plan.programmes.some(({ blocked }) => blocked)).toBe(true);
    expect(wayOf(plan, "two conditioners")).toBeUndefined();
  });
});

test("a draft is the plan but for the parts given", () => {
  const setting = settingOf(jobOf());
  const draft = draftOf(setting, { id: "x", name: "x", kind: "none" });
  expect(draft).toMatchObject({ conditioners: [], volume_LPerHa: 100, added: [], rateFactors: [1] });
  expect(draft.waters).toEqual([{ water: "House bore", share: 1 }]);
});
