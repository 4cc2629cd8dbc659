import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { builtInTrade } from "../../src/agronomy/index.ts";
import { hydrolysisRate_perH } from "../../src/chem/index.ts";
import { atomsIn, massOf, minus } from "./formula.ts";
import { chargeOf, onlyHydrogen, released } from "./released.ts";

const data = new URL("../../data/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, data), "utf8"));
const trade = builtInTrade();

const ligandFile = read("ligands.json") as {
  ligands: {
    id: string;
    component: { name: string; charge: number };
    species: { formation: Record<string, number>; logK: { value: number } }[];
  }[];
};
const ligandCharge = (id: string | null): number =>
  ligandFile.ligands.find((l) => l.id === id)?.component.charge ?? 0;

/** The last digit of a CAS number follows from the others. */
function casHolds(cas: string): boolean {
  const digits = [...cas.replaceAll("-", "")].map(Number).reverse();
  const [check, ...rest] = digits;
  return rest.reduce((sum, digit, i) => sum + digit * (i + 1), 0) % 10 === check;
}

describe("actives", () => {
  it("are sixty at least, of every kind", () => {
    expect(trade.actives.length).toBeGreaterThanOrEqual(60);
    for (const type of ["herbicide", "insecticide", "fungicide", "growth regulator"])
      expect(trade.actives.filter((a) => a.type === type).length, type).toBeGreaterThan(1);
  });

  it("CAS numbers have the check digit they should", () => {
    const numbers = trade.actives.flatMap((a) => [
      a.cas ?? "",
      ...a.synonyms.filter((s) => /^\d+-\d\d-\d$/.test(s)),
    ]);
    expect(numbers.filter((cas) => !casHolds(cas))).toEqual([]);
  });

  it("no CAS number stands for two records", () => {
    const numbers = trade.actives.map((a) => a.cas);
    expect(numbers.filter((cas, i) => numbers.indexOf(cas) !== i)).toEqual([]);
  });

  it.each(trade.actives.filter((a) => a.ligand !== null && a.pKa.length > 0).map((a) => [a.id, a] as const))(
    "%s: the constants that are computed with are those of its list",
    (_id, active) => {
      const acids = (ligandFile.ligands.find((l) => l.id === active.ligand)?.species ?? []).filter(
        (s) => Object.keys(s.formation).length === 2 && (s.formation["H+"] ?? 0) > 0,
      );
      const cumulative = acids.map((s) => s.logK.value);
      const steps = cumulative.map((logK, i) => logK - (cumulative[i - 1] ?? 0));
      expect(steps.length).toBeGreaterThan(0);
      // Lists and constants differ by medium and temperature; half a unit is no slip.
      for (const step of steps)
        expect(Math.min(...active.pKa.map((p) => Math.abs(p.value - step))), String(step)).toBeLessThan(0.51);
    },
  );

  it.each(trade.actives.map((a) => [a.id, a] as const))(
    "%s: ranges are ranges, and each strength is of a formulation it is sold as",
    (_id, active) => {
      expect(active.typicalRate?.high_gPerHa).toBeGreaterThanOrEqual(
        active.typicalRate?.low_gPerHa ?? Infinity,
      );
      expect(active.typicalStrengths.length).toBeGreaterThan(0);
      for (const strength of active.typicalStrengths) {
        expect(active.formulations).toContain(strength.formulation);
        expect(strength.high).toBeGreaterThanOrEqual(strength.low);
        // Nothing holds more than itself, and no liquid much more than its own mass.
        expect(strength.high).toBeLessThanOrEqual(strength.per === "kg" ? 1000 : 1200);
      }
      for (const s of active.sorption) expect(s.high_LPerKg).toBeGreaterThanOrEqual(s.low_LPerKg);
      const factors = active.waterSensitivities.map((w) => w.factor);
      expect(factors.filter((f, i) => factors.indexOf(f) !== i)).toEqual([]);
    },
  );

  it("what is called a published rule was seen published", () => {
    const wrong = trade.actives.flatMap((a) =>
      a.waterSensitivities.filter((w) => w.evidence === "published rule" && w.fromMemory).map(() => a.id),
    );
    expect(wrong).toEqual([]);
  });

  it.each(trade.actives.map((a) => [a.id, a] as const))(
    "%s: molar masses follow from the formulas",
    (_id, active) => {
      expect(active.molarMass_gPerMol).toBeCloseTo(massOf(active.formula), 2);
      for (const form of active.forms) {
        expect(form.molarMass_gPerMol, form.id).toBeCloseTo(massOf(form.formula), 2);
        expect(form.acidEquivalent, form.id).toBeCloseTo(
          active.molarMass_gPerMol / form.molarMass_gPerMol,
          3,
        );
      }
    },
  );

  it.each(trade.actives.map((a) => [a.id, a] as const))(
    "%s: counter-ions make up the salt",
    (_id, active) => {
      for (const form of active.forms) {
        if (!form.dissociates) {
          expect(form.counterIons, form.id).toEqual({});
          continue;
        }
        const charge = Object.entries(form.counterIons).reduce((sum, [ion, n]) => sum + n * chargeOf(ion), 0);
        const rest = minus(minus(atomsIn(form.formula), atomsIn(active.formula)), released(form.counterIons));
        // Each positive charge stands where a proton of the acid stood; a permanent cation brings its own charge.
        const own = Math.max(0, ligandCharge(active.ligand));
        expect(onlyHydrogen(rest) + charge + own, form.id).toBeCloseTo(0, 9);
      }
    },
  );

  it("ids of ligands and counter-ions exist in the chemical data", () => {
    const ligands = (read("ligands.json") as { ligands: { id: string }[] }).ligands.map((l) => l.id);
    const bases = (read("counter-ions.json") as { counterIons: { component: { name: string } }[] })
      .counterIons;
    const simple = (read("components.json") as { components: { name: string }[] }).components;
    const components = [...bases.map((c) => c.component.name), ...simple.map((c) => c.name)];
    for (const active of trade.actives) {
      if (active.ligand !== null) expect(ligands, active.id).toContain(active.ligand);
      if (active.binding === "constants" || active.binding === "analogy")
        expect(active.ligand, active.id).not.toBeNull();
      for (const form of active.forms) {
        for (const ion of Object.keys(form.counterIons)) expect(components, form.id).toContain(ion);
      }
    }
  });

  it("their formulation codes exist and mix with water", () => {
    for (const active of trade.actives) {
      for (const code of active.formulations) {
        const type = trade.formulations.types.find((t) => t.code === code);
        expect(type, `${active.id} ${code}`).toBeDefined();
        expect(type?.mixingGroup, `${active.id} ${code}`).not.toBe("not-for-water");
      }
    }
  });

  it("half-lives are at one pH each, so that reading between them is unambiguous", () => {
    for (const active of trade.actives) {
      const pHs = active.halfLives.map((h) => h.pH);
      expect(new Set(pHs).size, active.id).toBe(pHs.length);
    }
  });

  it.each(trade.actives.filter((a) => a.rateLaw !== null).map((a) => [a.id, a] as const))(
    "%s: the rate law is true to the half-lives it was fitted to",
    (_id, active) => {
      const law = active.rateLaw;
      if (law === null) throw new Error("no law");
      for (const point of active.halfLives.filter((h) => h.halfLife_h !== null)) {
        const k = hydrolysisRate_perH(
          {
            kA: law.kA_LPerMolH,
            kN: law.kN_perH,
            kB: law.kB_LPerMolH,
            pKaCap: law.pKaCap,
            temperature_C: law.temperature_C,
          },
          point.pH,
          point.temperature_C,
          active.activationEnergy_kJPerMol.value,
        );
        const ratio = Math.LN2 / k / (point.halfLife_h ?? Number.NaN);
        // The worst fit, 1.26 times, is said in the law's locator.
        expect(Math.abs(Math.log(ratio)), `pH ${point.pH}`).toBeLessThan(Math.log(1.27));
      }
    },
  );
});
