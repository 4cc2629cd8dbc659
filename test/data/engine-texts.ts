import { readFileSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { inProject } from "../../scripts/project.mjs";

/** Names under which the source keeps what would have been accepted, in words that are no sentences. */
const HOLDERS = new Set(["expected", "kinds", "range", "within"]);
/** Stands for what the program puts into a text: a number is known in every language. */
const SAMPLE = "7";

/** Files of the program under a folder of `src`, without tests. */
export function sourcesIn(folder: string): readonly string[] {
  const at = inProject("src", folder);
  return readdirSync(at)
    .map((name) => join(folder, name))
    .flatMap((path) => (statSync(inProject("src", path)).isDirectory() ? sourcesIn(path) : [path]))
    .filter((path) => /(?<!\.test)\.tsx?$/.test(path));
}

/**
 * Texts a file of the engine can hand to a person, read from its source: every sentence that stands in it, and what it
 * names as expected. What is put together while running has a number in each hole.
 */
export function engineTexts(path: string): readonly string[] {
  const source = readFileSync(inProject("src", path), "utf8");
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true);
  const texts = new Set<string>();
  const visit = (node: ts.Node, isExpected: boolean): void => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    const text = literalOf(node);
    if (text !== null && (isSentence(text) || (isExpected && isWords(text)))) texts.add(text);
    ts.forEachChild(node, (child) => {
      visit(child, isExpected || saysExpected(node, child));
    });
  };
  visit(file, false);
  return [...texts];
}

/** What is written at a place in the source; null for anything but a text. */
function literalOf(node: ts.Node): string | null {
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text.trim();
  if (!ts.isTemplateExpression(node)) return null;
  const rest = node.templateSpans.map(({ literal }) => SAMPLE + literal.text).join("");
  // A sentence put before or behind others is a text of its own.
  return (node.head.text + rest)
    .replace(/^7\.? (?=\p{Lu}\p{Ll})/u, "")
    .replace(/(?<=[.?]) ?7$/, "")
    .trim();
}

function isSentence(text: string): boolean {
  return /^[\p{Lu}“\d].* .*\.$/u.test(text) || /^[\p{L}µ“].* .*\?$/u.test(text);
}

/** Amounts and units alone are the same in every language. */
function isWords(text: string): boolean {
  return / /.test(text) && !/^\d/.test(text) && /\p{Ll}{3}/u.test(text);
}

/** Whether `child` holds what a key, a variable or a call of `node` says to be expected. */
function saysExpected(node: ts.Node, child: ts.Node): boolean {
  if ((ts.isPropertyAssignment(node) || ts.isVariableDeclaration(node)) && ts.isIdentifier(node.name))
    return node.initializer === child && HOLDERS.has(node.name.text);
  return (
    ts.isCallExpression(node) && node.expression.getText() === "isMissing" && node.arguments[2] === child
  );
}
