import { describe, expect, it } from "vitest";
import { readSheet } from "../../water/index.ts";
import { sheetView } from "../engine/sheet-view.ts";
import { blankDraft } from "../job/draft.ts";
import { openQuestions, readingsTaken, withSheet } from "./take-over.ts";

const SHEET = `Sample: Hill bore
Calcium 92 mg/L
Nitrate 12 mg/L
Iron ND mg/L
Arsenic <1 µg/L`;

function firstSample() {
  const view = sheetView(readSheet(SHEET));
  const sample = view.samples[0];
  if (sample === undefined) throw new Error("no sample");
  return sample;
}

describe("taking over a sheet", () => {
  const sample = firstSample();
  const at = (parameter: string) => sample.entries.findIndex((entry) => entry.parameter === parameter);

  it("takes what is clear and leaves what is asked until it is answered", () => {
    expect(readingsTaken(sample, {})).toEqual([{ parameter: "calcium", value: "92", unit: "mg/L" }]);
    expect(openQuestions(sample, {})).toBe(2);
  });

  it("takes an answer, and a value to be mended as it stands", () => {
    const answers = { [at("nitrate")]: 1, [at("iron")]: "as it stands" } as const;
    expect(openQuestions(sample, answers)).toBe(0);
    expect(readingsTaken(sample, answers).slice(1)).toEqual([
      { parameter: "nitrate", value: "12", unit: "mg/L as N" },
      { parameter: "iron", value: "ND", unit: "mg/L" },
    ]);
  });

  it("puts the whole water test in place of the one on the form", () => {
    const { water } = withSheet(blankDraft(), sample, {});
    expect(water).toMatchObject({ source: "Hill bore", method: "laboratory" });
    expect(water.readings.map((row) => row.parameter)).toEqual(["calcium"]);
  });

  it("loses no line of the sheet", () => {
    const view = sheetView(readSheet(SHEET));
    const lines = [...sample.entries.map((entry) => entry.line), ...view.other.map((text) => text.line)];
    expect(lines.sort((a, b) => a - b)).toEqual([1, 2, 3, 4, 5]);
  });

  it("takes a number with two readings as the decimal mark of the sheet settles it", () => {
    const values = (text: string, decimal?: "," | ".") =>
      sheetView(readSheet(text, decimal === undefined ? {} : { decimal })).samples.flatMap((one) =>
        readingsTaken(one, {}).map(({ value }) => value),
      );
    expect(values("Calcium 1,250 mg/L\npH 7.9")).toEqual(["1250", "7.9"]);
    expect(values("Calcium 1,250 mg/L")).toEqual([]);
    expect(values("Calcium 1,250 mg/L", ",")).toEqual(["1.25"]);
  });
});
