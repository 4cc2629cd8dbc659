import {
  builtInThermo,
  compileSystem,
  davies,
  debyeHuckelA,
  debyeHuckelB_perAngstrom,
  equilibrate,
  extendedDebyeHuckel,
  systemFor,
} from "../../../src/chem/index.ts";
import type { ActivityModel } from "../../../src/chem/index.ts";

const thermo = builtInThermo();

/** A solution to be brought to equilibrium; amounts per kg of water stand for amounts per litre. */
export interface Recipe {
  readonly totals: Readonly<Record<string, number>>;
  readonly temperature_C?: number;
  readonly carbonate?: "closed" | "open";
  /** Solids of the system; those not in `allowed` only get a saturation index. */
  readonly solids?: readonly string[];
  readonly allowed?: readonly string[];
  readonly fixedLog10Activities?: Readonly<Record<string, number>>;
  /** Default true: pH from the charge balance. */
  readonly electroneutral?: boolean;
  readonly activity?: ActivityModel;
  readonly logKsp?: Readonly<Record<string, number>>;
  /** log10 of formation constants in place of those of the data set. */
  readonly logK?: Readonly<Record<string, number>>;
}

/** The answer, by name. */
export interface Solution {
  readonly pH: number;
  readonly ionicStrength: number;
  concentration(species: string): number;
  log10Gamma(species: string): number;
  log10Activity(component: string): number;
  solid(name: string): number;
  saturationIndex(solid: string): number;
  /** Total of a component in solution, from the species. */
  total(component: string): number;
}

/** Davies' formula with A at the temperature, not held: the checks stay inside its range or say so. */
export function daviesAt(temperature_C: number): ActivityModel {
  return davies({ A: debyeHuckelA(temperature_C), b: 0.3 });
}

/**
 * The extended equation of Truesdell & Jones with the sizes of the data set, Davies where there is none or for the
 * species named, 0.1 I for neutral ones.
 */
export function wateqAt(temperature_C: number, byDavies: readonly string[] = []): ActivityModel {
  const sizes: Record<string, { a_angstrom: number; b: number }> = {};
  for (const component of Object.values(thermo.components)) {
    const size = component.ionSize?.wateq;
    if (size !== undefined) sizes[component.name] = { a_angstrom: size.a_angstrom, b: size.b_LPerMol };
  }
  for (const species of thermo.species) {
    const size = species.ionSize?.wateq;
    if (size !== undefined && !byDavies.includes(species.id))
      sizes[species.id] = { a_angstrom: size.a_angstrom, b: size.b_LPerMol };
  }
  return extendedDebyeHuckel({
    A: debyeHuckelA(temperature_C),
    B: debyeHuckelB_perAngstrom(temperature_C),
    sizes,
    fallback: daviesAt(temperature_C),
    neutralCoefficient: 0.1,
  });
}

/** Brings a recipe to equilibrium; a failure of the solver fails the test. */
export function solve(recipe: Recipe): Solution {
  const temperature_C = recipe.temperature_C ?? 25;
  const fixed = recipe.fixedLog10Activities ?? {};
  const names = [...Object.keys(recipe.totals), ...Object.keys(fixed)].filter(
    (name) => name !== "H+" && name !== "CO2",
  );
  const definition = systemFor(thermo, {
    components: names,
    temperature_C,
    solids: recipe.solids ?? "none",
    carbonate: recipe.carbonate ?? "closed",
  });
  const system = compileSystem(definition);
  const electroneutral = recipe.electroneutral ?? true;
  const result = equilibrate(system, {
    totals_molPerL: recipe.totals,
    fixedLog10Activities: fixed,
    electroneutral: electroneutral ? "H+" : null,
    activity: recipe.activity ?? daviesAt(temperature_C),
    ...(recipe.allowed === undefined ? {} : { solids: recipe.allowed }),
    ...(recipe.logKsp === undefined ? {} : { logKsp: recipe.logKsp }),
    ...(recipe.logK === undefined ? {} : { logK: recipe.logK }),
  });
  if (!result.ok) throw new Error(`no equilibrium: ${result.reason}, ${result.detail}`);
  const { value } = result;
  const at = (array: Float64Array, index: ReadonlyMap<string, number>, name: string): number => {
    const i = index.get(name);
    const found = i === undefined ? undefined : array[i];
    if (found === undefined) throw new Error(`no "${name}" in the solution`);
    return found;
  };
  if (value.pH === null) throw new Error("no pH");
  return {
    pH: value.pH,
    ionicStrength: value.ionicStrength_molPerL,
    concentration: (name) => at(value.concentrations, system.speciesIndex, name),
    log10Gamma: (name) => at(value.lnGamma, system.speciesIndex, name) / Math.LN10,
    log10Activity: (name) => at(value.log10Activities, system.componentIndex, name),
    solid: (name) => at(value.solids, system.solidIndex, name),
    saturationIndex: (name) => at(value.saturationIndices, system.solidIndex, name),
    total: (component) =>
      definition.species.reduce(
        (sum, species, i) => sum + (species.formation[component] ?? 0) * (value.concentrations[i] ?? 0),
        0,
      ),
  };
}
