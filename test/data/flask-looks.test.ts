import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { inProject } from "../../scripts/project.mjs";
import {
  benchList,
  builtInFlasks,
  builtInTrade,
  designDemo,
  flaskCautions,
  isDesign,
  readDemo,
  runDemo,
  slipEffects,
} from "../../src/agronomy/index.ts";
import { builtInThermo } from "../../src/chem/index.ts";
import { colourLook } from "../../src/colour/index.ts";
import {
  addedText,
  cloudText,
  colourText,
  mediumText,
  sameContentsText,
  withStrength,
} from "../../src/report/index.ts";
import { loadLanguage } from "../../src/words/index.ts";

const context = { thermo: builtInThermo(), trade: builtInTrade(), flasks: builtInFlasks() };
const demos = readdirSync(inProject("examples", "demos")).map((name) => {
  const document: unknown = parse(readFileSync(inProject("examples", "demos", name), "utf8"));
  const found = isDesign(document) ? designDemo(document, context) : null;
  const read = found === null ? readDemo(document, context) : found;
  if (!read.ok) throw new Error(`${name} cannot be read`);
  const demo = "demo" in read.value ? read.value.demo : read.value;
  const show = runDemo(demo, context, { draws: 0 });
  if (!show.ok) throw new Error(`${name} cannot be run`);
  return { demo, show: show.value };
});
const states = demos.flatMap(({ show }) => show.flasks.flatMap(({ start, steps }) => [start, ...steps]));
const stocks = demos.flatMap(({ demo }) => benchList(demo).stocks);
/** Every look there are words for: a grid over the colours a liquid can have. */
const looks = distinct(
  Array.from({ length: 26 }, (_, i) => 4 * i).flatMap((L) =>
    [0, 8, 20, 45, 70].flatMap((chroma) =>
      Array.from({ length: 72 }, (_, k) => {
        const hue = (5 * k * Math.PI) / 180;
        return colourLook({ L, a: chroma * Math.cos(hue), b: chroma * Math.sin(hue) });
      }),
    ),
  ),
);
/** Names of flasks that the languages share. */
const THE_SAME = new Set(["calcium", "magnesium"]);
/** Words of English that none of the three languages shares. */
const ENGLISH =
  /\b(?:of|with|dark|light|pale|bright|almost|grey|yellow|green|red|pink|acid|water|stock|haze|salt|the|and|held|first|nothing|means)\b/;

describe.each(["de", "fr", "es"] as const)("%s", (tag) => {
  test("says every colour, every cloud and all that goes into the flasks of the examples", async () => {
    const language = await loadLanguage(tag);
    expect(looks.length).toBeGreaterThan(60);
    expect(stocks.length).toBeGreaterThan(15);
    const said = [
      ...looks.map((look) => colourText(look, language)),
      ...states.map(({ cloudiness }) => cloudText(cloudiness, language)),
      ...states.map(({ added }) => addedText(added, language)),
      ...stocks.map((stock) => withStrength(stock, language)),
      ...stocks.map(({ medium }) => mediumText(medium, language)),
    ];
    expect([...new Set(said)].filter((text) => ENGLISH.test(text))).toEqual([]);
    expect(said.filter((text) => /\d\.\d/.test(text))).toEqual([]);
    const remarks = demos.flatMap(({ show }) =>
      show.sameContents.map((same) => sameContentsText(same, language)),
    );
    expect(remarks.length).toBeGreaterThan(0);
    expect(remarks.filter((text) => /end with|no memory/.test(text))).toEqual([]);
  });

  test("says the ready demonstrations: titles, flasks, and what stands beside them", async () => {
    const { page } = await loadLanguage(tag);
    const texts = demos.flatMap(({ show }) => [
      ...[show.title, show.about],
      ...show.flasks.flatMap(({ name, shows, start, steps }) => [
        ...[name, shows],
        ...[start, ...steps].flatMap(({ say, remarks }) => [say, ...remarks.map(({ text }) => text)]),
      ]),
      ...show.optics.map(({ what }) => what),
    ]);
    const english = [...new Set(texts.filter((text) => text !== null))];
    expect(english.length).toBeGreaterThan(60);
    expect(english.filter((text) => page(text) === text && !THE_SAME.has(text))).toEqual([]);
    expect(english.map(page).filter((text) => ENGLISH.test(text))).toEqual([]);
  });

  test("has every caution, slip and thing to have of the examples", async () => {
    const { phrases } = await loadLanguage(tag);
    const texts = demos.flatMap(({ demo, show }) => [
      ...flaskCautions(demo, context).map(({ text }) => text),
      ...benchList(demo).shopping.flatMap(({ name, note }) => (note === null ? [name] : [name, note])),
      ...slipEffects(demo, show, context).flatMap(({ what, mend }) => [what, mend]),
      ...show.pairs.map(({ verdict }) => verdict),
    ]);
    expect(texts.length).toBeGreaterThan(200);
    expect([...new Set(texts)].filter((text) => !phrases.has(text))).toEqual([]);
  });
});

describe("English is put together from the same parts", () => {
  test.each([
    ["clear, no colour", { kind: "grey", grey: "no colour" }],
    ["light grey", { kind: "grey", grey: "light grey" }],
    ["almost black, sky blue", { kind: "hue", tone: "almost black", hue: "sky blue" }],
    ["dark violet-red", { kind: "hue", tone: "dark", hue: "violet-red" }],
    ["brown", { kind: "hue", tone: "plain", hue: "brown" }],
    ["almost clear, a touch of yellow", { kind: "hue", tone: "almost clear", hue: "yellow" }],
  ] as const)("colour: %s", (words, look) => {
    expect(colourText(look)).toBe(words);
  });

  test.each([
    ["clear", { kind: "clear" }],
    ["a faint haze of gypsum", { kind: "faint", solids: ["gypsum"] }],
    ["cloudy with rust", { kind: "cloudy", solids: ["rust"] }],
    ["thick with rust and calcium phosphate", { kind: "thick", solids: ["rust", "calcium phosphate"] }],
  ] as const)("cloudiness: %s", (words, cloudiness) => {
    expect(cloudText(cloudiness)).toBe(words);
  });

  const acid = { substance: "hydrochloric acid", molPerL: 0.1 };
  const iron = { kind: "measured", amount: "0.8 mL", substance: "iron(III) chloride hexahydrate" } as const;
  test.each([
    ["deionised water, 100.5 mL", { kind: "water", water: "deionised water", volume_mL: 100.5 }],
    ["0.8 mL of iron(III) chloride hexahydrate", { ...iron, strength: null, medium: null }],
    [
      "0.8 mL of iron(III) chloride hexahydrate, 1 % w/v (stock in hydrochloric acid)",
      { ...iron, strength: "1 % w/v", medium: acid },
    ],
    [
      "pH set to 2.5 with hydrochloric acid, 1 mol/L (about 0.32 mL)",
      { kind: "pH set", pH: 2.5, substance: "hydrochloric acid", molPerL: 1, about_mL: 0.3162 },
    ],
    [
      "pH set to 9 with sodium hydroxide, 1 mol/L (about 120 mL)",
      { kind: "pH set", pH: 9, substance: "sodium hydroxide", molPerL: 1, about_mL: 123.4 },
    ],
  ] as const)("what went in: %s", (words, added) => {
    expect(addedText(added)).toBe(words);
  });
});

function distinct<Part>(parts: readonly Part[]): readonly Part[] {
  return [...new Map(parts.map((part) => [JSON.stringify(part), part])).values()];
}
