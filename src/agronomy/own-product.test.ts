import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { builtInTrade, planJob, readJob } from "./index.ts";
import type { Job, Plan, Programme } from "./index.ts";

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

/** Liquid of one chemistry: the 34 % ammonium sulfate of the data. */
const LIQUID = {
  product: "Yard liquid",
  composition: [{ chemistry: "ammonium sulfate", amount: "34 % w/w" }],
  density: "1.1945 kg/L",
};
/** Powder of two chemistries. */
const BLEND = {
  product: "Blend",
  composition: [
    { chemistry: "ammonium sulfate", amount: 70, unit: "% w/w" },
    { chemistry: "citric acid", amount: "300 g/kg" },
  ],
};

function read(...conditioners: object[]): ReturnType<typeof readJob> {
  return readJob({ ...base, conditioners }, { trade });
}
function jobOf(...conditioners: object[]): Job {
  const job = read(...conditioners);
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  return job.value;
}
function planOf(job: Job): Plan {
  const plan = planJob(job, { thermo: builtInThermo(), trade }, { draws: 0 });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}
function programme(plan: Plan, id: string): Programme {
  const found = plan.programmes.find((p) => p.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}
/** Codes and paths of what stands in the way. */
function wrong(...conditioners: object[]): readonly string[] {
  return read(...conditioners)
    .issues.filter((issue) => issue.severity === "error")
    .map((issue) => `${issue.code} ${issue.path}`);
}

describe("a product described by its label", () => {
  it("is the same as the chemistry of the data it is made of", () => {
    const plan = planOf(
      jobOf(LIQUID, { chemistry: "ammonium sulfate", form: "liquid, 34 % w/w (3.4 lb per US gal)" }),
    );
    const own = programme(plan, "product-yard-liquid");
    const known = programme(plan, "ammonium-sulfate.ammonium-sulfate-liquid-34");
    expect(own.dose_gPerL).toBeCloseTo(known.dose_gPerL, 9);
    expect(own.dose).toEqual(known.dose);
    expect(own.actives[0]?.onLeaf.free).toBeCloseTo(known.actives[0]?.onLeaf.free ?? Number.NaN, 9);
    expect(own.tank.pH).toBeCloseTo(known.tank.pH, 9);
    expect(own.name).toBe("Yard liquid");
  });

  it("releases what its chemistries hold, in mol per kg", () => {
    const record = jobOf(BLEND).conditioners?.[0]?.own?.record;
    expect(record?.released["NH4+"]).toBeCloseTo((2 * 700) / 132.134, 6);
    expect(record?.released["SO4-2"]).toBeCloseTo(700 / 132.134, 6);
    expect(record?.released["Cit-3"]).toBeCloseTo(300 / 192.123, 6);
    expect(record?.ligands).toEqual(["citrate"]);
    expect(record?.modes).toEqual(expect.arrayContaining(["supplies ammonium", "sequesters", "acidifies"]));
  });

  it("reads grams per litre by the density", () => {
    const perLitre = {
      ...LIQUID,
      composition: [{ chemistry: "ammonium sulfate", amount: 406.13, unit: "g/L" }],
    };
    const released = (product: object): number | undefined =>
      jobOf(product).conditioners?.[0]?.own?.record?.released["NH4+"];
    expect(released(perLitre)).toBeCloseTo(released(LIQUID) ?? Number.NaN, 6);
  });

  it("is dosed within its label, by volume when it is a liquid", () => {
    const job = jobOf({ ...LIQUID, "least dose": "2 L/100 L", "most dose": "3 L/100 L", price: "0.80 /L" });
    const choice = job.conditioners?.[0];
    expect(choice?.leastDose_gPerL).toBeCloseTo(20 * 1.1945, 9);
    expect(choice?.own?.record?.searchLimit.value_gPerL).toBeCloseTo(30 * 1.1945, 9);
    const { dose, cost, filling } = programme(planOf(job), "product-yard-liquid");
    expect(dose?.unit).toBe("L/100 L");
    expect(dose?.value).toBeGreaterThanOrEqual(2);
    expect(dose?.value).toBeLessThanOrEqual(3);
    expect(cost.perHa).toBeCloseTo(0.8 * (dose?.value ?? Number.NaN) * 2, 1);
    expect(filling.loads.full.amounts[0]).toMatchObject({ label: "Yard liquid", unit: "L" });
  });

  it("without a most dose stops where its first chemistry reaches its own limit", () => {
    const limit = jobOf(BLEND).conditioners?.[0]?.own?.record?.searchLimit;
    // 20.4 g/L of ammonium sulfate at 70 % is 29.1, 10 g/L of citric acid at 30 % is 33.3.
    expect(limit?.value_gPerL).toBeCloseTo(20.4 / 0.7, 6);
    expect(limit?.why).toContain("ammonium sulfate reaches its own limit");
  });

  it("falls under the rules on what is in it", () => {
    const dicamba = {
      ...base,
      mix: [
        {
          active: "dicamba",
          form: "diglycolamine",
          strength: "350 g/L ae",
          rate: "1 L/ha",
          formulation: "SL",
        },
      ],
      conditioners: [BLEND, { chemistry: "ammonium sulfate" }, { chemistry: "citric acid" }],
      site: { "volatility rules": true },
    };
    const job = readJob(dicamba, { trade });
    if (!job.ok) throw new Error(JSON.stringify(job.issues));
    const plan = planOf(job.value);
    const blocks = (id: string): readonly string[] =>
      programme(plan, id)
        .reasons.filter((r) => r.level === "block")
        .map((r) => r.id);
    expect(programme(plan, "product-blend").blocked).toBe(true);
    expect(blocks("product-blend")).toEqual(
      expect.arrayContaining([...blocks("ammonium-sulfate"), ...blocks("citric-acid")]),
    );
  });

  it("brings the cautions, notes and sources of its chemistries", () => {
    const plan = planOf(jobOf(BLEND));
    const { filling, remarks } = programme(plan, "product-blend");
    const texts = filling.cautions.map((c) => c.text).join(" ");
    expect(texts).toMatch(/Acid into water/);
    expect(texts).toMatch(/Never ammonium with bleach/);
    expect(remarks.some((r) => r.text.startsWith("citric acid: "))).toBe(true);
    const listed = plan.sources.map((s) => s.key);
    expect(listed).toContain("product-label");
    for (const remark of remarks) if (remark.source !== null) expect(listed).toContain(remark.source);
  });

  it("says what its label leaves open, and counts only the rest", () => {
    const job = jobOf({ ...BLEND, undisclosed: "wetting agent" });
    const [first] = programme(planOf(job), "product-blend").remarks.filter(
      (r) => r.source === "product-label" && r.code === "conditioner-note",
    );
    expect(first?.text).toContain("leaves open: wetting agent");
  });

  it.each([true, "all of it"])("is not computed when its label discloses nothing (%s)", (undisclosed) => {
    const plan = planOf(jobOf({ product: "Secret", undisclosed }));
    expect(plan.programmes.filter((p) => p.kind === "conditioner")).toEqual([]);
    expect(plan.issues).toEqual([
      expect.objectContaining({ code: "label-undisclosed", path: "conditioners[0]", received: "Secret" }),
    ]);
  });
});

describe("a label that cannot be used", () => {
  const at = "conditioners[0]";
  const one = (amount: unknown, more: object = {}): object => ({
    product: "P",
    composition: [{ chemistry: "citric acid", amount, ...more }],
  });

  it.each<[string, object, string]>([
    ["no composition and nothing said of it", { product: "P" }, `key-missing ${at}.composition`],
    ["no name", { composition: BLEND.composition }, `key-missing ${at}.product`],
    ["an empty composition", { product: "P", composition: [] }, `list-empty ${at}.composition`],
    [
      "a composition that is no list",
      { product: "P", composition: "acid" },
      `list-expected ${at}.composition`,
    ],
    ["no amount", one(undefined), `key-missing ${at}.composition[0].amount`],
    ["an amount without a unit", one(30), `unit-missing ${at}.composition[0].amount`],
    ["a percentage of nobody knows what", one("30 %"), `unit-ambiguous ${at}.composition[0].amount`],
    ["an amount of zero", one("0 % w/w"), `number-not-positive ${at}.composition[0].amount`],
    ["an amount below zero", one("-3 % w/w"), `number-negative ${at}.composition[0].amount`],
    ["grams per litre without a density", one("300 g/L"), `amount-needs-density ${at}.composition[0].amount`],
    ["more than the whole", one("101 % w/w"), `number-too-large ${at}.composition[0].amount`],
    [
      "parts above the whole",
      {
        product: "P",
        composition: [
          { chemistry: "citric acid", amount: "60 % w/w" },
          { chemistry: "ammonium sulfate", amount: "50 % w/w" },
        ],
      },
      `composition-above-whole ${at}.composition`,
    ],
    [
      "a chemistry nobody knows",
      { product: "P", composition: [{ chemistry: "unobtainium", amount: "3 % w/w" }] },
      `ingredient-unknown ${at}.composition[0].chemistry`,
    ],
    [
      "a chemistry twice",
      { product: "P", composition: [...BLEND.composition, { chemistry: "AMS", amount: "1 % w/w" }] },
      `conditioner-repeated ${at}.composition`,
    ],
    ["a density by mass", { ...BLEND, density: "1.2 kg/kg" }, `number-too-large ${at}.density`],
    ["a density nothing has", { ...BLEND, density: "12 g/L" }, `density-unlikely ${at}.density`],
    [
      "a dose by volume without a density",
      { ...BLEND, "most dose": "1 L/100 L" },
      `dose-does-not-fit-form ${at}.most dose`,
    ],
    [
      "a price by volume without a density",
      { ...BLEND, price: "3 /L" },
      `price-does-not-fit-product ${at}.price`,
    ],
    [
      "a least dose above the most",
      { ...BLEND, "least dose": "3 kg/100 L", "most dose": "1 kg/100 L" },
      `least-above-most ${at}.least dose`,
    ],
    ["a key of another kind", { ...BLEND, form: "powder" }, `key-unknown ${at}.form`],
    ["a number for what is open", { ...BLEND, undisclosed: 3 }, `text-expected ${at}.undisclosed`],
  ])("%s", (_, product, expected) => {
    expect(wrong(product)).toContain(expected);
  });

  it("two products of one name", () => {
    expect(wrong(BLEND, { ...LIQUID, product: "blend" })).toEqual(["conditioner-repeated conditioners[1]"]);
  });
});
