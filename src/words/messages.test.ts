import { describe, expect, test } from "vitest";
import { AMERICAN } from "./en-us/index.ts";
import { GERMAN } from "./de/index.ts";
import { GROWER } from "./en/grower.ts";
import { ENGLISH_TEXTS } from "./en/index.ts";
import { FRENCH } from "./fr/index.ts";
import type { LanguagePack } from "./language.ts";
import { holesOf } from "./message.ts";
import { SPANISH } from "./es/index.ts";

const MOST_WORDS = 20;

type Texts = Readonly<Record<string, Readonly<Record<string, string>>>>;
const english: Texts = { ...ENGLISH_TEXTS, grower: GROWER };
const full: readonly [string, LanguagePack][] = [
  ["German", GERMAN],
  ["French", FRENCH],
  ["Spanish", SPANISH],
];
const all: readonly [string, LanguagePack][] = [["American", AMERICAN], ...full];

const messagesOf = (texts: Texts): readonly [string, string][] =>
  Object.entries(texts).flatMap(([area, messages]) =>
    Object.entries(messages).map(([key, text]): [string, string] => [`${area}.${key}`, text]),
  );
const ofPack = (pack: LanguagePack): readonly [string, string][] => messagesOf(pack.words as Texts);
const phrasesOf = (pack: LanguagePack): readonly [string, string][] => Object.entries(pack.phrases ?? {});

/** Sentences with more words than a person reads at a glance. A word has a letter, a figure or stands in a hole. */
const tooLong = (messages: readonly [string, string][]): readonly string[] =>
  messages.flatMap(([, text]) =>
    text
      .split(/(?<=[.!?]) (?=\p{Lu})/u)
      .filter(
        (sentence) => sentence.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length > MOST_WORDS,
      ),
  );

test("English says something in every message, in sentences of twenty words at most", () => {
  const messages = messagesOf(english);
  expect(messages.length).toBeGreaterThan(50);
  expect(messages.filter(([, text]) => text.trim() === "")).toEqual([]);
  expect(tooLong(messages)).toEqual([]);
});

describe.each(full)("%s", (_, pack) => {
  test("has every message", () => {
    const known = new Map(ofPack(pack));
    expect(
      messagesOf(english)
        .filter(([key]) => !known.has(key))
        .map(([key]) => key),
    ).toEqual([]);
  });
});

describe.each(all)("%s", (_, pack) => {
  test("has no empty message, and sentences of twenty words at most", () => {
    const messages = [...ofPack(pack), ...phrasesOf(pack), ...Object.entries(pack.page)];
    expect(messages.filter(([, text]) => text.trim() === "")).toEqual([]);
    expect(tooLong(messages)).toEqual([]);
  });

  test("has the holes of the English message, no more and no fewer", () => {
    const ofEnglish = new Map(messagesOf(english));
    const pairs = [
      ...ofPack(pack).map(([key, text]) => [ofEnglish.get(key) ?? "", text]),
      ...phrasesOf(pack),
      ...Object.entries(pack.page),
    ];
    const differ = pairs.filter(
      ([one = "", other = ""]) => holesOf(one).toSorted().join() !== holesOf(other).toSorted().join(),
    );
    expect(differ).toEqual([]);
  });
});
