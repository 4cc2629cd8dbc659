import { expect, test } from "vitest";
import { ISSUE_CODES_JOB } from "../agronomy/index.ts";
import { ISSUE_CODES_RECORDS } from "../records/index.ts";
import { ISSUE_CODES_UNITS } from "../units/index.ts";
import { ISSUE_CODES_WATER } from "../water/index.ts";
import { WORDING, hasWording, wordIssue } from "./wording.ts";

test.each([
  ["units", ISSUE_CODES_UNITS],
  ["water", ISSUE_CODES_WATER],
  ["job", ISSUE_CODES_JOB],
  ["records", ISSUE_CODES_RECORDS],
] as const)("every code of %s has words", (_, codes) => {
  expect(Object.keys(codes).length).toBeGreaterThan(10);
  expect(Object.keys(codes).filter((code) => !hasWording(code))).toEqual([]);
});

test("every sentence is short, plain and says what to do", () => {
  for (const [code, { say, mend }] of Object.entries(WORDING)) {
    for (const text of [say, mend ?? ""]) {
      for (const sentence of text.split(/[.;?!]\s/)) {
        expect(sentence.split(/\s+/).length, `${code}: ${sentence}`).toBeLessThanOrEqual(20);
      }
      expect(text, code).not.toMatch(/\b(invalid|please|oops|error|sorry)\b/i);
    }
    expect(say, code).toMatch(/[.?]$/);
    expect(mend ?? "", code).toMatch(/\.$/);
  }
});

test("an issue says where, what, what was received and expected, and what to do", () => {
  expect(
    wordIssue({
      code: "key-unknown",
      path: "spray.volme",
      received: "volme",
      expected: "one of: volume, tank",
      hint: "Did you mean “volume”?",
      severity: "error",
    }),
  ).toBe(
    "spray.volme: This key has no place here. Received: volme. Expected: one of: volume, tank. Did you mean “volume”?",
  );
  expect(wordIssue({ code: "list-empty", path: "mix", severity: "error" })).toBe(
    "mix: This list has no entry. Add at least one entry.",
  );
});

test("a code without words of its own is still readable", () => {
  expect(wordIssue({ code: "pump-too-slow", path: "spray", received: "3", severity: "error" })).toBe(
    "spray: Pump too slow. Received: 3. Check this entry against the document it came from.",
  );
  // Names that every object has must not be taken for codes.
  expect(wordIssue({ code: "constructor", path: "", severity: "error" })).toContain("Constructor.");
});
