import { solveDense } from "./dense-solve.ts";

/** A straight-line fit in many inputs at once. */
export interface RidgeFit {
  /** The fit in every row. */
  readonly fitted: Float64Array;
  /** What each observation is off the fit made without it, in the order of the observations. */
  readonly leftOut: Float64Array;
}

/** Shrinkages tried, as shares of the observations an input would have to be worth. */
const SHRINKAGES = [0.01, 0.03, 0.1, 0.3, 1, 3] as const;
/** Least spread of an input, relative to its mean, that counts as any. */
const LEVEL = 1e-12;

/**
 * Least squares with shrinkage (ridge regression) of what was observed in some rows on all inputs, for when there are
 * not many more observations than inputs. The shrinkage is the one that foretells left-out observations best; where none
 * does better than their mean, the fit is the mean.
 *
 * @param inputs columns of all rows; those that do not vary are left out
 * @param rows rows that were observed, at least two
 * @param y what was observed there
 * @source Hoerl & Kennard (1970) Technometrics 12:55–67; choice by left-out residuals, Golub, Heath & Wahba (1979)
 *   Technometrics 21:215–223
 */
export function fitRidge(
  inputs: readonly Float64Array[],
  rows: readonly number[],
  y: ArrayLike<number>,
): RidgeFit {
  const columns = inputs.flatMap((input) => centred(input, rows));
  const n = rows.length;
  const size = columns.length;
  const mean = Array.from(y).reduce((sum, value) => sum + value, 0) / n;
  const count = inputs[0]?.length ?? 0;
  let leftOut: Float64Array = Float64Array.from(y, (value) => ((value - mean) * n) / (n - 1));
  let slopes: Float64Array | null = null;
  const products = new Float64Array(size * size);
  const along = new Float64Array(size);
  const observed = rowMajor(columns, rows);
  for (let i = 0; i < n; i++) {
    const at = i * size;
    const off = y[i]! - mean;
    for (let k = 0; k < size; k++) {
      const z = observed[at + k]!;
      along[k]! += z * off;
      for (let l = 0; l <= k; l++) products[k * size + l]! += z * observed[at + l]!;
    }
  }
  for (let k = 0; k < size; k++) for (let l = 0; l < k; l++) products[l * size + k] = products[k * size + l]!;
  for (const share of SHRINKAGES) {
    const inverse = inverseOf(products, size, share * n);
    if (inverse === null) continue;
    const trial = along.map((_, k) =>
      along.reduce((sum, value, l) => sum + inverse[k * size + l]! * value, 0),
    );
    const off = leftOutBy(observed, y, mean, inverse, trial);
    if (sizeOf(off) >= sizeOf(leftOut)) continue;
    leftOut = off;
    slopes = trial;
  }
  const fitted = new Float64Array(count).fill(mean);
  if (slopes !== null) {
    for (const [k, column] of columns.entries())
      for (let r = 0; r < count; r++) fitted[r]! += slopes[k]! * column[r]!;
  }
  return { fitted, leftOut };
}

function sizeOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

/** A column with mean 0 and mean square 1 over the rows observed; none where it does not vary there. */
function centred(column: Float64Array, rows: readonly number[]): readonly Float64Array[] {
  const mean = rows.reduce((sum, row) => sum + column[row]!, 0) / rows.length;
  const square = rows.reduce((sum, row) => sum + (column[row]! - mean) ** 2, 0) / rows.length;
  const spread = Math.sqrt(square);
  return spread > LEVEL * Math.abs(mean) ? [column.map((value) => (value - mean) / spread)] : [];
}

function inverseOf(products: Float64Array, size: number, shrinkage: number): Float64Array | null {
  const matrix = products.slice();
  const inverse = new Float64Array(size * size);
  for (let k = 0; k < size; k++) {
    matrix[k * size + k]! += shrinkage;
    inverse[k * size + k] = 1;
  }
  return solveDense(matrix, size, inverse, size) ? inverse : null;
}

/** Residuals over one less their leverage. */
function leftOutBy(
  observed: Float64Array,
  y: ArrayLike<number>,
  mean: number,
  inverse: Float64Array,
  slopes: Float64Array,
): Float64Array {
  const n = y.length;
  const size = slopes.length;
  const off = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const at = i * size;
    let fit = mean;
    let leverage = 1 / n;
    for (let k = 0; k < size; k++) {
      const z = observed[at + k]!;
      fit += slopes[k]! * z;
      for (let l = 0; l < size; l++) leverage += z * inverse[k * size + l]! * observed[at + l]!;
    }
    off[i] = (y[i]! - fit) / Math.max(1e-9, 1 - leverage);
  }
  return off;
}

/** The inputs of each observation, one observation after the other: as they are gone through. */
function rowMajor(columns: readonly Float64Array[], rows: readonly number[]): Float64Array {
  const out = new Float64Array(rows.length * columns.length);
  let at = 0;
  for (const row of rows) for (const column of columns) out[at++] = column[row]!;
  return out;
}
