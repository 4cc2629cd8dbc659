import { metalsOf } from "../../chem/index.ts";
import type { Equilibrium } from "../../chem/index.ts";
import type { FlaskChemistry } from "./flask-chemistry.ts";
import type { Cloud, Cloudiness } from "./types.ts";

/** Plain names of small partners. */
const PARTNERS: Readonly<Record<string, string>> = {
  "SO4-2": "sulfate",
  "Cl-": "chloride",
  "NO3-": "nitrate",
  "CO3-2": "carbonate",
  "PO4-3": "phosphate",
  "P2O7-4": "pyrophosphate",
  "P3O10-5": "tripolyphosphate",
  "NH4+": "ammonia",
  "F-": "fluoride",
};

/** Plain names of the solids that cloud a flask. */
const SOLIDS: Readonly<Record<string, string>> = {
  "Fe(OH)3(am)": "rust",
  "calcium oxalate monohydrate": "calcium oxalate",
  "Ca3(PO4)2(am)": "calcium phosphate",
  brushite: "calcium phosphate",
  "Ca2P2O7(s)": "calcium pyrophosphate",
  brucite: "magnesium hydroxide",
};

/** Suspended matter from which a flask is called cloudy [mg/L]. Our judgement: near the least haze seen in a flask. */
const HAZE_MG_PER_L = 1;
const CLOUDY_MG_PER_L = 5;
const THICK_MG_PER_L = 50;

/** What a component is called when it holds a metal; null for metals, protons and what holds nothing. */
function partnerName(component: string, chemistry: FlaskChemistry): string | null {
  if (component === "H+" || Object.keys(metalsOf({ [component]: 1 })).length > 0) return null;
  const own = chemistry.indicators.find((one) => one.component.name === component);
  if (own !== undefined) return own.name;
  const ligand = chemistry.thermo.ligands.find((one) => one.component === component);
  return ligand?.name ?? PARTNERS[component] ?? null;
}

/**
 * Of each metal in a flask, which share [1] each partner holds. "free" is the hydrated ion and its hydroxo forms, which
 * nothing that was added holds; what fell out counts under the name of the solid.
 */
export function heldBy(
  equilibrium: Equilibrium,
  chemistry: FlaskChemistry,
): Readonly<Record<string, Readonly<Record<string, number>>>> {
  const found: Record<string, Record<string, number>> = {};
  const add = (formation: Readonly<Record<string, number>>, amount: number, solid: string | null): void => {
    if (!(amount > 0)) return;
    const holder =
      solid ??
      Object.keys(formation)
        .map((component) => partnerName(component, chemistry))
        .find((name) => name !== null) ??
      "free";
    for (const [metal, n] of Object.entries(metalsOf(formation))) {
      const shares = (found[metal] ??= {});
      shares[holder] = (shares[holder] ?? 0) + n * amount;
    }
  };
  chemistry.definition.species.forEach(({ formation }, i) =>
    add(formation, equilibrium.concentrations[i]!, null),
  );
  chemistry.definition.solids.forEach(({ name, formation }, i) =>
    add(formation, equilibrium.solids[i]!, solidName(name)),
  );
  return Object.fromEntries(
    Object.entries(found).map(([metal, shares]) => {
      const total = Object.values(shares).reduce((sum, one) => sum + one, 0);
      const parts = Object.entries(shares)
        .map(([name, amount]): [string, number] => [name, amount / total])
        .filter(([, share]) => share >= 0.001)
        .sort(([, one], [, other]) => other - one);
      return [metal, Object.fromEntries(parts)];
    }),
  );
}

function solidName(id: string): string {
  return SOLIDS[id] ?? id;
}

/** Suspended solids of a flask, most first. */
export function cloudsOf(equilibrium: Equilibrium, chemistry: FlaskChemistry): readonly Cloud[] {
  return chemistry.definition.solids
    .flatMap(({ name }, i): Cloud[] => {
      const amount = equilibrium.solids[i]!;
      const record = chemistry.thermo.solids.find((one) => one.id === name);
      if (!(amount > 0) || record === undefined) return [];
      return [{ solid: solidName(name), mgPerL: amount * record.molarMass_gPerMol * 1000 }];
    })
    .filter(({ mgPerL }) => mgPerL >= HAZE_MG_PER_L)
    .sort((one, other) => other.mgPerL - one.mgPerL);
}

/** How cloudy suspended matter makes a liquid, and of what. */
export function cloudinessOf(clouds: readonly Cloud[]): Cloudiness {
  const [first, ...rest] = clouds.map((one) => one.solid);
  if (first === undefined) return { kind: "clear" };
  const total = clouds.reduce((sum, one) => sum + one.mgPerL, 0);
  const kind = total < CLOUDY_MG_PER_L ? "faint" : total < THICK_MG_PER_L ? "cloudy" : "thick";
  return { kind, solids: [first, ...rest] };
}
