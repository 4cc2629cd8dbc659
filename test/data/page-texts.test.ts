import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { expect, test } from "vitest";
import { inProject } from "../../scripts/project.mjs";
import { GERMAN } from "../../src/words/de/index.ts";
import { SPANISH } from "../../src/words/es/index.ts";
import { FRENCH } from "../../src/words/fr/index.ts";

/** Folders of the page that the main flow goes through, from the water test to the card. */
const MAIN_FLOW = ["", "form", "jobs", "language", "offline", "result", "share", "sheet"];

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

/** Folders whose parts put labels, hints and headings into the language themselves. */
const LABELLED = ["form", "sheet"];
/** Parts of the result that do so. */
const GROUPS = ["result/results.tsx", "result/three-answers.tsx", "result/card-section.tsx"];
/** Names under which a label, a hint or the name of a choice is handed on. */
const GIVEN = /^(?:label|title|lead|hint|none|more|name|\w+Hint)$/;

/** Labels, hints, headings and names of choices handed to those parts, and all that a table `words` holds. */
function labelsOf(path: string): readonly string[] {
  const source = readFileSync(inProject("src", "web", path), "utf8");
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const visit = (node: ts.Node, inWords: boolean): void => {
    const isKey = ts.isPropertyAssignment(node.parent) && node.parent.name === node;
    if (ts.isStringLiteral(node) && !isKey && (inWords || isGiven(node.parent))) found.push(node.text);
    const below = inWords || (ts.isVariableDeclaration(node) && node.name.getText() === "words");
    ts.forEachChild(node, (child) => {
      visit(child, below);
    });
  };
  ts.forEachChild(file, (child) => {
    visit(child, false);
  });
  // Names of the document, which nobody reads on the page, are in small letters.
  return found.filter((text) => /[ A-Z]/.test(text));
}

function isGiven(holder: ts.Node): boolean {
  if (!ts.isJsxAttribute(holder) && !ts.isPropertyAssignment(holder)) return false;
  const name = holder.name.getText();
  // What bears a name beside an id is a choice; any other name is one of the document.
  return GIVEN.test(name) && (name !== "name" || /^\{\s*id:/.test(holder.parent.getText()));
}

function filesIn(folder: string): readonly string[] {
  return readdirSync(inProject("src", "web", folder))
    .filter((name) => name.endsWith(".tsx"))
    .map((name) => `${folder}/${name}`);
}

const texts = [
  ...new Set([...MAIN_FLOW.flatMap(textsOf), ...[...GROUPS, ...LABELLED.flatMap(filesIn)].flatMap(labelsOf)]),
].filter((text) => text !== "");

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
