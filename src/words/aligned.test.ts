import { expect, test } from "vitest";
import { alignedTo, byEnglish, englishSide } from "./aligned.ts";
import { GERMAN } from "./de/index.ts";
import { FRENCH } from "./fr/index.ts";
import type { LanguagePack } from "./language.ts";
import { SPANISH } from "./es/index.ts";

test("translations put in one order come back by their English text, and nothing else does", () => {
  const packs: readonly LanguagePack[] = [GERMAN, FRENCH, SPANISH];
  const english = englishSide([
    ...packs,
    { words: {}, phrases: null, page: { "said here alone": "nur hier" } },
  ]);
  expect(english.page).toContain("said here alone");
  expect(new Set(english.phrases).size).toBe(english.phrases.length);
  for (const pack of packs) {
    const { phrases, page } = alignedTo(english, pack);
    expect(byEnglish(english.phrases, phrases)).toEqual(pack.phrases);
    expect(byEnglish(english.page, page)).toEqual(pack.page);
  }
});
