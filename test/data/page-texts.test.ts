import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import { GERMAN } from "../../src/words/de/index.ts";
import { SPANISH } from "../../src/words/es/index.ts";
import { FRENCH } from "../../src/words/fr/index.ts";

/** Folders of the page that the main flow goes through, from the water test to the card. */
const MAIN_FLOW = ["", "form", "jobs", "language", "offline", "result"];

/** Texts that the page says, by the call that puts them into its language. */
function textsOf(folder: string): readonly string[] {
  const at = inProject("src", "web", folder);
  return readdirSync(at)
    .filter((name) => /(?<!\.test)\.tsx?$/.test(name))
    .flatMap((name) => {
      const source = readFileSync(join(at, name), "utf8");
      const calls = source.match(/\bsay\((?:[^()"]|"(?:[^"\\]|\\.)*")*/g) ?? [];
      return calls.flatMap((call) =>
        Array.from(call.matchAll(/"((?:[^"\\]|\\.)*)"/g), ([, text = ""]) => text),
      );
    });
}

/** Groups of the form and of the result whose parts put labels, hints and headings into the language themselves. */
const GROUPS = [
  "form/water-group.tsx",
  "form/water-source.tsx",
  "form/readings.tsx",
  "form/spray-group.tsx",
  "form/mix-group.tsx",
  "form/product-fields.tsx",
  "form/conditioners-group.tsx",
  "form/aim-group.tsx",
  "result/results.tsx",
  "result/three-answers.tsx",
  "result/card-section.tsx",
];

/** Labels, hints and headings handed to those parts. */
function labelsOf(file: string): readonly string[] {
  const source = readFileSync(inProject("src", "web", file), "utf8");
  const given = source.matchAll(/\b(?:label|title|lead|hint|none|more|\w+Hint)[=:]\s*"([^"]+)"/g);
  return Array.from(given, ([, text = ""]) => text);
}

const texts = [...new Set([...MAIN_FLOW.flatMap(textsOf), ...GROUPS.flatMap(labelsOf)])].filter(
  (text) => text !== "",
);

test.each([
  ["German", GERMAN],
  ["French", FRENCH],
  ["Spanish", SPANISH],
])("%s has all that the main flow of the page says", (_, pack) => {
  expect(texts.length).toBeGreaterThan(150);
  expect(
    texts.filter((text) => [pack.page, pack.phrases ?? {}].every((known) => !Object.hasOwn(known, text))),
  ).toEqual([]);
});
