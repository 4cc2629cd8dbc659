import { describe, expect, test } from "vitest";
import { GERMAN } from "../../src/words/de/index.ts";
import { SPANISH } from "../../src/words/es/index.ts";
import { FRENCH } from "../../src/words/fr/index.ts";
import type { LanguagePack } from "../../src/words/index.ts";
import { sourcesIn } from "./engine-texts.ts";
import { shownTexts, textsIn } from "./shown-texts.ts";

/** Files whose texts come from elsewhere or stay English, with the reason. */
const NOT_READ: readonly (readonly [RegExp, string])[] = [
  [/^report\/wording/, "sentences of issues: read by the test of the engine's texts"],
  [/^report\/(?:water|sheet)-text\.ts$/, "said on the command line, which speaks English there"],
  [
    /^web\/engine\/engine\.worker\.ts$/,
    "talks to the page in messages; what it says it takes from the words",
  ],
];

/** Texts that are the same in every language, or that nobody reads, with the reason. */
const THE_SAME: readonly (readonly [RegExp, string])[] = [
  [/^(?:pH|log K|mL|mmol\/L|min|Hardstand)$/, "signs, units and the name of the program"],
  [
    /^[{}()\d.×÷+\s]*(?:(?:mmol|mol|meq|g|mg|lb|mL|min|h|L)(?:\/(?:L|mol|ha|kg|h))?[{}()\d.×÷+\s]*)*$/,
    "numbers with their units",
  ],
  [
    /(?:US|imp) gal|fl oz|^(?:g|lb)\/(?:L|kg|US gal) (?:salt|ae)$|^mg\/L as CaCO3$/,
    "units as the job file writes them",
  ],
  [/[{;]\s*[\w-]+:\s|^\{\} portrait$|^<span/, "style and markup"],
  [/^hardstand /, "names under which the browser keeps things"],
  [
    /^(?:(?:\{\}\.)?(?:least|most) (?:dose|rate)|other waters|by hand|own product|volatility rules|least volume|season area|leaf calcium|dead volume|holding time)$/,
    "keys of the job file",
  ],
  [/^(?:volume per area|solid rate)$/, "names of dimensions"],
  [
    /^(?:common practice|published rule|not promised|as it stands|metals of|too long|plan helper)$/,
    "names the program goes by",
  ],
  [/^(?:sheet-entry-\{\}|seen-target|way-out)$/, "ids"],
];

const packs: readonly (readonly [string, LanguagePack])[] = [
  ["German", GERMAN],
  ["French", FRENCH],
  ["Spanish", SPANISH],
];

const texts = ["web", "report"]
  .flatMap(sourcesIn)
  .filter((path) => !NOT_READ.some(([files]) => files.test(path)))
  .flatMap((path) => shownTexts(path).map((one) => ({ ...one, place: `${path}:${String(one.line)}` })))
  .filter(({ text }) => !THE_SAME.some(([same]) => same.test(text)));

test("the source is read: texts of every screen and of the report are found", () => {
  const found = texts.map(({ text }) => text);
  expect(found.length).toBeGreaterThan(700);
  expect(found).toEqual(
    expect.arrayContaining([
      "The points of the curve",
      "Ways out",
      "What the water could have taken",
      "From dark to light: {order}",
      "How the rule was worked out",
    ]),
  );
});

test.each([
  ["const a = <p>Bare words</p>;", "Bare words", "as it stands"],
  ['const a = <p>{known ? "free" : say("held")}</p>;', "free", "as it stands"],
  ["const a = <svg aria-label={`Share of ${name}`} />;", "Share of {}", "as it stands"],
  ['const a = <p>{open && "still open"}</p>;', "still open", "as it stands"],
  ["const a = html`<h2>What to do</h2>`;", "What to do", "as it stands"],
  ['const a = html`<svg aria-label="The bars">${bars}</svg>`;', "The bars", "as it stands"],
  ['const words = { unsaid: "open" };', "open", "handed on"],
  ['const a = <Section title="What follows" />;', "What follows", "handed on"],
  ['setProblem("No job in this file.");', "No job in this file.", "handed on"],
  ['setProblem(say(isOld ? "An old one." : "A new one."));', "A new one.", "said"],
])("the scan tells how a person gets %s", (source, text, how) => {
  expect(textsIn(source, "sample.tsx")).toContainEqual({ text, how, line: 1 });
});

test.each([
  'import { a } from "./some words.ts";',
  'if (where === "in the tank") stop();',
  'const a = <p className="about this">{say("x")}</p>;',
  'throw new Error("cannot happen here");',
])("the scan leaves what no person reads: %s", (source) => {
  expect(textsIn(source, "sample.tsx").filter(({ text }) => text !== "x")).toEqual([]);
});

test("every text that is shown is said by the words of the language", () => {
  expect(
    texts.filter(({ how }) => how === "as it stands").map(({ place, text }) => `${place} ${text}`),
  ).toEqual([]);
});

describe.each(packs)("%s", (_, { page, phrases }) => {
  test("has all that is shown", () => {
    const lacks = texts.filter(
      ({ text }) => !Object.hasOwn(page, text) && !Object.hasOwn(phrases ?? {}, text),
    );
    expect(lacks.map(({ place, text }) => `${place} ${text}`)).toEqual([]);
  });
});
