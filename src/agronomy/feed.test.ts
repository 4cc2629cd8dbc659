import { describe, expect, it } from "vitest";
import { builtInThermo } from "../chem/index.ts";
import { solubility_gPerL } from "./feed.ts";
import { builtInTrade, planJob, readJob } from "./index.ts";
import type { FeedItem, Plan, Programme } from "./index.ts";

const trade = builtInTrade();
const GLYPHOSATE = {
  active: "glyphosate",
  form: "potassium",
  strength: "540 g/L ae",
  rate: "1.6 L/ha",
  formulation: "SL",
};

function documentOf(feeds: readonly object[], more: object = {}): object {
  return {
    hardstand: 1,
    water: {
      readings: [
        { parameter: "hardness", value: 180, unit: "mg/L as CaCO3" },
        { parameter: "alkalinity", value: 130, unit: "mg/L as CaCO3" },
        { parameter: "pH", value: 7.9 },
      ],
    },
    spray: { volume: "140 L/ha", tank: "2500 L", area: "50 ha", temperature: "18 °C" },
    mix: [GLYPHOSATE, ...feeds],
    conditioners: [],
    ...more,
  };
}
function feedOf(feed: object): FeedItem {
  const job = readJob(documentOf([feed]), { trade });
  if (!job.ok || job.value.feeds[0] === undefined) throw new Error(JSON.stringify(job.issues));
  return job.value.feeds[0];
}
function planOf(feeds: readonly object[], more: object = {}): Plan {
  const job = readJob(documentOf(feeds, more), { trade });
  if (!job.ok) throw new Error(JSON.stringify(job.issues));
  const plan = planJob(job.value, { thermo: builtInThermo(), trade });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}
function programme(plan: Plan, id: string): Programme {
  const found = plan.programmes.find((p) => p.id === id);
  if (found === undefined) throw new Error(`no ${id}`);
  return found;
}
const free = (plan: Plan): number => plan.actives[0]?.onLeaf.free ?? Number.NaN;

describe("a leaf feed in a job", () => {
  it.each<[string, object, number, "L" | "kg"]>([
    ["by its usual assay", { feed: "manganese sulfate", rate: "2 kg/ha" }, 876 / 150.994, "kg"],
    ["by another form", { feed: "zinc sulfate", form: "monohydrate", rate: "1 kg/ha" }, 882 / 161.436, "kg"],
    [
      "as a liquid",
      { feed: "manganese sulfate", form: "liquid", rate: "3 L/ha" },
      (200 * 1.2203) / 150.994,
      "L",
    ],
    ["by grams of the element", { feed: "zinc EDTA", strength: "90 g/L", rate: "1 L/ha" }, 90 / 65.38, "L"],
    [
      "by per cent of the element",
      { feed: "manganese EDTA", strength: "13 % w/w", rate: "1 kg/ha" },
      130 / 54.938,
      "kg",
    ],
    [
      "by grams of the salt",
      { feed: "zinc sulfate", strength: "300 g/L salt", rate: "1 L/ha" },
      300 / 161.436,
      "L",
    ],
    // Eight boron atoms stand in one unit of octaborate.
    [
      "by an element that stands in it eight times",
      { feed: "octaborate", strength: "205 g/kg", rate: "1 kg/ha" },
      205 / 10.81 / 8,
      "kg",
    ],
  ])("is counted %s", (_, feed, value_mol, per) => {
    const { content } = feedOf(feed);
    expect(content.per).toBe(per);
    expect(content.value_mol).toBeCloseTo(value_mol, 9);
  });

  it.each<[string, object, string]>([
    ["a name nobody knows", { feed: "moondust", rate: "1 kg/ha" }, "feed-unknown mix[1].feed"],
    [
      "a form it is not sold in",
      { feed: "zinc EDTA", form: "gas", rate: "1 kg/ha" },
      "conditioner-form-unknown mix[1].form",
    ],
    ["no rate", { feed: "zinc EDTA" }, "key-missing mix[1].rate"],
    [
      "a rate by volume of a solid",
      { feed: "zinc sulfate", rate: "1 L/ha" },
      "rate-does-not-fit-strength mix[1].rate",
    ],
    ["a rate of zero", { feed: "zinc sulfate", rate: "0 kg/ha" }, "number-not-positive mix[1].rate"],
    [
      "more of the element than the salt can hold",
      { feed: "manganese sulfate", strength: "980 g/kg", rate: "1 kg/ha" },
      "composition-above-whole mix[1].strength",
    ],
    [
      "a strength as acid",
      { feed: "manganese sulfate", strength: "150 g/L ae", rate: "1 L/ha" },
      "strength-basis-differs mix[1].strength",
    ],
    [
      "a per cent of nobody knows what",
      { feed: "zinc EDTA", strength: "9 %", rate: "1 kg/ha" },
      "unit-ambiguous mix[1].strength",
    ],
    [
      "a key it does not have",
      { feed: "zinc EDTA", rate: "1 kg/ha", strenght: "9 g/L" },
      "key-unknown mix[1].strenght",
    ],
  ])("is refused for %s", (_, feed, expected) => {
    const { issues } = readJob(documentOf([feed]), { trade });
    expect(issues.filter((i) => i.severity === "error").map((i) => `${i.code} ${i.path}`)).toContain(
      expected,
    );
  });

  it("cannot be all of a mix", () => {
    const job = readJob(documentOf([], { mix: [{ feed: "zinc sulfate", rate: "1 kg/ha" }] }), { trade });
    expect(job.ok).toBe(false);
    expect(job.issues.map((i) => i.code)).toContain("list-empty");
  });
});

describe("manganese and glyphosate in one tank", () => {
  const none = planOf([]);
  const sulfate = planOf([{ feed: "manganese sulfate", rate: "2.5 kg/ha" }]);
  // The same manganese, held by EDTA.
  const chelate = planOf([{ feed: "manganese EDTA", strength: "130 g/kg", rate: "6.13 kg/ha" }]);

  it("the sulfate's manganese holds glyphosate, in the tank and far more on the leaf", () => {
    const [glyphosate] = sulfate.actives;
    expect(glyphosate?.inTank.heldBy["manganese"]).toBeGreaterThan(0.05);
    expect(glyphosate?.onLeaf.heldBy["manganese"]).toBeGreaterThan(0.2);
    expect(free(sulfate)).toBeLessThan(free(none) - 0.1);
  });

  it("the chelate's manganese is left to EDTA for the most part", () => {
    const held = (plan: Plan): number => plan.actives[0]?.inTank.heldBy["manganese"] ?? 0;
    expect(held(chelate)).toBeLessThan(held(sulfate) / 2);
  });

  it("the published rules are said: apart with the sulfate, in order with the chelate", () => {
    const ids = (plan: Plan): readonly string[] => programme(plan, "none").reasons.map((r) => r.id);
    expect(programme(sulfate, "none").blocked).toBe(true);
    expect(programme(chelate, "none").blocked).toBe(false);
    expect(none.programmes.some((p) => p.blocked)).toBe(false);
    const said = [...ids(chelate), ...chelate.actives.flatMap((a) => a.rules.map((r) => r.id))];
    expect(said).toContain("metal-chelate-glyphosate");
  });

  it("the feed stands in order, loads, jar and cautions", () => {
    expect(sulfate.order.some((step) => step.what.includes("manganese sulfate"))).toBe(true);
    const amount = sulfate.loads.full.amounts.find((a) => a.label === "manganese sulfate");
    expect(amount).toMatchObject({ unit: "kg" });
    expect(amount?.amount).toBeCloseTo((2.5 * 2500) / 140, 6);
    expect(sulfate.jar.find((a) => a.label === "manganese sulfate")?.amount).toBeCloseTo(2500 / 140, 6);
    expect(sulfate.cautions.some((c) => c.about.includes("manganese-sulfate"))).toBe(true);
    // A chelate goes in before the glyphosate, as its rule asks.
    const steps = chelate.order.map((step) => step.what);
    const at = (name: string): number => steps.findIndex((what) => what.includes(name));
    expect(at("manganese EDTA")).toBeLessThan(at("glyphosate"));
  });
});

describe("other feeds", () => {
  it("carry their own ions, and leave the water test as it was", () => {
    const plan = planOf([{ feed: "magnesium sulfate", rate: "5 kg/ha" }]);
    expect(plan.actives[0]?.onLeaf.heldBy["magnesium"]).toBeGreaterThan(0.1);
    // The water test is the water's: a feed does not make it harder.
    expect(plan.water.hardness_mgPerL_asCaCO3).toBeCloseTo(180, 6);
  });

  it("a borate raises the pH of the tank", () => {
    const borate = planOf([{ feed: "octaborate", rate: "3 kg/ha" }]).tank.pH;
    expect(borate).toBeGreaterThan(planOf([]).tank.pH + 0.2);
  });

  it("more than dissolves is said, and what dissolves is not", () => {
    const codes = (rate: string): readonly string[] =>
      planOf([{ feed: "boric acid", rate }]).issues.map((i) => i.code);
    // 4.8 g per 100 g of water at 18 °C: 6.7 kg in 140 L.
    expect(codes("7.5 kg/ha")).toEqual(["feed-not-dissolved"]);
    expect(codes("6 kg/ha")).toEqual([]);
  });

  it("solubility is read between the points of its table only", () => {
    const boric = trade.feeds.find((f) => f.id === "boric-acid")!;
    expect(solubility_gPerL(boric, 15)).toBeCloseTo((37 + 50.1) / 2, 9);
    expect(solubility_gPerL(boric, 0)).toBeCloseTo(26.8, 9);
    expect(solubility_gPerL(boric, -1)).toBeNull();
    expect(solubility_gPerL(boric, 31)).toBeNull();
    expect(
      solubility_gPerL(
        trade.feeds.find((f) => f.id === "zinc-edta")!,
        15,
      ),
    ).toBeNull();
  });

  it("a binding that cannot be computed is said", () => {
    const more = {
      mix: [
        {
          active: "MCPA",
          form: "dimethylammonium",
          strength: "500 g/L ae",
          rate: "1 L/ha",
          formulation: "SL",
        },
        { feed: "zinc sulfate", rate: "1 kg/ha" },
      ],
    };
    const plan = planOf([], more);
    const remarks = programme(plan, "none").remarks.map((r) => r.text);
    expect(remarks).toContainEqual(expect.stringMatching(/^How MCPA binds .*zinc.* is not computed\./));
  });
});
