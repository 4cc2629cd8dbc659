import type { Area } from "../message.ts";
import { ANSWERS } from "./answers.ts";
import { CARD } from "./card.ts";
import { EVIDENCE } from "./evidence.ts";
import { FIGURES } from "./figures.ts";

/** All messages in English, by area. They are the measure for the other languages. */
export const ENGLISH_TEXTS = {
  answers: ANSWERS,
  card: CARD,
  evidence: EVIDENCE,
  figures: FIGURES,
} as const;

type Texts = typeof ENGLISH_TEXTS;

/** All messages of one language. */
export type Words = { readonly [Name in keyof Texts]: Area<Texts[Name]> };

/** Messages of one area in another language; what is left out is said in English. */
export type Translated<Name extends keyof Texts> = { readonly [Key in keyof Texts[Name]]?: string };

/** Messages in another language. */
export type TranslatedWords = { readonly [Name in keyof Texts]?: Translated<Name> };
