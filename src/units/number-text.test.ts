import { describe, expect, test } from "vitest";
import { readNumberText, significantFigures } from "./number-text.ts";

function read(text: string, decimal?: "." | ","): number | string {
  const result = readNumberText(text, "p", decimal === undefined ? {} : { decimal });
  return result.ok ? result.value : (result.issues[0]?.code ?? "");
}

describe("readNumberText", () => {
  test.each([
    ["42", 42],
    ["0", 0],
    ["-0", 0],
    ["007", 7],
    ["12.5", 12.5],
    ["12,5", 12.5],
    ["0.125", 0.125],
    ["0,125", 0.125],
    [",5", 0.5],
    ["-3", -3],
    ["−3", -3],
    ["+ 3", 3],
    ["1e3", 1000],
    ["2E-3", 0.002],
    ["1.250e3", 1250],
    ["1 250", 1250],
    ["1\u202f250\u202f000,5", 1_250_000.5],
    ["1\u00a0250.5", 1250.5],
    ["1'250.50", 1250.5],
    ["1.250,5", 1250.5],
    ["1,250.5", 1250.5],
    ["1,250.500", 1250.5],
    ["1.250.000", 1_250_000],
    ["1250.125", 1250.125],
    ["12,50", 12.5],
  ])("%s is %d", (text, value) => {
    expect(read(text)).toBe(value);
  });

  test.each(["1.250", "1,250", "12.345", "999,000", "-1.250"])("%s has two readings and is asked", (text) => {
    expect(read(text)).toBe("number-ambiguous");
  });

  test("the two readings are named", () => {
    const result = readNumberText("1.250", "water.readings[0].value");
    expect(result.issues[0]).toMatchObject({
      path: "water.readings[0].value",
      received: "1.250",
      expected: "1250 or 1.25",
      severity: "error",
    });
  });

  test("the readings named have no second reading themselves", () => {
    const [issue] = readNumberText("1,125", "value").issues;
    expect(issue?.expected).toBe("1125 or 1.1250");
    expect(["1125", "1.1250"].map((text) => read(text))).toEqual([1125, 1.125]);
  });

  test("a known decimal mark settles them, and the wrong mark is refused", () => {
    expect(read("1.250", ".")).toBe(1.25);
    expect(read("1.250", ",")).toBe(1250);
    expect(read("1,25", ".")).toBe("number-mark-contradicts");
    expect(read("1.250,5", ".")).toBe("number-mark-contradicts");
  });

  test.each([
    "",
    "abc",
    "5.",
    ".",
    "10²",
    "½",
    "Infinity",
    "NaN",
    "0x10",
    "1e",
    "--3",
    "3-4",
    "12 mg/L",
    "１２",
  ])("%j is no number", (text) => {
    expect(read(text)).toBe("number-unreadable");
  });

  test.each(["12 34", "1,2,3", "1.25.000", "1,250,00.5", "1.250,5,5"])(
    "%s has marks that part no groups",
    (text) => {
      expect(read(text)).toBe("number-groups-malformed");
    },
  );

  test("a number beyond reach is an issue, not infinity", () => {
    expect(read("1e999")).toBe("number-too-large");
  });
});

describe("significantFigures", () => {
  test.each([
    ["12.50", 4],
    ["0,05", 1],
    ["250", 3],
    ["1 250", 4],
    ["0", 1],
    ["2e3", 1],
  ])("%s has %d", (text, figures) => {
    expect(significantFigures(text)).toBe(figures);
  });

  test("a text that is no number has none", () => {
    expect(significantFigures("<0.05")).toBeNull();
    expect(significantFigures("")).toBeNull();
  });
});
