import { metalsOf } from "../chem/index.ts";
import type { CompiledSystem, Equilibrium, Sensitivity } from "../chem/index.ts";

/** Free and held shares of one component at an equilibrium; `heldBy` sums to 1 − `free`. */
export interface HeldShares {
  readonly free: number;
  readonly heldBy: Readonly<Record<string, number>>;
  /** What has come out of solution as its own acid: in a tank part of what is held, in a drop part of what is free. */
  readonly ownAcid: number;
}

/** What holds an active in a tank when it has come out of solution as its own acid. */
const UNDISSOLVED_ACID = "undissolved acid";

/**
 * Splits the total of a component into its free share and what holds the rest, 0…1.
 *
 * Free is every dissolved form bound to nothing but protons, sodium, potassium or ammonium. A species or solid with
 * several kinds of metal ion counts for each in proportion to their number. The active's own acid as a solid is lost to
 * a tank, where it settles and blocks; in a drop nothing of the water holds it, and it stays where it was meant to be.
 */
export function sharesOf(equilibrium: Equilibrium, component: string): HeldShares {
  const plan = sharePlan(equilibrium.system, component);
  let total = 0;
  let acid = 0;
  const held: Record<string, number> = {};
  const count = (entry: ShareEntry, amount: number): void => {
    const moles = entry.coefficient * amount;
    total += moles;
    if (entry.ownAcid) acid += moles;
    for (const [holder, part] of entry.holders) held[holder] = (held[holder] ?? 0) + moles * part;
  };
  for (const entry of plan.species) count(entry, equilibrium.concentrations[entry.index] ?? 0);
  for (const entry of plan.solids) count(entry, equilibrium.solids[entry.index] ?? 0);
  if (total <= 0) return { free: 1, heldBy: {}, ownAcid: 0 };
  let sum = 0;
  const heldBy: Record<string, number> = {};
  for (const [holder, moles] of Object.entries(held)) {
    const share = moles / total;
    sum += share;
    if (share > 0) heldBy[holder] = share;
  }
  return { free: Math.max(0, 1 - sum), heldBy, ownAcid: acid / total };
}

/** One dissolved form or solid that carries a component. */
export interface SharePart {
  readonly kind: "species" | "solid";
  readonly index: number;
  /** Moles of the component in one mole of it. */
  readonly coefficient: number;
  /** What holds the component in it, with the part of each; empty where it is free. */
  readonly holders: readonly (readonly [string, number])[];
}

/** Every form that the total of a component is made of, as `sharesOf` counts them. */
export function sharePartsOf(system: CompiledSystem, component: string): readonly SharePart[] {
  const plan = sharePlan(system, component);
  return [
    ...plan.species.map((entry) => ({ kind: "species" as const, ...entry })),
    ...plan.solids.map((entry) => ({ kind: "solid" as const, ...entry })),
  ];
}

/** Free over held amount as a natural logarithm, and its derivatives. */
export interface FreeLogit {
  /** ln(free / held); not beyond ±30. */
  readonly value: number;
  /** By log10 of each parameter. */
  readonly by: Float64Array;
}

/** Furthest logit told apart: a share of 1e-13. */
const FURTHEST_LOGIT = 30;

/** The free share of a component as ln(free / held), with its derivatives by the parameters of sensitivities. */
export function freeLogit(
  equilibrium: Equilibrium,
  component: string,
  sensitivities: readonly Sensitivity[],
): FreeLogit {
  const plan = sharePlan(equilibrium.system, component);
  const heldPart = (entry: ShareEntry): number => entry.holders.reduce((sum, [, part]) => sum + part, 0);
  let free = 0;
  let held = 0;
  const freeBy = new Float64Array(sensitivities.length);
  const heldBy = new Float64Array(sensitivities.length);
  const count = (entry: ShareEntry, amount: number, change: (s: Sensitivity) => number): void => {
    if (amount <= 0) return;
    const part = heldPart(entry);
    free += entry.coefficient * (1 - part) * amount;
    held += entry.coefficient * part * amount;
    sensitivities.forEach((sensitivity, p) => {
      const moved = entry.coefficient * change(sensitivity);
      freeBy[p]! += (1 - part) * moved;
      heldBy[p]! += part * moved;
    });
  };
  for (const entry of plan.species) {
    const amount = equilibrium.concentrations[entry.index]!;
    count(entry, amount, (s) => amount * Math.LN10 * s.dLog10Concentrations[entry.index]!);
  }
  for (const entry of plan.solids)
    count(entry, equilibrium.solids[entry.index]!, (s) => s.dSolids_molPerL[entry.index]!);
  const least = Math.exp(-FURTHEST_LOGIT);
  const total = free + held;
  if (!(total > 0) || held <= least * total) return { value: FURTHEST_LOGIT, by: freeBy.fill(0) };
  if (free <= least * total) return { value: -FURTHEST_LOGIT, by: freeBy.fill(0) };
  return { value: Math.log(free / held), by: freeBy.map((d, p) => d / free - heldBy[p]! / held) };
}

interface ShareEntry {
  readonly index: number;
  readonly coefficient: number;
  readonly holders: readonly (readonly [string, number])[];
  /** A solid of the active and protons alone. */
  readonly ownAcid: boolean;
}
interface SharePlan {
  readonly species: readonly ShareEntry[];
  readonly solids: readonly ShareEntry[];
}

const plans = new WeakMap<CompiledSystem, Map<string, SharePlan>>();

/** Which species and solids carry the component, and what holds it in each; worked out once a system. */
function sharePlan(system: CompiledSystem, component: string): SharePlan {
  let byComponent = plans.get(system);
  if (byComponent === undefined) {
    byComponent = new Map();
    plans.set(system, byComponent);
  }
  let plan = byComponent.get(component);
  if (plan === undefined) {
    const { species, solids } = system.definition;
    plan = {
      species: species.flatMap((s, index) => entryOf(s.formation, index, component, null)),
      solids: solids.flatMap((s, index) => entryOf(s.formation, index, component, acidIn(system))),
    };
    byComponent.set(component, plan);
  }
  return plan;
}

/** Where a solid acid is: a drop is open to the air's carbon dioxide, a tank or flask is closed to it. */
function acidIn({ componentIndex }: CompiledSystem): "tank" | "drop" {
  return componentIndex.has("CO2") ? "drop" : "tank";
}

function entryOf(
  formation: Readonly<Record<string, number>>,
  index: number,
  component: string,
  solidIn: "tank" | "drop" | null,
): ShareEntry[] {
  const coefficient = formation[component] ?? 0;
  if (coefficient <= 0) return [];
  const metals = Object.entries(metalsOf(formation));
  const ions = metals.reduce((sum, [, n]) => sum + n, 0);
  if (ions > 0) {
    const holders = metals.map(([metal, n]) => [metal, n / ions] as const);
    return [{ index, coefficient, holders, ownAcid: false }];
  }
  const holders = solidIn === "tank" ? [[UNDISSOLVED_ACID, 1] as const] : [];
  return [{ index, coefficient, holders, ownAcid: solidIn !== null }];
}
