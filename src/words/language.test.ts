import { describe, expect, test } from "vitest";
import { ENGLISH, languageOf } from "./language.ts";
import { loadLanguage } from "./load.ts";
import { fill, holesOf } from "./message.ts";
import { phraseBook } from "./phrases.ts";
import { closestLanguage, isLanguageTag, LANGUAGE_TAGS } from "./tags.ts";

test("a message is filled by name, and a hole without a value is left to be seen", () => {
  expect(fill(ENGLISH.words.card.check, { pH: "5.0" })).toBe("Expect pH 5.0 in the full tank.");
  expect(holesOf("{one} and {other}")).toEqual(["one", "other"]);
  expect(fill("{a} of {b}" as never, {})).toBe("{a} of {b}");
});

test("what a language lacks is said in English", () => {
  const language = languageOf("de", { words: { card: { pause: "Halt." } }, phrases: {}, page: {} });
  expect(language.words.card.pause).toBe("Halt.");
  expect(language.words.card.fullLoad).toBe("full load");
});

test("the nearest language is found by whole tag, then by its first part", () => {
  expect(closestLanguage(["nl-NL", "de-AT", "fr"])).toBe("de");
  expect(closestLanguage(["en-us"])).toBe("en-US");
  expect(closestLanguage(["en-AU"])).toBe("en-GB");
  expect(closestLanguage(["it"])).toBe("en-GB");
  expect(isLanguageTag("de")).toBe(true);
  expect(isLanguageTag("toString")).toBe(false);
});

describe("figures", () => {
  test.each(LANGUAGE_TAGS)("the decimal sign of %s is that of the platform", async (tag) => {
    const sign = new Intl.NumberFormat(tag).formatToParts(0.5).find(({ type }) => type === "decimal");
    expect((await loadLanguage(tag)).figures.decimal).toBe(sign?.value);
  });

  test("German writes a decimal comma, thin spaces between thousands, and the day in full", async () => {
    const { figures } = await loadLanguage("de");
    expect(figures.figure(1234.5)).toBe("1235");
    expect(figures.figure(12_345)).toBe("12\u202f345");
    expect(figures.figure(-0.125)).toBe("−0,125");
    expect(figures.amountText(0.85, "L")).toBe("850 mL");
    expect(figures.amountText(25.5, "kg")).toBe("25,5 kg");
    expect(figures.inHundred(0.995)).toBe("99,5 von 100");
    expect(figures.pHText(7.04, 2)).toBe("7,04");
    expect(figures.timeText(60 * 24)).toBe("60 Tage");
    expect(figures.dayText("2026-03-02")).toBe("2. März 2026");
  });

  test("British days stay year-month-day; American, French and Spanish ones are written out", async () => {
    expect(ENGLISH.figures.dayText("2026-03-02")).toBe("2026-03-02");
    const days = await Promise.all(
      (["en-US", "fr", "es"] as const).map(async (tag) =>
        (await loadLanguage(tag)).figures.dayText("2026-03-02"),
      ),
    );
    expect(days).toEqual(["March 2, 2026", "2 mars 2026", "2 de marzo de 2026"]);
  });

  test("what is no day stays as it was written", async () => {
    expect((await loadLanguage("fr")).figures.dayText("last spring")).toBe("last spring");
  });
});

describe("phrases", () => {
  const book = phraseBook(
    {
      "ammonium sulfate": "Ammoniumsulfat",
      glyphosate: "Glyphosat",
      "potassium salt": "Kaliumsalz",
      crystals: "Kristalle",
      "Add {product}.": "{product} zugeben.",
      "Add {product} slowly.": "{product} langsam zugeben.",
      "Stop here.": "Hier anhalten.",
      "{litres} L stay.": "{litres} L bleiben.",
      "up to {most}": "bis {most}",
      "{active} as {form}": "{active} als {form}",
    },
    ",",
  );

  test.each([
    ["Add ammonium sulfate, crystals slowly.", "Ammoniumsulfat, Kristalle langsam zugeben."],
    ["Add glyphosate (potassium salt) SL.", "Glyphosat (Kaliumsalz) SL zugeben."],
    ["Add glyphosate + ammonium sulfate. Stop here.", "Glyphosat + Ammoniumsulfat zugeben. Hier anhalten."],
    ["Add My own mix.", "My own mix zugeben."],
    ["2.5 L stay.", "2,5 L bleiben."],
    ["up to 0.5 mg/L as CaCO3", "bis 0,5 mg/L as CaCO3"],
    ["glyphosate as potassium salt", "Glyphosat als Kaliumsalz"],
    ["ammonium sulfate: Stop here.", "Ammoniumsulfat: Hier anhalten."],
  ])("%s", (english, german) => {
    expect(book.say(english)).toEqual({ text: german, isEnglish: false });
  });

  test("a sentence without a translation stays English and says so, whole", () => {
    const text = "Add glyphosate. Nobody has put this into German.";
    expect(book.say(text)).toEqual({ text, isEnglish: true });
  });

  test("a template with hardly a word of its own leaves what it does not know", () => {
    expect(book.say("It is as hard as nails").isEnglish).toBe(true);
  });

  test("a name that is not known is the user's own and stays", () => {
    expect(book.name("House bore")).toBe("House bore");
    expect(book.name("glyphosate of mine SL")).toBe("glyphosate of mine SL");
  });
});
