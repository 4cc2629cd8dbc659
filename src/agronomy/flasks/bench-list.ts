import { mediumOf } from "./added.ts";
import type { Addition, Demo, FlaskRemark, StockMedium, Substance } from "./types.ts";

/** Volumes in which stocks are made up [mL]. */
const MAKE_UP_ML = [25, 50, 100, 250, 500, 1000, 2000];
/** Stock made beyond what is poured, so that a second showing or a slip is covered. */
const SPARE = 1.25;
/** Least mass to weigh on a kitchen balance with steps of 0.1 g, for one part in ten [g]. */
const LEAST_KITCHEN_G = 1;
/** Volume up to which more stock is made only so that it can be weighed [mL]. */
const MOST_FOR_WEIGHING_ML = 100;
/** Least mass on a pocket balance with steps of 0.01 g [g]. */
const LEAST_POCKET_G = 0.1;
/** Least volume measured with a 1 mL pipette or syringe [mL]. */
const LEAST_PIPETTE_ML = 0.2;

/** A stock solution to make before the show. */
export interface Stock {
  readonly substance: string;
  readonly strength: string;
  /** Poured in all flasks together [mL]. */
  readonly needed_mL: number;
  /** To make up [mL]. */
  readonly make_mL: number;
  /** What to measure out for it; null when it is diluted from a product of the person's own. */
  readonly measure: { readonly value: number; readonly unit: "g" | "mL" } | null;
  /** What it is made up with; null for deionised water. */
  readonly medium: StockMedium | null;
  readonly isAcid: boolean;
}

/** One thing to have. */
export interface ShoppingItem {
  readonly name: string;
  /** Amount as bought; null where a number says nothing. */
  readonly amount: { readonly value: number; readonly unit: "g" | "mL" | "" } | null;
  readonly note: string | null;
}

/** What to buy, make and be able to measure for a demonstration. */
export interface BenchList {
  readonly stocks: readonly Stock[];
  readonly shopping: readonly ShoppingItem[];
  /** Amounts that ordinary pipettes and balances cannot measure well. */
  readonly remarks: readonly FlaskRemark[];
}

function additionsOf(demo: Demo): readonly Addition[] {
  return demo.flasks.flatMap(({ steps }) => steps.filter((step) => step.kind === "add"));
}

/** What is measured out as bought for an amount of what a strength counts. */
function asBought(substance: Substance, counted_g: number): { value: number; unit: "g" | "mL" } {
  const { density_gPerMl, assay } = substance;
  return density_gPerMl === null
    ? { value: counted_g, unit: "g" }
    : { value: counted_g / assay / density_gPerMl, unit: "mL" };
}

function measureFor({ substance, strength }: Addition, make_mL: number): Stock["measure"] {
  if (substance.kind === "active") return null;
  const litres = make_mL / 1000;
  if (strength.kind === "g/L") return asBought(substance, strength.value * litres);
  if (strength.kind === "mol/L") {
    const pure_g = strength.value * litres * substance.molarMass_gPerMol;
    return asBought(substance, substance.density_gPerMl === null ? pure_g / substance.assay : pure_g);
  }
  if (strength.kind === "g/kg") return { value: (strength.value / 1000) * make_mL, unit: "g" };
  return null;
}

/** Volume to make up: enough with some to spare, and so much that a kitchen balance can weigh it, within reason. */
function makeUp(step: Addition, needed_mL: number): number {
  const least = SPARE * needed_mL;
  const enough = MAKE_UP_ML.find((size) => size >= least) ?? Math.ceil(least);
  const weighed = MAKE_UP_ML.find((size) => {
    const measure = measureFor(step, size);
    return size >= enough && (measure === null || measure.unit === "mL" || measure.value >= LEAST_KITCHEN_G);
  });
  return weighed !== undefined && weighed <= Math.max(enough, MOST_FOR_WEIGHING_ML) ? weighed : enough;
}

function stocksOf(demo: Demo): readonly Stock[] {
  const groups = new Map<string, Addition[]>();
  for (const step of additionsOf(demo)) {
    if (step.strengthText === null) continue;
    const medium = step.medium === null ? "" : `${step.medium.molPerL} ${step.medium.substance.id}`;
    const key = `${step.substance.name}|${step.strengthText}|${medium}`;
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups.values()].map((steps): Stock => {
    const [first] = steps as [Addition];
    const needed_mL = steps.reduce((sum, { amount }) => sum + amount.value, 0);
    const make_mL = makeUp(first, needed_mL);
    const { substance, strengthText } = first;
    return {
      substance: substance.name,
      strength: strengthText ?? "",
      needed_mL,
      make_mL,
      measure: measureFor(first, make_mL),
      medium: mediumOf(first),
      isAcid: /acid$/.test(substance.name) && substance.density_gPerMl !== null,
    };
  });
}

/** Everything to have on the bench, with stocks and their weights. */
export function benchList(demo: Demo): BenchList {
  const stocks = stocksOf(demo);
  const amounts = new Map<string, { value: number; unit: "g" | "mL" }>();
  const add = (name: string, unit: "g" | "mL", value: number): void => {
    const before = amounts.get(name)?.value ?? 0;
    amounts.set(name, { unit, value: before + value });
  };
  for (const { substance, measure } of stocks) {
    if (measure !== null) add(substance, measure.unit, measure.value);
  }
  for (const { substance, strengthText, amount } of additionsOf(demo)) {
    if (strengthText === null) add(substance.name, amount.unit, amount.value);
  }
  const substances = [...amounts].map(([name, amount]): ShoppingItem => ({ name, amount, note: null }));
  const own = stocks
    .filter(({ measure }) => measure === null)
    .map(({ substance, strength }): ShoppingItem => ({
      name: substance,
      amount: null,
      note: `a ready dilution of ${strength}, not the concentrate`,
    }));
  return {
    stocks,
    shopping: [...substances, ...own, ...gear(demo, stocks)],
    remarks: hardToMeasure(demo, stocks),
  };
}

function gear(demo: Demo, stocks: readonly Stock[]): readonly ShoppingItem[] {
  const water_mL =
    demo.flasks.reduce((sum, { start }) => sum + (start.water === null ? start.volume_mL : 0), 0) +
    stocks.reduce((sum, { make_mL }) => sum + make_mL, 0);
  const sets = demo.flasks.some(({ steps }) => steps.some(({ kind }) => kind === "adjust"));
  const item = (name: string, value: number, unit: "" | "mL", note: string | null = null): ShoppingItem => ({
    name,
    amount: { value, unit },
    note,
  });
  return [
    item("deionised water", Math.ceil(water_mL / 500) * 500, "mL", "tap water spoils the colours"),
    item("flasks, clear and alike", demo.flasks.length, "", `about ${demo.path_cm} cm wide at the liquid`),
    item("pipettes or syringes, 1 mL and 10 mL", Math.max(2, stocks.length), "", "one for each stock"),
    ...(sets
      ? [{ name: "pH meter or narrow strips, with acid and alkali of 1 mol/L", amount: null, note: null }]
      : []),
    {
      name: "goggles, gloves, tray, labels, white card behind the flasks, eye-wash bottle",
      amount: null,
      note: null,
    },
    { name: "sodium hydrogen carbonate and a labelled can for the rests", amount: null, note: null },
  ];
}

function hardToMeasure(demo: Demo, stocks: readonly Stock[]): readonly FlaskRemark[] {
  const texts = new Set<string>();
  for (const { substance, amount, amountText, strengthText } of additionsOf(demo)) {
    if (amount.unit === "mL" && amount.value < LEAST_PIPETTE_ML)
      texts.add(`${amountText} of ${substance.name} is too little for a pipette: make the stock weaker.`);
    if (amount.unit === "g" && strengthText === null) {
      const need = balanceFor(amount.value);
      if (need !== null) texts.add(`${amountText} of ${substance.name} needs ${need}, or a stock.`);
    }
  }
  for (const { substance, measure, make_mL } of stocks) {
    const need = measure?.unit === "g" ? balanceFor(measure.value) : null;
    if (need !== null && measure !== null)
      texts.add(`${measure.value.toPrecision(3)} g of ${substance} for ${make_mL} mL needs ${need}.`);
  }
  return [...texts].map((text) => ({ text, source: null }));
}

/** The balance a mass needs; null where a kitchen balance does. */
function balanceFor(mass_g: number): string | null {
  if (mass_g >= LEAST_KITCHEN_G) return null;
  return mass_g >= LEAST_POCKET_G ? "a balance with steps of 0.01 g" : "a balance with steps of 0.001 g";
}
