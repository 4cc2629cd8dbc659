import type { Caution, Evidence, Load, OrderStep, Plan, Programme } from "../agronomy/index.ts";
import { amountText, figure, pHText } from "./figures.ts";
import { doseText, leastFree } from "./sentences.ts";

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
  readonly what: string;
  readonly amount: CardAmount | null;
  readonly cautions: readonly string[];
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
  readonly warnings: readonly string[];
  readonly loads: { readonly count: number; readonly full: CardLoad; readonly last: CardLoad | null };
  /** Cautions that belong to no single step, before the first one. */
  readonly before: readonly string[];
  readonly steps: readonly CardStep[];
  /** pH to be found in the full tank. */
  readonly check: string;
  readonly redo: { readonly text: string; readonly evidence: Evidence };
  readonly footer: string;
}

/**
 * The fill card of a plan.
 *
 * @param plan plan with at least one programme
 * @returns the card for the programme named in `facts`, else for the chosen one, else for the tank as planned
 */
export function fillCard(plan: Plan, facts: CardFacts): FillCard {
  const wanted = facts.programme ?? plan.chosen;
  const programme =
    plan.programmes.find((one) => one.id === wanted) ??
    plan.programmes.find((one) => one.kind === "none") ??
    null;
  const filling = programme?.filling ?? plan;
  const placed = new Set<string>();
  const steps = filling.order.map((step) => cardStep(step, filling, placed));
  const before = filling.cautions.filter((caution) => !placed.has(caution.id)).map((caution) => caution.text);
  const { count, full, last } = filling.loads;
  return {
    title: facts.title ?? mixTitle(plan),
    sample: `${plan.water.source}${facts.sampled === null ? ", day of sampling not given" : `, sampled ${facts.sampled}`}`,
    date: facts.date,
    programme: programmeTitle(programme),
    waterVolume: programme === null ? "" : `${figure(programme.waterVolume_LPerHa)} L/ha`,
    result: programme === null ? null : resultLine(programme),
    warnings: warningsOf(plan, programme),
    loads: { count, full: cardLoad(full), last: last === null ? null : cardLoad(last) },
    before,
    steps,
    check: `Expect pH ${pHText((programme?.tank ?? plan.tank).pH)} in the full tank.`,
    redo: {
      text:
        `Redo this card if pH differs from ${pHText(plan.water.pH)} by more than ${REDO_PH_STEPS}, or hardness from ` +
        `${figure(plan.water.hardness_mgPerL_asCaCO3)} mg/L as CaCO3 by more than ${REDO_HARDNESS_PERCENT} %.`,
      evidence: "common practice",
    },
    footer: `Hardstand ${plan.versions.hardstand}, data ${plan.versions.data}. The label and local law come first.`,
  };
}

function mixTitle(plan: Plan): string {
  const names = [...new Set(plan.actives.map((active) => active.name))];
  return `Fill card: ${names.join(" + ")}`;
}

function programmeTitle(programme: Programme | null): string {
  if (programme === null || programme.kind === "none") return "No conditioner";
  if (programme.kind === "less water") return "Less water, no conditioner";
  if (programme.parts.length === 0) return `${capitalised(programme.name)}; no conditioner`;
  return `${programme.name}, ${doseText(programme)}`;
}

function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function resultLine(programme: Programme): string | null {
  const leaf = leastFree(programme.actives, "on the leaf");
  const tank = leastFree(programme.actives, "in the tank");
  if (leaf === null || tank === null) return null;
  return `Least free: ${figure(100 * tank, 2)} in 100 in the tank, ${figure(100 * leaf, 2)} in 100 on the leaf.`;
}

function warningsOf(plan: Plan, programme: Programme | null): string[] {
  if (programme === null) return ["No programme could be computed."];
  const warnings: string[] = [];
  if (programme.blocked) {
    warnings.push(
      ...programme.reasons.filter((reason) => reason.level === "block").map((reason) => reason.text),
    );
  }
  if (plan.chosen === null)
    warnings.push("No programme meets the aim. This fills the tank named here all the same.");
  else if (programme.meetsAim === false) warnings.push("This programme does not meet the aim.");
  else if (programme.meetsAim === null) warnings.push("Whether this meets the aim is not known.");
  return warnings;
}

function cardLoad(load: Load): CardLoad {
  return { volume: `${figure(load.volume_L)} L`, area: `${figure(load.area_ha)} ha` };
}

function cardStep(
  step: OrderStep,
  filling: { readonly loads: Plan["loads"]; readonly cautions: readonly Caution[] },
  placed: Set<string>,
): CardStep {
  const cautions = filling.cautions.filter(
    (caution) => step.adds !== null && caution.about.includes(step.adds),
  );
  for (const caution of cautions) placed.add(caution.id);
  return {
    number: step.step,
    what: step.what,
    amount: step.adds === null ? null : amountOf(step.adds, filling.loads),
    cautions: cautions.map((caution) => caution.text),
    pause: step.pause,
    evidence: step.evidence,
  };
}

function amountOf(product: string, loads: Plan["loads"]): CardAmount | null {
  const full = loads.full.amounts.find((amount) => amount.product === product);
  if (full === undefined) return null;
  const last = loads.last?.amounts.find((amount) => amount.product === product) ?? null;
  return {
    label: full.label,
    full: amountText(full.amount, full.unit),
    last: last === null ? null : amountText(last.amount, last.unit),
  };
}
