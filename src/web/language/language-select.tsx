import { useContext } from "react";
import type { ReactElement } from "react";
import { isLanguageTag, LANGUAGE_NAMES, LANGUAGE_TAGS } from "../../words/index.ts";
import { LanguageContext, useSay } from "./language-context.ts";

/** Chooses the language of the page, the card and the report; each is named in its own words. */
export function LanguageSelect(): ReactElement {
  const { language, choose } = useContext(LanguageContext);
  const say = useSay();
  return (
    <label className="tool-select">
      <span>{say("Language")}</span>
      <select
        value={language.tag}
        onChange={(event) => {
          const tag = event.target.value;
          if (isLanguageTag(tag)) choose(tag);
        }}
      >
        {LANGUAGE_TAGS.map((tag) => (
          <option key={tag} value={tag} lang={tag}>
            {LANGUAGE_NAMES[tag]}
          </option>
        ))}
      </select>
    </label>
  );
}
