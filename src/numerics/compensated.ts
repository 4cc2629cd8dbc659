/** Splitting constant 2^27 + 1 of Veltkamp; valid for magnitudes below about 1e300. */
const SPLIT = 134217729;

/** Largest power of ten that a double holds exactly. */
const EXACT_POWER = 22;
const POWERS_OF_TEN = Float64Array.from({ length: EXACT_POWER + 1 }, (_, k) => Number(`1e${k}`));

/** Rounding error of the sum `a + b`, exactly (Knuth's two-sum). */
export function sumError(a: number, b: number): number {
  const s = a + b;
  const bb = s - a;
  return a - (s - bb) + (b - bb);
}

/** Rounding error of the product `a · b`, exactly (Veltkamp and Dekker), for magnitudes below about 1e300. */
export function productError(a: number, b: number): number {
  const p = a * b;
  const ta = SPLIT * a;
  const aHigh = ta - (ta - a);
  const aLow = a - aHigh;
  const tb = SPLIT * b;
  const bHigh = tb - (tb - b);
  const bLow = b - bHigh;
  return aLow * bLow - (p - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
}

/**
 * What the decimal a person wrote holds beyond the double nearest to it, in the unit of `x`.
 *
 * A double that is the nearest one to a decimal of at most fifteen significant digits is taken to mean that
 * decimal: 0.1 + 0.2 − 0.3 is then zero. Any other double is taken as it is, and so is every sum of powers
 * of two (remainder zero).
 * @param x any finite number
 * @returns the remainder, at most half a unit in the last place of `x`
 */
export function decimalRemainder(x: number): number {
  if (x === 0 || !Number.isFinite(x)) return 0;
  const magnitude = Math.abs(x);
  const power = Math.min(EXACT_POWER, 14 - Math.floor(Math.log10(magnitude)));
  if (power < 0) return 0;
  const scale = POWERS_OF_TEN[power]!;
  const digits = Math.round(magnitude * scale);
  // A quotient of two exact doubles is correctly rounded, so this is the double nearest to the decimal.
  if (digits > 1e15 || digits / scale !== magnitude) return 0;
  const product = magnitude * scale;
  const remainder = (digits - product - productError(magnitude, scale)) / scale;
  return x < 0 ? -remainder : remainder;
}

/** A number in two doubles: the value is `high + low`. */
export interface DoubleDouble {
  high: number;
  low: number;
}

/**
 * Scalar product Σ (high_j + low_j) · factor_j in doubled precision, in the unit of `high`.
 *
 * A result below what the remainders can resolve is returned as zero, so that decimal totals that cancel on
 * paper cancel here.
 * @param high, low the two halves of each term, `count` of them
 * @param factor the factors; those of term j at `offset + j * stride`
 * @param out receives the result in two halves
 */
export function compensatedDot(
  high: Float64Array,
  low: Float64Array,
  count: number,
  factor: Float64Array,
  offset: number,
  stride: number,
  out: DoubleDouble,
): void {
  let sum = 0;
  let error = 0;
  let remainders = 0;
  for (let j = 0; j < count; j++) {
    const f = factor[offset + j * stride]!;
    if (f === 0) continue;
    const term = high[j]! * f;
    error += productError(high[j]!, f) + sumError(sum, term);
    sum += term;
    const lowTerm = low[j]! * f;
    error += lowTerm;
    remainders += Math.abs(lowTerm);
  }
  const total = sum + error;
  if (Math.abs(total) <= 16 * Number.EPSILON * remainders) {
    out.high = 0;
    out.low = 0;
    return;
  }
  out.high = total;
  out.low = error - (total - sum);
}
