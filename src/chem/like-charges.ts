import { mixingIntegral } from "./electrostatic-mixing.ts";
import type { MixingIntegral } from "./electrostatic-mixing.ts";
import type { PitzerLayout } from "./pitzer-layout.ts";

/** Largest charge (its size) that electrostatic mixing is worked out for. */
const LARGEST_CHARGE = 3;
const WIDTH = LARGEST_CHARGE + 1;
/** Products of two charges within that size. */
const PRODUCTS = [1, 2, 3, 4, 6, 9] as const;

/**
 * Electrostatic mixing of ions of like sign and unlike charge, summed by charge: W = Σ 2 M_p M_q Eθ_pq(I), with
 * Eθ_pq = p q / (4 I) [J(x_pq) − J(x_pp) / 2 − J(x_qq) / 2] [kg/mol], x_pq = 6 p q A_φ √I.
 *
 * @source Pitzer (1975) J. Solution Chem. 4:249–265
 */
export class LikeCharges {
  private readonly layout: PitzerLayout;
  private readonly Aphi: number;
  /** Place of each species in `byCharge`: sign and size of its charge; -1 for those without. */
  private readonly slots: Int32Array;
  private readonly byCharge = new Float64Array(2 * WIDTH);
  /** By the sizes of two charges, both ways. */
  private readonly value = new Float64Array(WIDTH * WIDTH);
  private readonly slope = new Float64Array(WIDTH * WIDTH);
  /** J and its derivatives by the product of two charges. */
  private readonly integrals: MixingIntegral[] = Array.from({ length: LARGEST_CHARGE ** 2 + 1 }, () => ({
    value: 0,
    derivative: 0,
    second: 0,
  }));
  private readonly sums = { W: 0, WI: 0, WII: 0 };

  /** @param Aphi Debye–Hückel slope of the osmotic coefficient [(kg/mol)^½] */
  constructor(layout: PitzerLayout, Aphi: number) {
    this.layout = layout;
    this.Aphi = Aphi;
    this.slots = new Int32Array(layout.names.length).fill(-1);
    for (const i of [...layout.cations, ...layout.anions]) this.slots[i] = slotOf(layout.charges[i]!);
  }

  /**
   * Adds the terms of molalities `m` at ionic strength `I` to the first derivatives of W by molality, and of those by
   * `I`; to `second`, at [i · by.length + b], those by the molalities of the species `by`.
   * @returns the sum W and its derivatives by I, for the caller to read at once
   */
  evaluate(
    m: Float64Array,
    I: number,
    by: Int32Array,
    first: Float64Array,
    firstI: Float64Array,
    second: Float64Array,
  ): Readonly<LikeCharges["sums"]> {
    const { layout, byCharge, slots, sums } = this;
    byCharge.fill(0);
    for (let i = 0; i < slots.length; i++) {
      const at = slots[i]!;
      if (at >= 0) byCharge[at] = byCharge[at]! + m[i]!;
    }
    const base = 6 * this.Aphi * Math.sqrt(I);
    for (const product of PRODUCTS) mixingIntegral(base * product, this.integrals[product]!);
    sums.W = 0;
    sums.WI = 0;
    sums.WII = 0;
    for (let p = 1; p <= LARGEST_CHARGE; p++) {
      for (let q = p + 1; q <= LARGEST_CHARGE; q++) this.pairOfCharges(p, q, I, base);
    }
    for (const [ions, sign] of [
      [layout.cations, 0],
      [layout.anions, WIDTH],
    ] as const) {
      this.addToIons(ions, sign, first, firstI);
      this.addDerivatives(ions, sign, by, second);
    }
    return sums;
  }

  private pairOfCharges(p: number, q: number, I: number, base: number): void {
    const { byCharge, value, slope, sums, integrals } = this;
    const products = byCharge[p]! * byCharge[q]! + byCharge[WIDTH + p]! * byCharge[WIDTH + q]!;
    const [pq, pp, qq] = [p * q, p * p, q * q];
    const unlike = integrals[pq]!;
    const one = integrals[pp]!;
    const other = integrals[qq]!;
    // J, x J′ and x² J″ of the three, weighted; x runs with the root of I.
    const J = unlike.value - 0.5 * (one.value + other.value);
    const first = base * (pq * unlike.derivative - 0.5 * (pp * one.derivative + qq * other.derivative));
    const second =
      base * base * (pq * pq * unlike.second - 0.5 * (pp * pp * one.second + qq * qq * other.second));
    const theta = (pq / (4 * I)) * J;
    const byI = (pq / (4 * I * I)) * (0.5 * first - J);
    const twice = (pq / (4 * I * I * I)) * (2 * J - 1.25 * first + 0.25 * second);
    value[p * WIDTH + q] = theta;
    value[q * WIDTH + p] = theta;
    slope[p * WIDTH + q] = byI;
    slope[q * WIDTH + p] = byI;
    sums.W += 2 * products * theta;
    sums.WI += 2 * products * byI;
    sums.WII += 2 * products * twice;
  }

  private addToIons(ions: Int32Array, sign: number, first: Float64Array, firstI: Float64Array): void {
    const { byCharge, slots, value, slope } = this;
    for (let o = 0; o < ions.length; o++) {
      const i = ions[o]!;
      if (slots[i]! < 0) continue;
      const p = (slots[i]! - sign) * WIDTH;
      for (let q = 1; q <= LARGEST_CHARGE; q++) {
        // Zero on the diagonal: ions of equal charge have no such term.
        const molality = 2 * byCharge[sign + q]!;
        first[i] = first[i]! + molality * value[p + q]!;
        firstI[i] = firstI[i]! + molality * slope[p + q]!;
      }
    }
  }

  private addDerivatives(ions: Int32Array, sign: number, by: Int32Array, second: Float64Array): void {
    const { slots, value } = this;
    for (let b = 0; b < by.length; b++) {
      const q = slots[by[b]!]! - sign;
      if (q < 1 || q > LARGEST_CHARGE) continue;
      for (let o = 0; o < ions.length; o++) {
        const i = ions[o]!;
        if (slots[i]! < 0) continue;
        const at = i * by.length + b;
        second[at] = second[at]! + 2 * value[(slots[i]! - sign) * WIDTH + q]!;
      }
    }
  }
}

/** Place of an ion of charge number `z` in the sums by charge; -1 when electrostatic mixing is not worked out for it. */
function slotOf(z: number): number {
  const size = Math.abs(z);
  if (size > LARGEST_CHARGE || !Number.isInteger(size)) return -1;
  return z > 0 ? size : WIDTH + size;
}
