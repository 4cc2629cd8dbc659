import type { Area } from "../message.ts";
import { ANSWERS } from "./answers.ts";
import { CARD } from "./card.ts";
import { CERTAINTY } from "./certainty.ts";
import { EVIDENCE } from "./evidence.ts";
import { FIGURES } from "./figures.ts";
import type { GROWER } from "./grower.ts";
import { ISSUES } from "./issues.ts";
import { PLAN } from "./plan.ts";

/** Messages in English, by area, that everything needs. With `GROWER` they are the measure for the other languages. */
export const ENGLISH_TEXTS = {
  answers: ANSWERS,
  card: CARD,
  certainty: CERTAINTY,
  evidence: EVIDENCE,
  figures: FIGURES,
  issues: ISSUES,
  plan: PLAN,
} as const;

type Common = typeof ENGLISH_TEXTS;
type Texts = Common & { readonly grower: typeof GROWER };

/** The messages of the report's first page: apart, so that the page need not load them before its first field. */
export type GrowerWords = Area<typeof GROWER>;

/** All messages of one language. */
export type Words = { readonly [Name in keyof Common]: Area<Common[Name]> };

/** Messages of one area in another language; what is left out is said in English. */
export type Translated<Name extends keyof Texts> = { readonly [Key in keyof Texts[Name]]?: string };

/** Messages in another language. */
export type TranslatedWords = { readonly [Name in keyof Texts]?: Translated<Name> };
