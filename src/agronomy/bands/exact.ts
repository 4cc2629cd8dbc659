import { settleNear } from "../../chem/index.ts";
import { freeLogit } from "../shares.ts";
import type { Draws } from "./draws.ts";
import { shiftedConstants, stretched } from "./factors.ts";
import { drawnTotal } from "./neighbourhood.ts";
import type { DropEnd, Place } from "./neighbourhood.ts";

/** One draw solved in full. */
export interface SolvedDraw {
  /** ln(free / held) by component asked for. */
  readonly logits: readonly number[];
  readonly saturation: number | null;
  readonly pH: number;
  /** Water activity it was solved at; null where none was asked for. */
  readonly waterActivity: number | null;
}

/**
 * Newton steps after which a draw is given up. Our choice: five are usual, and one that takes five times as many starts
 * too far off to be waited for; the others stand for it.
 */
export const MOST_ITERATIONS = 25;

/** Mismatch [ln] at which a draw is solved: far below what its shares are told to. */
const DRAW_TOLERANCE = 1e-5;
/** How near a draw's drop comes to its air: the air itself is drawn some twenty times as wide. */
const DRAW_AIR_NEAR = 0.005;

/**
 * Solves one draw at a place in full, from where it is likely to lie; null when that fails.
 *
 * @param nearEnough difference from the air [water activity] at which a drop is taken as in balance with it
 */
export function solveDraw(
  place: Place,
  components: readonly string[],
  draws: Draws,
  i: number,
  humidity: Float64Array | null,
  near: DropEnd = place,
  nearEnough = DRAW_AIR_NEAR,
): SolvedDraw | null {
  const { conditions, waterActivity, factors, waiting } = place;
  const { system } = place.equilibrium;
  const totals_molPerL: Record<string, number> = {};
  const tank = { totals_molPerL: conditions.totals_molPerL, waterShare: place.waterShare };
  for (const [name, central] of Object.entries(conditions.totals_molPerL)) {
    const inWater = draws.waterTotals.get(name)?.[i];
    totals_molPerL[name] = inWater === undefined ? central : drawnTotal(tank, name, inWater, draws);
  }
  const result = settleNear(
    system,
    {
      ...conditions,
      totals_molPerL,
      ...shiftedConstants(system, factors, (f) => stretched(f, draws.normal(f.key)[i]!)),
      start: near.equilibrium,
      maxIterations: MOST_ITERATIONS,
      tolerance: DRAW_TOLERANCE,
    },
    near.factor,
    waterActivity === null ? null : (humidity?.[i] ?? waterActivity),
    nearEnough,
  );
  if (!result.ok) return null;
  const solved = result.equilibrium;
  return {
    logits: components.map((component) => freeLogit(solved, component, []).value),
    saturation: waiting === null ? null : solved.saturationIndices[waiting]!,
    pH: solved.pH ?? 7,
    waterActivity: waterActivity === null ? null : solved.waterActivity,
  };
}
