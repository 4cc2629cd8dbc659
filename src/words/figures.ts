import { formatNumber, inMeasures, rateInMeasures } from "../units/index.ts";
import type { MeasuredUnit, Measures } from "../units/index.ts";
import type { Words } from "./en/index.ts";
import { fill } from "./message.ts";
import type { LanguageTag } from "./tags.ts";

/**
 * The sign between whole and part in each language. It is written down, since the first question to `Intl` keeps a slow
 * phone for 40 ms before anything is drawn; a test holds it against `Intl`.
 *
 * @source Unicode CLDR, main/<language>.xml, numbers/symbols/decimal, as `Intl.NumberFormat` gives it
 */
const DECIMAL: Readonly<Record<LanguageTag, "." | ",">> = {
  "en-GB": ".",
  "en-US": ".",
  de: ",",
  fr: ",",
  es: ",",
};

/** Numbers, amounts, times and days as the people of one language write them. */
export interface Figures {
  /** The sign between whole and part. */
  readonly decimal: "." | ",";
  /**
   * A number as people write it: three figures, never coarser than whole numbers, a thin space between thousands from
   * five digits on ("3000 L" is easier to read aloud than "3 000 L").
   */
  figure(value: number, digits?: number): string;
  /** A number with a fixed count of decimals. */
  fixed(value: number, decimals: number): string;
  /** An amount to measure out, in the unit a person would use: "850 mL", "25.5 kg". */
  amountText(amount: number, unit: MeasuredUnit | "mL" | "g"): string;
  /** An amount in the measures a sprayer is filled by, with the metric one beside it: "150 US gal (568 L)". */
  measured(amount: number, unit: MeasuredUnit, measures: Measures): string;
  /** A rate of product in the measures of the job, the metric one beside it: "24 US fl oz/ac (1.75 L/ha)". */
  rateText(perHa: number, of: "L" | "kg", measures: Measures): string;
  /** A share as "93 in 100"; the ends are said in words, so that "100 in 100" never hides a loss. */
  inHundred(share: number): string;
  /** A share as a bare figure per hundred, for tables: "93", "99.6", "0.4". */
  perHundred(share: number): string;
  /** A time [h] as people say it: "40 min", "6.5 h", "12 days". */
  timeText(hours: number): string;
  /** A pH with one decimal, or as many as asked. */
  pHText(pH: number, decimals?: number): string;
  /** A cost with two decimals; the currency is the job's own and is not named. */
  costText(cost: number | null): string;
  /** A day given as an ISO date. */
  dayText(isoDate: string): string;
}

/**
 * Numbers and dates of one language.
 *
 * Thousands are parted by a thin space everywhere: a point or a comma there reads as a decimal in the next country.
 *
 * @param locale tag of the language, handed to `Intl` for days
 * @param isoDays days stay as they are, year-month-day
 */
export function figuresIn(words: Words["figures"], locale: LanguageTag, isoDays: boolean): Figures {
  const decimal = DECIMAL[locale];
  const local = (text: string): string => (decimal === "." ? text : text.replace(".", decimal));
  const fixed = (value: number, decimals: number): string => local(value.toFixed(decimals));
  const figure = (value: number, digits = 3): string => {
    const size = Math.abs(value);
    const whole = size >= 1 ? Math.floor(Math.log10(size)) + 1 : 1;
    const significant = Math.min(15, Math.max(digits, whole));
    return formatNumber(value, { significant, group: true, decimal }).replace("-", "−");
  };
  const perHundred = (share: number): string => {
    const hundred = share * 100;
    if (hundred >= 99.95) return "100";
    return fixed(hundred, hundred > 99 || (hundred < 1 && hundred > 0.05) ? 1 : 0);
  };
  const amountText: Figures["amountText"] = (amount, unit) => {
    if (unit === "L" && amount > 0 && amount < 1) return `${figure(amount * 1000)} mL`;
    if (unit === "kg" && amount > 0 && amount < 1) return `${figure(amount * 1000)} g`;
    return `${figure(amount)} ${unit}`;
  };
  return {
    decimal,
    figure,
    fixed,
    perHundred,
    amountText,
    measured(amount, unit, measures) {
      const metric = amountText(amount, unit);
      if (measures === "metric") return metric;
      const told = inMeasures(amount, unit, measures);
      return `${figure(told.value)} ${told.unit} (${metric})`;
    },
    rateText(perHa, of, measures) {
      const metric = `${figure(perHa)} ${of}/ha`;
      if (measures === "metric") return metric;
      const told = rateInMeasures(perHa, of, measures);
      return `${figure(told.value)} ${told.unit} (${metric})`;
    },
    inHundred(share) {
      const hundred = share * 100;
      if (hundred >= 99.95) return words.allOfIt;
      if (hundred <= 0.05) return words.none;
      return fill(words.inHundred, { count: perHundred(share) });
    },
    timeText(hours) {
      if (hours < 1) return `${figure(hours * 60, 2)} min`;
      if (hours < 72) return `${figure(hours, 2)} h`;
      if (hours < 24 * 730) return fill(words.days, { count: figure(hours / 24, 2) });
      return fill(words.years, { count: figure(hours / 24 / 365.25, 2) });
    },
    pHText: (pH, decimals = 1) => fixed(pH, decimals),
    costText: (cost) => (cost === null ? words.notKnown : fixed(cost, 2)),
    dayText: (isoDate) => (isoDays ? isoDate : dayIn(locale, isoDate)),
  };
}

/** A text that is no day stays as it is. */
function dayIn(locale: string, isoDate: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(isoDate) ?? [];
  if (year === undefined || month === undefined || day === undefined) return isoDate;
  const instant = Date.UTC(Number(year), Number(month) - 1, Number(day));
  return new Intl.DateTimeFormat(locale, { dateStyle: "long", timeZone: "UTC" }).format(instant);
}
