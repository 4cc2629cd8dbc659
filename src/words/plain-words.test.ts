import { describe, expect, test } from "vitest";
import { FLASK_LOOKS } from "./de/flask-looks.ts";
import { FLASKS } from "./de/flasks.ts";
import { GERMAN } from "./de/index.ts";
import { WORKINGS } from "./de/workings.ts";
import { GROWER } from "./en/grower.ts";
import { ENGLISH_TEXTS } from "./en/index.ts";
import { SPANISH } from "./es/index.ts";
import { FRENCH } from "./fr/index.ts";
import type { LanguagePack } from "./language.ts";

/**
 * Words of chemists and statisticians that an adviser need not know. They stand in the workings and the flasks, which are
 * opened to see how a number came about, and on the command line's own plan; the rest of the page says it in plain words.
 * The list is ours.
 */
const TERMS: Readonly<Record<"en" | "de" | "fr" | "es", RegExp>> = {
  en: /ligand|speciation|activity coefficient|ionic strength|saturation ind|supersatur|nucleat|stoichiometr|electroneutral|molality|water activity|equilibrium|Pitzer|Davies|logit|quantile|percentile|standard deviation|log10/i,
  de: /Ligand|Speziation|Aktivitätskoeffizient|Ionenstärke|Sättigungsindex|übersättig|Keimbildung|stöchiometr|elektroneutral|Molalität|Wasseraktivität|Gleichgewicht|Pitzer|Davies|Logit|Quantil|Perzentil|Standardabweichung|log10/i,
  fr: /ligand|spéciation|coefficients? d['’]activité|force ionique|indice de saturation|sursatur|nucléation|stœchiométr|électroneutr|molalité|activité de l['’]eau|équilibre|Pitzer|Davies|logit|quantile|centile|écart-type|log10/i,
  es: /ligando|especiación|coeficientes? de actividad|fuerza iónica|índice de saturación|sobresatur|nucleación|estequiom|electroneutr|molalidad|actividad del agua|equilibrio|Pitzer|Davies|logit|cuantil|percentil|desviación estándar|log10/i,
};

/** What is opened to see how a number came about. */
const DEEP = new Set([...Object.keys(WORKINGS), ...Object.keys(FLASKS), ...Object.keys(FLASK_LOOKS)]);

type Area = Readonly<Record<string, string>>;

const inWords = (words: Readonly<Record<string, Area>>): readonly string[] =>
  Object.entries(words).flatMap(([area, messages]) => (area === "plan" ? [] : Object.values(messages)));

const onPage = ({ page }: LanguagePack): readonly string[] =>
  Object.entries(page).flatMap(([english, text]) => (DEEP.has(english) ? [] : [text]));

const ENGLISH = [
  ...inWords(ENGLISH_TEXTS as unknown as Readonly<Record<string, Area>>),
  ...Object.values(GROWER),
  ...Object.keys(GERMAN.page).filter((text) => !DEEP.has(text)),
];
const ofPack = (pack: LanguagePack): readonly string[] => [
  ...inWords(pack.words as unknown as Readonly<Record<string, Area>>),
  ...onPage(pack),
];

describe.each([
  ["English", ENGLISH, TERMS.en],
  ["German", ofPack(GERMAN), TERMS.de],
  ["French", ofPack(FRENCH), TERMS.fr],
  ["Spanish", ofPack(SPANISH), TERMS.es],
] as const)("%s", (_name, texts, terms) => {
  test("says the main flow without words of chemists and statisticians", () => {
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter((text) => terms.test(text))).toEqual([]);
  });
});
