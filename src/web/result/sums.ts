import type { Job, Plan, Programme } from "../../agronomy/index.ts";
import { figure } from "./words.ts";

/** A result with the way to it, so that a hand can check it. */
export interface Sum {
  readonly what: string;
  readonly formula: string;
  /** The formula with the numbers put in. */
  readonly numbers: string;
  readonly result: string;
  /** Key of the source of a constant in it; null where it is arithmetic on what the job says. */
  readonly source: string | null;
}

/** Molar mass of CaCO3 [g/mol], as the water layer counts hardness with. */
const CACO3_GPERMOL = 100.086;

/** A number put into a formula: four figures, without zeros that say nothing. */
export function put(value: number): string {
  const text = figure(value, 4);
  return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
}

/** Hardness from the calcium and magnesium put into the calculation. */
export function hardnessSum({ water }: Plan): Sum {
  const calcium = 1000 * (water.ions_molPerL["Ca+2"] ?? 0);
  const magnesium = 1000 * (water.ions_molPerL["Mg+2"] ?? 0);
  return {
    what: "Hardness",
    formula: "(calcium + magnesium) × molar mass of CaCO3",
    numbers: `(${put(calcium)} + ${put(magnesium)}) mmol/L × ${String(CACO3_GPERMOL)} g/mol`,
    result: `${figure(water.hardness_mgPerL_asCaCO3)} mg/L as CaCO3`,
    source: "iupac-atomic-weights-2021",
  };
}

/** Area of a full load, count of loads, amounts in a full load, dose and cost per hectare of one programme. */
export function fillingSums(job: Job, programme: Programme): readonly Sum[] {
  const { tank_L, area_ha } = job.spray;
  const { waterVolume_LPerHa: volume, dose_gPerL, dose, filling, cost } = programme;
  const { full, count } = filling.loads;
  const whole = filling.loads.last === null ? full.area_ha : tank_L / volume;
  const sums: Sum[] = [
    {
      what: "Area of a full tank",
      formula: "tank ÷ water volume",
      numbers: `${put(tank_L)} L ÷ ${put(volume)} L/ha`,
      result: `${figure(tank_L / volume)} ha`,
      source: null,
    },
    {
      what: "Loads",
      formula: "area ÷ area of a full load, rounded up",
      numbers: `${put(area_ha)} ha ÷ ${put(whole)} ha`,
      result: String(count),
      source: null,
    },
  ];
  for (const item of job.mix) {
    const amount = full.amounts.find(
      (one) => one.product.startsWith(item.path) || one.label.includes(item.active),
    );
    if (amount === undefined) continue;
    sums.push({
      what: `${amount.label}, full load`,
      formula: "rate × area of the load",
      numbers: `${put(item.rate.value)} ${item.rate.per}/ha × ${put(full.area_ha)} ha`,
      result: `${figure(amount.amount)} ${amount.unit}`,
      source: null,
    });
  }
  sums.push(...conditionerSums(programme));
  if (dose !== null && dose_gPerL > 0) sums.push(...doseSums(job, programme, cost.perHa));
  return sums;
}

/** What of each conditioner goes into a full load. */
function conditionerSums({ parts, filling }: Programme): readonly Sum[] {
  const { full } = filling.loads;
  return parts.flatMap(({ conditioner, name, dose, dose_gPerL }): Sum[] => {
    const amount = full.amounts.find(({ product }) => product === conditioner);
    if (amount === undefined) return [];
    const volume = `${put(full.volume_L)} L`;
    const bySolid = amount.unit === "kg";
    return [
      {
        what: `${name}, full load`,
        formula: bySolid ? "dose × volume of the load ÷ grams in a kilogram" : "dose × volume of the load",
        numbers: bySolid
          ? `${put(dose_gPerL)} g/L × ${volume} ÷ 1000 g/kg`
          : `${put(dose.value / 100)} L/L × ${volume}`,
        result: `${figure(amount.amount)} ${amount.unit}`,
        source: null,
      },
    ];
  });
}

function doseSums(job: Job, programme: Programme, perHa: number | null): readonly Sum[] {
  const { name, dose_gPerL, waterVolume_LPerHa: volume } = programme;
  const perHa_kg = (dose_gPerL * volume) / 1000;
  const sums: Sum[] = [
    {
      what: `${name} per hectare`,
      formula: "dose × water volume ÷ grams in a kilogram",
      numbers: `${put(dose_gPerL)} g/L × ${put(volume)} L/ha ÷ 1000 g/kg`,
      result: `${figure(perHa_kg)} kg/ha`,
      source: null,
    },
  ];
  const price = job.conditioners?.find(({ chemistry }) => chemistry === programme.conditioner)?.price;
  if (perHa !== null && price?.per === "kg") {
    sums.push({
      what: "Cost per hectare",
      formula: "amount per hectare × price",
      numbers: `${put(perHa_kg)} kg/ha × ${put(price.value)} per kg`,
      result: `${perHa.toFixed(2)} per ha`,
      source: null,
    });
  }
  return sums;
}

/** Share intact when the last is sprayed, from the half-life; null where there is none. */
export function clockSum(
  clock: Plan["actives"][number]["byClock"],
  holdingTime_h: number | null,
): Sum | null {
  const { halfLife_h, intact } = clock;
  if (halfLife_h === null || intact === null || holdingTime_h === null) return null;
  return {
    what: "Share intact",
    formula: "½ to the power of (time in the tank ÷ half-life)",
    numbers: `0.5 ^ (${put(holdingTime_h)} h ÷ ${put(halfLife_h)} h)`,
    result: put(intact),
    source: clock.sources[0] ?? null,
  };
}
