import type { ActivityModel } from "./activity.ts";
import type { CompiledInteractions, EstimateNote, RangeNote } from "./interaction-model.ts";
import { LikeCharges } from "./like-charges.ts";
import { pairFunction } from "./pair-functions.ts";
import type { PairFunction } from "./pair-functions.ts";
import { pitzerEstimateNotes, pitzerRangeNotes } from "./pitzer-notes.ts";
import type { PitzerLayout } from "./pitzer-layout.ts";
import { WATER_MOLAR_MASS_KG_PER_MOL } from "./water-properties.ts";

/** What the terms need besides the parameters of the species. */
export interface PitzerSettings {
  /** Debye–Hückel slope of the osmotic coefficient [(kg/mol)^½]. */
  readonly Aphi: number;
  /** Ionic strength at which the terms are held [mol/kg]. */
  readonly hold: number;
  readonly temperature_C: number;
  /** Formula for ions without any parameters. */
  readonly unknown: ActivityModel;
}

/** b of the Debye–Hückel term [(kg/mol)^½]. */
const B = 1.2;
/** Ionic strength [mol/kg] below which terms are evaluated at this value: their derivatives grow without limit at zero. */
const FLOOR = 1e-14;
/**
 * Pitzer's equations laid out for one system, as the excess function W of the molalities (excess Gibbs energy per kg
 * of water over RT) and its derivatives: ln γ_i = ∂W/∂m_i, osmotic coefficient from the Gibbs–Duhem relation.
 *
 * W = f(I) + 2 Σ m_c m_a B_ca(I) + Z Σ m_c m_a C_ca + Σ 2 m_i m_j (θ_ij + Eθ_ij(I)) + Σ m m m ψ, Z = Σ m |z|.
 */
export class PitzerTerms implements CompiledInteractions {
  readonly lnGamma: Float64Array;
  readonly jacobian: Float64Array;
  readonly waterSlope: Float64Array;
  lnWaterActivity = 0;
  osmoticCoefficient = 1;

  private readonly layout: PitzerLayout;
  private readonly settings: PitzerSettings;
  private readonly n: number;
  /** Molalities the terms are evaluated at (scaled down when held). */
  private readonly m: Float64Array;
  /** Half the square of each charge number, and its size. */
  private readonly halfZ2: Float64Array;
  private readonly sizeZ: Float64Array;
  /** W and its derivatives at constant I and Z, by I, and by Z. */
  readonly first: Float64Array;
  readonly firstI: Float64Array;
  private readonly firstZ: Float64Array;
  private readonly functions: PairFunction[];
  private readonly likeCharges: LikeCharges;
  private readonly everything: Int32Array;
  /** Derivatives by all molalities, for when the terms are held. */
  private whole: Float64Array | null = null;
  /** What the derivatives go to, how many columns it has, and the column of each species (-1: none). */
  private into: Float64Array;
  private columns = 0;
  private readonly columnOf: Int32Array;
  /** ∂² W / ∂m_c ∂m_a at constant I and Z, by pair of unlike sign. */
  private readonly unlike: Float64Array;
  private I = 0;
  private Z = 0;
  private W = 0;
  private WI = 0;
  private WZ = 0;
  private WII = 0;
  /** Σ m ln γ − W: what the osmotic coefficient differs from 1 by, times the molalities. */
  private moment = 0;

  constructor(layout: PitzerLayout, settings: PitzerSettings) {
    this.layout = layout;
    this.settings = settings;
    const n = layout.names.length;
    this.n = n;
    this.lnGamma = new Float64Array(n);
    this.jacobian = new Float64Array(n * n);
    this.waterSlope = new Float64Array(n);
    this.m = new Float64Array(n);
    this.halfZ2 = layout.charges.map((z) => 0.5 * z * z);
    this.sizeZ = layout.charges.map(Math.abs);
    this.first = new Float64Array(n);
    this.firstI = new Float64Array(n);
    this.firstZ = new Float64Array(n);
    this.functions = Array.from(layout.alphas, () => ({ g: 0, slope: 0, curvature: 0 }));
    this.everything = Int32Array.from(layout.names, (_, i) => i);
    this.into = this.jacobian;
    this.columnOf = new Int32Array(n);
    this.unlike = new Float64Array(layout.beta0.length);
    this.likeCharges = new LikeCharges(layout, settings.Aphi);
  }

  evaluate(molalities: Float64Array, by: Int32Array): void {
    const derivatives = by.length > 0;
    const { m, n, halfZ2, sizeZ } = this;
    let strength = 0;
    let sum = 0;
    for (let i = 0; i < n; i++) {
      strength += halfZ2[i]! * molalities[i]!;
      sum += molalities[i]!;
    }
    const scale = strength > this.settings.hold ? this.settings.hold / strength : 1;
    this.I = Math.max(FLOOR, strength * scale);
    let Z = 0;
    for (let i = 0; i < n; i++) {
      m[i] = molalities[i]! * scale;
      Z += sizeZ[i]! * m[i]!;
    }
    this.Z = Z;
    this.first.fill(0);
    this.firstI.fill(0);
    this.firstZ.fill(0);
    const columns = scale < 1 && derivatives ? this.everything : by;
    if (derivatives) this.beginDerivatives(columns);
    this.debyeHuckel();
    this.pairs();
    if (derivatives) this.pairDerivatives(columns);
    const electrostatic = this.likeCharges.evaluate(
      this.m,
      this.I,
      columns,
      this.first,
      this.firstI,
      this.into,
    );
    this.W += electrostatic.W;
    this.WI += electrostatic.WI;
    this.WII += electrostatic.WII;
    this.constants(derivatives);
    this.collect(sum, scale);
    if (derivatives) this.collectDerivatives(strength, scale, columns);
    if (derivatives && columns !== by) this.keepColumns(by);
  }

  /** Makes room for the derivatives by the given species. */
  private beginDerivatives(columns: Int32Array): void {
    const { n, columnOf } = this;
    if (columns === this.everything) this.whole ??= new Float64Array(n * n);
    this.into = columns === this.everything ? this.whole! : this.jacobian;
    this.columns = columns.length;
    this.into.fill(0, 0, n * columns.length);
    columnOf.fill(-1);
    for (let b = 0; b < columns.length; b++) columnOf[columns[b]!] = b;
  }

  /** Of the derivatives by all molalities those asked for. */
  private keepColumns(by: Int32Array): void {
    const { n, jacobian, into, waterSlope } = this;
    const slopes = waterSlope.slice();
    for (let b = 0; b < by.length; b++) {
      for (let i = 0; i < n; i++) jacobian[i * by.length + b] = into[i * n + by[b]!]!;
      waterSlope[b] = slopes[by[b]!]!;
    }
  }

  rangeNotes(molalities: Float64Array): readonly RangeNote[] {
    return pitzerRangeNotes(this.layout, this.settings, molalities);
  }

  estimateNotes(molalities: Float64Array): readonly EstimateNote[] {
    return pitzerEstimateNotes(this.layout, molalities);
  }

  private debyeHuckel(): void {
    const { Aphi } = this.settings;
    const root = Math.sqrt(this.I);
    const bracket = 1 + B * root;
    const log = Math.log1p(B * root);
    this.W = ((-4 * Aphi * this.I) / B) * log;
    this.WI = -2 * Aphi * ((2 / B) * log + root / bracket);
    this.WII = -2 * Aphi * (1 / (root * bracket) + 0.5 / (root * bracket * bracket));
    this.WZ = 0;
  }

  /** Pairs of unlike sign; longer than usual because all sums come out of one loop over the pairs. */
  private pairs(): void {
    const { layout, m, first, firstI, firstZ, functions, unlike, I, Z } = this;
    const { cations, anions, beta0, beta1, beta2, c: cubic, alpha1, alpha2 } = layout;
    for (let t = 0; t < functions.length; t++) pairFunction(layout.alphas[t]!, I, functions[t]!);
    const columns = anions.length;
    let [W, WI, WZ, WII] = [0, 0, 0, 0];
    for (let c = 0; c < cations.length; c++) {
      const ic = cations[c]!;
      const mc = m[ic]!;
      let own = 0;
      let ownI = 0;
      let ownZ = 0;
      for (let a = 0; a < columns; a++) {
        const ia = anions[a]!;
        const ma = m[ia]!;
        const p = c * columns + a;
        const f = functions[alpha1[p]!]!;
        const b1 = beta1[p]!;
        const b2 = beta2[p]!;
        let value = beta0[p]! + b1 * f.g;
        let slope = b1 * f.slope;
        let curvature = b1 * f.curvature;
        if (b2 !== 0) {
          const s = functions[alpha2[p]!]!;
          value += b2 * s.g;
          slope += b2 * s.slope;
          curvature += b2 * s.curvature;
        }
        const both = 2 * value + Z * cubic[p]!;
        own += ma * both;
        ownI += 2 * ma * slope;
        ownZ += ma * cubic[p]!;
        first[ia] = first[ia]! + mc * both;
        firstI[ia] = firstI[ia]! + 2 * mc * slope;
        firstZ[ia] = firstZ[ia]! + mc * cubic[p]!;
        WII += 2 * mc * ma * curvature;
        unlike[p] = both;
      }
      first[ic] = own;
      firstI[ic] = ownI;
      firstZ[ic] = ownZ;
      W += mc * own;
      WI += mc * ownI;
      WZ += mc * ownZ;
    }
    this.W += W;
    this.WI += WI;
    this.WZ += WZ;
    this.WII += WII;
  }

  private pairDerivatives(by: Int32Array): void {
    const { layout, into, columnOf, unlike } = this;
    const { cations, anions } = layout;
    const columns = by.length;
    for (let c = 0; c < cations.length; c++) {
      const b = columnOf[cations[c]!]!;
      if (b < 0) continue;
      const p = c * anions.length;
      for (let a = 0; a < anions.length; a++) into[anions[a]! * columns + b] = unlike[p + a]!;
    }
    for (let a = 0; a < anions.length; a++) {
      const b = columnOf[anions[a]!]!;
      if (b < 0) continue;
      for (let c = 0; c < cations.length; c++)
        into[cations[c]! * columns + b] = unlike[c * anions.length + a]!;
    }
  }

  /** theta, lambda and psi: they do not depend on the ionic strength. */
  private constants(derivatives: boolean): void {
    const { layout, m, first, into, columns, columnOf } = this;
    const add = (i: number, column: number, value: number): void => {
      if (column >= 0) into[i * columns + column] = into[i * columns + column]! + value;
    };
    const pair = (i: number, j: number, value: number): void => {
      add(i, columnOf[j]!, value);
      add(j, columnOf[i]!, value);
    };
    let W = 0;
    for (let e = 0; e < layout.two.length; e++) {
      const i = layout.twoI[e]!;
      const j = layout.twoJ[e]!;
      const value = 2 * layout.two[e]!;
      W += value * m[i]! * m[j]!;
      first[i] = first[i]! + value * m[j]!;
      first[j] = first[j]! + value * m[i]!;
      if (derivatives) pair(i, j, value);
    }
    for (let e = 0; e < layout.three.length; e++) {
      const i = layout.threeI[e]!;
      const j = layout.threeJ[e]!;
      const k = layout.threeK[e]!;
      const value = layout.three[e]!;
      W += value * m[i]! * m[j]! * m[k]!;
      first[i] = first[i]! + value * m[j]! * m[k]!;
      first[j] = first[j]! + value * m[i]! * m[k]!;
      first[k] = first[k]! + value * m[i]! * m[j]!;
      if (!derivatives) continue;
      pair(i, j, value * m[k]!);
      pair(i, k, value * m[j]!);
      pair(j, k, value * m[i]!);
    }
    this.W += W;
  }

  /** Activity coefficients and water activity at the sums now held. */
  private collect(sum: number, scale: number): void {
    const { layout, m, first, lnGamma, n, halfZ2, sizeZ, WI, WZ } = this;
    let moment = -this.W;
    for (let i = 0; i < n; i++) {
      const value = first[i]! + halfZ2[i]! * WI + sizeZ[i]! * WZ;
      lnGamma[i] = value;
      moment += m[i]! * value;
    }
    this.moment = moment;
    const scaled = sum * scale;
    this.osmoticCoefficient = scaled > 0 ? 1 + moment / scaled : 1;
    this.lnWaterActivity = -WATER_MOLAR_MASS_KG_PER_MOL * sum * this.osmoticCoefficient;
    for (const i of layout.unknown) {
      lnGamma[i] = this.settings.unknown.lnGamma(layout.charges[i]!, layout.names[i]!, this.I);
    }
  }

  private collectDerivatives(strength: number, scale: number, by: Int32Array): void {
    const { layout, m, n, I, firstI, firstZ, into, waterSlope, halfZ2, sizeZ, WII } = this;
    const columns = by.length;
    for (let i = 0; i < n; i++) {
      const half = halfZ2[i]!;
      const size = sizeZ[i]!;
      const row = i * columns;
      const byI = firstI[i]! + half * WII;
      const byZ = firstZ[i]!;
      for (let b = 0; b < columns; b++) {
        const j = by[b]!;
        into[row + b] =
          into[row + b]! + half * firstI[j]! + size * firstZ[j]! + halfZ2[j]! * byI + sizeZ[j]! * byZ;
      }
    }
    if (scale < 1) this.holdDerivatives(strength, scale);
    waterSlope.fill(0, 0, columns);
    for (let i = 0; i < n; i++) {
      const weight = m[i]! / scale;
      if (weight === 0) continue;
      const row = i * columns;
      for (let b = 0; b < columns; b++) waterSlope[b] = waterSlope[b]! + weight * into[row + b]!;
    }
    for (let b = 0; b < columns; b++) {
      const held = scale < 1 ? (halfZ2[by[b]!]! * this.moment) / this.settings.hold : 0;
      waterSlope[b] = -WATER_MOLAR_MASS_KG_PER_MOL * (1 + waterSlope[b]! + held);
    }
    for (const i of layout.unknown) {
      const { charges, names } = layout;
      const byI = scale < 1 ? 0 : this.settings.unknown.dLnGamma(charges[i]!, names[i]!, I);
      for (let b = 0; b < columns; b++) into[i * columns + b] = halfZ2[by[b]!]! * byI;
    }
  }

  /** When held, the molalities used are hold / I times the true ones, so they answer to the ionic strength as well. */
  private holdDerivatives(strength: number, scale: number): void {
    const { m, n, halfZ2, into } = this;
    for (let i = 0; i < n; i++) {
      let along = 0;
      for (let k = 0; k < n; k++) along += into[i * n + k]! * m[k]!;
      for (let j = 0; j < n; j++) {
        into[i * n + j] = scale * into[i * n + j]! - (along * halfZ2[j]!) / strength;
      }
    }
  }
}
