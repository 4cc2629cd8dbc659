import { metalOf, systemUncertainties } from "../../chem/index.ts";
import type { CompiledSystem, Equilibrium, ThermoData } from "../../chem/index.ts";
import { borrowedActivity, borrowedActivitySource, MIXING, SOLID_SPREAD } from "./model-uncertainty.ts";

/**
 * Something uncertain about the chemistry, drawn as a standard normal: it moves log10 of constants of species and
 * solids by a weight each. A shift of a species' constant is a shift of its activity coefficient as well.
 */
export interface Factor {
  /** "constant:…", "solubility:…", "activity:…": the same thing has the same key, and so the same draws, everywhere. */
  readonly key: string;
  readonly species: readonly Weight[];
  readonly solids: readonly Weight[];
  /** How far a draw below the centre goes for one above it [1]; left out: as far. */
  readonly belowPerAbove?: number;
  /** Key of the source of its spread, where that is not the source of a constant. */
  readonly source?: string | null;
}

/** A draw of a factor [standard deviations], stretched below the centre where its spread is uneven. */
export function stretched({ belowPerAbove = 1 }: Factor, z: number): number {
  return z < 0 ? belowPerAbove * z : z;
}

/** Place in the system's list, and log10 units per standard deviation. */
export type Weight = readonly [index: number, weight: number];

/** Part of the variance of a complex that it shares with the other metal complexes of its ligand: one ladder of work. */
const SHARED = 0.5;
/** Least standard uncertainty [log10] that is drawn. */
const LEAST = 1e-4;

const known = new WeakMap<CompiledSystem, readonly Factor[]>();

/** The uncertain constants of a system. */
export function constantFactors(
  system: CompiledSystem,
  thermo: ThermoData,
  temperature_C: number,
): readonly Factor[] {
  let factors = known.get(system);
  if (factors === undefined) {
    factors = buildConstantFactors(system, thermo, temperature_C);
    known.set(system, factors);
  }
  return factors;
}

function buildConstantFactors(
  system: CompiledSystem,
  thermo: ThermoData,
  temperature_C: number,
): readonly Factor[] {
  const { logK, logKsp } = systemUncertainties(thermo, system.definition, temperature_C);
  const factors: Factor[] = [];
  const shared = new Map<string, [number, number][]>();
  for (const [name, sigma] of Object.entries(logK)) {
    const index = system.speciesIndex.get(name);
    if (index === undefined || sigma < LEAST) continue;
    const ligand = ligandOf(system, index, thermo);
    if (ligand === null) factors.push({ key: `constant:${name}`, species: [[index, sigma]], solids: [] });
    else {
      const together = shared.get(ligand) ?? [];
      together.push([index, sigma * Math.sqrt(SHARED)]);
      shared.set(ligand, together);
      const own = sigma * Math.sqrt(1 - SHARED);
      factors.push({ key: `constant:${name}`, species: [[index, own]], solids: [] });
    }
  }
  for (const [ligand, species] of shared)
    factors.push({ key: `constant:metals of ${ligand}`, species, solids: [] });
  for (const [name, sigma] of Object.entries(logKsp)) {
    const index = system.solidIndex.get(name);
    if (index === undefined || sigma < LEAST) continue;
    const spread = SOLID_SPREAD.get(name);
    const solid: Factor = {
      key: `solubility:${name}`,
      species: [],
      solids: [[index, spread?.above ?? sigma]],
    };
    factors.push(
      spread === undefined ? solid : { ...solid, belowPerAbove: spread.belowPerAbove, source: spread.source },
    );
  }
  return factors;
}

/** The ligand of a metal complex; null for anything else. */
function ligandOf(system: CompiledSystem, species: number, thermo: ThermoData): string | null {
  const { formation } = system.definition.species[species]!;
  if (metalOf(formation) === null) return null;
  const charges = system.definition.components;
  const ligand = charges.find(({ name, charge }) => charge < 0 && (formation[name] ?? 0) > 0);
  if (ligand === undefined) return null;
  return thermo.ligands.find(({ component }) => component === ligand.name)?.id ?? ligand.name;
}

/** What is uncertain about activity coefficients at one composition: borrowed parameters and mixing terms. */
export function activityFactors(equilibrium: Equilibrium): readonly Factor[] {
  const { system, estimates, ionicStrength_molPerL, concentrations } = equilibrium;
  const factors: Factor[] = [];
  for (const { species } of estimates) {
    const index = system.speciesIndex.get(species);
    if (index === undefined) continue;
    const charge = system.speciesCharges[index]!;
    const sigma = borrowedActivity(charge, ionicStrength_molPerL);
    const source = borrowedActivitySource(charge);
    if (sigma >= LEAST)
      factors.push({ key: `activity:${species}`, species: [[index, sigma]], solids: [], source });
  }
  for (const { ion, with: other, theta, source } of MIXING) {
    const index = system.speciesIndex.get(ion);
    const at = system.speciesIndex.get(other);
    if (index === undefined || at === undefined) continue;
    const sigma = (2 * concentrations[at]! * theta) / Math.LN10;
    if (sigma >= LEAST)
      factors.push({ key: `activity:${ion} with ${other}`, species: [[index, sigma]], solids: [], source });
  }
  return factors;
}

/** Constants of a draw: those of the system, moved by every factor's draw. */
export function shiftedConstants(
  system: CompiledSystem,
  factors: readonly Factor[],
  z: (factor: Factor) => number,
): { readonly logK: Readonly<Record<string, number>>; readonly logKsp: Readonly<Record<string, number>> } {
  const logK: Record<string, number> = {};
  const logKsp: Record<string, number> = {};
  for (const factor of factors) {
    const draw = z(factor);
    for (const [index, weight] of factor.species) {
      const name = system.speciesNames[index]!;
      logK[name] = (logK[name] ?? system.logK[index]!) + weight * draw;
    }
    for (const [index, weight] of factor.solids) {
      const name = system.solidNames[index]!;
      logKsp[name] = (logKsp[name] ?? system.logKsp[index]!) + weight * draw;
    }
  }
  return { logK, logKsp };
}
