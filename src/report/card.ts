import type { Caution, Evidence, Load, OrderStep, Plan, Programme } from "../agronomy/index.ts";
import { ENGLISH, fill } from "../words/index.ts";
import type { Language, Said } from "../words/index.ts";
import { doseText, leastFree, waterVolumeText, wayName } from "./sentences.ts";

/** A change of the water beyond which the card no longer holds. Common practice, no published source. */
export const REDO_PH_STEPS = 0.5;
export const REDO_HARDNESS_PERCENT = 20;

/** What the card says besides the plan; a report has no clock and no book of its own. */
export interface CardFacts {
  /** Day of printing, ISO date. */
  readonly date: string;
  /** Title of the job; null when it has none. */
  readonly title: string | null;
  /** Day the water was sampled, ISO date; null when not given. */
  readonly sampled: string | null;
  /** Programme to fill for; left out: the chosen one, or the tank as planned when none meets the aim. */
  readonly programme?: string;
}

/** Amount of one product in one step. */
export interface CardAmount {
  readonly label: string;
  /** Amount in a full load, e.g. "51 kg". */
  readonly full: string;
  /** Amount in the last load; null when all loads are full. */
  readonly last: string | null;
}

/** One numbered line of the card. */
export interface CardStep {
  readonly number: number;
  readonly what: Said;
  readonly amount: CardAmount | null;
  readonly cautions: readonly Said[];
  readonly pause: boolean;
  readonly evidence: Evidence;
}

/** One load as a heading: how much spray, for how much ground. */
export interface CardLoad {
  readonly volume: string;
  readonly area: string;
}

/** The one page for the operator, as data. */
export interface FillCard {
  readonly title: string;
  /** Where the water came from, with the day it was sampled. */
  readonly sample: string;
  readonly date: string;
  /** What is filled: conditioner with its dose, and the water volume. */
  readonly programme: string;
  readonly waterVolume: string;
  /** One line on what the chemistry gives; null when nothing was computed. */
  readonly result: string | null;
  /** Said at the top, in the band: no programme meets the aim, or a published rule blocks this one. */
  readonly warnings: readonly Said[];
  readonly loads: { readonly count: number; readonly full: CardLoad; readonly last: CardLoad | null };
  /** Cautions that belong to no single step, before the first one. */
  readonly before: readonly Said[];
  readonly steps: readonly CardStep[];
  /** The jar test in one line; null when nothing goes in. */
  readonly jar: string | null;
  /** pH to be found in the full tank. */
  readonly check: string;
  readonly redo: { readonly text: string; readonly evidence: Evidence };
  readonly footer: string;
}

/**
 * The fill card of a plan.
 *
 * @param plan plan with at least one programme
 * @param language of the card; what the data say in English alone stays so
 * @returns the card for the programme named in `facts`, else for the chosen one, else for the tank as planned
 */
export function fillCard(plan: Plan, facts: CardFacts, language: Language = ENGLISH): FillCard {
  const { figure, pHText, dayText } = language.figures;
  const { card } = language.words;
  const wanted = facts.programme ?? plan.chosen;
  const programme =
    plan.programmes.find((one) => one.id === wanted) ??
    plan.programmes.find((one) => one.kind === "none") ??
    null;
  const filling = programme?.filling ?? plan;
  const placed = new Set<string>();
  const steps = filling.order.map((step) => cardStep(step, filling, placed, language));
  const before = filling.cautions
    .filter((caution) => !placed.has(caution.id))
    .map((caution) => language.phrases.say(caution.text));
  const { count, full, last, measures } = filling.loads;
  return {
    title: facts.title ?? mixTitle(plan, language),
    sample: sampleText(plan.water.source, facts.sampled, language),
    date: dayText(facts.date),
    programme: programmeTitle(programme, language),
    waterVolume: programme === null ? "" : waterVolumeText(programme, language),
    result: programme === null ? null : resultLine(programme, language),
    warnings: warningsOf(plan, programme, language),
    loads: {
      count,
      full: cardLoad(full, measures, language),
      last: last === null ? null : cardLoad(last, measures, language),
    },
    before,
    steps,
    jar: jarLine(filling, language),
    check: fill(card.check, { pH: pHText((programme?.tank ?? plan.tank).pH) }),
    redo: {
      text: fill(card.redo, {
        pH: pHText(plan.water.pH),
        pHSteps: figure(REDO_PH_STEPS),
        hardness: figure(plan.water.hardness_mgPerL_asCaCO3),
        percent: figure(REDO_HARDNESS_PERCENT),
      }),
      evidence: "common practice",
    },
    footer: fill(card.footer, { version: plan.versions.hardstand, data: plan.versions.data }),
  };
}

/** Where the water came from, with the day it was sampled or that it is not given. */
export function sampleText(source: string, sampled: string | null, { words, figures }: Language): string {
  return sampled === null
    ? fill(words.card.sampleUndated, { source })
    : fill(words.card.sampleDated, { source, date: figures.dayText(sampled) });
}

function mixTitle(plan: Plan, { words, phrases }: Language): string {
  const names = [...new Set(plan.actives.map((active) => phrases.name(active.name)))];
  return fill(words.card.title, { mix: names.join(" + ") });
}

function programmeTitle(programme: Programme | null, language: Language): string {
  const { card } = language.words;
  if (programme === null || programme.kind === "none") return card.noConditioner;
  if (programme.kind === "less water") return card.lessWater;
  const way = wayName(programme, language);
  if (programme.parts.length === 0) return fill(card.wayWithoutConditioner, { way: capitalised(way) });
  return fill(card.wayWithDose, { way, dose: doseText(programme, language) });
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function resultLine(programme: Programme, { words, figures }: Language): string | null {
  const leaf = leastFree(programme.actives, "on the leaf");
  const tank = leastFree(programme.actives, "in the tank");
  if (leaf === null || tank === null) return null;
  return fill(words.card.result, {
    tank: figures.figure(100 * tank, 2),
    leaf: figures.figure(100 * leaf, 2),
  });
}

function warningsOf(plan: Plan, programme: Programme | null, { words, phrases }: Language): Said[] {
  const own = (text: string): Said => ({ text, isEnglish: false });
  if (programme === null) return [own(words.card.nothingComputed)];
  const warnings: Said[] = [];
  if (programme.blocked) {
    const blocks = programme.reasons.filter((reason) => reason.level === "block");
    warnings.push(...blocks.map((reason) => phrases.say(reason.text)));
  }
  if (programme.meetsAim === null) warnings.push(own(words.card.aimNotKnown));
  else if (plan.chosen === null) warnings.push(own(words.card.noneMeetsAim));
  else if (!programme.meetsAim) warnings.push(own(words.card.missesAim));
  return warnings;
}

function cardLoad(load: Load, measures: Plan["loads"]["measures"], { figures }: Language): CardLoad {
  return {
    volume: figures.measured(load.volume_L, "L", measures),
    area: figures.measured(load.area_ha, "ha", measures),
  };
}

function cardStep(
  step: OrderStep,
  filling: { readonly loads: Plan["loads"]; readonly cautions: readonly Caution[] },
  placed: Set<string>,
  language: Language,
): CardStep {
  const cautions = filling.cautions.filter(
    (caution) => step.adds !== null && caution.about.includes(step.adds),
  );
  for (const caution of cautions) placed.add(caution.id);
  return {
    number: step.step,
    what: language.phrases.say(step.what),
    amount: step.adds === null ? null : amountOf(step.adds, filling.loads, language),
    cautions: cautions.map((caution) => language.phrases.say(caution.text)),
    pause: step.pause,
    evidence: step.evidence,
  };
}

function jarLine(
  { jar, jarVolume_L }: Pick<Plan, "jar" | "jarVolume_L">,
  { words, figures, phrases }: Language,
): string | null {
  if (jar.length === 0) return null;
  const amounts = jar.map(
    ({ label, amount, unit }) => `${phrases.name(label)} ${figures.amountText(amount, unit)}`,
  );
  return fill(words.card.jar, { volume: figures.figure(jarVolume_L), amounts: amounts.join("; ") });
}

function amountOf(product: string, loads: Plan["loads"], { figures, phrases }: Language): CardAmount | null {
  const full = loads.full.amounts.find((amount) => amount.product === product);
  if (full === undefined) return null;
  const last = loads.last?.amounts.find((amount) => amount.product === product) ?? null;
  return {
    label: phrases.name(full.label),
    full: figures.measured(full.amount, full.unit, loads.measures),
    last: last === null ? null : figures.measured(last.amount, last.unit, loads.measures),
  };
}
