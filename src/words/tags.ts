/** Languages of the page, the card and the report. */
export const LANGUAGE_TAGS = ["en-GB", "en-US", "de", "fr", "es"] as const;

/** Tag of a language, as in the `lang` attribute of HTML. */
export type LanguageTag = (typeof LANGUAGE_TAGS)[number];

/** Each language by the name its speakers use. */
export const LANGUAGE_NAMES: Readonly<Record<LanguageTag, string>> = {
  "en-GB": "English (metric, UK)",
  "en-US": "English (US)",
  de: "Deutsch",
  fr: "Français",
  es: "Español",
};

/** Whether a text is the tag of a language that is carried here. */
export function isLanguageTag(text: string): text is LanguageTag {
  return (LANGUAGE_TAGS as readonly string[]).includes(text);
}

/**
 * The language that fits best what someone prefers.
 *
 * @param preferred tags in order of preference, such as "de-AT"
 * @returns the first that is carried, by its whole tag or by its language alone; else British English
 */
export function closestLanguage(preferred: readonly string[]): LanguageTag {
  for (const tag of preferred) {
    const whole = LANGUAGE_TAGS.find((one) => one.toLowerCase() === tag.toLowerCase());
    if (whole !== undefined) return whole;
    const language = tag.toLowerCase().split("-")[0];
    const near = LANGUAGE_TAGS.find((one) => one.split("-")[0] === language);
    if (near !== undefined) return near;
  }
  return "en-GB";
}
