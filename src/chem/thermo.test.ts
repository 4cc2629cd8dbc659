import { describe, expect, it } from "vitest";
import { davies } from "./activity.ts";
import { constantAt, daviesTerm, logKAt, logKAtZeroI, standardUncertaintyOf } from "./thermo-constants.ts";
import { metalOf, metalsOf, uncomputedPairs } from "./thermo-metals.ts";
import {
  airCarbonDioxide_atm,
  co2Log10Activity,
  DRYING_SOLIDS,
  henryLogKAt,
  sourcesUsed,
  systemFor,
  systemUncertainties,
  TANK_SOLIDS,
} from "./thermo-system.ts";
import { builtInThermo, componentInfo, thermoFrom } from "./thermo.ts";
import type { ThermoFiles } from "./thermo.ts";
import { debyeHuckelA } from "./water-properties.ts";

const thermo = builtInThermo();
const species = (id: string) => thermo.species.find((s) => s.id === id)!;
const solid = (id: string) => thermo.solids.find((s) => s.id === id)!;

describe("constants", () => {
  it("the Davies term is that of the activity model", () => {
    const model = davies({ A: debyeHuckelA(20), b: 0.3, holdAbove_molPerL: 0.5 });
    for (const I of [0.001, 0.1, 0.5, 2]) {
      expect(daviesTerm(I, 20)).toBeCloseTo(-model.lnGamma(1, "Na+", I) / Math.LN10, 12);
    }
  });

  it("a constant measured at an ionic strength comes back there with the same model", () => {
    const I = 0.1;
    const back = logKAtZeroI(species("CaGly-")).value + daviesTerm(I, 25) * species("CaGly-").deltaZ2;
    expect(back).toBeCloseTo(3.29, 12);
    expect(species("CaGly-").deltaZ2).toBe(1 - 4 - 9);
  });

  it("calcium hydrogen glyphosate is brought to zero ionic strength", () => {
    // log Ksp −15.46 at I = 0.1 for Ca+2 + Gly-3 + H+: squared charges 4 + 9 + 1.
    const record = solid("calcium hydrogen glyphosate");
    expect(record.kinetics).toBe("nucleation");
    expect(logKAtZeroI(record).value).toBeCloseTo(-15.46 - 14 * daviesTerm(0.1, 25), 12);
    expect(logKAtZeroI(record).value).toBeCloseTo(-16.96, 1);
  });

  it("a chain is corrected step by step", () => {
    const record = species("MgH2Gly+");
    const expected = 4.58 + (8.81 + 2 * daviesTerm(0.1, 25)) + (3.28 + 12 * daviesTerm(0.1, 25));
    expect(logKAtZeroI(record).value).toBeCloseTo(expected, 12);
  });

  it("the uncertainty grows above 0.5 mol/L and not below", () => {
    expect(logKAtZeroI(species("CaGly-")).standardUncertainty).toBe(0.1);
    const far = species("Fe(Cit)2-3");
    expect(far.logK.conditions.I_molPerL).toBe(1);
    expect(logKAtZeroI(far).standardUncertainty).toBeGreaterThan(far.logK.uncertainty.value);
  });

  it("a half-width counts as a rectangular distribution", () => {
    expect(standardUncertaintyOf({ kind: "half-width", value: 0.3 })).toBeCloseTo(0.3 / Math.sqrt(3), 12);
    expect(standardUncertaintyOf({ kind: "standard", value: 0.3 })).toBe(0.3);
  });

  it("temperature: expression, else enthalpy, else unchanged and less certain", () => {
    expect(logKAt(species("NH3"), 25)).toBeCloseTo(-9.244, 2);
    const withEnthalpy = species("CaGly-");
    expect(withEnthalpy.analytic).toBeNull();
    const shift = (4.2 / (Math.LN10 * 0.008314462618)) * (1 / 298.15 - 1 / 283.15);
    expect(logKAt(withEnthalpy, 10)).toBeCloseTo(logKAtZeroI(withEnthalpy).value + shift, 10);
    const without = species("MgGly-");
    expect(without.dH_kJPerMol).toBeNull();
    expect(constantAt(without, 10).value).toBe(constantAt(without, 25).value);
    expect(constantAt(without, 10).standardUncertainty).toBeGreaterThan(
      constantAt(without, 25).standardUncertainty,
    );
  });

  it("a constant of 20 °C is unchanged at 20 °C", () => {
    const measuredAt20 = thermo.species.find((s) => s.logK.conditions.T_C === 20)!;
    const record = { ...measuredAt20, dH_kJPerMol: -10, analytic: null };
    expect(logKAt(record, 20)).toBe(logKAtZeroI(record).value);
    expect(logKAt(record, 25)).not.toBe(logKAtZeroI(record).value);
  });
});

describe("systems", () => {
  const request = { temperature_C: 25, solids: "none", carbonate: "closed" } as const;

  it("hold the free components and every species made of them alone, without water", () => {
    const system = systemFor(thermo, { ...request, components: ["Ca+2", "CO3-2"] });
    expect(system.components.map((c) => c.name)).toEqual(["H+", "Ca+2", "CO3-2"]);
    expect(system.species.map((s) => s.name).sort()).toEqual(
      ["H+", "Ca+2", "CO3-2", "OH-", "HCO3-", "CO2", "CaCO3", "CaHCO3+", "CaOH+"].sort(),
    );
    expect(system.species.flatMap((s) => Object.keys(s.formation))).not.toContain("H2O");
    expect(system.solids).toEqual([]);
  });

  it("every species keeps its charge, closed and open", () => {
    for (const carbonate of ["closed", "open"] as const) {
      const system = systemFor(thermo, {
        ...request,
        carbonate,
        components: ["Ca+2", "Mg+2", "Na+", "Fe+3", "CO3-2", "SO4-2", "Gly-3", "IPA+", "Cit-3"],
        solids: DRYING_SOLIDS,
      });
      const z = new Map(system.components.map((c) => [c.name, c.charge]));
      for (const s of system.species) {
        const sum = Object.entries(s.formation).reduce((total, [name, n]) => total + n * z.get(name)!, 0);
        expect(sum, s.name).toBe(s.charge);
        expect(Object.values(s.formation)).not.toContain(0);
      }
      expect(system.species.length).toBeGreaterThan(60);
    }
  });

  it("open to the air, carbonate is written as CO2 less two protons", () => {
    const closed = systemFor(thermo, { ...request, components: ["Ca+2", "CO3-2"], solids: ["calcite"] });
    const open = systemFor(thermo, {
      ...request,
      components: ["Ca+2"],
      solids: ["calcite"],
      carbonate: "open",
    });
    const of = (system: typeof closed, name: string) => system.species.find((s) => s.name === name)!;
    const gas = of(closed, "CO2").logK;
    expect(open.components).toContainEqual({ name: "CO2", charge: 0 });
    expect(of(open, "CO2")).toEqual({ name: "CO2", charge: 0, formation: { CO2: 1 }, logK: 0 });
    expect(of(open, "CO3-2").formation).toEqual({ CO2: 1, "H+": -2 });
    expect(of(open, "CO3-2").logK).toBe(-gas);
    expect(of(open, "HCO3-").formation).toEqual({ CO2: 1, "H+": -1 });
    expect(of(open, "HCO3-").logK).toBeCloseTo(-6.352, 2);
    expect(open.solids[0]!.formation).toEqual({ "Ca+2": 1, CO2: 1, "H+": -2 });
    // Same saturation: with log a of Ca −3, H −8 and CO2 −5, carbonate is −5 + 16 − log K(CO2).
    const carbonate = -5 + 16 - gas;
    const saturationClosed = -3 + carbonate - closed.solids[0]!.logKsp;
    const saturationOpen = -3 - 5 + 16 - open.solids[0]!.logKsp;
    expect(saturationOpen).toBeCloseTo(saturationClosed, 12);
    // And the same species: bicarbonate from carbonate and from carbon dioxide.
    expect(carbonate - 8 + of(closed, "HCO3-").logK).toBeCloseTo(-5 + 8 + of(open, "HCO3-").logK, 12);
  });

  it("alkali pairs of ligands only when asked for; those of the inorganic set always", () => {
    const names = (alkaliPairs?: boolean) =>
      systemFor(thermo, {
        ...request,
        components: ["Na+", "Gly-3", "SO4-2"],
        ...(alkaliPairs === undefined ? {} : { alkaliPairs }),
      }).species.map((s) => s.name);
    expect(names()).toContain("NaSO4-");
    expect(names()).not.toContain("NaGly-2");
    expect(names(true)).toContain("NaGly-2");
  });

  it("the fast solids leave out glyphosate's calcium salt, gypsum and calcite", () => {
    const system = systemFor(thermo, {
      ...request,
      components: ["Ca+2", "SO4-2", "CO3-2", "Gly-3", "Fe+3", "PO4-3"],
      solids: "fast",
    });
    const names = system.solids.map((s) => s.name);
    expect(names).toContain("Fe(OH)3(am)");
    expect(names).toContain("brushite");
    for (const slow of ["gypsum", "calcite", "calcium hydrogen glyphosate"])
      expect(names).not.toContain(slow);
    expect(names.every((name) => TANK_SOLIDS.includes(name))).toBe(true);
  });

  it("unknown names are refused", () => {
    expect(() => systemFor(thermo, { ...request, components: ["Unobtainium+2"] })).toThrow(
      "component-unknown",
    );
    expect(() => systemFor(thermo, { ...request, components: ["constructor"] })).toThrow("component-unknown");
    expect(() => systemFor(thermo, { ...request, components: [], solids: ["marble"] })).toThrow(
      "solid-unknown",
    );
  });

  it("uncertainties come by name for all that is not a free component", () => {
    const system = systemFor(thermo, { ...request, components: ["Ca+2", "SO4-2"], solids: ["gypsum"] });
    const { logK, logKsp } = systemUncertainties(thermo, system, 25);
    expect(Object.keys(logK).sort()).toEqual(["CaOH+", "CaSO4", "HSO4-", "OH-"]);
    expect(logKsp).toEqual({ gypsum: 0.03 / Math.sqrt(3) });
  });

  it("names the sources behind a system, the air's with it when it is open", () => {
    const closed = systemFor(thermo, { ...request, components: ["Ca+2", "Gly-3"] });
    expect(sourcesUsed(thermo, closed)).toEqual(["epa-minteqa2-v4-1999", "nist-srd46-v8", "nordstrom-1990"]);
    const open = systemFor(thermo, { ...request, components: ["Ca+2"], carbonate: "open" });
    expect(sourcesUsed(thermo, open)).toContain("noaa-gml-co2");
    expect(sourcesUsed(thermo, open)).toContain("plummer-busenberg-1982");
    for (const key of sourcesUsed(thermo, open)) expect(thermo.sources).toHaveProperty(key);
  });
});

describe("gases", () => {
  it("carbon dioxide in equilibrium with the air", () => {
    // log KH −1.468 at 25 °C (Plummer & Busenberg 1982).
    expect(co2Log10Activity(thermo, 25, 10 ** -3.5)).toBeCloseTo(-4.968, 2);
    expect(co2Log10Activity(thermo, 25)).toBeCloseTo(-1.468 + Math.log10(airCarbonDioxide_atm(thermo)), 2);
    expect(co2Log10Activity(thermo, 5)).toBeGreaterThan(co2Log10Activity(thermo, 25));
    expect(() => co2Log10Activity(thermo, 25, 0)).toThrow("pressure-invalid");
  });

  it("Henry's law and the dissolution of the gas agree", () => {
    for (const gas of thermo.gases) {
      const direct = henryLogKAt(thermo, gas.aqueous, 25);
      expect(logKAt(gas, 25) + logKAt(species(gas.aqueous), 25)).toBeCloseTo(direct, 2);
    }
  });
});

describe("lookups", () => {
  it("component information counts the free form", () => {
    expect(componentInfo(thermo, "Gly-3").molarMass_gPerMol).toBeCloseTo(169.073 - 3 * 1.008, 2);
    expect(componentInfo(thermo, "Ca+2")).toEqual({
      name: "Ca+2",
      charge: 2,
      molarMass_gPerMol: 40.078,
      kind: "metal",
    });
    expect(componentInfo(thermo, "IPA+").kind).toBe("counter-ion");
    expect(componentInfo(thermo, "CO2").molarMass_gPerMol).toBeCloseTo(44.009, 3);
    expect(() => componentInfo(thermo, "toString")).toThrow("component-unknown");
  });

  it("metals of a species", () => {
    expect(metalOf(species("CaHGly").formation)).toBe("calcium");
    expect(metalOf(species("FeGly").formation)).toBe("iron");
    expect(metalOf(species("FeGly-").formation)).toBe("iron");
    expect(metalOf(species("HGly-2").formation)).toBeNull();
    expect(metalOf(species("NaGly-2").formation)).toBeNull();
    expect(metalsOf({ "Ca+2": 1, "Fe+3": 2, "H+": -3 })).toEqual({ calcium: 1, iron: 2 });
    expect(metalOf({ "Ca+2": 1, "Fe+3": 2 })).toBe("iron");
  });

  it("says which bindings cannot be computed", () => {
    const pairs = uncomputedPairs(thermo, ["Fe+3", "Ca+2", "P3O10-5", "Dica-"]);
    expect(pairs.map((p) => `${p.ligand} ${p.metal}`).sort()).toEqual([
      "Dica- Ca+2",
      "Dica- Fe+3",
      "P3O10-5 Fe+3",
    ]);
    expect(pairs.every((p) => p.why.length > 20)).toBe(true);
  });

  it("the built-in data set is one frozen object", () => {
    expect(builtInThermo()).toBe(thermo);
    expect(Object.isFrozen(thermo.species[0]!.formation)).toBe(true);
  });

  it("a data set with a repeated name or an unknown component is refused", () => {
    const empty: ThermoFiles = {
      components: { version: "0.0.0", components: [thermo.components["H+"]!, thermo.components["H+"]!] },
      aqueous: { species: [] },
      solids: { solids: [], tankSolids: [], dryingSolids: [], leftOut: [], notInData: [] },
      gases: { air: thermo.air, gases: [] },
      ligands: { ligands: [], missing: [] },
      counterIons: { counterIons: [] },
      sources: {},
    };
    expect(() => thermoFrom(empty)).toThrow("duplicate-name");
    const unknown = {
      ...empty,
      components: { version: "0.0.0", components: [] },
      aqueous: { species: [species("OH-")] },
    };
    expect(() => thermoFrom(unknown)).toThrow("component-unknown");
  });
});
