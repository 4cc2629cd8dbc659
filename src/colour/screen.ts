import { labOfXyz, xyzOfLab } from "./lab.ts";
import type { Lab } from "./lab.ts";
import { WHITE } from "./spectrum.ts";
import type { Xyz } from "./spectrum.ts";

/** Linear red, green and blue of sRGB; 0 to 1 within what a screen can show. */
export type LinearRgb = readonly [number, number, number];

/** A colour as a screen can show it. */
export interface ScreenColour {
  /** "#rrggbb". */
  readonly hex: string;
  /** False when the true colour is stronger than the screen can show and a paler one stands for it. */
  readonly inGamut: boolean;
}

type Matrix = readonly [Xyz, Xyz, Xyz];

/** @source IEC 61966-2-1:1999/Amd 1:2003 */
const FROM_XYZ: Matrix = [
  [3.2406255, -1.537208, -0.4986286],
  [-0.9689307, 1.8757561, 0.0415175],
  [0.0557101, -0.2040211, 1.0569959],
];
/** @source IEC 61966-2-1:1999 */
const TO_XYZ: Matrix = [
  [0.4124, 0.3576, 0.1805],
  [0.2126, 0.7152, 0.0722],
  [0.0193, 0.1192, 0.9505],
];
const SRGB_WHITE = times(TO_XYZ, [1, 1, 1]);

/** Part of full scale by which a channel may be off before a colour counts as out of reach: two 8-bit steps, unseen. */
const CHANNEL_SLACK = 2 / 255;
/** Colour difference, in OKLab, up to which clipping is not noticed. @source W3C CSS Color Module Level 4, 13.2 */
const UNSEEN = 0.02;

function times(matrix: Matrix, [x, y, z]: readonly [number, number, number]): [number, number, number] {
  const row = (r: Xyz): number => r[0] * x + r[1] * y + r[2] * z;
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
}

/** Share of full scale [1] by which a screen is driven for a linear intensity [1]. @source IEC 61966-2-1:1999 */
export function encodeChannel(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}

/** Linear intensity [1] of an encoded channel [1]; the way back of `encodeChannel`. */
export function decodeChannel(encoded: number): number {
  return encoded <= 0.04045 ? encoded / 12.92 : ((encoded + 0.055) / 1.055) ** 2.4;
}

/** Linear sRGB of tristimulus values of this layer; clear water is white (1, 1, 1) but for the last figures. */
export function linearOfXyz(xyz: Xyz): LinearRgb {
  const scaled = xyz.map((value, i) => (value / WHITE[i]!) * SRGB_WHITE[i]!);
  return times(FROM_XYZ, [scaled[0]!, scaled[1]!, scaled[2]!]);
}

/** Tristimulus values (white: Y = 100) of linear sRGB. */
export function xyzOfLinear(rgb: LinearRgb): Xyz {
  const xyz = times(TO_XYZ, rgb);
  return [0, 1, 2].map((i) => (xyz[i]! / SRGB_WHITE[i]!) * WHITE[i]!) as [number, number, number];
}

const clampUnit = (value: number): number => Math.min(1, Math.max(0, value));

/** "#rrggbb" of linear sRGB, each channel clipped to what a screen can show. */
export function hexOfLinear(rgb: LinearRgb): string {
  const digits = rgb.map((value) =>
    Math.round(255 * clampUnit(encodeChannel(clampUnit(value))))
      .toString(16)
      .padStart(2, "0"),
  );
  return `#${digits.join("")}`;
}

/** Linear sRGB of "#rrggbb" or "#rgb", with or without the sign; null for anything else. */
export function linearOfHex(text: string): LinearRgb | null {
  const digits = /^#?([0-9a-f]{6}|[0-9a-f]{3})$/i.exec(text.trim())?.[1];
  if (digits === undefined) return null;
  const full = digits.length === 3 ? digits.replace(/./g, "$&$&") : digits;
  const channel = (at: number): number => decodeChannel(parseInt(full.slice(at, at + 2), 16) / 255);
  return [channel(0), channel(2), channel(4)];
}

/** L*a*b* of linear sRGB. */
export function labOfLinear(rgb: LinearRgb): Lab {
  return labOfXyz(xyzOfLinear(rgb));
}

/** @source Ottosson (2020) A perceptual color space for image processing; W3C CSS Color Module Level 4, 9.3 */
const TO_CONES: Matrix = [
  [0.4122214708, 0.5363325363, 0.0514459929],
  [0.2119034982, 0.6806995451, 0.1073969566],
  [0.0883024619, 0.2817188376, 0.6299787005],
];
const TO_OKLAB: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];

function oklab(rgb: LinearRgb): readonly [number, number, number] {
  const [l, m, s] = times(TO_CONES, rgb);
  return times(TO_OKLAB, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)]);
}

/** Linear sRGB of OKLab. */
function fromOklab([L, a, b]: readonly [number, number, number]): LinearRgb {
  const l = (L + 0.3963377774 * a + 0.2158037573 * b) ** 3;
  const m = (L - 0.1055613458 * a - 0.0638541728 * b) ** 3;
  const s = (L - 0.0894841775 * a - 1.291485548 * b) ** 3;
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ];
}

const fits = (rgb: LinearRgb, slack = 0): boolean =>
  rgb.every((value) => encodeChannel(value) >= -slack && encodeChannel(value) <= 1 + slack);
const clip = ([r, g, b]: LinearRgb): LinearRgb => [clampUnit(r), clampUnit(g), clampUnit(b)];

function apart(one: LinearRgb, other: LinearRgb): number {
  const p = oklab(one);
  const q = oklab(other);
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

/**
 * The nearest colour a screen can show: chroma is taken down at the same lightness and hue until clipping what is left
 * is not noticed.
 *
 * @source W3C CSS Color Module Level 4, 13.2 (binary search with local clipping)
 */
export function intoGamut(rgb: LinearRgb): LinearRgb {
  if (fits(rgb)) return rgb;
  const [L, a, b] = oklab(rgb);
  if (L >= 1) return [1, 1, 1];
  if (L <= 0) return [0, 0, 0];
  if (apart(clip(rgb), rgb) < UNSEEN) return clip(rgb);
  let kept = 0;
  let lost = 1;
  while (lost - kept > 1e-4) {
    const part = (kept + lost) / 2;
    const paler = fromOklab([L, part * a, part * b]);
    if (fits(paler) || apart(clip(paler), paler) < UNSEEN) kept = part;
    else lost = part;
  }
  return clip(fromOklab([L, kept * a, kept * b]));
}

/** A colour as a screen can show it. */
export function screenColour(xyz: Xyz): ScreenColour {
  const rgb = linearOfXyz(xyz);
  return { hex: hexOfLinear(intoGamut(rgb)), inGamut: fits(rgb, CHANNEL_SLACK) };
}

/** L*a*b* as a screen can show it. */
export function screenColourOfLab(lab: Lab): ScreenColour {
  return screenColour(xyzOfLab(lab));
}
