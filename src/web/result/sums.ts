import type { Job, Plan, Programme } from "../../agronomy/index.ts";
import { inMeasures } from "../../units/index.ts";
import type { MeasuredUnit, Measures } from "../../units/index.ts";
import { ENGLISH, sayIn } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
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
  /** Page, table or item in that source, as the data give it. */
  readonly place?: string | null;
}

/** Molar mass of CaCO3 [g/mol], as the water layer counts hardness with. */
export const CACO3_GPERMOL = 100.086;

/** Key of the source of the molar masses. */
export const ATOMIC_WEIGHTS = "iupac-atomic-weights-2021";

/** A number put into a formula: four figures, without zeros that say nothing. */
export function put(value: number, language: Language = ENGLISH, digits = 4): string {
  const text = figure(value, digits, language);
  return /^[−-]?\d+[.,]\d+$/.test(text) ? text.replace(/[.,]?0+$/, "") : text;
}

/** Hardness from the calcium and magnesium put into the calculation. */
export function hardnessSum({ water }: Pick<Plan, "water">, language: Language = ENGLISH): Sum {
  const say = sayIn(language);
  const calcium = 1000 * (water.ions_molPerL["Ca+2"] ?? 0);
  const magnesium = 1000 * (water.ions_molPerL["Mg+2"] ?? 0);
  return {
    what: say("Hardness"),
    formula: say("(calcium + magnesium) × molar mass of CaCO3"),
    numbers: `(${put(calcium, language)} + ${put(magnesium, language)}) mmol/L × ${put(CACO3_GPERMOL, language, 6)} g/mol`,
    result: say("{figure} mg/L as CaCO3", { figure: figure(water.hardness_mgPerL_asCaCO3, 3, language) }),
    source: ATOMIC_WEIGHTS,
  };
}

/** Area of a full load, count of loads, amounts in a full load, dose and cost per hectare of one programme. */
export function fillingSums(job: Job, programme: Programme, language: Language = ENGLISH): readonly Sum[] {
  const say = sayIn(language);
  const told = (value: number): string => put(value, language);
  const { tank_L, area_ha } = job.spray;
  const { waterVolume_LPerHa: volume, filling } = programme;
  const { full, count, measures } = filling.loads;
  const whole = filling.loads.last === null ? full.area_ha : tank_L / volume;
  const sums: Sum[] = [
    {
      what: say("Area of a full tank"),
      formula: say("tank ÷ water volume"),
      numbers: `${told(tank_L)} L ÷ ${told(volume)} L/ha`,
      result: inBoth(tank_L / volume, "ha", measures, language),
      source: null,
    },
    {
      what: say("Loads"),
      formula: say("area ÷ area of a full load, rounded up"),
      numbers: `${told(area_ha)} ha ÷ ${told(whole)} ha`,
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
      what: say("{name}, full load", { name: language.phrases.name(amount.label) }),
      formula: say("rate × area of the load"),
      numbers: `${told(item.rate.value)} ${item.rate.per}/ha × ${told(full.area_ha)} ha`,
      result: inBoth(amount.amount, amount.unit, measures, language),
      source: null,
    });
  }
  return [...sums, ...conditionerSums(programme, language), ...doseSums(job, programme, language)];
}

/** A result in the metric unit it was worked out in, and in the measures of the job beside it. */
function inBoth(amount: number, unit: MeasuredUnit, measures: Measures, language: Language): string {
  const metric = `${figure(amount, 3, language)} ${unit}`;
  if (measures === "metric") return metric;
  const told = inMeasures(amount, unit, measures);
  return `${metric} = ${figure(told.value, 3, language)} ${told.unit}`;
}

/** What of each conditioner goes into a full load. */
function conditionerSums({ parts, filling }: Programme, language: Language): readonly Sum[] {
  const say = sayIn(language);
  const { full, measures } = filling.loads;
  return parts.flatMap(({ conditioner, name, dose, dose_gPerL }): Sum[] => {
    const amount = full.amounts.find(({ product }) => product === conditioner);
    if (amount === undefined) return [];
    const volume = `${put(full.volume_L, language)} L`;
    const bySolid = amount.unit === "kg";
    return [
      {
        what: say("{name}, full load", { name: language.phrases.name(name) }),
        formula: bySolid
          ? say("dose × volume of the load ÷ grams in a kilogram")
          : say("dose × volume of the load"),
        numbers: bySolid
          ? `${put(dose_gPerL, language)} g/L × ${volume} ÷ 1000 g/kg`
          : `${put(dose.value / 100, language)} L/L × ${volume}`,
        result: inBoth(amount.amount, amount.unit, measures, language),
        source: null,
      },
    ];
  });
}

function doseSums(job: Job, programme: Programme, language: Language): readonly Sum[] {
  const { name, dose, dose_gPerL, waterVolume_LPerHa: volume, cost } = programme;
  if (dose === null || dose_gPerL <= 0) return [];
  const say = sayIn(language);
  const told = (value: number): string => put(value, language);
  const perHa_kg = (dose_gPerL * volume) / 1000;
  const sums: Sum[] = [
    {
      what: say("{name} per hectare", { name: language.phrases.name(name) }),
      formula: say("dose × water volume ÷ grams in a kilogram"),
      numbers: `${told(dose_gPerL)} g/L × ${told(volume)} L/ha ÷ 1000 g/kg`,
      result: `${figure(perHa_kg, 3, language)} kg/ha`,
      source: null,
    },
  ];
  const price = job.conditioners?.find(({ chemistry }) => chemistry === programme.conditioner)?.price;
  if (cost.perHa !== null && price?.per === "kg") {
    sums.push({
      what: say("Cost per hectare"),
      formula: say("amount per hectare × price"),
      numbers: `${told(perHa_kg)} kg/ha × ${told(price.value)} /kg`,
      result: say("{cost} per ha", { cost: language.figures.fixed(cost.perHa, 2) }),
      source: null,
    });
  }
  return sums;
}
