import type { Programme } from "./types.ts";

/**
 * Orders programmes best first.
 *
 * Blocked ones come last. Those that meet the aim come before those that do not or cannot tell. Among those that meet
 * it the cheaper comes first; where a cost is not known, the one whose cautious leaf answer (with the solid) is better,
 * then the smaller dose. Among those that miss it the one that keeps more active free comes first.
 */
export function rankProgrammes(programmes: readonly Programme[]): readonly Programme[] {
  return [...programmes].sort((a, b) => {
    if (a.blocked !== b.blocked) return a.blocked ? 1 : -1;
    const meets = Number(b.meetsAim === true) - Number(a.meetsAim === true);
    if (meets !== 0) return meets;
    if (a.meetsAim === true && b.meetsAim === true) {
      const cost = compareKnown(a.cost.perHa, b.cost.perHa);
      if (cost !== 0) return cost;
      const cautious = Math.round(20 * ((cautiousFree(b) ?? 0) - (cautiousFree(a) ?? 0)));
      return cautious !== 0 ? cautious : a.dose_gPerL - b.dose_gPerL;
    }
    const free = (centralFree(b) ?? 0) - (centralFree(a) ?? 0);
    return free !== 0 ? free : a.dose_gPerL - b.dose_gPerL;
  });
}

/** Least free share on the leaf over the actives that have one, with the solid at equilibrium. */
export function cautiousFree(programme: Programme): number | null {
  return least(programme.actives.map((a) => a.onLeaf.withSolid?.free ?? null));
}

/** Least free share on the leaf over the actives that have one, central answer. */
export function centralFree(programme: Programme): number | null {
  return least(programme.actives.map((a) => a.onLeaf.free));
}

function least(values: readonly (number | null)[]): number | null {
  const known = values.filter((v) => v !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/** Known figures before unknown ones, smaller first. */
function compareKnown(a: number | null, b: number | null): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return Math.abs(a - b) < 1e-9 ? 0 : a - b;
}
