/**
 * Factors a matrix by Gaussian elimination with row pivoting, in place: P A = L U.
 *
 * @param a row-major n × n; on return U, and beneath the diagonal L with its unit diagonal left out
 * @param pivots receives the row that changed places with each row
 * @returns false if A is singular to working precision or not finite
 */
export function factorDense(a: Float64Array, n: number, pivots: Int32Array): boolean {
  for (let k = 0; k < n; k++) {
    const rowK = k * n;
    let pivot = k;
    let largest = Math.abs(a[rowK + k]!);
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(a[i * n + k]!);
      if (size > largest) {
        largest = size;
        pivot = i;
      }
    }
    if (!(largest > 1e-300) || largest === Infinity) return false;
    pivots[k] = pivot;
    if (pivot !== k) swapRows(a, n, k, pivot);
    const inverse = 1 / a[rowK + k]!;
    for (let i = k + 1; i < n; i++) {
      const rowI = i * n;
      const factor = a[rowI + k]! * inverse;
      a[rowI + k] = factor;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) a[rowI + j] = a[rowI + j]! - factor * a[rowK + j]!;
    }
  }
  return true;
}

/**
 * Solves A X = B for several right-hand sides with A as left by `factorDense`; B is overwritten with X.
 *
 * @param b row-major n × columns
 */
export function solveFactored(
  a: Float64Array,
  n: number,
  pivots: Int32Array,
  b: Float64Array,
  columns: number,
): void {
  // The rows of L changed places with those of A, so all changes of place come first.
  for (let k = 0; k < n; k++) if (pivots[k] !== k) swapRows(b, columns, k, pivots[k]!);
  for (let k = 0; k < n; k++) {
    const rowK = k * columns;
    for (let i = k + 1; i < n; i++) subtract(b, i * columns, rowK, columns, a[i * n + k]!);
  }
  for (let i = n - 1; i >= 0; i--) {
    const row = i * columns;
    for (let k = i + 1; k < n; k++) subtract(b, row, k * columns, columns, a[i * n + k]!);
    const inverse = 1 / a[i * n + i]!;
    for (let j = 0; j < columns; j++) b[row + j] = b[row + j]! * inverse;
  }
}

/**
 * Solves A X = B for several right-hand sides; A and B are overwritten, B with X.
 *
 * @param a row-major n × n
 * @param b row-major n × columns
 * @returns false if A is singular to working precision or not finite
 */
export function solveDense(a: Float64Array, n: number, b: Float64Array, columns: number): boolean {
  const pivots = new Int32Array(n);
  if (!factorDense(a, n, pivots)) return false;
  solveFactored(a, n, pivots, b, columns);
  return true;
}

/** Takes `factor` times one row off another. */
function subtract(b: Float64Array, row: number, other: number, width: number, factor: number): void {
  if (factor === 0) return;
  for (let j = 0; j < width; j++) b[row + j] = b[row + j]! - factor * b[other + j]!;
}

function swapRows(matrix: Float64Array, width: number, i: number, k: number): void {
  for (let j = 0; j < width; j++) {
    const kept = matrix[i * width + j]!;
    matrix[i * width + j] = matrix[k * width + j]!;
    matrix[k * width + j] = kept;
  }
}
