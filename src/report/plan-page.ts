import type { Job, Plan, Programme } from "../agronomy/index.ts";
import { ENGLISH } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { cardSheet } from "./card-html.ts";
import { fillCard } from "./card.ts";
import type { CardFacts } from "./card.ts";
import { pageHtml } from "./html-page.ts";
import type { Paper } from "./html-page.ts";
import { reportSheet } from "./report-html.ts";

/** What of a plan goes on paper: the card for the operator, the report for the grower, or both. */
export type PlanPart = "all" | "card" | "report";

/** How a plan is put on paper. */
export interface PlanPageOptions {
  /** Both when left out. */
  readonly part?: PlanPart;
  /** What lies in the printer when left out. */
  readonly paper?: Paper;
  /** English when left out. */
  readonly language?: Language;
}

/**
 * The fill card and the report as one self-contained HTML page, to read, print or pass on: the card on a sheet of its
 * own, then the report. All text is escaped.
 */
export function planHtml(plan: Plan, job: Job, facts: CardFacts, options: PlanPageOptions = {}): string {
  const { part = "all", paper = "auto", language = ENGLISH } = options;
  const card = fillCard(plan, facts, language);
  const sheets = [
    ...(part === "report" ? [] : [cardSheet(card, language)]),
    ...(part === "card" ? [] : [reportSheet(plan, job, facts, wayOf(plan, facts.programme), language)]),
  ];
  return pageHtml(facts.title ?? card.title, { paper, language }, sheets);
}

/** The way out a page is for: the one named, else the chosen one, else the tank as planned. */
function wayOf({ programmes, chosen }: Plan, named: string | undefined): Programme | null {
  const wanted = named ?? chosen;
  return programmes.find(({ id }) => id === wanted) ?? programmes.find(({ kind }) => kind === "none") ?? null;
}
