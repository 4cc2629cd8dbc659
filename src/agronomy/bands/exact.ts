import { settleNear } from "../../chem/index.ts";
import { freeLogit } from "../shares.ts";
import type { Draws } from "./draws.ts";
import { shiftedConstants, stretched } from "./factors.ts";
import { drawnTotal } from "./neighbourhood.ts";
import type { Place } from "./neighbourhood.ts";

/** One draw solved in full. */
export interface SolvedDraw {
  /** ln(free / held) by component asked for. */
  readonly logits: readonly number[];
  readonly saturation: number | null;
  readonly pH: number;
}

/** Newton steps after which a draw is given up: the central answer took a few tens at most. */
export const MOST_ITERATIONS = 150;

/** Solves one draw at a place in full, from the central answer; null when that fails. */
export function solveDraw(
  place: Place,
  components: readonly string[],
  draws: Draws,
  i: number,
  humidity: Float64Array | null,
): SolvedDraw | null {
  const { equilibrium, conditions, factor, waterActivity, factors, waiting } = place;
  const { system } = equilibrium;
  const totals_molPerL: Record<string, number> = {};
  for (const [name, central] of Object.entries(conditions.totals_molPerL)) {
    const inWater = draws.waterTotals.get(name)?.[i];
    totals_molPerL[name] = inWater === undefined ? central : drawnTotal(place, name, inWater, draws);
  }
  const result = settleNear(
    system,
    {
      ...conditions,
      totals_molPerL,
      ...shiftedConstants(system, factors, (f) => stretched(f, draws.normal(f.key)[i]!)),
      start: equilibrium,
      maxIterations: MOST_ITERATIONS,
    },
    factor,
    waterActivity === null ? null : (humidity?.[i] ?? waterActivity),
  );
  if (!result.ok) return null;
  const solved = result.equilibrium;
  return {
    logits: components.map((component) => freeLogit(solved, component, []).value),
    saturation: waiting === null ? null : solved.saturationIndices[waiting]!,
    pH: solved.pH ?? 7,
  };
}
