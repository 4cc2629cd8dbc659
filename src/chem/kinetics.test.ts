import { describe, expect, it } from "vitest";
import {
  arrheniusFactor,
  halfLife_h,
  hydrolysisRate_perH,
  rateFromHalfLife_perH,
  rateFromShare_perH,
  shareIntact,
  timeToShare_h,
} from "./kinetics.ts";
import type { HydrolysisLaw } from "./kinetics.ts";

const schilder =
  "Schilder (2008) Effect of water pH on the stability of pesticides, Michigan State University Extension";
const bulletins = "usual table of extension bulletins (as reprinted in 2016)";
const registration = "US EPA registration hydrolysis studies, from memory";

/** Half-life [h], times [h] and share left [%]: the arithmetic is checked, not the half-lives. */
const TABLE: readonly (readonly [string, number, readonly number[], readonly number[], string])[] = [
  ["captan pH 5", 32, [8, 24, 48], [84.09, 59.46, 35.36], schilder],
  ["captan pH 7", 8, [2, 4, 24], [84.09, 70.71, 12.5], bulletins],
  ["captan pH 8", 1 / 6, [0.25, 0.5, 1], [35.36, 12.5, 1.56], schilder],
  ["captan pH 9", 1 / 30, [0.1, 0.25], [12.5, 0.55], bulletins],
  ["malathion pH 8", 19, [4, 12, 24], [86.42, 64.55, 41.66], bulletins],
  ["carbaryl pH 7", 576, [24, 72], [97.15, 91.7], bulletins],
  ["carbaryl pH 9, bulletins", 24, [6, 12, 24], [84.09, 70.71, 50], bulletins],
  [
    "dimethoate pH 6, bulletins",
    12,
    [4, 12, 24],
    [79.37, 50, 25],
    "widely repeated extension table, from memory",
  ],
  ["phosmet pH 7", 9.4, [2, 8, 24], [86.29, 55.44, 17.04], registration],
  ["malathion pH 9", 11.8, [4, 12, 24], [79.06, 49.42, 24.42], registration],
  ["carbaryl pH 9", 3.2, [1, 3.2, 8], [80.52, 50, 17.68], registration],
];

describe("half-life and share", () => {
  it.each(TABLE)("%s", (_name, halfLife, times, percents) => {
    const rate = rateFromHalfLife_perH(halfLife);
    times.forEach((time, i) => expect(100 * shareIntact(rate, time)).toBeCloseTo(percents[i]!, 2));
    expect(halfLife_h(rate)).toBeCloseTo(halfLife, 12);
  });

  it("half-life implied by a measured loss of 27 % in 48 h", () => {
    // Atwood, Sheets, Sutton & Leidy (1987) J. Agric. Food Chem. 35: formulated captan at pH 9.5.
    expect(halfLife_h(rateFromShare_perH(0.73, 48))).toBeCloseTo(105.7195, 3);
  });

  it.each([
    [8, 1.216],
    [19, 2.888],
    [192, 29.185],
  ])("time to lose 10 %% with a half-life of %d h", (halfLife, hours) => {
    expect(timeToShare_h(rateFromHalfLife_perH(halfLife), 0.9)).toBeCloseTo(hours, 3);
  });

  it("a rate of zero never halves", () => {
    expect(halfLife_h(0)).toBeNull();
    expect(shareIntact(0, 1000)).toBe(1);
    expect(timeToShare_h(0, 0.9)).toBeNull();
    expect(timeToShare_h(0, 1)).toBe(0);
  });

  it("refuses what is not a rate, a time or a share", () => {
    expect(() => shareIntact(-1, 1)).toThrow("rate-invalid");
    expect(() => shareIntact(NaN, 1)).toThrow("rate-invalid");
    expect(() => shareIntact(1, -1)).toThrow("time-invalid");
    expect(() => rateFromHalfLife_perH(0)).toThrow("half-life-invalid");
    expect(() => rateFromShare_perH(0, 1)).toThrow("share-invalid");
  });
});

describe("hydrolysis law", () => {
  // Fitted to half-lives of 110, 173 and 7.2 h at pH 5, 7 and 9, 25 °C (rimsulfuron, The Pesticide Manual, from memory).
  const capped: HydrolysisLaw = { kA: 355, kN: 0.00304, kB: 9320, pKaCap: 4, temperature_C: 25 };

  it.each([
    [5, 110],
    [7, 173],
    [9, 7.2],
  ])("gives the half-lives it was fitted to at pH %d", (pH, hours) => {
    expect(halfLife_h(hydrolysisRate_perH(capped, pH, 25, 75))! / hours).toBeCloseTo(1, 2);
  });

  it("the acid term levels off below the pKa", () => {
    const rate = (pH: number): number => hydrolysisRate_perH({ ...capped, kN: 0, kB: 0 }, pH, 25, 75);
    expect(rate(4)).toBeCloseTo((355 * 1e-4) / 2, 12);
    expect(rate(0)).toBeCloseTo(355 * 1e-4, 5);
    expect(rate(8) / (355 * 1e-8)).toBeCloseTo(1, 3);
  });

  it("without a cap the acid term follows the hydrogen ion", () => {
    const law: HydrolysisLaw = { kA: 8490, kN: 0, kB: 0, pKaCap: null, temperature_C: 25 };
    expect(hydrolysisRate_perH(law, 3, 25, 75) / hydrolysisRate_perH(law, 5, 25, 75)).toBeCloseTo(100, 9);
  });

  it("15 °C is 2.9 times slower than 25 °C at 75 kJ/mol", () => {
    expect(arrheniusFactor(75, 15, 25)).toBeCloseTo(2.86, 2);
    const ratio = hydrolysisRate_perH(capped, 7, 25, 75) / hydrolysisRate_perH(capped, 7, 15, 75);
    expect(ratio).toBeCloseTo(arrheniusFactor(75, 15, 25), 12);
  });

  it("at its own temperature the activation energy does not matter", () => {
    const law: HydrolysisLaw = { ...capped, temperature_C: 28 };
    expect(hydrolysisRate_perH(law, 7, 28, 55)).toBe(hydrolysisRate_perH(law, 7, 28, 100));
  });

  it("refuses negative constants and numbers that are none", () => {
    expect(() => hydrolysisRate_perH({ ...capped, kB: -1 }, 7, 25, 75)).toThrow("rate-law-invalid");
    expect(() => hydrolysisRate_perH(capped, NaN, 25, 75)).toThrow("rate-law-invalid");
  });
});
