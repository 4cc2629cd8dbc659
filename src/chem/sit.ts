import sitFile from "../../data/sit.json" with { type: "json" };
import { davies } from "./activity.ts";
import type {
  CompiledInteractions,
  ContainedSpecies,
  EstimateNote,
  InteractionModel,
  RangeNote,
} from "./interaction-model.ts";
import { FROM_MEMORY, PRESENT_MOL_PER_KG, TELLS } from "./estimate-notes.ts";
import { chargeInName } from "./pitzer-parameters.ts";
import { debyeHuckelA, WATER_MOLAR_MASS_KG_PER_MOL } from "./water-properties.ts";

/** Coefficients of the specific ion interaction theory. */
export interface SitData {
  readonly debyeHueckel: { readonly Ba: number };
  readonly usableTo_molPerKg: { readonly value: number };
  /** Species whose effect the coefficients contain. */
  readonly contained: readonly (ContainedSpecies & { readonly basis: string })[];
  /** Pairs that one number does not carry: how far it is off in log10 of the salt's mean activity coefficient. */
  readonly notConstant: {
    readonly pairs: readonly {
      readonly cation: string;
      readonly anion: string;
      readonly offBy_log10: number;
    }[];
  };
  readonly pairs: readonly {
    readonly cation: string;
    readonly anion: string;
    readonly epsilon_kgPerMol: number;
    /** Fitted by us to published activity coefficients, not published itself. */
    readonly fitted: boolean;
    readonly fromMemory: boolean;
  }[];
}

/** The coefficients that come with Hardstand. */
export function builtInSit(): SitData {
  return sitFile;
}

/** Distance from 25 °C [°C] from which the coefficients, known at 25 °C only, are reported. As for Pitzer's equations. */
const NEAR_25_C = 10;
/** Share of the charge of its sign from which an ion counts for what is said about a solution. As for Pitzer's equations. */
const WEIGHT = 0.01;
/** Size [kg/mol] that a missing coefficient may have, to judge whether it would tell. Our choice: the published ones have a median size of 0.11. */
const USUAL_SIZE = 0.1;
/** Ionic strength [mol/kg] below which the terms are evaluated at this value: their derivatives grow without limit at zero. */
const FLOOR = 1e-14;

/**
 * Specific ion interaction theory: ln γ_i = −z_i² ln(10) A √I / (1 + 1.5 √I) + ln(10) Σ ε(i,j) m_j over ions j of opposite
 * sign, with the osmotic coefficient and the water activity that follow from it. Totals and concentrations of a system
 * solved with it are mol per kg of water.
 *
 * Species are matched to coefficients by name ("Ca+2", "SO4-2"). Pairs without one get zero; the answer names them, and
 * those whose coefficient is from memory or our own fit. Neutral species have activity coefficient 1. Temperature enters through A alone.
 * @validity to an ionic strength of about 3.5 mol/kg; beyond, the answer is marked as extrapolated with the reason
 * @source Grenthe, Plyasunov & Spahiu (1997) in Modelling in Aquatic Chemistry, OECD NEA, ch. IX (from memory);
 *   coefficients as data/sit.json
 */
export function sit(data: SitData, options: { readonly temperature_C?: number } = {}): InteractionModel {
  const temperature_C = options.temperature_C ?? 25;
  const A = debyeHuckelA(temperature_C);
  return {
    name: "sit",
    kind: "interaction",
    ideal: false,
    contained: data.contained,
    startModel: davies({ A, holdAbove_molPerL: 0.5 }),
    compile: (names, charges) => new SitTerms(data, A, temperature_C, names, charges),
  };
}

/** The theory laid out for one system. */
class SitTerms implements CompiledInteractions {
  readonly lnGamma: Float64Array;
  readonly jacobian: Float64Array;
  readonly waterSlope: Float64Array;
  lnWaterActivity = 0;
  osmoticCoefficient = 1;

  private readonly data: SitData;
  private readonly temperature_C: number;
  private readonly names: readonly string[];
  private readonly charges: Float64Array;
  /** ln(10) A. */
  private readonly A: number;
  /** ln(10) ε at [i · n + j], both ways; NaN for ions of opposite sign without a coefficient. */
  private readonly epsilon: Float64Array;
  /** What is to be said of the coefficient of a pair, at [c · n + a]; nothing of a published one. */
  private readonly standing = new Map<number, string>();

  constructor(
    data: SitData,
    A: number,
    temperature_C: number,
    given: readonly string[],
    charges: Float64Array,
  ) {
    const n = given.length;
    this.data = data;
    this.A = A * Math.LN10;
    this.temperature_C = temperature_C;
    this.names = given;
    this.charges = charges;
    this.lnGamma = new Float64Array(n);
    this.jacobian = new Float64Array(n * n);
    this.waterSlope = new Float64Array(n);
    this.epsilon = new Float64Array(n * n);
    const known = new Map(data.pairs.map((pair) => [`${pair.cation} ${pair.anion}`, pair]));
    const offBy = new Map(data.notConstant.pairs.map((pair) => [`${pair.cation} ${pair.anion}`, pair]));
    // Names are the caller's: one that says another charge than the species has is no name of a known ion.
    const names = given.map((name, i) => (chargeInName(name) === charges[i] ? name : ""));
    for (let c = 0; c < n; c++) {
      for (let a = 0; a < n; a++) {
        if (!(charges[c]! > 0) || !(charges[a]! < 0)) continue;
        const name = `${names[c]!} ${names[a]!}`;
        const pair = known.get(name);
        const value = (pair?.epsilon_kgPerMol ?? Number.NaN) * Math.LN10;
        const standing = standingOf(pair, offBy.get(name)?.offBy_log10);
        if (standing !== null) this.standing.set(c * n + a, standing);
        this.epsilon[c * n + a] = value;
        this.epsilon[a * n + c] = value;
      }
    }
  }

  evaluate(m: Float64Array, by: Int32Array): void {
    const { charges, epsilon, lnGamma, jacobian, waterSlope, A } = this;
    const n = charges.length;
    const b = this.data.debyeHueckel.Ba;
    let strength = 0;
    let sum = 0;
    for (let i = 0; i < n; i++) {
      strength += 0.5 * charges[i]! * charges[i]! * m[i]!;
      sum += m[i]!;
    }
    const I = Math.max(FLOOR, strength);
    const root = Math.sqrt(I);
    const slope = (-2 * A * root) / (1 + b * root);
    const curvature = -A / (root * (1 + b * root) ** 2);
    // Excess function of Debye and Hückel, of which `slope` is the derivative by I.
    const excess = -4 * A * (I / (2 * b) - root / b ** 2 + Math.log1p(b * root) / b ** 3);
    let moment = -excess;
    for (let i = 0; i < n; i++) {
      const half = 0.5 * charges[i]! * charges[i]!;
      let pairs = 0;
      for (let j = 0; j < n; j++) pairs += (epsilon[i * n + j]! || 0) * m[j]!;
      lnGamma[i] = half * slope + pairs;
      // Each pair counts twice in the moment and once in the excess, of which half falls to either ion.
      moment += m[i]! * (half * slope + 0.5 * pairs);
    }
    this.osmoticCoefficient = sum > 0 ? 1 + moment / sum : 1;
    this.lnWaterActivity = -WATER_MOLAR_MASS_KG_PER_MOL * sum * this.osmoticCoefficient;
    const columns = by.length;
    for (let at = 0; at < columns; at++) {
      const j = by[at]!;
      const halfJ = 0.5 * charges[j]! * charges[j]!;
      let water = 1;
      for (let i = 0; i < n; i++) {
        const value = 0.5 * charges[i]! * charges[i]! * halfJ * curvature + (epsilon[i * n + j]! || 0);
        jacobian[i * columns + at] = value;
        water += m[i]! * value;
      }
      waterSlope[at] = -WATER_MOLAR_MASS_KG_PER_MOL * water;
    }
  }

  rangeNotes(m: Float64Array): readonly RangeNote[] {
    let I = 0;
    for (let i = 0; i < m.length; i++) I += 0.5 * this.charges[i]! * this.charges[i]! * m[i]!;
    const notes: RangeNote[] = [];
    const limit = this.data.usableTo_molPerKg.value;
    if (I > limit) notes.push({ what: "ionic strength", why: "above the fitted molality", limit });
    if (I > 0.1 && Math.abs(this.temperature_C - 25) > NEAR_25_C)
      notes.push({ what: "coefficients", why: "away from the fitted temperature", limit: 25 });
    return notes;
  }

  estimateNotes(m: Float64Array): readonly EstimateNote[] {
    const { charges, names, epsilon } = this;
    const n = names.length;
    const total = (sign: number): number =>
      m.reduce((sum, value, i) => sum + Math.max(0, sign * charges[i]!) * value, 0);
    const ofSign = { plus: total(1), minus: total(-1) };
    const weighs = (i: number): boolean =>
      m[i]! > 0 && Math.abs(charges[i]!) * m[i]! >= WEIGHT * (charges[i]! > 0 ? ofSign.plus : ofSign.minus);
    const notes: EstimateNote[] = [];
    for (const [at, as] of this.standing) {
      const [c, a] = [Math.floor(at / n), at % n];
      const known = Math.abs(epsilon[at]!) / Math.LN10;
      const size = Number.isNaN(known) ? USUAL_SIZE : known;
      const tells = Math.min(m[c]!, m[a]!) >= PRESENT_MOL_PER_KG && size * Math.max(m[c]!, m[a]!) >= TELLS;
      if (tells || (weighs(c) && weighs(a))) notes.push({ species: `${names[c]!} ${names[a]!}`, as });
    }
    return notes;
  }
}

/** What an answer that rests on a coefficient has to say of it; null for a published one that is constant. */
function standingOf(
  pair: SitData["pairs"][number] | undefined,
  offBy_log10: number | undefined,
): string | null {
  if (pair === undefined) return "no coefficient, taken as zero";
  if (pair.fitted) return "coefficient of our own fit";
  if (pair.fromMemory) return FROM_MEMORY.coefficient;
  return offBy_log10 === undefined
    ? null
    : `one coefficient, off by up to ${String(offBy_log10)} in log10 of the salt alone`;
}
