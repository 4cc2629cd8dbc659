import { createContext, useContext } from "react";
import { ENGLISH, sayIn } from "../../words/index.ts";
import type { Language, LanguageTag, Say } from "../../words/index.ts";

export { sayIn } from "../../words/index.ts";
export type { Say } from "../../words/index.ts";

/** The language of the page and the way to choose another. */
export interface LanguageChoice {
  readonly language: Language;
  readonly choose: (tag: LanguageTag) => void;
}

export const LanguageContext = createContext<LanguageChoice>({
  language: ENGLISH,
  choose: () => undefined,
});

/** The language the page is read in. */
export function useLanguage(): Language {
  return useContext(LanguageContext).language;
}

/** Says the texts of the page in the language chosen. */
export function useSay(): Say {
  return sayIn(useLanguage());
}
