/**
 * Cholesky factor of a symmetric positive definite matrix, in place, with scaling to unit diagonal.
 *
 * @param a row-major n × n, lower triangle read; on return its lower triangle holds the factor of the scaled
 *   matrix
 * @param n order
 * @param scale receives 1/√diagonal, to be passed to `solveCholesky`
 * @returns false if the matrix is not positive definite to rounding
 */
export function factorCholesky(a: Float64Array, n: number, scale: Float64Array): boolean {
  for (let i = 0; i < n; i++) {
    const d = a[i * n + i]!;
    if (!(d > 0) || d === Infinity) return false;
    scale[i] = 1 / Math.sqrt(d);
  }
  for (let i = 0; i < n; i++) {
    const row = i * n;
    const si = scale[i]!;
    for (let j = 0; j < i; j++) {
      const other = j * n;
      let sum = a[row + j]! * si * scale[j]!;
      for (let k = 0; k < j; k++) sum -= a[row + k]! * a[other + k]!;
      a[row + j] = sum / a[other + j]!;
    }
    let pivot = 1;
    for (let k = 0; k < i; k++) pivot -= a[row + k]! * a[row + k]!;
    if (!(pivot > 1e-14)) return false;
    a[row + i] = Math.sqrt(pivot);
  }
  return true;
}

/**
 * Solves the factored system for one right-hand side, in place.
 *
 * @param a, n, scale as left by `factorCholesky`
 * @param x right-hand side on entry, solution on return
 */
export function solveCholesky(a: Float64Array, n: number, scale: Float64Array, x: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let sum = x[i]! * scale[i]!;
    for (let k = 0; k < i; k++) sum -= a[i * n + k]! * x[k]!;
    x[i] = sum / a[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= a[k * n + i]! * x[k]!;
    x[i] = sum / a[i * n + i]!;
  }
  for (let i = 0; i < n; i++) x[i] = x[i]! * scale[i]!;
}
