import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { builtInTrade, planJob, readJob } from "../../src/agronomy/index.ts";
import type { ActiveVerdict, Plan } from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { MOLAR_MASSES } from "../../src/units/index.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };

/** A job in one set of numbers, before it is written in any unit. */
interface Facts {
  readonly calcium_mgPerL: number;
  readonly magnesiumShare: number;
  readonly alkalinityPerHardness: number;
  readonly pH: number;
  readonly temperature_C: number;
  readonly volume_LPerHa: number;
  readonly rate_LPerHa: number;
  readonly strength_gPerL: number;
  readonly dose_gPerL: number;
}

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const facts: fc.Arbitrary<Facts> = fc.record({
  calcium_mgPerL: between(5, 250),
  magnesiumShare: between(0.1, 0.6),
  alkalinityPerHardness: between(0.2, 1.2),
  pH: between(6.5, 8.2),
  temperature_C: between(8, 30),
  volume_LPerHa: between(60, 350),
  rate_LPerHa: between(1, 4),
  strength_gPerL: between(300, 540),
  dose_gPerL: between(1, 15),
});

/** A number in full: as many digits as there are, so that nothing is lost but the last bit. */
const full = (value: number): string => value.toPrecision(16);

// The factors are written down from the definitions once more, so that the units layer is not compared with itself.
const GRAIN_MG = 64.79891;
const POUND_G = 453.59237;
const US_GALLON_L = 3.785411784;
const IMPERIAL_GALLON_L = 4.54609;
const ACRE_HA = 0.40468564224;
const CACO3 = 100.086;
const HCO3 = 61.016;

const hardnessOf = (job: Facts): number => job.calcium_mgPerL / 40.078 / (1 - job.magnesiumShare);
const alkalinityOf = (job: Facts): number => 2 * hardnessOf(job) * job.alkalinityPerHardness;
const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;

/** The same facts as three people would write them; hardness in mmol/L and alkalinity in meq/L lie behind. */
const WRITINGS: Readonly<Record<string, (job: Facts) => object>> = {
  metric: (job) =>
    document({
      readings: [
        ["calcium", job.calcium_mgPerL, "mg/L"],
        ["hardness", hardnessOf(job) * CACO3, "mg/L as CaCO3"],
        ["alkalinity", alkalinityOf(job) * (CACO3 / 2), "mg/L as CaCO3"],
      ],
      job,
      spray: {
        volume: `${full(job.volume_LPerHa)} L/ha`,
        tank: "3000 L",
        area: "37 ha",
        temperature: `${full(job.temperature_C)} °C`,
        "holding time": "3 h",
      },
      strength: `${full(job.strength_gPerL)} g/L ae`,
      rate: `${full(job.rate_LPerHa)} L/ha`,
      dose: `${full(job.dose_gPerL / 10)} kg/100 L`,
    }),
  US: (job) =>
    document({
      readings: [
        ["calcium", job.calcium_mgPerL / 1000, "g/L"],
        ["hardness", (hardnessOf(job) * CACO3) / (GRAIN_MG / US_GALLON_L), "gpg"],
        ["alkalinity", alkalinityOf(job), "meq/L"],
      ],
      job,
      spray: {
        volume: `${full((job.volume_LPerHa * ACRE_HA) / US_GALLON_L)} gal/ac`,
        tank: `${full(3000 / US_GALLON_L)} US gal`,
        area: `${full(37 / ACRE_HA)} ac`,
        temperature: `${full(fahrenheit(job.temperature_C))} °F`,
        "holding time": "180 min",
      },
      strength: `${full((job.strength_gPerL * US_GALLON_L) / POUND_G)} lb/US gal ae`,
      rate: `${full((job.rate_LPerHa * ACRE_HA * 128) / US_GALLON_L)} fl oz/ac`,
      dose: `${full((job.dose_gPerL * 100 * US_GALLON_L) / POUND_G)} lb/100 US gal`,
    }),
  imperial: (job) =>
    document({
      readings: [
        ["calcium", (2 * job.calcium_mgPerL) / 40.078, "meq/L"],
        ["hardness", (hardnessOf(job) * CACO3) / (GRAIN_MG / IMPERIAL_GALLON_L), "°Clark"],
        ["bicarbonate", alkalinityOf(job) * HCO3, "mg/L"],
      ],
      job,
      spray: {
        volume: `${full((job.volume_LPerHa * ACRE_HA) / IMPERIAL_GALLON_L)} imp gal/ac`,
        tank: `${full(3000 / IMPERIAL_GALLON_L)} imp gal`,
        area: `${full(37 / ACRE_HA)} ac`,
        temperature: `${full(fahrenheit(job.temperature_C))} °F`,
        "holding time": "0.125 d",
      },
      strength: `${full((job.strength_gPerL * IMPERIAL_GALLON_L) / POUND_G)} lb/imp gal ae`,
      rate: `${full((job.rate_LPerHa * ACRE_HA * 8) / IMPERIAL_GALLON_L)} imp pt/ac`,
      dose: `${full((job.dose_gPerL * IMPERIAL_GALLON_L) / POUND_G)} lb/imp gal`,
    }),
};

interface Written {
  readonly readings: readonly (readonly [parameter: string, value: number, unit: string])[];
  readonly job: Facts;
  readonly spray: object;
  readonly strength: string;
  readonly rate: string;
  readonly dose: string;
}

/** A job document; the dose has no room to be searched, so that plans differ in their units alone. */
function document({ readings, job, spray, strength, rate, dose }: Written): {
  water: { readings: object[] };
  mix: object[];
} {
  return {
    ...{ hardstand: 1, spray },
    water: {
      ...{ source: "any", method: "laboratory" },
      readings: [
        ...readings.map(([parameter, value, unit]) => ({ parameter, value, unit })),
        { parameter: "pH", value: job.pH },
      ],
    },
    mix: [{ active: "glyphosate", form: "isopropylammonium", strength, rate, formulation: "SL" }],
    ...{ conditioners: [{ chemistry: "ammonium sulfate", "least dose": dose, "most dose": dose }] },
  };
}

/** The answers of a job, without ranges unless draws are asked for: they come from the same code with other numbers. */
function planOf(job: object, draws = 0): Plan {
  const read = readJob(job, { trade: data.trade });
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  const plan = planJob(read.value, data, { draws });
  if (!plan.ok) throw new Error(JSON.stringify(plan.issues));
  return plan.value;
}

/** The three answers of an active as numbers. */
function answers({ inTank, onLeaf, byClock }: ActiveVerdict): readonly (number | null)[] {
  const { withSolid, withoutSolid } = onLeaf;
  const ends = [withSolid?.free ?? null, withoutSolid?.free ?? null];
  return [inTank.free, inTank.heldBy["calcium"] ?? 0, onLeaf.free, ...ends, byClock.intact];
}

/** Fails when two rows of numbers differ by more than `within`, or in what is known. */
function expectSame(
  some: readonly (number | null)[],
  others: readonly (number | null)[],
  within: number,
): void {
  expect(some.length).toBe(others.length);
  some.forEach((value, k) => {
    const other = others[k]!;
    if (value === null || other === null) expect(value).toBe(other);
    else expect(Math.abs(value - other), `${value} and ${other}`).toBeLessThanOrEqual(within);
  });
}

const ofConditioner = (plan: Plan): Plan["programmes"][number] => {
  const found = plan.programmes.find((programme) => programme.kind === "conditioner");
  if (found === undefined) throw new Error("no conditioner was planned");
  return found;
};
const glyphosate = (actives: readonly ActiveVerdict[]): ActiveVerdict =>
  actives.find((one) => one.active === "glyphosate")!;

describe("a plan", () => {
  test("does not depend on the units the job is written in", () => {
    expect([MOLAR_MASSES.CaCO3, MOLAR_MASSES.HCO3]).toEqual([CACO3, HCO3]);
    fc.assert(
      fc.property(facts, (job) => {
        const metric = planOf(WRITINGS["metric"]!(job));
        const treated = ofConditioner(metric);
        for (const name of ["US", "imperial"]) {
          const other = planOf(WRITINGS[name]!(job));
          const same = ofConditioner(other);
          expectSame(answers(metric.actives[0]!), answers(other.actives[0]!), 1e-6);
          expectSame(answers(treated.actives[0]!), answers(same.actives[0]!), 1e-6);
          expectSame([metric.tank.pH, treated.tank.pH], [other.tank.pH, same.tank.pH], 1e-8);
          expect(same.dose_gPerL).toBe(treated.dose_gPerL);
          const amounts = (plan: Plan): number[] => plan.loads.full.amounts.map((one) => one.amount);
          expectSame(amounts(metric), amounts(other), 1e-6 * Math.max(...amounts(metric)));
        }
      }),
      { numRuns: 5 },
    );
  });

  test("does not change with a dry partner that takes no part in the chemistry", () => {
    const partner = { active: "captan", strength: "800 g/kg", rate: "1.5 kg/ha", formulation: "WG" };
    fc.assert(
      fc.property(facts, fc.boolean(), (job, first) => {
        const alone = metricOf(job);
        const mix = first ? [partner, ...alone.mix] : [...alone.mix, partner];
        const [without, beside] = [planOf(alone), planOf({ ...alone, mix })];
        expect(beside.actives).toHaveLength(2);
        expectSame(answers(glyphosate(without.actives)), answers(glyphosate(beside.actives)), 1e-9);
        const [treated, both] = [ofConditioner(without), ofConditioner(beside)];
        expectSame(answers(glyphosate(treated.actives)), answers(glyphosate(both.actives)), 1e-9);
        expect(beside.tank.solids).toEqual(without.tank.solids);
      }),
      { numRuns: 5 },
    );
  });

  test("does not depend on what the water is called, ranges included", () => {
    const [job] = fc.sample(facts, 1);
    const given = metricOf(job!);
    const renamed = { ...given, water: { ...given.water, source: "another name" } };
    const [one, other] = [planOf(given, 40), planOf(renamed, 40)];
    const ranges = ({ actives }: Plan): (number | null)[] =>
      actives.flatMap(({ inTank, onLeaf }) => [inTank.low, inTank.high, onLeaf.low, onLeaf.high]);
    expect(ranges(one)).not.toContain(null);
    expectSame(ranges(one), ranges(other), 1e-9);
    expectSame([ofConditioner(one).confidence], [ofConditioner(other).confidence], 0);
  });

  test("does not depend on the order of the readings", () => {
    fc.assert(
      fc.property(facts, (job) => {
        const given = metricOf(job);
        const turned = { ...given, water: { ...given.water, readings: [...given.water.readings].reverse() } };
        expectSame(answers(planOf(given).actives[0]!), answers(planOf(turned).actives[0]!), 1e-9);
      }),
      { numRuns: 5 },
    );
  });
});

const metricOf = (job: Facts): ReturnType<typeof document> =>
  WRITINGS["metric"]!(job) as ReturnType<typeof document>;
