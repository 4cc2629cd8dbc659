import { describe, expect, test } from "vitest";
import { WORDING } from "../../src/report/wording.ts";
import { loadLanguage } from "../../src/words/index.ts";
import { engineTexts, sourcesIn } from "./engine-texts.ts";

/** What is wrong with the file of a demonstration is said in English; the tables of issue codes are for programmers. */
const NOT_READ = /^agronomy\/(?:bands\/|flasks\/(?:read-|design|find-substance))|issue-codes\.ts$/;
const files = ["units", "water", "agronomy"].flatMap(sourcesIn).filter((path) => !NOT_READ.test(path));
/** What stands in for a text that is a part of a longer one, or whose holes take a few words only. */
const WHOLE: Readonly<Record<string, readonly string[]>> = {
  "The 7s are short.": ["The cations are short.", "The anions are short."],
  "No dose up to 7 g/L meets the aim7; this is the best one tried.": [
    "No dose up to 7 g/L meets the aim; this is the best one tried.",
    "No dose up to 7 g/L meets the aim in 7 of 100 draws; this is the best one tried.",
  ],
  "7 first in 7, as here.": [
    "Published orders differ: 7 before 7 in 7; 7 first in 7, as here.",
    "Published orders differ: 7 before 7 in 7; the other way round here.",
  ],
  // A line of the job file, the same in every language.
  "hardstand: 7": [],
};
const texts = [...new Set(files.flatMap(engineTexts))].flatMap((text) => WHOLE[text] ?? [text]);
/** Bare equilibrium cases are met on the command line alone, which speaks English there. */
const wording = Object.entries(WORDING)
  .filter(([code]) => !code.startsWith("case-"))
  .flatMap(([, { say, mend }]) => (mend === undefined ? [say] : [say, mend]));

test("the source is read: texts of every layer are found", () => {
  expect(texts.length).toBeGreaterThan(250);
  expect(texts).toEqual(
    expect.arrayContaining([
      "mmol/L typed as mg/L?",
      "Is it °F?",
      "7 is a unit of 7.",
      "a price per 7, as the rate",
      "the name of the product",
    ]),
  );
});

describe.each(["de", "fr", "es"] as const)("%s", (tag) => {
  test("has every sentence of an issue", async () => {
    const { phrases } = await loadLanguage(tag);
    expect(wording.filter((text) => !phrases.has(text))).toEqual([]);
  });

  test("has every text the engine can put into an issue, an assumption or a remark", async () => {
    const { phrases } = await loadLanguage(tag);
    expect(texts.filter((text) => !phrases.has(text))).toEqual([]);
  });
});
