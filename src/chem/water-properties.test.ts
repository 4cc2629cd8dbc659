import { describe, expect, it } from "vitest";
import {
  debyeHuckelA,
  debyeHuckelB_perAngstrom,
  log10Kw,
  waterDensity_kgPerL,
  waterPermittivity,
} from "./water-properties.ts";

describe("water properties", () => {
  it("density", () => {
    // Wagner & Pruss (2002), saturated liquid: 999.79, 997.00 and 958.37 kg/m³ at 273.16 K, 25 °C and 100 °C.
    expect(waterDensity_kgPerL(0.01)).toBeCloseTo(0.99979, 4);
    expect(waterDensity_kgPerL(25)).toBeCloseTo(0.997, 4);
    expect(waterDensity_kgPerL(99.97)).toBeCloseTo(0.95837, 4);
    expect(waterDensity_kgPerL(4)).toBeGreaterThan(waterDensity_kgPerL(0));
  });

  it("permittivity", () => {
    // Fernandez et al. (1997): 87.96 at 0 °C and 78.45 at 25 °C; Bradley & Pitzer's own 25 °C value 78.38.
    expect(waterPermittivity(25)).toBeCloseTo(78.38, 1);
    expect(Math.abs(waterPermittivity(0) - 87.96)).toBeLessThan(0.15);
  });

  it("Debye–Hückel parameters agree with values from other property formulas", () => {
    // Wagner & Pruss density with Fernandez permittivity: A 0.4899, 0.5093; B 0.3241, 0.3283 at 0 and 25 °C.
    expect(Math.abs(debyeHuckelA(0) - 0.4899)).toBeLessThan(0.002);
    expect(Math.abs(debyeHuckelA(25) - 0.5093)).toBeLessThan(0.002);
    expect(Math.abs(debyeHuckelB_perAngstrom(0) - 0.3241)).toBeLessThan(0.001);
    expect(Math.abs(debyeHuckelB_perAngstrom(25) - 0.3283)).toBeLessThan(0.001);
  });

  it("ion product", () => {
    expect(log10Kw(25)).toBeCloseTo(-13.995, 2);
    expect(log10Kw(10)).toBeLessThan(log10Kw(25));
  });

  it("refuses temperatures outside its range", () => {
    for (const f of [
      waterDensity_kgPerL,
      waterPermittivity,
      debyeHuckelA,
      debyeHuckelB_perAngstrom,
      log10Kw,
    ]) {
      expect(() => f(-1)).toThrow("temperature-out-of-range");
      expect(() => f(NaN)).toThrow("temperature-out-of-range");
      expect(() => f(101)).toThrow("temperature-out-of-range");
    }
  });
});
