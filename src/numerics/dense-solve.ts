/**
 * Solves A X = B for several right-hand sides by Gaussian elimination with row pivoting; A and B are overwritten, B with X.
 *
 * @param a row-major n × n
 * @param b row-major n × columns
 * @returns false if A is singular to working precision or not finite
 */
export function solveDense(a: Float64Array, n: number, b: Float64Array, columns: number): boolean {
  for (let k = 0; k < n; k++) {
    let pivot = k;
    let largest = Math.abs(a[k * n + k]!);
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(a[i * n + k]!);
      if (size > largest) {
        largest = size;
        pivot = i;
      }
    }
    if (!(largest > 1e-300) || largest === Infinity) return false;
    if (pivot !== k) {
      swapRows(a, n, k, pivot);
      swapRows(b, columns, k, pivot);
    }
    const inverse = 1 / a[k * n + k]!;
    for (let i = k + 1; i < n; i++) {
      const factor = a[i * n + k]! * inverse;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) a[i * n + j] = a[i * n + j]! - factor * a[k * n + j]!;
      for (let j = 0; j < columns; j++) {
        b[i * columns + j] = b[i * columns + j]! - factor * b[k * columns + j]!;
      }
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const inverse = 1 / a[i * n + i]!;
    for (let j = 0; j < columns; j++) {
      let sum = b[i * columns + j]!;
      for (let k = i + 1; k < n; k++) sum -= a[i * n + k]! * b[k * columns + j]!;
      b[i * columns + j] = sum * inverse;
    }
  }
  return true;
}

function swapRows(matrix: Float64Array, width: number, i: number, k: number): void {
  for (let j = 0; j < width; j++) {
    const kept = matrix[i * width + j]!;
    matrix[i * width + j] = matrix[k * width + j]!;
    matrix[k * width + j] = kept;
  }
}
