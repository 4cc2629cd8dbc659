import type { PlanUncertainty, Programme } from "../agronomy/index.ts";
import { ENGLISH, fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";
import { placeText, wayName } from "./sentences.ts";

/**
 * An uncertain input in words, by its key.
 *
 * @param of what people call the substance of a formula in the key
 */
export function inputWords(
  key: string,
  { words, phrases }: Language = ENGLISH,
  of: string | null = null,
): string {
  const { certainty } = words;
  const at = key.indexOf(":");
  const name = key.slice(at + 1);
  const said = of === null ? phrases.name(name) : `${phrases.name(of)} (${name})`;
  switch (key.slice(0, at)) {
    case "reading":
      return fill(certainty.reading, { name: said });
    case "assumed":
      return isAssumption(name, certainty) ? certainty[name] : fill(certainty.assumed, { name: said });
    case "constant":
      return name.startsWith("metals of ")
        ? fill(certainty.constantsOfMetals, { name: phrases.name(of ?? name.slice("metals of ".length)) })
        : fill(certainty.constant, { name: said });
    case "solubility":
      return fill(certainty.solubility, { name: said });
    case "activity":
      return fill(certainty.activity, { name: said });
    default:
      return key;
  }
}

type CertaintyWords = Language["words"]["certainty"];
/** Messages without a hole, which name what is assumed. */
type Assumption = {
  [Key in keyof CertaintyWords]: CertaintyWords[Key] extends { readonly holes?: never } ? Key : never;
}[keyof CertaintyWords];

function isAssumption(name: string, certainty: CertaintyWords): name is Assumption {
  return Object.hasOwn(certainty, name) && !certainty[name as keyof CertaintyWords].includes("{");
}

/** What the ranges are, as sentences: how they were found, what they rest on, what would narrow them. */
export function uncertaintySentences(
  uncertainty: PlanUncertainty,
  programme: Programme | null,
  language: Language = ENGLISH,
): readonly string[] {
  const { certainty } = language.words;
  const { figure, inHundred, perHundred } = language.figures;
  const { draws, control, spread, measureNext, about } = uncertainty;
  const said = [
    fill(certainty.draws, { count: draws }),
    fill(certainty.solved, { count: control.solved, difference: figure(100 * control.difference, 1) }),
  ];
  if (spread.length > 0) {
    const parts = spread
      .slice(0, 3)
      .map(({ input, part, of }) =>
        fill(certainty.part, { input: inputWords(input, language, of), share: inHundred(part) }),
      )
      .join("; ");
    const name = programme === null ? "" : wayName(programme, language);
    said.push(fill(certainty.spread, { where: placeText(about.where, language), programme: name, parts }));
  }
  for (const next of measureNext.slice(0, 2)) {
    const test = language.phrases.say(next.words).text;
    said.push(
      fill(certainty.toNarrow, { test, width: perHundred(next.width), now: perHundred(about.width) }),
    );
  }
  return said;
}
