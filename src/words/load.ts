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

/** The language of a tag, read when it is first asked for. */
export async function loadLanguage(tag: LanguageTag): Promise<Language> {
  return tag === "en-GB" ? ENGLISH : languageOf(tag, await PACKS[tag]());
}
