import { ENGLISH_TEXTS } from "./en/index.ts";
import type { Translated, TranslatedWords, Words } from "./en/index.ts";
import { figuresIn } from "./figures.ts";
import type { Figures } from "./figures.ts";
import { AS_WRITTEN, phraseBook } from "./phrases.ts";
import type { PhraseBook, Phrases } from "./phrases.ts";
import type { LanguageTag } from "./tags.ts";

/** What the shells hold of one language. */
export interface LanguagePack {
  readonly words: TranslatedWords;
  /** Null for English, in which the data and the engine speak. */
  readonly phrases: Phrases | null;
  /** Texts of the page by their English wording. They are looked up whole: their holes are filled afterwards. */
  readonly page: Phrases;
}

/** One language: its messages, its numbers and dates, and its phrases for the texts of the data. */
export interface Language {
  readonly tag: LanguageTag;
  /** What it was made from: plain data, which can be handed to another thread. */
  readonly pack: LanguagePack;
  readonly words: Words;
  /** Messages of the report's first page in this language, as far as it has them. */
  readonly grower: Translated<"grower">;
  readonly figures: Figures;
  readonly phrases: PhraseBook;
  /** A text of the page, its holes not yet filled; what has no translation stays English. */
  page(english: string): string;
}

/** The messages of a language, with the English one wherever it has none. */
export function wordsWith(translated: TranslatedWords): Words {
  const areas = Object.entries(ENGLISH_TEXTS).map(([name, texts]) => [
    name,
    { ...texts, ...translated[name as keyof Words] },
  ]);
  // The type of a message comes from its English text, and a test holds the holes of all languages equal.
  return Object.fromEntries(areas) as Words;
}

/** A language from its pack. */
export function languageOf(tag: LanguageTag, pack: LanguagePack): Language {
  const words = wordsWith(pack.words);
  // British days stay as year-month-day, which nobody misreads.
  const figures = figuresIn(words.figures, tag, tag === "en-GB");
  const phrases = phrasesOf(pack, figures.decimal);
  const page = (english: string): string =>
    Object.hasOwn(pack.page, english) ? (pack.page[english] ?? english) : phrases.name(english);
  return { tag, pack, words, grower: pack.words.grower ?? {}, figures, phrases, page };
}

/** The phrase book, which also knows what the page says without holes: the names of choices. */
function phrasesOf({ phrases, page }: LanguagePack, decimal: "." | ","): PhraseBook {
  if (phrases === null) return AS_WRITTEN;
  const whole = Object.entries(page).filter(([english]) => !english.includes("{"));
  return phraseBook({ ...Object.fromEntries(whole), ...phrases }, decimal);
}

/** British English, in which everything is written first. */
export const ENGLISH: Language = languageOf("en-GB", { words: {}, phrases: null, page: {} });
