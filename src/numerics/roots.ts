/** Outcome of a search for a root: the point and the function's value there, or why there is none. */
export type RootResult =
  | { readonly ok: true; readonly x: number; readonly f: number; readonly evaluations: number }
  | { readonly ok: false; readonly reason: "not-bracketed" | "not-converged"; readonly evaluations: number };

/** When to stop looking for a root. */
export interface RootOptions {
  /** Half-width of the last bracket, in the unit of x, at which the search ends. */
  readonly xTolerance: number;
  /** Size of the function's value at which the search ends; default 0. */
  readonly fTolerance?: number;
  readonly maxEvaluations?: number;
}

/**
 * Root of a continuous function between two points of opposite sign, in the unit of `low`.
 *
 * Secant steps on the bracket with the Illinois weight, and a halving whenever the bracket has not halved in
 * three evaluations; the bracket is kept throughout.
 * @param f the function; must be finite on the bracket
 * @param low, high ends of the bracket
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  options: RootOptions,
): RootResult {
  const fTolerance = options.fTolerance ?? 0;
  const limit = options.maxEvaluations ?? 200;
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  let evaluations = 2;
  if (Math.abs(fa) <= fTolerance) return { ok: true, x: a, f: fa, evaluations };
  if (Math.abs(fb) <= fTolerance) return { ok: true, x: b, f: fb, evaluations };
  if (!(fa < 0 !== fb < 0)) return { ok: false, reason: "not-bracketed", evaluations };
  let weightA = fa;
  let weightB = fb;
  let width = Math.abs(b - a);
  let slow = 0;
  while (evaluations < limit) {
    let x = a + ((b - a) * weightA) / (weightA - weightB);
    if (slow >= 3 || !(x > Math.min(a, b) && x < Math.max(a, b))) x = 0.5 * (a + b);
    const fx = f(x);
    evaluations++;
    if (Math.abs(fx) <= fTolerance) return { ok: true, x, f: fx, evaluations };
    if (fx < 0 === fa < 0) {
      a = x;
      fa = weightA = fx;
      weightB *= 0.5;
    } else {
      b = x;
      fb = weightB = fx;
      weightA *= 0.5;
    }
    const now = Math.abs(b - a);
    if (now <= 2 * options.xTolerance || now <= 4 * Number.EPSILON * Math.max(Math.abs(a), Math.abs(b))) {
      return Math.abs(fa) < Math.abs(fb)
        ? { ok: true, x: a, f: fa, evaluations }
        : { ok: true, x: b, f: fb, evaluations };
    }
    if (now <= 0.5 * width) {
      width = now;
      slow = 0;
    } else {
      slow = slow >= 3 ? 0 : slow + 1;
    }
  }
  return { ok: false, reason: "not-converged", evaluations };
}
