import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readingsOfSample, readSheet } from "../../../src/water/index.ts";

function published(name: string): string {
  return readFileSync(new URL(name, import.meta.url), "latin1");
}
function valuesOf(sample: Parameters<typeof readingsOfSample>[0]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    readingsOfSample(sample).map((r) => [r.parameter, `${r.value} ${r.unit}`.trim()]),
  );
}

describe("published tables of real waters", () => {
  it("reads all 58 wells of Irawan and Putranto (2016), whose lines end in bare CR", () => {
    const sheet = readSheet(published("semarang-groundwater.csv"), { bareUnit: "mg/L" });
    expect(sheet.samples).toHaveLength(58);
    const well = sheet.samples.find((sample) => sample.label === "Aorta, Kaligawe");
    // The figures of the published row; dissolved solids and conductivity have no unit there and are asked.
    expect(valuesOf(well!)).toEqual({
      pH: "7.81",
      potassium: "3.5 mg/L",
      calcium: "20.4 mg/L",
      magnesium: "1.5 mg/L",
      sodium: "128 mg/L",
      sulfate: "56.5 mg/L",
      chloride: "41.2 mg/L",
      bicarbonate: "275.8 mg/L",
    });
    expect(well!.entries.filter((entry) => entry.status === "asked").map((entry) => entry.parameter)).toEqual(
      ["dissolved solids", "conductivity"],
    );
  });

  it("reads one visit of the US Geological Survey with one line a result", () => {
    const sheet = readSheet(published("moenkopi-well.csv"));
    expect(sheet.layout).toBe("one line a result");
    expect(sheet.samples).toHaveLength(1);
    expect(valuesOf(sheet.samples[0]!)).toMatchObject({
      calcium: "270 mg/L",
      magnesium: "96.0 mg/L",
      sodium: "600 mg/L",
      sulfate: "660 mg/L",
      chloride: "750 mg/L",
      nitrate: "2.40 mg/L as NO3",
      hardness: "1100 mg/L as CaCO3",
      alkalinity: "543 mg/L as CaCO3",
      iron: "<10 ug/L",
      conductivity: "4800 uS/cm",
    });
    // Nitrate stands there as N too, and the ratio and the percentage of sodium are no sodium.
    const second = sheet.samples[0]!.entries.filter((entry) => entry.status === "second");
    expect(second.map((entry) => entry.raw)).toEqual(
      expect.arrayContaining(["Nitrate | Filtered field and/or lab | 0.55 | mg/L | as N"]),
    );
    expect(second.some((entry) => entry.parameter === "sodium")).toBe(false);
  });
});
