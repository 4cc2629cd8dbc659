import type { LanguagePack } from "../language.ts";
import { ANSWERS } from "./answers.ts";
import { CARD } from "./card.ts";
import { EVIDENCE } from "./evidence.ts";
import { FIGURES } from "./figures.ts";
import { ACTIVES } from "./actives.ts";
import { CAUTIONS } from "./cautions.ts";
import { CHEMISTRIES } from "./chemistries.ts";
import { FILLING } from "./filling.ts";
import { PRODUCT_CAUTIONS } from "./product-cautions.ts";

/** Spanish, not yet checked by an adviser who speaks it. */
export const SPANISH: LanguagePack = {
  words: { answers: ANSWERS, card: CARD, evidence: EVIDENCE, figures: FIGURES },
  phrases: { ...ACTIVES, ...CHEMISTRIES, ...FILLING, ...CAUTIONS, ...PRODUCT_CAUTIONS },
};
