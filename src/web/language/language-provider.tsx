import { useEffect, useMemo, useState } from "react";
import type { ReactElement, ReactNode } from "react";
import { closestLanguage, isLanguageTag, loadLanguage } from "../../words/index.ts";
import type { Language, LanguageTag } from "../../words/index.ts";
import { LanguageContext } from "./language-context.ts";

const KEPT = "hardstand language";

/** The language chosen on this device before, else the one that fits the browser's best. */
export function startingLanguage(): Promise<Language> {
  return loadLanguage(keptTag() ?? closestLanguage(navigator.languages));
}

function keptTag(): LanguageTag | null {
  try {
    const tag = window.localStorage.getItem(KEPT) ?? "";
    return isLanguageTag(tag) ? tag : null;
  } catch {
    return null;
  }
}

/** A browser that keeps nothing between visits asks anew; that is no reason to stop. */
function keep(tag: LanguageTag): void {
  try {
    window.localStorage.setItem(KEPT, tag);
  } catch {
    return;
  }
}

/** Gives the page its language, and tells the browser which it is. */
export function LanguageProvider({
  start,
  children,
}: {
  start: Language;
  children: ReactNode;
}): ReactElement {
  const [language, setLanguage] = useState(start);
  useEffect(() => {
    const { documentElement } = window.document;
    // Set again to what it is, the browser would still work out all styles anew.
    if (documentElement.lang !== language.tag) documentElement.lang = language.tag;
  }, [language]);
  const choice = useMemo(
    () => ({
      language,
      choose: (tag: LanguageTag) => {
        keep(tag);
        void loadLanguage(tag).then(setLanguage);
      },
    }),
    [language],
  );
  return <LanguageContext value={choice}>{children}</LanguageContext>;
}
