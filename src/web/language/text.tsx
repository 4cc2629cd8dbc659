import type { ReactElement } from "react";
import { useLanguage } from "./language-context.ts";

/** A text of the data or of the engine; one that stays English in another language is marked so, for those who listen. */
export function Text({ of: english }: { of: string }): ReactElement {
  const { text, isEnglish } = useLanguage().phrases.say(english);
  return isEnglish ? <span lang="en">{text}</span> : <>{text}</>;
}
