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

/** Draws solved in full at first, and where these show that first order is not enough. */
const FEW = 7;
const MANY = 30;
/** Difference [share] above which more draws are solved. */
const TOO_FAR = 0.01;

/** Share of a logit. */
export function shareOf(logit: number): number {
  return 1 / (1 + Math.exp(-logit));
}

/**
 * Corrects first-order draws by draws solved in full, spread evenly over what was foretold, tails included, by a curve
 * of solved against foretold; never beyond what was solved.
 */
export function calibrate(
  place: Place,
  components: readonly string[],
  predicted: Predicted,
  draws: Draws,
  humidity: Float64Array | null,
): Calibrated {
  const orders = [predicted.logits[0]!, ...(predicted.saturation === null ? [] : [predicted.saturation])].map(
    (column) => Array.from(column, (_, i) => i).sort((a, b) => column[a]! - column[b]!),
  );
  const solved = new Map<number, SolvedDraw | null>();
  let result = predicted as Calibrated;
  for (const count of [FEW, MANY]) {
    for (const order of orders) {
      for (let k = 0; k < count; k++) {
        const i = order[Math.round((k / (count - 1)) * (order.length - 1))]!;
        if (!solved.has(i)) solved.set(i, solveDraw(place, components, draws, i, humidity));
      }
    }
    const degree = count === FEW ? 1 : 2;
    result = corrected(predicted, solved, degree);
    if (result.control.difference <= TOO_FAR) break;
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
    logits,
    saturation:
      saturation === null ? null : correct(saturation, known, (answer) => answer.saturation ?? 0, 2).column,
    // Near enough straight in what is drawn, and the draws solved are not spread over it.
    pH: predicted.pH,
    control: { solved: known.length, difference: worst },
  };
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
  const out = column.map((c) => Math.min(high, Math.max(low, fit.at(c))));
  for (const [i, answer] of known) out[i] = value(answer);
  return { column: out, leftOut: fit.leftOut };
}
