import type { Area } from "../message.ts";
import { ANSWERS } from "./answers.ts";
import { CARD } from "./card.ts";
import { CERTAINTY } from "./certainty.ts";
import { EVIDENCE } from "./evidence.ts";
import { FIGURES } from "./figures.ts";
import { GROWER } from "./grower.ts";
import { ISSUES } from "./issues.ts";
import { PLAN } from "./plan.ts";

/** All messages in English, by area. They are the measure for the other languages. */
export const ENGLISH_TEXTS = {
  answers: ANSWERS,
  card: CARD,
  certainty: CERTAINTY,
  evidence: EVIDENCE,
  figures: FIGURES,
  grower: GROWER,
  issues: ISSUES,
  plan: PLAN,
} as const;

type Texts = typeof ENGLISH_TEXTS;

/** All messages of one language. */
export type Words = { readonly [Name in keyof Texts]: Area<Texts[Name]> };

/** Messages of one area in another language; what is left out is said in English. */
export type Translated<Name extends keyof Texts> = { readonly [Key in keyof Texts[Name]]?: string };

/** Messages in another language. */
export type TranslatedWords = { readonly [Name in keyof Texts]?: Translated<Name> };
