import { expect } from "vitest";
import { atomsIn, plus } from "./formula.ts";
import type { Atoms } from "./formula.ts";

/** Atoms of the components that salts and conditioners release. */
const COMPONENTS: Readonly<Record<string, string>> = {
  "IPA+": "C3H10N",
  "K+": "K",
  "NH4+": "NH4",
  "Na+": "Na",
  "DMA+": "C2H8N",
  "MEA+": "C2H8NO",
  "DEA+": "C4H12NO2",
  "DGA+": "C4H12NO2",
  "Chol+": "C5H14NO",
  "TIPA+": "C9H22NO3",
  "TEA+": "C6H16N",
  "Al+3": "Al",
  "Cl-": "Cl",
  "Br-": "Br",
  "SO4-2": "SO4",
  "NO3-": "NO3",
  "PO4-3": "PO4",
  "Cit-3": "C6H5O7",
  "Edta-4": "C10H12N2O8",
  "Hedp-4": "C2H4O7P2",
  "P3O10-5": "P3O10",
  "P2O7-4": "P2O7",
  "Glda-4": "C9H9NO8",
  "Mgda-3": "C7H8NO6",
  "Nta-3": "C6H6NO6",
  "Dtpa-5": "C14H18N3O10",
  "Gluc-": "C6H11O7",
  "Acet-": "C2H3O2",
  "CO3-2": "CO3",
  "Form-": "CHO2",
  "Prop-": "C3H5O2",
  "Lact-": "C3H5O3",
  "Tart-2": "C4H4O6",
  "Mal-2": "C4H4O5",
  "Hedta-3": "C10H15N2O7",
  "Edds-4": "C10H12N2O8",
  "Ids-4": "C8H7NO8",
  "Atmp-6": "C3H6NO9P3",
  "Dtpmp-10": "C9H18N3O15P5",
  "Pbtc-5": "C7H6O9P",
  "P6O18-6": "P6O18",
  "Paa-": "C3H3O2",
  "Mn+2": "Mn",
  "Zn+2": "Zn",
  "Cu+2": "Cu",
  "Fe+2": "Fe",
  "Fe+3": "Fe",
  "Mg+2": "Mg",
  "Ca+2": "Ca",
  H3BO3: "H3BO3",
};
/** Charge at the end of a component's name; boric acid has none, though its name ends in a digit. */
export const chargeOf = (component: string): number => {
  if (component === "H3BO3") return 0;
  const [, sign, size] = /([+-])(\d*)$/.exec(component) ?? [];
  return (sign === "-" ? -1 : 1) * Number(size === "" || size === undefined ? 1 : size);
};
/** Atoms of what is released. */
export const released = (counts: Readonly<Record<string, number>>): Atoms =>
  Object.entries(counts).reduce<Atoms>((sum, [component, n]) => {
    const formula = COMPONENTS[component];
    if (formula === undefined) throw new Error(`no atoms for ${component}`);
    return plus(sum, atomsIn(formula), n);
  }, {});
/** Number of hydrogen atoms left over; nothing else may be. */
export const onlyHydrogen = (atoms: Atoms): number => {
  const { H = 0, ...rest } = atoms;
  expect(Object.values(rest).filter((n) => Math.abs(n) > 1e-9)).toEqual([]);
  return H;
};
