import { messageParts } from "./message.ts";
import type { Message } from "./message.ts";

/** A text as it is to be shown. */
export interface Said {
  readonly text: string;
  /** True when the text stayed English in another language; HTML marks it so. */
  readonly isEnglish: boolean;
}

/** Translations by their English text, which may have holes: "Add {what} slowly." */
export type Phrases = Readonly<Record<string, string>>;

/** Puts texts of the data and of the engine, which are English, into one language. */
export interface PhraseBook {
  /** A sentence. What has no translation stays English and says so. */
  say(text: string): Said;
  /** A name or the label of a product made of names; one that is not known stays, for it may be the user's own. */
  name(text: string): string;
  /** Whether a text or a name has a translation. */
  has(text: string): boolean;
}

/** The book of English: everything stays. */
export const AS_WRITTEN: PhraseBook = {
  say: (text) => ({ text, isEnglish: false }),
  name: (text) => text,
  has: () => true,
};

interface Template {
  readonly pattern: RegExp;
  readonly names: readonly string[];
  readonly translation: string;
  readonly length: number;
}

const SENTENCE_END = /(?<=[.!?]) (?=\p{Lu})/u;
/** What may stand in a hole: anything within one sentence. */
const HOLE = "((?:(?!\\. ).)+)";
/** A template with hardly a word of its own, such as "{active} as {form}", speaks only of what is known. */
const FEWEST_OWN_SIGNS = 5;
/** A number, alone or with its unit. */
const AMOUNT = /^[-−]?\d+(?:\.\d+)?(?: \S+){0,3}$/;

/**
 * A phrase book. A text is looked up whole, then by the templates, the one with most words of its own first, then
 * sentence by sentence. What stands in a hole is put into the language in turn; a number gets the language's decimal sign.
 */
export function phraseBook(phrases: Phrases, decimal: "." | ","): PhraseBook {
  const templates = Object.entries(phrases)
    .filter(([english]) => english.includes("{"))
    .map(([english, translation]) => templateOf(english, translation))
    .sort((a, b) => b.length - a.length);
  const known = new Map<string, string | null>();

  const lookUp = (text: string): string | null => {
    let found = known.get(text);
    if (found === undefined) {
      found =
        (Object.hasOwn(phrases, text) ? phrases[text] : undefined) ??
        byTemplate(text) ??
        bySentence(text) ??
        named(text);
      known.set(text, found);
    }
    return found;
  };
  const byTemplate = (text: string): string | null => {
    for (const { pattern, names, translation, length } of templates) {
      const found = pattern.exec(text);
      if (found === null) continue;
      const pieces = found.slice(1);
      if (length < FEWEST_OWN_SIGNS && !pieces.every(isKnown)) continue;
      const values = new Map(names.map((name, i) => [name, inHole(pieces[i] ?? "")]));
      return translation.replace(/\{(\w+)\}/g, (hole, name: string) => values.get(name) ?? hole);
    }
    return null;
  };
  const isKnown = (text: string): boolean => AMOUNT.test(text) || lookUp(text) !== null;
  const inHole = (text: string): string =>
    lookUp(text) ?? (AMOUNT.test(text) ? text.replace(".", decimal) : text);

  const bySentence = (text: string): string | null => {
    const sentences = text.split(SENTENCE_END);
    return sentences.length < 2 ? null : together(sentences, (all) => all.join(" "));
  };

  /** "name (form) SL", "name, form", "one + other" and "name: sentence", where all names are known. */
  const named = (text: string): string | null => {
    const code = / [A-Z]{2}(?:-SB)?$/.exec(text)?.[0];
    if (code !== undefined) return together([text.slice(0, -code.length)], ([name]) => `${name}${code}`);
    const pieces = text.split(" + ");
    if (pieces.length > 1) return together(pieces, (all) => all.join(" + "));
    const form = /^(.+?) \((.+)\)$/.exec(text);
    if (form !== null) return together(form.slice(1), ([name, of]) => `${name} (${of})`);
    for (const mark of [", ", ": "]) {
      const at = text.indexOf(mark);
      if (at < 1) continue;
      const found = together([text.slice(0, at), text.slice(at + 2)], (both) => both.join(mark));
      if (found !== null) return found;
    }
    return null;
  };
  const together = (
    pieces: readonly string[],
    join: (translated: readonly string[]) => string,
  ): string | null => {
    const translated = pieces.map(lookUp).filter((piece) => piece !== null);
    return translated.length === pieces.length ? join(translated) : null;
  };

  return {
    say: (text) => ({ text: lookUp(text) ?? text, isEnglish: lookUp(text) === null }),
    name: (text) => lookUp(text) ?? text,
    has: (text) => lookUp(text) !== null,
  };
}

function templateOf(english: string, translation: string): Template {
  const parts = messageParts(english as Message<string>);
  const source = parts.map((part) => ("hole" in part ? HOLE : patternOf(part.text))).join("");
  return {
    pattern: new RegExp(`^${source}$`),
    names: parts.flatMap((part) => ("hole" in part ? [part.hole] : [])),
    translation,
    length: parts.reduce((sum, part) => sum + ("text" in part ? part.text.length : 0), 0),
  };
}

function patternOf(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
