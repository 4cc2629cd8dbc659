import { expect, test } from "vitest";
import { ISSUE_CODES_UNITS } from "./issue-codes.ts";
import { editDistance, nearestName } from "./text.ts";

test("codes are kebab-case and each has its line", () => {
  for (const [code, line] of Object.entries(ISSUE_CODES_UNITS)) {
    expect(code).toMatch(/^[a-z]+(?:-[a-z]+)*$/);
    expect(line.length).toBeGreaterThan(10);
  }
});

test("edits are counted with swaps of neighbours as one", () => {
  expect(editDistance("calcium", "calcium")).toBe(0);
  expect(editDistance("calcuim", "calcium")).toBe(1);
  expect(editDistance("", "abc")).toBe(3);
});

test("a near name is suggested, a far one is not", () => {
  expect(nearestName("calcuim", ["calcium", "magnesium"])).toBe("calcium");
  expect(nearestName("furlongs", ["mg/L", "°dH"])).toBeNull();
  expect(nearestName("", ["a"])).toBeNull();
});
