import { describe, expect, it } from "vitest";
import { waterInLitre_kgPerL } from "./molality.ts";

describe("waterInLitre_kgPerL", () => {
  it("is the density less what is dissolved", () => {
    expect(waterInLitre_kgPerL(1.01, 20.2)).toBeCloseTo(0.9898, 12);
    expect(waterInLitre_kgPerL(0.997, 0)).toBe(0.997);
  });

  it("refuses a solution without water and numbers that are none", () => {
    expect(() => waterInLitre_kgPerL(1.2, 1300)).toThrow("solution-impossible");
    expect(() => waterInLitre_kgPerL(1, -1)).toThrow("solution-impossible");
    expect(() => waterInLitre_kgPerL(NaN, 1)).toThrow("solution-impossible");
  });
});
