import { metalOf } from "../chem/index.ts";
import type { DryDownStep, Equilibrium } from "../chem/index.ts";
import { bindingOf } from "./binding-known.ts";
import type { BindingKnown } from "./binding-known.ts";
import type { LeafPaths } from "./leaf.ts";
import { sharesOf } from "./shares.ts";
import type { HeldShares } from "./shares.ts";
import type { TankActive } from "./tank.ts";
import type { Evidence, LeafShare, Share } from "./types.ts";

/** Stop of the drying path that is given beside the end, for comparison. */
const TENFOLD = 10;

const COMPUTED: Evidence = "computed";

/** All of what metals cannot take is free of them; of what is not known, no share can be given. */
function freeBy(kind: BindingKnown["kind"]): number | null {
  return kind === "nothing to bind" ? 1 : null;
}

/** The answer for an active in the full tank, without its range. */
export function tankShare(active: TankActive, equilibrium: Equilibrium): Share {
  const { kind, why } = bindingOf(active);
  const range = { low: null, high: null };
  if (kind !== "computed")
    return { free: freeBy(kind), ...range, heldBy: {}, ownAcid: null, evidence: "common practice", why };
  return { ...sharesOf(equilibrium, active.component ?? ""), ...range, evidence: COMPUTED, why };
}

/** The answer for an active on the leaf with its two ends, without its range. */
export function leafShare(active: TankActive, paths: LeafPaths): LeafShare {
  const { kind, why } = bindingOf(active);
  const known = kind === "computed";
  const sharesAt = (step: DryDownStep | undefined): HeldShares | null =>
    step === undefined || !known ? null : sharesOf(step.equilibrium, active.component ?? "");
  const central = paths["at threshold"].steps;
  const end = sharesAt(central.at(-1));
  return {
    free: known ? (end?.free ?? null) : freeBy(kind),
    low: null,
    high: null,
    heldBy: end?.heldBy ?? {},
    ownAcid: end?.ownAcid ?? null,
    evidence: known ? COMPUTED : "common practice",
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
