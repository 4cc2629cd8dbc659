import { WHITE } from "./spectrum.ts";
import type { Xyz } from "./spectrum.ts";

/** CIE 1976 L*a*b*: lightness 0–100, green to red, blue to yellow. */
export interface Lab {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

/** Ratio to white below which the cube root gives way to a straight line. */
const LINEAR_BELOW = (6 / 29) ** 3;
const SLOPE = (29 / 6) ** 2 / 3;

const bend = (t: number): number => (t > LINEAR_BELOW ? Math.cbrt(t) : SLOPE * t + 4 / 29);
const unbend = (f: number): number => (f > 6 / 29 ? f ** 3 : (f - 4 / 29) / SLOPE);

/**
 * L*a*b* of tristimulus values.
 *
 * @param white tristimulus values of white on the same scale; left out: D65 as summed here, so that water is neutral
 * @source CIE 15:2004, 8.2.1
 */
export function labOfXyz([X, Y, Z]: Xyz, white: Xyz = WHITE): Lab {
  const x = bend(X / white[0]);
  const y = bend(Y / white[1]);
  const z = bend(Z / white[2]);
  return { L: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

/** Tristimulus values of L*a*b*; the way back of `labOfXyz`. */
export function xyzOfLab({ L, a, b }: Lab, white: Xyz = WHITE): Xyz {
  const y = (L + 16) / 116;
  return [white[0] * unbend(y + a / 500), white[1] * unbend(y), white[2] * unbend(y - b / 200)];
}

/** Chroma: how far a colour is from grey, in the units of a and b. */
export function chromaOf({ a, b }: Lab): number {
  return Math.hypot(a, b);
}

/** Hue as an angle [°], 0 to 360: red near 25, yellow near 90, green near 150, blue near 270. */
export function hueOf({ a, b }: Lab): number {
  const angle = (Math.atan2(b, a) * 180) / Math.PI;
  return angle < 0 ? angle + 360 : angle;
}
