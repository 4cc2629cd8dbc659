import { expect, test } from "vitest";
import components from "../../data/components.json" with { type: "json" };
import { MOLAR_MASSES } from "./masses.ts";

test("molar masses are those of the thermodynamic data", () => {
  const names: Readonly<Record<string, keyof typeof MOLAR_MASSES>> = {
    "Ca+2": "Ca",
    "Mg+2": "Mg",
    "Na+": "Na",
    "K+": "K",
    "NH4+": "NH4",
    "Fe+3": "Fe",
    "Mn+2": "Mn",
    "Al+3": "Al",
    "Zn+2": "Zn",
    "Cu+2": "Cu",
    "CO3-2": "CO3",
    "SO4-2": "SO4",
    "Cl-": "Cl",
    "NO3-": "NO3",
    "PO4-3": "PO4",
    "F-": "F",
    H4SiO4: "H4SiO4",
    H3BO3: "H3BO3",
  };
  for (const [name, key] of Object.entries(names)) {
    const component = components.components.find((c) => c.name === name);
    expect(component?.molarMass_gPerMol, name).toBeCloseTo(MOLAR_MASSES[key], 2);
  }
});
