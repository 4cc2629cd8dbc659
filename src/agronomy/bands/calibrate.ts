import { fitPolynomial } from "../../numerics/index.ts";
import { solveDraw } from "./exact.ts";
import type { SolvedDraw } from "./exact.ts";
import type { Draws } from "./draws.ts";
import type { Place, Predicted } from "./neighbourhood.ts";

/** How many draws were solved in full, and by how much they differ from what was foretold for them. */
export interface Control {
  readonly solved: number;
  /** Root mean square over the draws solved, each left out of the correction [share]. */
  readonly difference: number;
}

/** Draws corrected by some solved in full. */
export interface Calibrated extends Predicted {
  readonly control: Control;
}

/** How many draws are solved in full to correct the others: none, a few, or many where a few show that it takes them. */
export type Effort = "first order" | "few" | "many";

/** Draws solved in turn, each time spread evenly, until what was foretold for them is near enough. */
const COUNTS: Readonly<Record<Effort, readonly number[]>> = {
  "first order": [],
  few: [15],
  many: [15, 240],
};
/** Solved draws from which a curve may bend. */
const FOR_A_BEND = 20;
/** Difference [share] that is near enough. */
const NEAR_ENOUGH = 0.01;

/** What is to be told well: draws are solved over its whole range. */
export type Told = "free share" | "saturation";

/** Share of a logit. */
export function shareOf(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}

/**
 * Corrects first-order draws by draws solved in full, spread evenly over what was foretold, tails included: a curve of
 * solved against foretold, and what the nearest solved draw is off it; never beyond what was solved.
 *
 * @param told what matters here; with nothing to tell, or to first order, the draws stay as foretold
 */
export function calibrate(
  place: Place,
  components: readonly string[],
  predicted: Predicted,
  draws: Draws,
  humidity: Float64Array | null,
  effort: Effort,
  told: readonly Told[],
): Calibrated {
  const orders = told
    .flatMap((what) => (what === "free share" ? predicted.logits[0]! : (predicted.saturation ?? [])))
    .map((column) => Array.from(column, (_, i) => i).sort((a, b) => column[a]! - column[b]!));
  let result: Calibrated = { ...predicted, control: { solved: 0, difference: 0 } };
  if (effort === "first order" || orders.length === 0) return result;
  const solved = new Map<number, SolvedDraw | null>();
  for (const count of COUNTS[effort]) {
    for (const order of orders) {
      for (let k = 0; k < count; k++) {
        const i = order[Math.round((k / (count - 1)) * (order.length - 1))]!;
        if (!solved.has(i))
          solved.set(i, solveDraw(place, components, draws, i, humidity, predicted.near(i)));
      }
    }
    result = corrected(predicted, solved, count < FOR_A_BEND ? 1 : 2);
    if (result.control.difference <= NEAR_ENOUGH) break;
  }
  return result;
}

function corrected(
  predicted: Predicted,
  solved: ReadonlyMap<number, SolvedDraw | null>,
  degree: number,
): Calibrated {
  const known = [...solved].flatMap(([i, answer]) => (answer === null ? [] : [[i, answer] as const]));
  let worst = 0;
  const logits = predicted.logits.map((column, a) => {
    const fit = correct(column, known, (answer) => answer.logits[a]!, a === 0 ? degree : 1);
    let sum = 0;
    known.forEach(([, answer], k) => {
      const y = answer.logits[a]!;
      sum += (shareOf(y) - shareOf(y - fit.leftOut[k]!)) ** 2;
    });
    worst = Math.max(worst, Math.sqrt(sum / Math.max(1, known.length)));
    return fit.column;
  });
  const { saturation } = predicted;
  return {
    ...predicted,
    logits,
    saturation:
      saturation === null ? null : correct(saturation, known, (answer) => answer.saturation ?? 0, 2).column,
    control: { solved: known.length, difference: worst },
  };
}

/**
 * What the curve misses of each draw, taken from the solved draw that is nearest along it: so the draws keep the spread
 * that first order does not see, instead of all lying on the curve.
 */
function nearestRests(column: Float64Array, x: readonly number[], rests: Float64Array): Float64Array {
  return column.map((value) => {
    let nearest = 0;
    for (let k = 1; k < x.length; k++)
      if (Math.abs(x[k]! - value) < Math.abs(x[nearest]! - value)) nearest = k;
    return rests[nearest]!;
  });
}

function correct(
  column: Float64Array,
  known: readonly (readonly [number, SolvedDraw])[],
  value: (answer: SolvedDraw) => number,
  degree: number,
): { readonly column: Float64Array; readonly leftOut: Float64Array } {
  if (known.length === 0) return { column, leftOut: new Float64Array(0) };
  const x = known.map(([i]) => column[i]!);
  const y = known.map(([, answer]) => value(answer));
  const fit = fitPolynomial(x, y, degree);
  const [low, high] = [Math.min(...y), Math.max(...y)];
  const rests = nearestRests(column, x, fit.leftOut);
  const out = column.map((c, i) => Math.min(high, Math.max(low, fit.at(c) + rests[i]!)));
  for (const [i, answer] of known) out[i] = value(answer);
  return { column: out, leftOut: fit.leftOut };
}
