import type { SetSolve } from "./equilibrate.ts";
import { evaluate } from "./newton.ts";
import { chooseBasis, recoverActivities } from "./working-basis.ts";
import type { Workspace } from "./workspace.ts";

/** Supersaturation (natural log, per unit of coefficients) above which a solid is added. */
const SUPERSATURATED = 1e-9;
/** A present solid is dropped when its amount falls below minus this share of what its balance holds. */
const NEGATIVE = 1e-13;
const MOST_CHANGES = 1000;

/**
 * Lets solids appear and vanish until none is supersaturated and none has a negative amount.
 *
 * One change at a time: the most negative amount is dropped, else the most supersaturated solid is added; a solid
 * whose row depends on the present ones takes the place of one of them (a simplex pivot: the phase rule). If a set
 * comes back, the least index among the violated ones is changed from then on, a rule that cannot cycle for
 * complementarity problems of this kind (Murty 1974, least-index method).
 */
export function settleSolids(w: Workspace, solve: () => SetSolve): SetSolve {
  const seen = new Set<string>();
  let leastIndex = false;
  for (let change = 0; change < MOST_CHANGES; change++) {
    evaluate(w);
    recoverActivities(w);
    const violated = findViolated(w, leastIndex);
    if (violated === -1) return { status: "converged", label: -1 };
    if (w.present[violated] === 1) w.present[violated] = 0;
    else if (!admit(w, violated)) return { status: "stalled", label: -1 };
    const key = w.present.subarray(0, w.q).join("");
    if (seen.has(key)) leastIndex = true;
    seen.add(key);
    const redundant = chooseBasis(w);
    if (redundant >= 0) return { status: "redundant", label: redundant };
    const solved = solve();
    if (solved.status !== "converged") return solved;
  }
  return { status: "stalled", label: -1 };
}

/** Index of the candidate to change: the worst negative amount, else the worst supersaturation; -1 when all is well. */
function findViolated(w: Workspace, leastIndex: boolean): number {
  let drop = -1;
  let worst = 0;
  for (let k = 0; k < w.m; k++) {
    const member = w.member[k]!;
    if (member >= 0) continue;
    const s = -1 - member;
    const amount = -w.residual[k]!;
    w.amount[s] = amount;
    const relative = w.scale[k]! > 0 ? amount / w.scale[k]! : 0;
    if (relative < -NEGATIVE && (leastIndex ? drop === -1 || s < drop : relative < worst)) {
      drop = s;
      worst = relative;
    }
  }
  if (drop >= 0 && !leastIndex) return drop;
  let add = -1;
  let most = SUPERSATURATED;
  for (let s = 0; s < w.q; s++) {
    if (w.present[s] === 1) continue;
    let saturation = -w.lnKsp[s]!;
    let size = 0;
    for (let e = w.sStart[s]!; e < w.sStart[s + 1]!; e++) {
      const coefficient = w.sValue[e]! / w.coefficientScale;
      saturation += coefficient * w.lnActivity[w.sIndex[e]!]!;
      size += Math.abs(coefficient);
    }
    w.saturation[s] = saturation;
    if (saturation / size > most) {
      add = s;
      most = leastIndex ? Infinity : saturation / size;
    }
  }
  if (!leastIndex) return add;
  return drop >= 0 && (add < 0 || drop < add) ? drop : add;
}

/** Makes a solid present; where its row depends on the present ones, the one it must replace goes first. */
function admit(w: Workspace, solid: number): boolean {
  const coordinates = w.basis.express(w.sIndex, w.sValue, w.sStart[solid]!, w.sStart[solid + 1]!);
  let dependent = true;
  let leaves = -1;
  let least = Infinity;
  for (let k = 0; k < w.m; k++) {
    const alpha = coordinates[k]! / w.basis.denominator;
    if (alpha === 0) continue;
    const member = w.member[k]!;
    if (member >= 0) {
      dependent = false;
      break;
    }
    if (alpha > 0 && Math.max(0, w.amount[-1 - member]!) / alpha < least) {
      least = Math.max(0, w.amount[-1 - member]!) / alpha;
      leaves = -1 - member;
    }
  }
  if (dependent) {
    if (leaves < 0) return false;
    w.present[leaves] = 0;
  }
  w.present[solid] = 1;
  return true;
}
