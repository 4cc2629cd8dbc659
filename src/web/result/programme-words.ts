import type { Programme } from "../../agronomy/index.ts";
import { wayName } from "../../report/index.ts";
import { ENGLISH } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { doseWords } from "./words.ts";

/** A programme in words: what is added and how much, or how much less water. */
export function programmeWords(programme: Programme, language: Language = ENGLISH): string {
  const dose = doseWords(programme, language);
  const name = wayName(programme, language);
  return dose === null ? name : `${name}, ${dose}`;
}
