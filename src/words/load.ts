import { ENGLISH, languageOf } from "./language.ts";
import type { Language, LanguagePack } from "./language.ts";
import type { LanguageTag } from "./tags.ts";

/** The packs besides British English, each read when it is first asked for. */
const PACKS: Readonly<Record<Exclude<LanguageTag, "en-GB">, () => Promise<LanguagePack>>> = {
  "en-US": async () => (await import("./en-us/index.ts")).AMERICAN,
  de: async () => (await import("./de/index.ts")).GERMAN,
  fr: async () => (await import("./fr/index.ts")).FRENCH,
  es: async () => (await import("./es/index.ts")).SPANISH,
};

const loaded = new Map<LanguageTag, Promise<Language>>([["en-GB", Promise.resolve(ENGLISH)]]);

/** The language of a tag, read when it is first asked for and kept from then on. */
export function loadLanguage(tag: LanguageTag): Promise<Language> {
  const known = loaded.get(tag);
  if (known !== undefined || tag === "en-GB") return known ?? Promise.resolve(ENGLISH);
  const language = PACKS[tag]().then((pack) => languageOf(tag, pack));
  loaded.set(tag, language);
  // What could not be fetched is tried again when it is next asked for.
  language.catch(() => loaded.delete(tag));
  return language;
}
