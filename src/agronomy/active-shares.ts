import { metalOf } from "../chem/index.ts";
import type { DryDownStep, Equilibrium } from "../chem/index.ts";
import type { ActiveRecord } from "./data-types.ts";
import type { LeafPaths } from "./leaf.ts";
import { sharesOf } from "./shares.ts";
import type { HeldShares } from "./shares.ts";
import type { Tank, TankActive } from "./tank.ts";
import type { Evidence, LeafShare, Share } from "./types.ts";

/** Why a share cannot be computed, or what it rests on; null when measured constants exist. */
export function bindingWhy(active: TankActive): { readonly known: boolean; readonly why: string | null } {
  const { active: record, form } = active.product;
  if (form?.dissociates === false && form.acidEquivalent < 1)
    return { known: false, why: `The ${form.name} does not ionise in the tank: nothing for metals to bind.` };
  if (active.component === null || record.binding === "none") {
    return { known: false, why: record.bindingNote ?? "No published binding constants: not known." };
  }
  return { known: true, why: record.binding === "analogy" ? record.bindingNote : null };
}

/** Stop of the drying path that is given beside the end, for comparison. */
const TENFOLD = 10;

const COMPUTED: Evidence = "computed";

/** The answer for an active in the full tank, without its range. */
export function tankShare(active: TankActive, equilibrium: Equilibrium): Share {
  const { known, why } = bindingWhy(active);
  const range = { low: null, high: null };
  if (!known) return { free: null, ...range, heldBy: {}, ownAcid: null, evidence: COMPUTED, why };
  return { ...sharesOf(equilibrium, active.component ?? ""), ...range, evidence: COMPUTED, why };
}

/** The answer for an active on the leaf with its two ends, without its range. */
export function leafShare(active: TankActive, paths: LeafPaths): LeafShare {
  const { known, why } = bindingWhy(active);
  const sharesAt = (step: DryDownStep | undefined): HeldShares | null =>
    step === undefined || !known ? null : sharesOf(step.equilibrium, active.component ?? "");
  const central = paths["at threshold"].steps;
  const end = sharesAt(central.at(-1));
  return {
    free: end?.free ?? null,
    low: null,
    high: null,
    heldBy: end?.heldBy ?? {},
    ownAcid: end?.ownAcid ?? null,
    evidence: COMPUTED,
    why,
    withoutSolid: sharesAt(paths.never.steps.at(-1)),
    withSolid: sharesAt(paths["at equilibrium"].steps.at(-1)),
    solidForms: known && holdsInSolid(central.at(-1), active.component ?? ""),
    tenfold: sharesAt(central.find((step) => step.factor === TENFOLD))?.free ?? null,
  };
}

function holdsInSolid(step: DryDownStep | undefined, component: string): boolean {
  if (step === undefined) return false;
  const { system, solids } = step.equilibrium;
  return system.definition.solids.some(
    (solid, i) =>
      (solids[i] ?? 0) > 0 && (solid.formation[component] ?? 0) > 0 && metalOf(solid.formation) !== null,
  );
}

/** Components of the actives whose binding can be computed, with the active; of two products with one, the first. */
export function computedComponents(
  tank: Tank,
): readonly { readonly active: ActiveRecord; readonly component: string }[] {
  const found = new Map<string, ActiveRecord>();
  for (const active of tank.actives) {
    const { component, product } = active;
    if (component !== null && bindingWhy(active).known && !found.has(component))
      found.set(component, product.active);
  }
  return [...found].map(([component, active]) => ({ active, component }));
}
