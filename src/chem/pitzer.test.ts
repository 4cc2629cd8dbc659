import { describe, expect, it } from "vitest";
import { mixingIntegral } from "./electrostatic-mixing.ts";
import type { CompiledInteractions } from "./interaction-model.ts";
import { restsOnMemory } from "./estimate-notes.ts";
import { pairFunction } from "./pair-functions.ts";
import { builtInPitzer } from "./pitzer-data.ts";
import { chargeInName } from "./pitzer-parameters.ts";
import { pitzer } from "./pitzer.ts";
import { debyeHuckelA } from "./water-properties.ts";

const data = builtInPitzer();
const NONE = new Int32Array(0);

/** A brine with every kind of term: pairs, mixing of all charges, a neutral, ions without parameters. */
const names = ["Na+", "Ca+2", "NH4+", "Cl-", "SO4-2", "HCO3-", "CO2", "PO4-3", "H+", "Al+3", "X-5", "IPA+"];
const charges = Float64Array.of(1, 2, 1, -1, -2, -1, 0, -3, 1, 3, -5, 1);
const brine = Float64Array.of(1, 0.3, 2, 1.2, 0.8, 0.1, 0.05, 0.02, 0.01, 0.01, 0.001, 0.5);
const all = Int32Array.from(names, (_, i) => i);

function salt(cation: string, anion: string, z: readonly number[], temperature_C = 25): CompiledInteractions {
  return pitzer(data, { temperature_C }).compile([cation, anion], Float64Array.from(z));
}

describe("the integral of electrostatic mixing", () => {
  it.each([0.01, 0.1, 0.7, 1, 3, 10, 80])("at x = %f agrees with its quadrature", (x) => {
    const byQuadrature = (at: number): number => {
      const h = 5e-4;
      let sum = 0;
      for (let y = h / 2; y < 60; y += h) sum += -Math.expm1(-(at / y) * Math.exp(-y)) * y * y * h;
      return at / 4 - 1 + sum / at;
    };
    const out = { value: 0, derivative: 0, second: 0 };
    mixingIntegral(x, out);
    expect(out.value).toBeCloseTo(byQuadrature(x), 6);
    const d = 1e-3 * x;
    expect(out.derivative).toBeCloseTo((byQuadrature(x + d) - byQuadrature(x - d)) / (2 * d), 5);
    const above = { ...out };
    mixingIntegral(x + d, above);
    const below = { ...out };
    mixingIntegral(x - d, below);
    expect((above.derivative - below.derivative) / (2 * d) / out.second).toBeCloseTo(1, 4);
  });
});

describe("pairFunction", () => {
  it.each([1e-9, 1e-5, 9.9e-5, 1.01e-4, 0.3, 6])("at I = %f gives the derivatives of its own value", (I) => {
    const at = (ionicStrength: number) => {
      const out = { g: 0, slope: 0, curvature: 0 };
      pairFunction(2, ionicStrength, out);
      return out;
    };
    const d = 1e-3 * I;
    const { slope, curvature } = at(I);
    expect((at(I + d).g - at(I - d).g) / (2 * d) / slope).toBeCloseTo(1, 4);
    expect((at(I + d).slope - at(I - d).slope) / (2 * d) / curvature).toBeCloseTo(1, 4);
  });
});

describe("pitzer", () => {
  it.each([0.001, 1, 12])(
    "gives the derivatives by some species, in their order, as those by all (brine × %f)",
    (factor) => {
      const terms = pitzer(data).compile(names, charges);
      const m = brine.map((value) => value * factor);
      terms.evaluate(m, all);
      const [jacobian, waterSlope] = [terms.jacobian.slice(), terms.waterSlope.slice()];
      const some = Int32Array.of(5, 0, 3);
      terms.evaluate(m, some);
      some.forEach((j, b) => {
        expect(terms.waterSlope[b]).toBeCloseTo(waterSlope[j]!, 12);
        for (const i of all)
          expect(terms.jacobian[i * some.length + b]).toBeCloseTo(jacobian[i * names.length + j]!, 10);
      });
    },
  );

  it.each([0.001, 1, 12])("gives exact derivatives of all its terms (brine × %f)", (factor) => {
    const terms = pitzer(data).compile(names, charges);
    const m = brine.map((value) => value * factor);
    terms.evaluate(m, all);
    const jacobian = terms.jacobian.slice();
    const waterSlope = terms.waterSlope.slice();
    for (const j of all) {
      const d = 1e-5 * m[j]!;
      const at = (shift: number): { lnGamma: Float64Array; water: number } => {
        const moved = m.slice();
        moved[j] = moved[j]! + shift;
        terms.evaluate(moved, NONE);
        return { lnGamma: terms.lnGamma.slice(), water: terms.lnWaterActivity };
      };
      const high = at(d);
      const low = at(-d);
      for (const i of all) {
        const quotient = (high.lnGamma[i]! - low.lnGamma[i]!) / (2 * d);
        const size = 1e-6 * (1 + Math.abs(quotient));
        expect(Math.abs(jacobian[i * names.length + j]! - quotient)).toBeLessThan(size + 1e-10 / m[j]!);
      }
      const quotient = (high.water - low.water) / (2 * d);
      expect(Math.abs(waterSlope[j]! - quotient)).toBeLessThan(1e-6 + 1e-10 / m[j]!);
    }
  });

  it("keeps to the Gibbs–Duhem relation between solutes and water", () => {
    // Without ions that follow Davies' formula: Σ m d ln γ + Σ dm + d ln a_w / M_w = 0 along any path.
    const known = all.filter((i) => names[i] !== "Al+3" && names[i] !== "X-5");
    const terms = pitzer(data).compile(
      [...known].map((i) => names[i]!),
      Float64Array.from(known, (i) => charges[i]!),
    );
    const m = Float64Array.from(known, (i) => brine[i]!);
    let fromSolutes = 0;
    const steps = 2000;
    const at = (s: number): Float64Array => m.map((value) => value * s);
    terms.evaluate(at(0.2), NONE);
    let before = terms.lnGamma.slice();
    const start = terms.lnWaterActivity;
    for (let k = 1; k <= steps; k++) {
      const s = 0.2 + (0.8 * k) / steps;
      terms.evaluate(at(s), NONE);
      const middle = s - 0.4 / steps;
      for (let i = 0; i < m.length; i++) {
        fromSolutes += middle * m[i]! * (terms.lnGamma[i]! - before[i]!) + (m[i]! * 0.8) / steps;
      }
      before = terms.lnGamma.slice();
    }
    expect((start - terms.lnWaterActivity) / 0.018015 / fromSolutes).toBeCloseTo(1, 6);
  });

  it("ends in the Debye–Hückel limiting law on dilution", () => {
    for (const temperature_C of [5, 25, 40]) {
      const terms = salt("Ca+2", "Cl-", [2, -1], temperature_C);
      const I = 1e-6;
      terms.evaluate(Float64Array.of(I / 3, (2 * I) / 3), NONE);
      const limit = -Math.LN10 * debyeHuckelA(temperature_C) * Math.sqrt(I);
      expect(terms.lnGamma[1]! / limit).toBeCloseTo(1, 2);
      expect(terms.lnGamma[0]! / (4 * limit)).toBeCloseTo(1, 2);
      expect(terms.osmoticCoefficient).toBeGreaterThan(0.998);
    }
  });

  it("stays finite and in bounds at any composition", () => {
    const terms = pitzer(data).compile(names, charges);
    for (const factor of [0, 1e-300, 1e-20, 1, 1e3, 1e8]) {
      terms.evaluate(
        brine.map((value) => value * factor),
        all,
      );
      for (const value of [...terms.lnGamma, ...terms.jacobian, ...terms.waterSlope, terms.lnWaterActivity]) {
        expect(Number.isFinite(value)).toBe(true);
      }
      expect(Math.max(...terms.lnGamma.map(Math.abs))).toBeLessThan(120);
    }
  });

  it("holds coefficients of the same mixture above the strength it is held at", () => {
    const terms = pitzer(data, { holdAbove_molPerKg: 6 }).compile(["Na+", "Cl-"], Float64Array.of(1, -1));
    terms.evaluate(Float64Array.of(6, 6), NONE);
    const { 0: at6 } = terms.lnGamma;
    terms.evaluate(Float64Array.of(60, 60), NONE);
    expect(terms.lnGamma[0]).toBeCloseTo(at6!, 12);
    expect(terms.rangeNotes(Float64Array.of(60, 60))).toContainEqual({
      what: "ionic strength",
      why: "held",
      limit: 6,
    });
    expect(() => pitzer(data, { holdAbove_molPerKg: 0 })).toThrow("activity-option-invalid");
  });

  it("names the salt beyond its fit, the salt away from its temperature, and nothing else", () => {
    const ammonium = salt("NH4+", "SO4-2", [1, -2]);
    expect(ammonium.rangeNotes(Float64Array.of(10.9, 5.45))).toEqual([]);
    expect(ammonium.rangeNotes(Float64Array.of(12, 6))).toEqual([
      { what: "NH4+ SO4-2", why: "above the fitted molality", limit: 16.5 },
    ]);
    const cold = salt("NH4+", "SO4-2", [1, -2], 10);
    expect(cold.rangeNotes(Float64Array.of(1, 0.5))).toEqual([
      { what: "NH4+ SO4-2", why: "away from the fitted temperature", limit: 25 },
    ]);
    expect(salt("Na+", "Cl-", [1, -1], 10).rangeNotes(Float64Array.of(1, 1))).toEqual([]);
  });

  it("says what stands in for an ion without parameters, and counts pairing once", () => {
    const glyphosate = pitzer(data).compile(
      ["Na+", "IPA+", "H2Gly-", "Ca+2", "HGly-2", "Zz-", "Y-5"],
      Float64Array.of(1, 1, -1, 2, -2, -1, -5),
    );
    const m = Float64Array.of(0.1, 0.3, 0.3, 0.05, 0.05, 0.05, 0.01);
    expect(glyphosate.estimateNotes(m)).toEqual([
      { species: "IPA+", as: "NH4+" },
      { species: "H2Gly-", as: "charge type" },
      { species: "HGly-2", as: "HPO4-2" },
      { species: "Zz-", as: "charge type" },
      { species: "Y-5", as: "Davies" },
    ]);
    // Calcium with an anion of charge -2 and no data has no beta2: unlike calcium sulfate it does not pair.
    const paired = salt("Ca+2", "SO4-2", [2, -2]);
    const free = salt("Ca+2", "HGly-2", [2, -2]);
    const dilute = Float64Array.of(0.01, 0.01);
    paired.evaluate(dilute, NONE);
    free.evaluate(dilute, NONE);
    expect(free.lnGamma[0]! - paired.lnGamma[0]!).toBeGreaterThan(0.05);
  });

  it("takes temperature from the published coefficients: sodium chloride at 0 to 50 °C", () => {
    // From memory: γ± of NaCl at 1 mol/kg is about 0.02 lower at 0 °C than at 25 °C and hardly moves to 50 °C.
    const gamma = (temperature_C: number): number => {
      const terms = salt("Na+", "Cl-", [1, -1], temperature_C);
      terms.evaluate(Float64Array.of(1, 1), NONE);
      return Math.exp(terms.lnGamma[0]!);
    };
    expect(gamma(0)).toBeGreaterThan(0.62);
    expect(gamma(0)).toBeLessThan(gamma(25));
    expect(Math.abs(gamma(50) - gamma(25))).toBeLessThan(0.01);
  });

  describe("says what interaction is from memory where it tells, and not otherwise", () => {
    const ions = ["Ca+2", "NH4+", "Na+", "SO4-2", "Cl-", "H2PO4-", "IPA+"];
    const terms = pitzer(data).compile(ions, Float64Array.of(2, 1, 1, -2, -1, -1, 1));
    const memory = (...m: number[]): readonly string[] =>
      terms
        .estimateNotes(Float64Array.from(m))
        .filter(restsOnMemory)
        .map(({ species }) => species);

    it("calcium with ammonium, also where calcium is a trace", () => {
      expect(memory(0.01, 1, 0, 0.51, 0, 0, 0)).toEqual(["Ca+2 NH4+"]);
      expect(memory(1e-6, 11, 0, 5.5, 0, 0, 0)).toEqual(["Ca+2 NH4+"]);
    });

    it("not without either of them, nor where 2 · 0.06 kg/mol times 0.05 mol/kg moves log10 by 0.003", () => {
      expect(memory(0.01, 0, 1, 0.51, 0, 0, 0)).toEqual([]);
      expect(memory(0, 1, 0, 0.5, 0, 0, 0)).toEqual([]);
      expect(memory(0.01, 0.05, 0, 0.035, 0, 0, 0)).toEqual([]);
    });

    it("ammonium with dihydrogen phosphate, and an ion that stands on it", () => {
      expect(memory(0, 1, 0, 0, 0, 1, 0)).toEqual(["NH4+ H2PO4-"]);
      expect(memory(0, 0, 0, 0, 0, 1, 1)).toEqual(["IPA+ H2PO4-"]);
      expect(memory(0, 0, 1, 0, 0, 1, 0)).toEqual([]);
    });

    it("every record of the file that is marked so is named where its ions are strong", () => {
      const marked = [
        ...data.binaries.filter((one) => one.fromMemory).map((one) => [one.cation, one.anion]),
        ...data.mixing.filter((one) => one.fromMemory).map((one) => one.species),
      ];
      expect(marked.length).toBeGreaterThan(0);
      for (const of of marked) {
        const strong = pitzer(data).compile(
          of,
          Float64Array.from(of, (name) => chargeInName(name)),
        );
        expect(
          strong.estimateNotes(new Float64Array(of.length).fill(2)).map(({ species }) => species),
        ).toContain(of.join(" "));
      }
    });
  });
});
