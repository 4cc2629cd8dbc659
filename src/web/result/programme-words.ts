import type { Programme } from "../../agronomy/index.ts";
import { ENGLISH, fill } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { doseWords } from "./words.ts";

/** A programme in words: what is added and how much, or how much less water. */
export function programmeWords(programme: Programme, language: Language = ENGLISH): string {
  const dose = doseWords(programme, language);
  const { figures, phrases } = language;
  const { waterVolume_LPerHa, filling } = programme;
  const name =
    programme.kind === "less water"
      ? fill(language.words.answers.lessWater, {
          volume: figures.measured(waterVolume_LPerHa, "L/ha", filling.loads.measures),
        })
      : phrases.name(programme.name);
  return dose === null ? name : `${name}, ${dose}`;
}
