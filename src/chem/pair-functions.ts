/** Pitzer's g(α√I) and its first two derivatives by I, for one α. */
export interface PairFunction {
  g: number;
  slope: number;
  curvature: number;
}

/** x below which the series are used (the closed forms cancel). */
const SERIES_BELOW = 0.02;

/**
 * g = 2 [1 − (1 + x) e^{−x}] / x² with x = α√I, and its derivatives by I, into `out`.
 *
 * @param alpha [(kg/mol)^½]
 * @param I ionic strength [mol/kg], positive
 * @source Pitzer & Mayorga (1973) J. Phys. Chem. 77:2300–2308
 */
export function pairFunction(alpha: number, I: number, out: PairFunction): void {
  const x = alpha * Math.sqrt(I);
  const e = Math.exp(-x);
  // First derivative by I is h / I with h = −2 [1 − (1 + x + x²/2) e^{−x}] / x².
  let h: number;
  if (x < SERIES_BELOW) {
    out.g = 1 + x * (-2 / 3 + x * (1 / 4 - x * (1 / 15 - x / 72)));
    h = x * (-1 / 3 + x * (1 / 4 - x * (1 / 10 - x / 36)));
  } else {
    out.g = (2 * (1 - (1 + x) * e)) / (x * x);
    h = (-2 * (1 - (1 + x + 0.5 * x * x) * e)) / (x * x);
  }
  out.slope = h / I;
  out.curvature = (-0.5 * x * e - 2 * h) / (I * I);
}
