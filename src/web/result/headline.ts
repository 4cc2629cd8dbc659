import type { Programme } from "../../agronomy/index.ts";
import { ENGLISH } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import type { Planned } from "../engine/messages.ts";
import { sayIn } from "../language/language-context.ts";
import { inHundred, leastFreeOf, placeWords } from "./words.ts";
import { programmeWords } from "./programme-words.ts";

/** The result in two short sentences, for a screen reader and for the top of the page. */
export function headline(
  { plan, job: { aim } }: Planned,
  picked: Programme,
  language: Language = ENGLISH,
): string {
  const say = sayIn(language);
  const before = leastFreeOf(plan.actives, aim.where);
  const where = placeWords(aim.where, language);
  const first =
    before === null
      ? say("Free share {where}: not known.", { where })
      : say("{active}: {share} in 100 free {where}, nothing added.", {
          active: language.phrases.name(before.verdict.name),
          share: inHundred(before.free, language),
          where,
        });
  if (picked.kind === "none") {
    return plan.chosen === null ? `${first} ${say("Nothing tried meets the aim.")}` : first;
  }
  const after = leastFreeOf(picked.actives, aim.where);
  const way = programmeWords(picked, language);
  const second =
    after === null
      ? say("With {way}: not known.", { way })
      : say("With {way}: {share}.", { way, share: inHundred(after.free, language) });
  return `${first} ${second}`;
}
