import { describe, expect, it } from "vitest";
import { compileSystem } from "./compile.ts";
import { equilibrate } from "./equilibrate.ts";
import { builtInSit, sit } from "./sit.ts";

const names = ["Na+", "Ca+2", "NH4+", "Cl-", "SO4-2", "NO3-", "Q-", "N"];
const charges = Float64Array.from([1, 2, 1, -1, -2, -1, -1, 0]);
const brine = [0.5, 0.1, 0.2, 0.4, 0.2, 0.05, 0.05, 0.3];
const all = Int32Array.from(names, (_, i) => i);

describe("the specific ion interaction theory", () => {
  it.each([0.001, 1, 12])(
    "gives the derivatives by some species, in their order, as those by all (brine × %f)",
    (factor) => {
      const terms = sit(builtInSit()).compile(names, charges);
      const m = Float64Array.from(brine, (value) => value * factor);
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

  it.each([0.001, 1, 8])("gives exact derivatives of all its terms (brine × %f)", (factor) => {
    const terms = sit(builtInSit()).compile(names, charges);
    const m = Float64Array.from(brine, (value) => value * factor);
    terms.evaluate(m, all);
    const jacobian = terms.jacobian.slice();
    const waterSlope = terms.waterSlope.slice();
    for (const j of all) {
      const d = 1e-5 * m[j]!;
      const at = (change: number): { lnGamma: Float64Array; water: number } => {
        terms.evaluate(
          m.map((value, i) => (i === j ? value + change : value)),
          new Int32Array(0),
        );
        return { lnGamma: terms.lnGamma.slice(), water: terms.lnWaterActivity };
      };
      const [up, down] = [at(d), at(-d)];
      for (const i of all)
        expect(jacobian[i * names.length + j]).toBeCloseTo((up.lnGamma[i]! - down.lnGamma[i]!) / (2 * d), 4);
      expect(waterSlope[j]).toBeCloseTo((up.water - down.water) / (2 * d), 5);
    }
  });

  // d(φ Σm) = Σ m_i d ln(γ_i m_i), by differences of what the model answers: its own derivatives take no part.
  const dilution = (t: number): readonly number[] => brine.map((value) => t * value);
  const other = [0.1, 0.9, 0.6, 1.4, 0.3, 0.3, 0.2, 0.1];
  const exchange = (t: number): readonly number[] => brine.map((value, i) => value + t * (other[i]! - value));
  it.each([
    ["diluted and concentrated", dilution, [0.001, 0.01, 0.1, 0.5, 1, 3, 7]],
    ["turned into another brine", exchange, [0.05, 0.3, 0.6, 0.95]],
  ] as const)("keeps the Gibbs–Duhem relation while a brine is %s", (_, path, places) => {
    const terms = sit(builtInSit()).compile(names, charges);
    const at = (t: number): { lnActivity: Float64Array; osmotic: number; water: number } => {
      const m = Float64Array.from(path(t));
      terms.evaluate(m, new Int32Array(0));
      const sum = m.reduce((total, value) => total + value, 0);
      return {
        lnActivity: terms.lnGamma.map((value, i) => value + Math.log(m[i]!)),
        osmotic: terms.osmoticCoefficient * sum,
        water: terms.lnWaterActivity,
      };
    };
    for (const t of places) {
      const d = 1e-4 * t;
      const [up, down] = [at(t + d), at(t - d)];
      const paid = path(t).reduce((sum, m, i) => sum + m * (up.lnActivity[i]! - down.lnActivity[i]!), 0);
      expect((up.osmotic - down.osmotic) / paid, `osmotic, ${String(t)}`).toBeCloseTo(1, 6);
      // 1 kg of water is 55.508 mol.
      expect((-55.508 * (up.water - down.water)) / paid, `water, ${String(t)}`).toBeCloseTo(1, 4);
    }
  });

  it("names pairs without a coefficient, and an ionic strength beyond its reach", () => {
    const terms = sit(builtInSit()).compile(names, charges);
    const m = Float64Array.from(brine);
    expect(terms.estimateNotes(m)).toContainEqual({ species: "Na+ Q-", as: "no coefficient, taken as zero" });
    expect(terms.rangeNotes(m)).toEqual([]);
    expect(terms.rangeNotes(m.map((value) => 5 * value))).toEqual([
      { what: "ionic strength", why: "above the fitted molality", limit: 3.5 },
    ]);
  });

  describe("says what a coefficient rests on that is not published", () => {
    const ions = ["K+", "Cl-", "SO4-2", "H2PO4-", "Edta-4"];
    const terms = sit(builtInSit()).compile(ions, Float64Array.from([1, -1, -2, -1, -4]));
    const notes = (...m: number[]): unknown => terms.estimateNotes(Float64Array.from(m));
    const fit = { species: "K+ SO4-2", as: "coefficient of our own fit" };
    const phosphate = { species: "K+ H2PO4-", as: "coefficient from memory" };
    const edta = { species: "K+ Edta-4", as: "coefficient from memory" };

    it("where its ions carry weight, and nothing where only published ones do", () => {
      expect(notes(1, 1, 0, 0, 0)).toEqual([]);
      expect(notes(2, 1, 0.5, 0, 0)).toEqual([fit]);
      expect(notes(2, 1, 0, 1, 0)).toEqual([phosphate]);
    });

    it("where it decides the coefficient of a trace: 1.07 kg/mol times 0.5 mol/kg, on its log10", () => {
      expect(notes(0.5, 0.5, 0, 0, 1e-5)).toEqual([edta]);
      expect(notes(0.5, 0.5, 0, 0, 0)).toEqual([]);
    });

    it("of a published one that one number does not carry, by how much", () => {
      const salt = sit(builtInSit()).compile(["K+", "NO3-"], Float64Array.of(1, -1));
      const as = "one coefficient, off by up to 0.04 in log10 of the salt alone";
      expect(salt.estimateNotes(Float64Array.of(0.5, 0.5))).toEqual([{ species: "K+ NO3-", as }]);
    });

    it("but not where it is neither: 0.14 kg/mol times 0.02 mol/kg moves log10 by 0.003", () => {
      expect(notes(0.02, 0.02, 0, 1e-5, 0)).toEqual([]);
    });
  });

  it("solves a system to balances that close", () => {
    const system = compileSystem({
      components: [
        { name: "H+", charge: 1 },
        { name: "Na+", charge: 1 },
        { name: "PO4-3", charge: -3 },
      ],
      species: [
        { name: "H+", charge: 1, formation: { "H+": 1 }, logK: 0 },
        { name: "OH-", charge: -1, formation: { "H+": -1 }, logK: -14 },
        { name: "Na+", charge: 1, formation: { "Na+": 1 }, logK: 0 },
        { name: "PO4-3", charge: -3, formation: { "PO4-3": 1 }, logK: 0 },
        { name: "HPO4-2", charge: -2, formation: { "PO4-3": 1, "H+": 1 }, logK: 12.35 },
        { name: "H2PO4-", charge: -1, formation: { "PO4-3": 1, "H+": 2 }, logK: 19.56 },
      ],
      solids: [],
    });
    const result = equilibrate(system, {
      totals_molPerL: { "Na+": 1.5, "PO4-3": 1 },
      electroneutral: "H+",
      activity: sit(builtInSit()),
    });
    if (!result.ok) throw new Error(result.detail);
    expect(result.value.residual).toBeLessThan(1e-10);
    expect(result.value.waterActivity).toBeGreaterThan(0.9);
  });
});
