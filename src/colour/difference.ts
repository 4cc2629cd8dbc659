import { chromaOf } from "./lab.ts";
import type { Lab } from "./lab.ts";

const RADIAN = Math.PI / 180;
const POWER = 25 ** 7;
const sin = (degrees: number): number => Math.sin(degrees * RADIAN);
const cos = (degrees: number): number => Math.cos(degrees * RADIAN);

/** Hue angle [°], 0 to 360; 0 for a grey. */
function hueAngle(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const angle = Math.atan2(b, a) / RADIAN;
  return angle < 0 ? angle + 360 : angle;
}

/** Difference and mean of two hue angles the short way round [°]; a grey takes the other's hue. */
function hues(h1: number, h2: number, grey: boolean): { readonly step: number; readonly mean: number } {
  if (grey) return { step: 0, mean: h1 + h2 };
  const apart = h2 - h1;
  if (Math.abs(apart) <= 180) return { step: apart, mean: (h1 + h2) / 2 };
  const mean = h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
  return { step: apart > 180 ? apart - 360 : apart + 360, mean };
}

/**
 * Colour difference CIEDE2000 with all weights 1. About 1 is just seen side by side; 10 is plain to anyone.
 *
 * @source Sharma, Wu & Dalal (2005) Color Research & Application 30:21–30
 */
export function deltaE00(one: Lab, other: Lab): number {
  const meanChroma7 = ((chromaOf(one) + chromaOf(other)) / 2) ** 7;
  const stretch = 1 + 0.5 * (1 - Math.sqrt(meanChroma7 / (meanChroma7 + POWER)));
  const a1 = stretch * one.a;
  const a2 = stretch * other.a;
  const C1 = Math.hypot(a1, one.b);
  const C2 = Math.hypot(a2, other.b);
  const { step, mean: h } = hues(hueAngle(a1, one.b), hueAngle(a2, other.b), C1 * C2 === 0);

  const dL = other.L - one.L;
  const dC = C2 - C1;
  const dH = 2 * Math.sqrt(C1 * C2) * sin(step / 2);
  const L = (one.L + other.L) / 2;
  const C = (C1 + C2) / 2;
  const T = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.2 * cos(4 * h - 63);
  const C7 = C ** 7;
  const turn = -2 * Math.sqrt(C7 / (C7 + POWER)) * sin(60 * Math.exp(-(((h - 275) / 25) ** 2)));
  const fromMiddle = (L - 50) ** 2;
  const l = dL / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const c = dC / (1 + 0.045 * C);
  const q = dH / (1 + 0.015 * C * T);
  return Math.sqrt(l * l + c * c + q * q + turn * c * q);
}
