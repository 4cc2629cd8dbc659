/** A polynomial fitted to points, and how well it foretells points left out. */
export interface PolynomialFit {
  readonly at: (x: number) => number;
  /** y minus the fit, each point left out of its own fit. */
  readonly leftOut: Float64Array;
}

/** Share of a basis function's size below which it says nothing new about the points. */
const DEPENDENT = 1e-9;

/**
 * Least-squares polynomial by orthogonal polynomials on the points. Powers that the points cannot tell apart are left
 * out, so that points that all have one x give their mean.
 *
 * @param degree of the polynomial; less is used when there are not more points than that
 * @source Forsythe (1957) J. SIAM 5:74 (orthogonal polynomials by recurrence); left-out residual r / (1 − h)
 */
export function fitPolynomial(x: ArrayLike<number>, y: ArrayLike<number>, degree: number): PolynomialFit {
  const n = x.length;
  const alpha: number[] = [];
  const beta: number[] = [];
  const norm: number[] = [];
  const weight: number[] = [];
  const leverage = new Float64Array(n);
  const fitted = new Float64Array(n);
  let before = new Float64Array(n);
  let now = new Float64Array(n).fill(1);
  let largest = 0;
  for (let k = 0; k <= Math.min(degree, Math.max(0, n - 2)); k++) {
    let size = 0;
    let along = 0;
    let shift = 0;
    for (let i = 0; i < n; i++) {
      size += now[i]! ** 2;
      along += now[i]! * y[i]!;
      shift += x[i]! * now[i]! ** 2;
    }
    largest = Math.max(largest, size);
    if (!(size > DEPENDENT * largest)) break;
    norm.push(size);
    weight.push(along / size);
    alpha.push(shift / size);
    beta.push(k === 0 ? 0 : size / norm[k - 1]!);
    for (let i = 0; i < n; i++) {
      leverage[i]! += now[i]! ** 2 / size;
      fitted[i]! += weight[k]! * now[i]!;
    }
    const next = now.map((value, i) => (x[i]! - alpha[k]!) * value - beta[k]! * before[i]!);
    before = now;
    now = next;
  }
  return {
    at: (value) => {
      let last = 0;
      let current = 1;
      let sum = 0;
      for (let k = 0; k < weight.length; k++) {
        sum += weight[k]! * current;
        const next = (value - alpha[k]!) * current - beta[k]! * last;
        last = current;
        current = next;
      }
      return sum;
    },
    leftOut: Float64Array.from(fitted, (f, i) => (y[i]! - f) / Math.max(1e-6, 1 - leverage[i]!)),
  };
}
