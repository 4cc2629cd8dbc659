import { createContext, useContext } from "react";
import { ENGLISH, fill } from "../../words/index.ts";
import type { Holes, Language, LanguageTag, Message } from "../../words/index.ts";

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

/** Values for the holes of a text; nothing for a text without holes. */
type Values<Text extends string> = [Holes<Text>] extends [never]
  ? []
  : [values: Readonly<Record<Holes<Text>, string | number>>];

/** Says a text of the page, given in English, in its language. */
export type Say = <Text extends string>(english: Text, ...values: Values<Text>) => string;

/** How a language says the texts of the page. What it has no words for stays English. */
export function sayIn(language: Language): Say {
  return (english, ...[values]) => fill(language.phrases.say(english).text as Message<string>, values ?? {});
}

/** Says the texts of the page in the language chosen. */
export function useSay(): Say {
  return sayIn(useLanguage());
}
