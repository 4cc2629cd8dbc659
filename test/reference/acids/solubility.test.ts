import { describe, expect, it } from "vitest";
import {
  builtInThermo,
  compileSystem,
  davies,
  debyeHuckelA,
  equilibrate,
  systemFor,
} from "../../../src/chem/index.ts";
import { isWithin, record } from "../validation-recorder.ts";

/** Published solubilities of the acids of actives [mg/L], with the medium they were measured in. */
const PUBLISHED = [
  { solid: "2,4-D acid", component: "D24-", mgPerL: 311, pH: 1, T_C: 25, source: "Pesticide Manual" },
  { solid: "MCPA acid", component: "Mcpa-", mgPerL: 395, pH: 1, T_C: 25, source: "Pesticide Manual" },
  { solid: "mecoprop acid", component: "Mecp-", mgPerL: 620, pH: null, T_C: 25, source: "US EPA RSL table" },
  { solid: "dicamba acid", component: "Dica-", mgPerL: 6100, pH: null, T_C: 25, source: "Pesticide Manual" },
  {
    solid: "clopyralid acid",
    component: "Clop-",
    mgPerL: 7850,
    pH: null,
    T_C: 20,
    source: "Pesticide Manual",
  },
  { solid: "aminopyralid acid", component: "Amip-", mgPerL: 2480, pH: null, T_C: 18, source: "US EPA" },
  { solid: "picloram acid", component: "Picl-", mgPerL: 430, pH: null, T_C: 25, source: "US EPA RSL table" },
  { solid: "triclopyr acid", component: "Tric-", mgPerL: 408, pH: null, T_C: 25, source: "Pesticide Manual" },
  { solid: "fluroxypyr acid", component: "Flur-", mgPerL: 91, pH: null, T_C: 20, source: "Pesticide Manual" },
  { solid: "bentazon acid", component: "Bent-", mgPerL: 500, pH: null, T_C: 25, source: "US EPA RSL table" },
  {
    solid: "bromoxynil phenol",
    component: "Brom-",
    mgPerL: 130,
    pH: null,
    T_C: 25,
    source: "US EPA RSL table",
  },
] as const;

/** Relative half-width: what the activity coefficients left out of the conversion may move. */
const TOLERANCE = 0.1;

const thermo = builtInThermo();

describe("acids of actives dissolve as published", () => {
  it("every solid acid of an active is here", () => {
    const ligands = new Set(thermo.ligands.map(({ component }) => component));
    const acids = thermo.solids.filter(({ formation }) =>
      Object.keys(formation).every((name) => name === "H+" || ligands.has(name)),
    );
    expect(acids.map(({ id }) => id).sort()).toEqual(PUBLISHED.map(({ solid }) => solid).sort());
  });

  it.each(PUBLISHED)("$solid", ({ solid, component, mgPerL, pH, T_C, source }) => {
    const system = compileSystem(
      systemFor(thermo, {
        components: [component],
        temperature_C: T_C,
        solids: [solid],
        carbonate: "closed",
      }),
    );
    // More than dissolves; at a set pH the proton is given, else it follows from the charges.
    const result = equilibrate(system, {
      totals_molPerL: { [component]: 1 },
      activity: davies({ A: debyeHuckelA(T_C) }),
      ...(pH === null ? { electroneutral: "H+" } : { fixedLog10Activities: { "H+": -pH } }),
    });
    if (!result.ok) throw new Error(result.detail);
    const left = result.value.solids[system.solidIndex.get(solid)!]!;
    const { molarMass_gPerMol } = thermo.solids.find(({ id }) => id === solid)!;
    const ours = (1 - left) * molarMass_gPerMol * 1000;
    const tolerance = TOLERANCE * mgPerL;
    record({
      group: "solubility of acids of actives",
      what: `${solid}, ${pH === null ? "water" : `pH ${String(pH)}`}, ${String(T_C)} °C`,
      published: mgPerL,
      ours,
      unit: "mg/L",
      tolerance,
      within: isWithin(mgPerL, ours, tolerance),
      source,
    });
    expect(Math.abs(ours - mgPerL)).toBeLessThanOrEqual(tolerance);
  });
});
