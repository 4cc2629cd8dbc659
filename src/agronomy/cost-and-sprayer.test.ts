import { describe, expect, test } from "vitest";
import { moneyOf, programmeCost } from "./cost.ts";
import { heldValue } from "./held-value.ts";
import { withSpoons } from "./jar-spoons.ts";
import { jarTest } from "./jar-test.ts";
import { loads, shareLeftAfterRinsing } from "./loads.ts";
import { mixingOrder } from "./mixing-order.ts";
import { orderDifferences } from "./order-differences.ts";
import { holdingTimeOf, sprayerFacts } from "./sprayer.ts";
import { builtInTrade } from "./trade-data.ts";
import type { MixProduct } from "./tank.ts";
import type { ActiveVerdict, Job } from "./types.ts";

const trade = builtInTrade();

describe("cost", () => {
  const extent = { volume_LPerHa: 100, load_L: 2500, seasonArea_ha: 480 };
  const sulfate = {
    product: "a",
    label: "a",
    perL: { value_g: 17, density_gPerMl: null },
    price: { value: 0.6, per: "kg" },
  } as const;

  test("per hectare, per load and per season are one amount over three grounds", () => {
    // 17 g/L at 100 L/ha is 1.7 kg/ha, at 0.60 a kg 1.02 a hectare; 25 ha a load, 480 ha a season.
    const cost = programmeCost(extent, [sulfate]);
    expect(cost.perHa).toBeCloseTo(1.02, 12);
    expect(cost.perLoad).toBeCloseTo(25.5, 12);
    expect(cost.perSeason).toBeCloseTo(489.6, 9);
  });

  test("no season's area leaves only the season unknown; no price leaves all", () => {
    expect(programmeCost({ ...extent, seasonArea_ha: null }, [sulfate]).perSeason).toBeNull();
    expect(programmeCost({ ...extent, seasonArea_ha: null }, [sulfate]).perLoad).toBeCloseTo(25.5, 12);
    const none = { perHa: null, perLoad: null, perSeason: null };
    expect(programmeCost(extent, [sulfate, { ...sulfate, price: null }])).toEqual(none);
    expect(programmeCost(extent, [])).toEqual({ perHa: 0, perLoad: 0, perSeason: 0 });
  });
});

describe("the value of the active held", () => {
  const product = (rate: number, price: number | null): MixProduct =>
    ({ item: { rate: { value: rate, per: "L" }, price } }) as MixProduct;
  const verdict = (tank: number | null, leaf: number | null): ActiveVerdict =>
    ({ inTank: { free: tank }, onLeaf: { free: leaf } }) as ActiveVerdict;
  const money = (perHa: number | null) =>
    moneyOf(perHa, { volume_LPerHa: 100, load_L: 2500, seasonArea_ha: 10 });
  const value = (mix: MixProduct[], verdicts: ActiveVerdict[], where: "in the tank" | "on the leaf") =>
    heldValue(mix, verdicts, where, money).perHa;

  test("is rate times price times the share held, where the aim is judged", () => {
    const mix = [product(1.6, 6.2)];
    expect(value(mix, [verdict(0.98, 0.86)], "on the leaf")).toBeCloseTo(1.6 * 6.2 * 0.14, 12);
    expect(value(mix, [verdict(0.98, 0.86)], "in the tank")).toBeCloseTo(1.6 * 6.2 * 0.02, 12);
  });

  test("leaves out what has no known binding, and is not known without a price or any known binding", () => {
    const mix = [product(1, 10), product(2, null)];
    expect(value(mix, [verdict(0.9, 0.9), verdict(null, null)], "in the tank")).toBeCloseTo(1, 12);
    expect(value(mix, [verdict(0.9, 0.9), verdict(0.5, 0.5)], "in the tank")).toBeNull();
    expect(value([product(1, 10)], [verdict(null, null)], "in the tank")).toBeNull();
  });
});

const SPRAY: Job["spray"] = {
  volume_LPerHa: 100,
  leastVolume_LPerHa: null,
  tank_L: 2500,
  area_ha: 62,
  temperature_C: 15,
  humidity: null,
  holdingTime_h: null,
  measures: "metric" as const,
  jar_L: 1,
  seasonArea_ha: null,
  deadVolume_L: null,
  hopper_L: null,
  output_LPerMin: null,
  leafCalcium_kgPerHa: null,
  coverage: null,
  aerated: null,
};

describe("facts of the sprayer", () => {
  const split = loads(SPRAY, [
    { product: "p", label: "product", perHa: { value: 1.6, unit: "L" } },
    { product: "s", label: "sulfate", perL: { value_g: 17, density_gPerMl: null } },
  ]);
  const codes = (spray: Job["spray"]): string[] => sprayerFacts(spray, 100, split).map(({ code }) => code);

  test("what was not said says nothing", () => {
    expect(codes(SPRAY)).toEqual([]);
    expect(holdingTimeOf(SPRAY, 100)).toBeNull();
  });

  test("the output gives the holding time of a load, unless the job says it", () => {
    const spray = { ...SPRAY, output_LPerMin: 42 };
    expect(holdingTimeOf(spray, 100)).toBeCloseTo(2500 / 42 / 60, 12);
    expect(holdingTimeOf({ ...spray, area_ha: 5 }, 100)).toBeCloseTo(500 / 42 / 60, 12);
    expect(holdingTimeOf({ ...spray, holdingTime_h: 3 }, 100)).toBe(3);
    expect(sprayerFacts(spray, 100, split)[0]?.text).toContain("0.99 h");
  });

  test("the dead volume is ground not reached, and what is left after rinsing in three parts", () => {
    const facts = sprayerFacts({ ...SPRAY, deadVolume_L: 18 }, 100, split);
    expect(facts.map(({ code }) => code)).toEqual(["dead-volume", "rinsing"]);
    expect(facts[0]?.text).toContain("0.18 ha");
    expect(facts[1]?.text).toContain(
      `one part in ${String(Math.round(1 / shareLeftAfterRinsing(18, 180, 3)))}`,
    );
  });

  test("what does not fit the hopper goes in portions, what fits is not spoken of", () => {
    // 40 L of product in two portions of 30 L; 42.5 kg of sulfate, 53 L poured, in two.
    const facts = sprayerFacts({ ...SPRAY, hopper_L: 30 }, 100, split);
    expect(facts.map(({ text }) => /in (\d+) portions/.exec(text)?.[1])).toEqual(["2", "2"]);
    expect(codes({ ...SPRAY, hopper_L: 60 })).toEqual([]);
  });
});

describe("a jar test with spoons", () => {
  /** Amount that a recipe with spoons gives, read back from its own words. */
  const given = (text: string): number => {
    const direct = /^With spoons: (\d*)([¼½¾]?) teaspoons?\. /.exec(text);
    if (direct !== null) return 5 * (Number(direct[1]) + ["", "¼", "½", "¾"].indexOf(direct[2] ?? "") / 4);
    const diluted = /up to (\d+) mL.*use (\d+) teaspoons? of it/.exec(text);
    return (10 * 5 * Number(diluted?.[2])) / Number(diluted?.[1]);
  };

  test.each([0.06, 0.13, 0.4, 0.9, 1.6, 2.5, 3.3, 4.6, 5.6, 7.4, 12.5, 16, 17])(
    "%s mL can be measured to a tenth",
    (mL) => {
      const text = withSpoons(mL, "mL", 1);
      expect(Math.abs(given(text ?? "") - mL) / mL).toBeLessThan(0.1);
    },
  );

  test.each([0.07, 0.35, 1.2, 5, 9.9])("%s g can be measured to a tenth", (grams) => {
    const text = withSpoons(grams, "g", 1);
    expect(text).toContain("10 g on a kitchen scale");
    expect(Math.abs(given(text ?? "") - grams) / grams).toBeLessThan(0.1);
  });

  test("a jug or a scale does the rest, and what is far too small is said", () => {
    expect(withSpoons(20, "mL", 1)).toBeNull();
    expect(withSpoons(10, "g", 1)).toBeNull();
    expect(withSpoons(0, "g", 1)).toBeNull();
    expect(withSpoons(0.01, "g", 1)).toContain("Too small for spoons");
    expect(withSpoons(5, "mL", 1)).toContain("1 teaspoon.");
    expect(withSpoons(2.5, "mL", 1)).toContain("½ teaspoon.");
  });

  test("stands beside the syringe and the balance in the jar test", () => {
    const [jar] = jarTest(0.5, [{ product: "p", label: "p", perHa: { value: 0.03, unit: "kg" } }], 100);
    expect(jar?.amount).toBeCloseTo(0.15, 12);
    expect(jar?.how).toBeNull();
    expect(jar?.spoons).toContain("kitchen scale");
  });
});

describe("where published mixing orders differ", () => {
  const texts = (...groups: string[]): string[] => orderDifferences(groups, trade).map(({ text }) => text);

  test("solutions and emulsifiable concentrates: two sources the other way round, one as here", () => {
    expect(texts("emulsion", "liquid-solution")).toEqual([
      "Published orders differ: solutions before emulsifiable concentrates in Manitoba, Oklahoma; " +
        "emulsifiable concentrates first in North Dakota, as here.",
    ]);
  });

  test("capsules, bags and dry conditioner each have their dissenter; what all agree on is not spoken of", () => {
    expect(texts("capsule", "emulsion")[0]).toContain("in South Dakota");
    expect(texts("water-soluble-bag", "conditioner")[0]).toContain("in South Dakota");
    expect(texts("conditioner", "dry-dispersible")[0]).toContain("in a turf guide");
    expect(texts("liquid-suspension", "emulsion")).toEqual([]);
    expect(texts("conditioner")).toEqual([]);
  });

  test("every group of a published order has a place in ours and a name", () => {
    const { sequences, groupNames, order } = trade.formulations;
    const known = order.map(({ group }) => group);
    for (const group of sequences.flatMap(({ steps }) => steps.flat())) {
      expect(known).toContain(group);
      expect(Object.keys(groupNames)).toContain(group);
    }
    const doubled = sequences.filter(({ steps }) => new Set(steps.flat()).size !== steps.flat().length);
    expect(doubled).toEqual([]);
  });

  test("the reason of a step no longer repeats them", () => {
    const items = [
      { product: "a", label: "A", kind: "product", formulation: "EC" },
      { product: "b", label: "B", kind: "product", formulation: "SL" },
    ] as const;
    const whys = mixingOrder(items, trade).map(({ why }) => why);
    expect(whys.join(" ")).not.toContain("Manitoba and Oklahoma add");
  });
});
