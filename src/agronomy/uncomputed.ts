import { metalsOf, uncomputedPairs } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import type { Tank } from "./tank.ts";

/** Bindings that no constants exist for, one sentence for each ligand and reason. */
export function uncomputedTexts(thermo: ThermoData, tank: Tank): readonly string[] {
  const metals = new Map<
    string,
    { readonly ligand: string; readonly why: string; readonly names: Set<string> }
  >();
  for (const { ligand, metal, why } of uncomputedPairs(thermo, Object.keys(tank.totals_molPerL))) {
    const key = `${ligand} ${why}`;
    const found = metals.get(key) ?? { ligand: ligandName(thermo, ligand), why, names: new Set() };
    found.names.add(Object.keys(metalsOf({ [metal]: 1 }))[0] ?? metal);
    metals.set(key, found);
  }
  return [...metals.values()].map(
    ({ ligand, why, names }) => `How ${ligand} binds ${listed([...names])} is not computed. ${why}`,
  );
}

/** A name without what explains it: "fosetyl" of "fosetyl (ethyl hydrogen phosphonate)". */
export function shortName(name: string): string {
  return name.replace(/ \(.*\)$/, "");
}

function ligandName(thermo: ThermoData, component: string): string {
  return shortName(thermo.ligands.find((ligand) => ligand.component === component)?.name ?? component);
}

/** "calcium, magnesium and iron". */
function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
