import { expect, test } from "vitest";
import { loadLanguage } from "../index.ts";
import { unbroken } from "./unbroken.ts";

test("no line ends before a sign that stands apart, nor after an opening one; keys stay", () => {
  expect(unbroken({ "a : b": { c: "Reçu : « fer » ; 3 % ?" } })).toEqual({
    "a : b": { c: "Reçu\u00a0: «\u00a0fer\u00a0»\u00a0; 3\u00a0%\u00a0?" },
  });
});

test("French is set so in every message", async () => {
  const { pack } = await loadLanguage("fr");
  expect(
    JSON.stringify([pack.words, Object.values(pack.phrases ?? {}), Object.values(pack.page)]),
  ).not.toMatch(/ [:;?!»%]|« /);
});
