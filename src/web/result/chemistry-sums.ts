import type { ClockRate, Job, Plan, Programme, TimedHalfLife } from "../../agronomy/index.ts";
import { GRAIN_MG, US_GALLON_L } from "../../units/index.ts";
import { ENGLISH, sayIn } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { ATOMIC_WEIGHTS, CACO3_GPERMOL, put } from "./sums.ts";
import type { Sum } from "./sums.ts";
import { duration, figure } from "./words.ts";

/** Components that end a titration with another charge than their name has: carbonic acid, hydroxides, H2PO4−. */
const CHARGE_AT_END: Readonly<Record<string, number>> = { "CO3-2": 0, "Fe+3": 0, "Al+3": 0, "PO4-3": -1 };

function chargeAtEnd(ion: string): number {
  const [, sign, size] = /([+-])(\d*)$/.exec(ion) ?? [];
  const named = sign === undefined ? 0 : Number(`${sign}${size === "" ? "1" : (size ?? "1")}`);
  return CHARGE_AT_END[ion] ?? named;
}

/** A number that keeps its worth whatever stands beside it. */
function told(value: number, language: Language, digits = 4): string {
  const text = put(value, language, digits);
  return text.includes("×") ? `(${text})` : text;
}

/**
 * Alkalinity as CaCO3: from the titration, else from hydrogen carbonate and carbonate, else what the charges of the
 * ions leave once the water was completed.
 */
export function alkalinitySum(
  { water: { readings } }: Pick<Job, "water">,
  { water }: Pick<Plan, "water">,
  language: Language = ENGLISH,
): Sum {
  const say = sayIn(language);
  const read = (parameter: string): number | null => {
    const of = readings.filter((one) => one.parameter === parameter && one.measured.kind !== "not measured");
    const measured = of[0]?.measured;
    return of.length === 1 && measured?.kind === "value" ? 1000 * measured.value : null;
  };
  const asCaCO3 = `${told(CACO3_GPERMOL, language, 6)} g/mol ÷ 2`;
  const whole = {
    what: say("Alkalinity"),
    result: say("{figure} mg/L as CaCO3", { figure: figure(water.alkalinity_mgPerL_asCaCO3, 3, language) }),
  };
  const titrated = read("alkalinity");
  const hydrogenCarbonate = read("bicarbonate");
  const given = readings.some(
    ({ parameter, measured }) => parameter === "alkalinity" && measured.kind !== "not measured",
  );
  if (titrated !== null)
    return {
      ...whole,
      formula: say("alkalinity read × molar mass of CaCO3 ÷ 2"),
      numbers: `${told(titrated, language)} meq/L × ${asCaCO3}`,
      source: ATOMIC_WEIGHTS,
    };
  if (!given && hydrogenCarbonate !== null)
    return {
      ...whole,
      formula: say("(HCO₃⁻ + 2 × CO₃²⁻) × molar mass of CaCO3 ÷ 2"),
      numbers: `(${told(hydrogenCarbonate, language)} + 2 × ${told(read("carbonate") ?? 0, language)}) mmol/L × ${asCaCO3}`,
      source: ATOMIC_WEIGHTS,
    };
  const completed = water.assumptions.find(({ about }) => about === "alkalinity");
  return {
    ...whole,
    formula: say("(charge of the cations − charge of the other anions) × molar mass of CaCO3 ÷ 2"),
    numbers: `(${chargesIn(water.ions_molPerL, language)}) meq/L × ${asCaCO3}`,
    source: completed?.source ?? ATOMIC_WEIGHTS,
  };
}

/** "2 × 1.2 + 0.5 − 0.8": the charge that each ion brings, largest digits kept so that the difference stands. */
function chargesIn(ions_molPerL: Readonly<Record<string, number>>, language: Language): string {
  const terms = Object.entries(ions_molPerL).flatMap(([ion, amount_molPerL]) => {
    const charge = chargeAtEnd(ion);
    if (charge === 0 || amount_molPerL === 0) return [];
    const size = Math.abs(charge);
    const times = size === 1 ? "" : `${String(size)} × `;
    return [{ sign: charge > 0 ? "+" : "−", text: `${times}${told(1000 * amount_molPerL, language, 6)}` }];
  });
  return terms.map(({ sign, text }, i) => (i === 0 && sign === "+" ? text : `${sign} ${text}`)).join(" ");
}

/** Gas constant [kJ/(mol·K)], exact by definition of the SI (2019). */
const GAS_CONSTANT = 0.008314462618;
const ZERO_C_IN_K = 273.15;

/** The rate of hydrolysis, the half-life and the share intact when the last is sprayed; what is not known is left out. */
export function clockSums(
  { halfLife_h, intact, rate, sources }: Plan["actives"][number]["byClock"],
  holdingTime_h: number | null,
  language: Language = ENGLISH,
): readonly Sum[] {
  if (halfLife_h === null) return [];
  const say = sayIn(language);
  const source = rate?.source ?? sources[0] ?? null;
  const rate_perH = Math.LN2 / halfLife_h;
  const sums: Sum[] = rate === null ? [] : [rateSum(rate, rate_perH, language)];
  sums.push({
    what: say("Half-life"),
    formula: say("ln 2 ÷ rate"),
    numbers: `${told(Math.LN2, language)} ÷ ${told(rate_perH, language)} /h`,
    result: withHours(halfLife_h, language),
    source,
  });
  if (intact !== null && holdingTime_h !== null)
    sums.push({
      what: say("Share intact"),
      formula: say("½ to the power of (time in the tank ÷ half-life)"),
      numbers: `${told(0.5, language)} ^ (${told(holdingTime_h, language)} h ÷ ${told(halfLife_h, language)} h)`,
      result: told(intact, language),
      source,
    });
  return sums;
}

/** Hours, and the unit a person would use where that is another. */
function withHours(hours: number, language: Language): string {
  const inHours = `${figure(hours, 3, language)} h`;
  return hours >= 1 && hours < 72 ? inHours : `${inHours} = ${duration(hours, language)}`;
}

function rateSum(rate: ClockRate, rate_perH: number, language: Language): Sum {
  const say = sayIn(language);
  const { law, between, source, locator } = rate;
  return {
    what: say("Rate of hydrolysis"),
    formula: law === null ? betweenFormula(between.length, say) : lawFormula(law.pKaCap, say),
    numbers: law === null ? betweenNumbers(rate, language) : lawNumbers(rate, law, language),
    result: `${figure(rate_perH, 3, language)} /h`,
    source,
    place: locator,
  };
}

type Say = ReturnType<typeof sayIn>;

function lawFormula(pKaCap: number | null, say: Say): string {
  return pKaCap === null
    ? say("(kA × [H⁺] + kN + kB × [OH⁻]) × step from the temperature of the constants to that of the tank")
    : say(
        "(kA × [H⁺] ÷ (1 + [H⁺] ÷ Ka) + kN + kB × [OH⁻]) × step from the temperature of the constants to that of the tank",
      );
}

function lawNumbers(rate: ClockRate, law: NonNullable<ClockRate["law"]>, language: Language): string {
  const pH = told(rate.pH, language, 5);
  const terms = [
    law.kA_LPerMolH === 0
      ? []
      : law.pKaCap === null
        ? [`${told(law.kA_LPerMolH, language)} × 10^(−${pH})`]
        : [
            `${told(law.kA_LPerMolH, language)} × 10^(−${pH}) ÷ (1 + 10^(${told(law.pKaCap, language)} − ${pH}))`,
          ],
    law.kN_perH === 0 ? [] : [told(law.kN_perH, language)],
    law.kB_LPerMolH === 0 ? [] : [`${told(law.kB_LPerMolH, language)} × 10^(${pH} − 14)`],
  ].flat();
  return `(${terms.join(" + ")}) × ${temperatureStep(rate, law.temperature_C, language)}`;
}

function betweenFormula(count: number, say: Say): string {
  return count < 2
    ? say("ln 2 ÷ half-life at the nearest pH × step from its temperature to that of the tank")
    : say(
        "ln 2 ÷ half-life at the pH below and above, each taken to the temperature of the tank, weighted by how near it is",
      );
}

function betweenNumbers(rate: ClockRate, language: Language): string {
  const [below, above] = rate.between;
  if (below === undefined) return "";
  const of = ({ halfLife_h, temperature_C }: TimedHalfLife): string =>
    `${told(Math.LN2, language)} ÷ ${told(halfLife_h, language)} h × ${temperatureStep(rate, temperature_C, language)}`;
  if (above === undefined) return of(below);
  const pH = told(rate.pH, language, 5);
  const apart = `(${told(above.pH, language)} − ${told(below.pH, language)})`;
  return (
    `(${of(below)}) ^ ((${told(above.pH, language)} − ${pH}) ÷ ${apart}) × ` +
    `(${of(above)}) ^ ((${pH} − ${told(below.pH, language)}) ÷ ${apart})`
  );
}

/** By how much a rate changes from one temperature to that of the tank: Arrhenius' law with the numbers put in. */
function temperatureStep(rate: ClockRate, from_C: number, language: Language): string {
  const kelvin = (celsius: number): string => told(celsius + ZERO_C_IN_K, language, 5);
  const energy = told(rate.activationEnergy_kJPerMol, language);
  const constant = told(GAS_CONSTANT, language);
  return `e^(${energy} ÷ ${constant} × (1 ÷ ${kelvin(from_C)} − 1 ÷ ${kelvin(rate.temperature_C)}))`;
}

/** g/L in one pound per 100 US gal. @source international pound and US gallon, exact */
const G_PER_L_IN_RULE_UNIT = (7000 * GRAIN_MG) / 1000 / (100 * US_GALLON_L);

/** The published rule of dose with the readings put in; null where there is none for this way. */
export function ruleSum({ publishedRuleDose }: Programme, language: Language = ENGLISH): Sum | null {
  if (publishedRuleDose === null || publishedRuleDose.terms.length === 0) return null;
  const say = sayIn(language);
  const { dose_gPerL, terms, source, locator } = publishedRuleDose;
  const ions = terms.map(({ ion, coefficient_lbPer100USgal: by }) => `${told(by, language)} × ${ion}`);
  const numbers = terms.map(
    ({ reading_mgPerL, coefficient_lbPer100USgal: by }) =>
      `${told(by, language)} × ${told(reading_mgPerL, language)}`,
  );
  return {
    what: say("Ammonium sulfate by the published rule"),
    formula: say("{ions}, each ion in mg/L: lb per 100 US gal; × 1.198 for g/L", { ions: ions.join(" + ") }),
    numbers: `(${numbers.join(" + ")}) × ${told(G_PER_L_IN_RULE_UNIT, language)}`,
    result: `${figure(dose_gPerL, 3, language)} g/L`,
    source,
    place: locator,
  };
}
