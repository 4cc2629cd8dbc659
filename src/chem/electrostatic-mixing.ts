/** Coefficients of the two Chebyshev series of J(x), for x ≤ 1 and x ≥ 1. */
const BELOW_ONE = [
  1.925154014814667, -0.060076477753119, -0.029779077456514, -0.007299499690937, 0.000388260636404,
  0.000636874599598, 0.000036583601823, -0.000045036975204, -0.00000453789571, 0.000002937706971,
  0.000000396566462, -0.000000202099617, -0.000000025267769, 0.00000001352261, 0.000000001229405,
  -0.000000000821969, -0.000000000050847, 0.000000000046333, 0.000000000001943, -0.000000000002563,
  -0.000000000010991,
];
const ABOVE_ONE = [
  0.628023320520852, 0.462762985338493, 0.150044637187895, -0.028796057604906, -0.036552745910311,
  -0.001668087945272, 0.006519840398744, 0.001130378079086, -0.000887171310131, -0.000242107641309,
  0.000087294451594, 0.000034682122751, -0.000004583768938, -0.000003548684306, -0.00000025045388,
  0.000000216991779, 0.00000008077957, 0.000000004558555, -0.000000006944757, -0.000000002849257,
  0.000000000237816,
];

/** J of Pitzer's electrostatic mixing and its derivatives. */
export interface MixingIntegral {
  value: number;
  derivative: number;
  second: number;
}

/**
 * Pitzer's J(x) = x/4 − 1 + (1/x) ∫₀^∞ [1 − exp(−(x/y) e^{−y})] y² dy [1], dJ/dx and d²J/dx², into `out`.
 *
 * @param x 6 z_i z_j A_φ √I, positive
 * @source Harvie (1981) PhD thesis, University of California, San Diego, Appendix B (coefficients from memory; the
 *   tests compare them with the integral)
 */
export function mixingIntegral(x: number, out: MixingIntegral): void {
  const small = x <= 1;
  const power = small ? Math.pow(x, 0.2) : Math.pow(x, -0.1);
  const z = small ? 4 * power - 2 : (40 / 9) * power - 22 / 9;
  const slope = small ? (0.8 * power) / x : ((-4 / 9) * power) / x;
  const curvature = ((small ? -0.8 : -1.1) * slope) / x;
  const a = small ? BELOW_ONE : ABOVE_ONE;
  // The series, and its derivatives by z, by Clenshaw's recurrence.
  let b0 = 0;
  let b1 = 0;
  let b2 = 0;
  let d0 = 0;
  let d1 = 0;
  let d2 = 0;
  let e0 = 0;
  let e1 = 0;
  let e2 = 0;
  for (let k = a.length - 1; k >= 0; k--) {
    b2 = b1;
    b1 = b0;
    b0 = z * b1 - b2 + a[k]!;
    d2 = d1;
    d1 = d0;
    d0 = b1 + z * d1 - d2;
    e2 = e1;
    e1 = e0;
    e0 = 2 * d1 + z * e1 - e2;
  }
  out.value = x / 4 - 1 + 0.5 * (b0 - b2);
  out.derivative = 0.25 + 0.5 * slope * (d0 - d2);
  out.second = 0.5 * (slope * slope * (e0 - e2) + curvature * (d0 - d2));
}
