import { describe, expect, test } from "vitest";
import { mapMeasured, readMeasured } from "./measured-text.ts";

function read(value: unknown): unknown {
  const result = readMeasured(value, "p");
  return result.ok ? result.value : (result.issues[0]?.code ?? "");
}

describe("readMeasured", () => {
  test.each([
    [92, { kind: "value", value: 92 }],
    ["92", { kind: "value", value: 92 }],
    ["1e-3", { kind: "value", value: 0.001 }],
    ["<0.05", { kind: "below", limit: 0.05 }],
    ["< 0,05", { kind: "below", limit: 0.05 }],
    ["≤5", { kind: "below", limit: 5 }],
    ["less than 5", { kind: "below", limit: 5 }],
    [">425", { kind: "above", limit: 425 }],
    ["425+", { kind: "above", limit: 425 }],
    ["20-30", { kind: "range", low: 20, high: 30 }],
    ["20–30", { kind: "range", low: 20, high: 30 }],
    ["20 to 30", { kind: "range", low: 20, high: 30 }],
    ["0,5 – 1,5", { kind: "range", low: 0.5, high: 1.5 }],
    ["20-20", { kind: "value", value: 20 }],
  ])("%j", (value, expected) => {
    expect(read(value)).toEqual(expected);
  });

  test.each([null, undefined, "", "  ", "-", "–", "not measured", "Not Measured", "n.m.", "N/A"])(
    "%j is not measured, never zero",
    (value) => {
      expect(read(value)).toEqual({ kind: "not measured" });
    },
  );

  test.each([
    "ND",
    "n.d.",
    "BDL",
    "<LOD",
    "not detected",
    "trace",
    "n.n.",
    "<BG",
    "No detectado",
    "non détecté",
  ])("%s asks for the limit", (value) => {
    expect(read(value)).toBe("limit-missing");
  });

  test("an ambiguous number stays ambiguous inside a limit or a range", () => {
    expect(read("<1.250")).toBe("number-ambiguous");
    expect(read("1.250–2.500")).toBe("number-ambiguous");
  });

  test("a range the wrong way round, and what is no reading at all", () => {
    expect(read("30-20")).toBe("range-reversed");
    expect(read(true)).toBe("number-expected");
    expect(read(NaN)).toBe("number-unreadable");
    expect(read({})).toBe("number-expected");
    expect(read("about 3")).toBe("number-unreadable");
  });
});

test("mapMeasured changes every number and nothing else", () => {
  const double = (x: number): number => 2 * x;
  expect(mapMeasured({ kind: "range", low: 1, high: 2 }, double)).toEqual({ kind: "range", low: 2, high: 4 });
  expect(mapMeasured({ kind: "below", limit: 1 }, double)).toEqual({ kind: "below", limit: 2 });
  expect(mapMeasured({ kind: "not measured" }, double)).toEqual({ kind: "not measured" });
});
