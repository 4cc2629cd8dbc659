import type { LanguagePack } from "../language.ts";
import { ANSWERS } from "./answers.ts";
import { CARD } from "./card.ts";
import { CERTAINTY } from "./certainty.ts";
import { EVIDENCE } from "./evidence.ts";
import { FIGURES } from "./figures.ts";
import { ISSUES } from "./issues.ts";
import { PLAN } from "./plan.ts";
import { ACTIVES } from "./actives.ts";
import { CAUTIONS } from "./cautions.ts";
import { CHEMISTRIES } from "./chemistries.ts";
import { FILLING } from "./filling.ts";
import { PRODUCT_CAUTIONS } from "./product-cautions.ts";

/** Spanish, not yet checked by an adviser who speaks it. */
export const SPANISH: LanguagePack = {
  words: {
    answers: ANSWERS,
    card: CARD,
    certainty: CERTAINTY,
    evidence: EVIDENCE,
    figures: FIGURES,
    issues: ISSUES,
    plan: PLAN,
  },
  phrases: { ...ACTIVES, ...CHEMISTRIES, ...FILLING, ...CAUTIONS, ...PRODUCT_CAUTIONS },
};
