import { expect, test } from "vitest";
import { recent } from "./recent.ts";

test("what was used last is kept as it is, and the one used longest ago goes first", () => {
  const things = new Map<string, object>();
  const get = (key: string): object => recent(things, key, 2, () => ({ key }));
  const a = get("a");
  const b = get("b");
  expect(get("a")).toBe(a);
  get("c");
  expect(get("a")).toBe(a);
  expect(get("b")).not.toBe(b);
  expect(things.size).toBe(2);
});
