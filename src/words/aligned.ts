import type { LanguagePack } from "./language.ts";
import type { Phrases } from "./phrases.ts";

/** Translations in the order of a list of English texts; null where a language has none. */
export type Aligned = readonly (string | null)[];

/** The parts of a pack that are looked up by their English text. */
export const BY_ENGLISH = ["phrases", "page"] as const;

/** English texts of each part, in one order for all languages. */
export type EnglishSide = Readonly<Record<(typeof BY_ENGLISH)[number], readonly string[]>>;

/** The texts that any of the packs translates, each once. */
export function englishSide(packs: readonly LanguagePack[]): EnglishSide {
  const textsOf = (part: (typeof BY_ENGLISH)[number]): readonly string[] => [
    ...new Set(packs.flatMap((pack) => Object.keys(pack[part] ?? {}))),
  ];
  return { phrases: textsOf("phrases"), page: textsOf("page") };
}

/** What a pack says to each of the English texts. */
export function alignedTo(
  english: EnglishSide,
  pack: LanguagePack,
): Record<(typeof BY_ENGLISH)[number], Aligned> {
  const inOrder = (part: (typeof BY_ENGLISH)[number]): Aligned =>
    english[part].map((text) => pack[part]?.[text] ?? null);
  return { phrases: inOrder("phrases"), page: inOrder("page") };
}

/** The translations by their English text again. */
export function byEnglish(english: readonly string[], translations: Aligned): Phrases {
  const pairs = english.flatMap((text, i) => {
    const translation = translations[i];
    return typeof translation === "string" ? [[text, translation] as const] : [];
  });
  return Object.fromEntries(pairs);
}
