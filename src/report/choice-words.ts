import type { Plan, Programme } from "../agronomy/index.ts";
import type { Language } from "../words/index.ts";
import { doseText, wayName } from "./sentences.ts";

/** A way out with its dose, where the dose is not the name said again. */
export function programmeName(programme: Programme, language: Language): string {
  const name = wayName(programme, language);
  const { kind } = programme;
  return kind === "none" || kind === "less water" ? name : `${name}: ${doseText(programme, language)}`;
}

/** What is said where nothing is chosen: that nothing could be judged, or that none of the ways meets the aim. */
export function noChoiceText({ programmes }: Pick<Plan, "programmes">, { words }: Language): string {
  const planned = programmes.find(({ kind }) => kind === "none");
  return planned?.meetsAim === null ? words.plan.noneJudged : words.plan.noneFillsAsPlanned;
}
