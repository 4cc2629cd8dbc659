import { readFileSync } from "node:fs";
import ts from "typescript";
import { inProject } from "../../scripts/project.mjs";

/** A text that a source file can show to a person. */
export interface ShownText {
  readonly text: string;
  readonly line: number;
  /**
   * How it gets to a person: said by the words of the language; handed on, to be said by what takes it; or shown as it
   * stands, in English whatever the language.
   */
  readonly how: "said" | "handed on" | "as it stands";
}

/** Calls that put their texts into the language. */
const SAYS = /^(?:say|page|sayIn\(.*\))$/;
/** Attributes whose text is shown where they stand. */
const SHOWN_ATTRIBUTES = /^(?:aria-label|aria-description|title|alt|placeholder|content)$/;
/** What a component of the page takes to say itself. */
const HANDED_ON = /^(?:title|label|lead|summary|hint|none|more|text|name|what|formula|\w+Hint|\w+Label)$/;
/** Calls that take texts for the machine: selectors, keys, names of events, faults for programmers. */
const FOR_MACHINES =
  /(?:^|\.)(?:querySelector(?:All)?|closest|matches|getItem|setItem|removeItem|addEventListener|dispatchEvent|createElement|getElementById|setAttribute|getAttribute|removeAttribute|startsWith|endsWith|includes|indexOf|has|hasOwn|get|getContext|matchMedia|replace|replaceAll|split|join|test|match|append|open|import|URL|Error|HardstandError|RegExp|Blob|File|Worker|Request|CustomEvent|postMessage|fetch|postfix|padStart|padEnd|localeCompare|cssText|parseFromString|DateTimeFormat|NumberFormat|attachShadow|createObjectStore|createIndex|transaction|inner|quantity|rows|kept|part|texts?|words|numbers?|taken?|opt)$/;

/** Texts a file of the page can show, read from its source. */
export function shownTexts(path: string): readonly ShownText[] {
  return textsIn(readFileSync(inProject("src", path), "utf8"), path);
}

/** Texts that a source can show. */
export function textsIn(source: string, path: string): readonly ShownText[] {
  const kind = path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, kind);
  const found: ShownText[] = [];
  const visit = (node: ts.Node): void => {
    if (isForMachines(node)) return;
    if (ts.isTaggedTemplateExpression(node)) {
      for (const text of textsOfHtml(node)) add(node, text);
      if (ts.isTemplateExpression(node.template))
        for (const { expression } of node.template.templateSpans) visit(expression);
      return;
    }
    const text = literalOf(node);
    if (text !== null) add(node, text);
    ts.forEachChild(node, visit);
  };
  const add = (node: ts.Node, text: string): void => {
    const how = wayOf(node, text);
    if (how === null) return;
    const { line } = file.getLineAndCharacterOfPosition(node.getStart());
    found.push({ text, line: line + 1, how });
  };
  visit(file);
  return found;
}

/** How a text gets to a person; null for one that none can read: a key, a class, a bare sign or unit. */
function wayOf(node: ts.Node, text: string): ShownText["how"] | null {
  if (!/\p{L}{2}/u.test(text)) return null;
  if (isSaid(node)) return "said";
  if (ts.isJsxText(node) || ts.isTaggedTemplateExpression(node)) return "as it stands";
  const place = placeOf(node);
  if (place === "child") return "as it stands";
  if (place !== null)
    return SHOWN_ATTRIBUTES.test(place.name) && place.isHtml
      ? "as it stands"
      : HANDED_ON.test(place.name)
        ? "handed on"
        : null;
  if (ts.isTemplateExpression(node)) return isWords(text) ? "as it stands" : null;
  return inWords(node) || isWords(text) ? "handed on" : null;
}

/** Words rather than a key: two of them, or one with a capital; tags that say nothing left out. */
function isWords(marked: string): boolean {
  const text = marked.replace(/<\/?[a-z]+(?: class="[^"]*")?>/g, "");
  return (
    /\p{L}{2,}[,;:]? +\(?\p{L}{2,}/u.test(text) ||
    /^\p{Lu}\p{Ll}{2,}/u.test(text) ||
    / \p{L}{3,}|\p{L}{3,} /u.test(text)
  );
}

/** Whether a text stands in a call that says it. */
function isSaid(node: ts.Node): boolean {
  const call = ts.findAncestor(
    node,
    (one) =>
      ts.isCallExpression(one) || ts.isJsxElement(one) || ts.isStatement(one) || ts.isPropertyAssignment(one),
  );
  if (call === undefined || !ts.isCallExpression(call)) return false;
  return SAYS.test(call.expression.getText().replace(/^\w+\./, "")) && isWithin(node, call.arguments[0]);
}

function isWithin(node: ts.Node, whole: ts.Node | undefined): boolean {
  return whole !== undefined && node.pos >= whole.pos && node.end <= whole.end;
}

/** Where in a tag a text stands: between tags, or in an attribute. */
function placeOf(node: ts.Node): "child" | { readonly name: string; readonly isHtml: boolean } | null {
  let below = node;
  for (let at = node.parent; ; below = at, at = at.parent) {
    if (ts.isConditionalExpression(at) && at.condition !== below) continue;
    if (ts.isParenthesizedExpression(at) || ts.isTemplateSpan(at) || ts.isTemplateExpression(at)) continue;
    if (ts.isBinaryExpression(at) && /^(?:&&|\|\||\?\?|\+)$/.test(at.operatorToken.getText())) continue;
    if (ts.isJsxExpression(at)) continue;
    if (ts.isJsxAttribute(at)) {
      const tag = at.parent.parent.tagName.getText();
      return { name: at.name.getText(), isHtml: /^[a-z]/.test(tag) };
    }
    return ts.isJsxElement(at) || ts.isJsxFragment(at) ? "child" : null;
  }
}

/** Whether a text stands in a table of words. */
function inWords(node: ts.Node): boolean {
  return (
    ts.findAncestor(node, (one) => ts.isVariableDeclaration(one) && one.name.getText() === "words") !==
    undefined
  );
}

/** What no person reads: imports, types, keys, comparisons, and what is handed to the machine. */
function isForMachines(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return true;
  if (!ts.isStringLiteralLike(node) && !ts.isTemplateExpression(node)) return false;
  const { parent } = node;
  if (ts.isPropertyAssignment(parent)) return parent.name === node;
  if (ts.isElementAccessExpression(parent) || ts.isCaseClause(parent)) return true;
  if (ts.isBinaryExpression(parent)) return /^(?:[!=]==|in)$/.test(parent.operatorToken.getText());
  if (!ts.isCallExpression(parent) && !ts.isNewExpression(parent)) return false;
  return FOR_MACHINES.test(parent.expression.getText());
}

function literalOf(node: ts.Node): string | null {
  if (ts.isJsxText(node)) return node.text.replace(/\s+/g, " ").trim();
  if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) return node.text.trim();
  if (!ts.isTemplateExpression(node)) return null;
  return node.head.text + node.templateSpans.map(({ literal }) => `{}${literal.text}`).join("");
}

/** What stands between the tags of a page, and in the attributes of it that are read out. */
function textsOfHtml({ tag, template }: ts.TaggedTemplateExpression): readonly string[] {
  if (tag.getText() !== "html") return [];
  const whole = ts.isNoSubstitutionTemplateLiteral(template)
    ? template.text
    : template.head.text + template.templateSpans.map(({ literal }) => `{}${literal.text}`).join("");
  const attributes = Array.from(
    whole.matchAll(/\b(?:aria-label|title|alt)="([^"]*)"/g),
    ([, text = ""]) => text,
  );
  const between = whole.replace(/<!--.*?-->/gs, "").split(/<[^>]*>?/);
  return [...between, ...attributes].map((text) => text.replace(/\s+/g, " ").trim());
}
