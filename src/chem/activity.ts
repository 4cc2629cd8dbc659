import { HardstandError } from "../units/index.ts";

/**
 * An activity-coefficient model in which the coefficient of a species depends on its charge number (and, if the
 * model has them, on parameters bound to its name) and on the ionic strength alone.
 */
export interface ActivityModel {
  readonly name: string;
  /** True when the result does not depend on the ionic strength (no ionic-strength equation is needed). */
  readonly ideal: boolean;
  /** Natural logarithm of the activity coefficient at ionic strength `I` [mol/L]. */
  lnGamma(charge: number, species: string, I: number): number;
  /** Derivative of `lnGamma` with respect to `I` [L/mol]. */
  dLnGamma(charge: number, species: string, I: number): number;
  /**
   * Osmotic coefficient at ionic strength `I` for `sum` dissolved particles [mol/L, taken as mol/kg]; null where the
   * model gives none.
   */
  osmoticCoefficient(I: number, sum: number): number | null;
  /** Ionic strength [mol/L] above which the model is used outside the range it was fitted to. */
  readonly fittedTo: number;
}

/** Debye–Hückel slope of log10 γ [(L/mol)^½] in water at 25 °C, as used with the Davies formula. */
export const debyeHueckelA_25C = 0.509;

/** Ionic strength [mol/L] to which the Davies formula is commonly trusted. */
export const daviesFittedTo_molPerL = 0.5;

/** Activity coefficients of one for every species: an assumption, so never marked as extrapolated. */
export const idealActivity: ActivityModel = {
  name: "ideal",
  ideal: true,
  lnGamma: () => 0,
  dLnGamma: () => 0,
  // Raoult's law for a dilute ideal solution.
  osmoticCoefficient: () => 1,
  fittedTo: Infinity,
};

/** Settings of the Davies formula. */
export interface DaviesOptions {
  /** Debye–Hückel slope [(L/mol)^½]; default 0.509 (water, 25 °C). */
  readonly A?: number;
  /** Factor of the linear term; default 0.3. */
  readonly b?: number;
  /** Ionic strength [mol/L] above which γ keeps the value it has there; null or left out: never held. */
  readonly holdAbove_molPerL?: number | null;
}

/**
 * Davies' activity coefficients: log10 γ = −A z² (√I / (1 + √I) − b I), neutral species γ = 1.
 *
 * @validity I up to about 0.5 mol/L; beyond, the formula grows without limit unless it is held.
 * @source Davies (1962) Ion Association, Butterworths, for the factor 0.3 (cited from memory)
 */
export function davies(options: DaviesOptions = {}): ActivityModel {
  const A = options.A ?? debyeHueckelA_25C;
  const b = options.b ?? 0.3;
  const hold = options.holdAbove_molPerL ?? Infinity;
  if (!(A > 0) || !Number.isFinite(b) || !(hold > 0)) {
    throw new HardstandError("activity-option-invalid", "davies", { ...options });
  }
  const slope = -A * Math.LN10;
  // The two functions of I are the same for every species: kept for the last ionic strength asked for.
  let lastI = NaN;
  let value = 0;
  let derivative = 0;
  const at = (I: number): void => {
    const held = I > hold;
    const x = held ? hold : I;
    const root = Math.sqrt(x);
    lastI = I;
    value = slope * (root / (1 + root) - b * x);
    // At I = 0 the true derivative is infinite; the floor keeps it finite without touching real solutions.
    derivative = held ? 0 : slope * (0.5 / (Math.max(root, 1e-12) * (1 + root) * (1 + root)) - b);
  };
  return {
    name: hold === Infinity ? "davies" : `davies held above ${hold} mol/L`,
    ideal: false,
    lnGamma(charge, _species, I) {
      if (I !== lastI) at(I);
      return charge * charge * value;
    },
    dLnGamma(charge, _species, I) {
      if (I !== lastI) at(I);
      return charge * charge * derivative;
    },
    osmoticCoefficient(I, sum) {
      if (I > daviesFittedTo_molPerL || I > hold) return null;
      if (!(sum > 0)) return 1;
      // Gibbs–Duhem: (φ − 1) Σc = ∫ Σ c d ln γ = ∫ 2 I dD with ln γ = z² D(I).
      const root = Math.sqrt(I);
      const integral = I - 2 * root + 2 * Math.log1p(root) - 0.5 * b * I * I;
      return 1 + (2 * slope * (I * (root / (1 + root) - b * I) - integral)) / sum;
    },
    fittedTo: daviesFittedTo_molPerL,
  };
}

/** Settings of the extended Debye–Hückel formula. */
export interface ExtendedDebyeHuckelOptions {
  /** Slope of log10 γ [(L/mol)^½]. */
  readonly A: number;
  /** [(L/mol)^½ per ångström]. */
  readonly B: number;
  /** By species name: ion size [Å] and factor of the linear term [L/mol]. */
  readonly sizes: Readonly<Record<string, { readonly a_angstrom: number; readonly b: number }>>;
  /** Model for charged species without a size. */
  readonly fallback: ActivityModel;
  /** log10 γ of a neutral species without a size, per ionic strength [L/mol]; default 0. */
  readonly neutralCoefficient?: number;
}

/**
 * Extended Debye–Hückel activity coefficients with a linear term: log10 γ = −A z² √I / (1 + B a √I) + b I.
 *
 * Species without a size follow the fallback if charged, and log10 γ = neutralCoefficient · I if neutral.
 * @validity as far as the sizes were fitted; marked as extrapolated where the fallback is, since both are mixed.
 * @source Truesdell & Jones (1974) J. Res. US Geol. Survey 2:233 (cited from memory)
 */
export function extendedDebyeHuckel(options: ExtendedDebyeHuckelOptions): ActivityModel {
  const { A, B, fallback } = options;
  const neutral = options.neutralCoefficient ?? 0;
  const sizes = new Map(Object.entries(options.sizes));
  for (const [species, { a_angstrom, b }] of sizes) {
    if (!(a_angstrom >= 0) || !Number.isFinite(b)) {
      throw new HardstandError("activity-option-invalid", "extendedDebyeHuckel", { species, a_angstrom, b });
    }
  }
  if (!(A > 0) || !(B > 0) || !Number.isFinite(neutral)) {
    throw new HardstandError("activity-option-invalid", "extendedDebyeHuckel", { A, B, neutral });
  }
  return {
    name: `extended Debye–Hückel, else ${fallback.name}`,
    ideal: false,
    lnGamma(charge, species, I) {
      const size = sizes.get(species);
      if (size === undefined) {
        return charge === 0 ? Math.LN10 * neutral * I : fallback.lnGamma(charge, species, I);
      }
      const root = Math.sqrt(I);
      return Math.LN10 * ((-A * charge * charge * root) / (1 + B * size.a_angstrom * root) + size.b * I);
    },
    dLnGamma(charge, species, I) {
      const size = sizes.get(species);
      if (size === undefined) {
        return charge === 0 ? Math.LN10 * neutral : fallback.dLnGamma(charge, species, I);
      }
      const root = Math.max(Math.sqrt(I), 1e-12);
      const bracket = 1 + B * size.a_angstrom * root;
      return Math.LN10 * ((-A * charge * charge * 0.5) / (root * bracket * bracket) + size.b);
    },
    // Ions of several sizes and linear terms: the coefficients are not those of one excess function.
    osmoticCoefficient: () => null,
    fittedTo: fallback.fittedTo,
  };
}
