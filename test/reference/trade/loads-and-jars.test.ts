import { describe, expect, it } from "vitest";
import { G_PER_L_IN_LB_PER_100_US_GAL, jarTest, loads } from "../../../src/agronomy/index.ts";
import type { Load, Loads, MixAmount } from "../../../src/agronomy/index.ts";
import { US_GALLON_L } from "../../../src/units/index.ts";
import { checksOf, compare, TOPICS } from "./checks.ts";
import type { Check } from "./checks.ts";

const ACRE_HA = 0.40468564224;
const LB_KG = 0.45359237;
const GPA_LPERHA = US_GALLON_L / ACRE_HA;
const TEASPOON_ML = (US_GALLON_L * 1000) / 768;

const amountOf = (load: Load | null, product: string): number =>
  load?.amounts.find((a) => a.product === product)?.amount ?? 0;
const fullLoads = (split: Loads): number => (split.last === null ? split.count : split.count - 1);

describe("loads", () => {
  const metric = (c: Check): void => {
    const amounts: MixAmount[] = [
      {
        product: "product",
        label: "product",
        perHa: { value: c.number("product_rate_L_per_ha"), unit: "L" },
      },
      {
        product: "sulfate",
        label: "ammonium sulfate",
        perL: { value_g: c.number("AMS_percent_w_v") * 10, density_gPerMl: null },
      },
    ];
    const volume_LPerHa = c.number("volume_L_per_ha");
    const split = loads({ volume_LPerHa, tank_L: c.number("tank_L"), area_ha: c.number("area_ha") }, amounts);
    compare(c, "ha_per_full_load", split.full.area_ha, "ha");
    compare(c, "total_spray_L", fullLoads(split) * split.full.volume_L + (split.last?.volume_L ?? 0), "L");
    compare(c, "full_loads", fullLoads(split), "");
    compare(c, "last_load_L", split.last?.volume_L ?? 0, "L");
    compare(c, "last_load_ha", split.last?.area_ha ?? 0, "ha");
    compare(c, "product_per_full_load_L", amountOf(split.full, "product"), "L");
    compare(c, "product_last_load_L", amountOf(split.last, "product"), "L");
    compare(c, "AMS_per_full_load_kg", amountOf(split.full, "sulfate"), "kg");
    compare(c, "AMS_last_load_kg", amountOf(split.last, "sulfate"), "kg");
  };

  const RUN: Readonly<Record<string, (c: Check) => void>> = {
    "trade-094": (c) => {
      const acres = c.numbers("tank_US_gal").map((tank) => {
        const job = { volume_LPerHa: c.number("gpa") * GPA_LPERHA, tank_L: tank * US_GALLON_L, area_ha: 100 };
        return loads(job, []).full.area_ha / ACRE_HA;
      });
      compare(c, "acres", acres, "acre");
    },
    "trade-095": (c) => {
      const perAcre_gal = c.number("rate_lb_ai_per_ac") / c.number("strength_lb_per_US_gal");
      const product: MixAmount = {
        product: "product",
        label: "product",
        perHa: { value: perAcre_gal * GPA_LPERHA, unit: "L" },
      };
      const job = {
        volume_LPerHa: c.number("gpa") * GPA_LPERHA,
        tank_L: c.number("tank_US_gal") * US_GALLON_L,
        area_ha: 100,
      };
      const split = loads(job, [product]);
      compare(c, "acres_per_load", split.full.area_ha / ACRE_HA, "acre");
      compare(c, "product_US_gal_per_ac", perAcre_gal, "US gal/acre");
      compare(
        c,
        "product_US_quart_per_load",
        (amountOf(split.full, "product") / US_GALLON_L) * 4,
        "US quart",
      );
    },
    "trade-097": metric,
    "trade-098": metric,
    "trade-099": metric,
    "trade-101": metric,
    "trade-102": (c) => {
      const amounts: MixAmount[] = [
        {
          product: "product",
          label: "product",
          perHa: { value: (c.number("rate_fl_oz_per_ac") / 128) * GPA_LPERHA, unit: "L" },
        },
        {
          product: "sulfate",
          label: "ammonium sulfate",
          perL: {
            value_g: c.number("AMS_lb_per_100_US_gal") * G_PER_L_IN_LB_PER_100_US_GAL,
            density_gPerMl: null,
          },
        },
      ];
      const job = {
        volume_LPerHa: c.number("gpa") * GPA_LPERHA,
        tank_L: c.number("tank_US_gal") * US_GALLON_L,
        area_ha: c.number("area_ac") * ACRE_HA,
      };
      const split = loads(job, amounts);
      compare(c, "ac_per_load", split.full.area_ha / ACRE_HA, "acre");
      const total_L = fullLoads(split) * split.full.volume_L + (split.last?.volume_L ?? 0);
      compare(c, "total_US_gal", total_L / US_GALLON_L, "US gal");
      compare(c, "full_loads", fullLoads(split), "");
      compare(c, "last_load_US_gal", (split.last?.volume_L ?? 0) / US_GALLON_L, "US gal");
      compare(c, "last_load_ac", (split.last?.area_ha ?? 0) / ACRE_HA, "acre");
      compare(c, "product_US_gal_per_load", amountOf(split.full, "product") / US_GALLON_L, "US gal");
      compare(c, "product_US_gal_last", amountOf(split.last, "product") / US_GALLON_L, "US gal");
      compare(c, "AMS_lb_per_load", amountOf(split.full, "sulfate") / LB_KG, "lb");
      compare(c, "AMS_lb_last", amountOf(split.last, "sulfate") / LB_KG, "lb");
    },
  };

  it.each(checksOf("Tank loads"))("$id $what", (check) => {
    const run = RUN[check.id];
    if (run === undefined) throw new Error(`no run for ${check.id}`);
    run(check);
  });
});

describe("jar test", () => {
  const byArea = (value: number, unit: "L" | "kg"): MixAmount => ({
    product: "p",
    label: "p",
    perHa: { value, unit },
  });
  const byLitre = (value_g: number, density_gPerMl: number | null = null): MixAmount => ({
    product: "p",
    label: "p",
    perL: { value_g, density_gPerMl },
  });
  const inJar = (jar_L: number, amount: MixAmount, volume_LPerHa: number): number =>
    jarTest(jar_L, [amount], volume_LPerHa)[0]?.amount ?? Number.NaN;
  /** A rate per 100 US gal in a small batch is a jar at a volume of 100 US gal per unit area. */
  const inBatch = (batch_gal: number, amount: MixAmount): number =>
    inJar(batch_gal * US_GALLON_L, amount, 100 * US_GALLON_L);

  const RUN: Readonly<Record<string, (c: Check) => void>> = {
    "trade-105": (c) => {
      const amount = byArea(c.number("rate_g_per_ha") / 1000, "kg");
      compare(c, "product_g", inJar(c.number("jar_mL") / 1000, amount, c.number("volume_L_per_ha")), "g");
    },
    "trade-106": (c) => {
      const jar_L = c.number("jar_mL") / 1000;
      compare(c, "AMS_g", inJar(jar_L, byLitre(c.number("AMS_percent_w_v") * 10), 100), "g");
      compare(
        c,
        "surfactant_mL",
        inJar(jar_L, byLitre(c.number("surfactant_percent_v_v") * 10, 1), 100),
        "mL",
      );
    },
    "trade-107": (c) => {
      const amount = byArea(c.number("rate_L_per_ha"), "L");
      compare(c, "product_mL", inJar(c.number("jar_mL") / 1000, amount, c.number("volume_L_per_ha")), "mL");
    },
    "trade-108": (c) => {
      const amount = byArea((c.number("rate_fl_oz_per_ac") / 128) * GPA_LPERHA, "L");
      const mL = inJar(US_GALLON_L / 4, amount, c.number("gpa") * GPA_LPERHA);
      compare(c, "product_mL", mL, "mL");
      compare(c, "product_tsp", mL / TEASPOON_ML, "tsp");
      const sulfate = byLitre(c.number("AMS_lb_per_100_US_gal") * G_PER_L_IN_LB_PER_100_US_GAL);
      compare(c, "AMS_g", inJar(US_GALLON_L / 4, sulfate, 100), "g");
    },
    "trade-109": (c) => {
      const amount = byArea((c.number("rate_pint_per_ac") / 8) * GPA_LPERHA, "L");
      const mL = inJar(US_GALLON_L / 8, amount, c.number("gpa") * GPA_LPERHA);
      compare(c, "product_mL", mL, "mL");
      compare(c, "product_tsp", mL / TEASPOON_ML, "tsp");
    },
    "trade-110": (c) => {
      const mL = inBatch(
        c.number("batch_US_gal"),
        byArea((c.number("rate_pint_per_100_US_gal") / 8) * US_GALLON_L, "L"),
      );
      compare(c, "exact_mL", mL, "mL");
      compare(c, "exact_tsp", mL / TEASPOON_ML, "tsp");
      compare(c, "published_tsp", mL / TEASPOON_ML, "tsp");
    },
    "trade-111": (c) => {
      const mL = inBatch(
        c.number("batch_US_gal"),
        byArea((c.number("rate_pint_per_100_US_gal") / 8) * US_GALLON_L, "L"),
      );
      compare(c, "exact_tsp", mL / TEASPOON_ML, "tsp");
      compare(c, "published_tsp", mL / TEASPOON_ML, "tsp");
    },
    "trade-112": (c) => {
      const grams = c
        .numbers("rate_lb_per_100_US_gal")
        .map((lb) => inBatch(c.number("batch_US_gal"), byArea(lb * LB_KG, "kg")));
      compare(c, "exact_g", grams, "g");
      compare(c, "published_g", grams, "g");
    },
    "trade-113": (c) => {
      const mL = inBatch(
        c.number("batch_US_gal"),
        byArea((c.number("rate_pint_per_100_US_gal") / 8) * US_GALLON_L, "L"),
      );
      compare(c, "fl_oz", mL / ((US_GALLON_L * 1000) / 128), "fl oz");
    },
  };

  it.each(checksOf("Jar test scaling"))("$id $what", (check) => {
    const run = RUN[check.id];
    if (run === undefined) throw new Error(`no run for ${check.id}`);
    run(check);
  });
});

it("no topic of the file is left out", () => {
  expect([...TOPICS].sort()).toEqual([
    "AMS dose formula",
    "AMS dose range",
    "Acid dose",
    "Chelant dose",
    "Glyphosate to hardness ratio",
    "Jar test scaling",
    "Liquid AMS",
    "Rinsing",
    "Tank loads",
  ]);
});
