import type {
  ConstantUncertainty,
  GasRecord,
  PublishedConstant,
  SolidRecord,
  SpeciesRecord,
} from "./thermo-types.ts";
import { debyeHuckelA } from "./water-properties.ts";

/** Gas constant [kJ/(mol·K)], exact by definition of the SI (2019). */
const GAS_CONSTANT_KJ_PER_MOL_K = 0.008314462618;

/** Factor of the linear term of the Davies formula used to bring constants to zero ionic strength. */
const DAVIES_B = 0.3;

/** Ionic strength [mol/L] at which the Davies term is held when constants are brought to zero ionic strength. */
export const CONSTANTS_DAVIES_HELD_AT_MOL_PER_L = 0.5;

/**
 * Enthalpy [kJ/mol] taken as one standard uncertainty of a constant that has none, when it is used at another
 * temperature than its own. Our judgement: most enthalpies of the data set are smaller.
 */
export const UNKNOWN_ENTHALPY_KJ_PER_MOL = 20;

/** A constant with one standard uncertainty [log10]. */
export interface Constant {
  readonly value: number;
  readonly standardUncertainty: number;
}

type AnyRecord = SpeciesRecord | SolidRecord | GasRecord;

/** One standard uncertainty; a half-width counts as a rectangular distribution (JCGM 100:2008, 4.3.7). */
export function standardUncertaintyOf(uncertainty: ConstantUncertainty): number {
  return uncertainty.kind === "standard" ? uncertainty.value : uncertainty.value / Math.sqrt(3);
}

/** −log10 γ of a singly charged ion by Davies' formula, held at its value at 0.5 mol/L above that [1]. */
export function daviesTerm(ionicStrength_molPerL: number, temperature_C: number): number {
  const I = Math.min(ionicStrength_molPerL, CONSTANTS_DAVIES_HELD_AT_MOL_PER_L);
  const root = Math.sqrt(I);
  return debyeHuckelA(temperature_C) * (root / (1 + root) - DAVIES_B * I);
}

function published(record: AnyRecord): PublishedConstant {
  return "logKsp" in record ? record.logKsp : record.logK;
}

/**
 * A constant brought from the ionic strength it was measured at to zero, at its own temperature [log10].
 *
 * The concentration constant K(I) and the constant K(0) of activities differ by the activity coefficients:
 * log K(0) = log K(I) − D·Δz², D = A(√I/(1+√I) − 0.3 I). A constant put together from steps at several ionic
 * strengths is corrected step by step. Above 0.5 mol/L D is held, and the uncertainty is widened by the difference
 * between the two published factors of Davies' linear term (0.2 and 0.3) at the true ionic strength.
 *
 * @source Davies (1962) Ion Association, Butterworths, p. 41 (0.3); Davies (1938) J. Chem. Soc. 2093–2098 (0.2)
 */
export function logKAtZeroI(record: AnyRecord): Constant {
  const { value, uncertainty, conditions } = published(record);
  const own = standardUncertaintyOf(uncertainty);
  const steps = ("chain" in record ? record.chain : null) ?? [
    {
      times: 1,
      logK: value,
      T_C: conditions.T_C,
      I_molPerL: conditions.I_molPerL ?? 0,
      deltaZ2: record.deltaZ2,
    },
  ];
  let sum = 0;
  let widening = 0;
  for (const { times, logK, T_C, I_molPerL, deltaZ2 } of steps) {
    sum += times * (logK - daviesTerm(I_molPerL, T_C) * deltaZ2);
    if (I_molPerL > CONSTANTS_DAVIES_HELD_AT_MOL_PER_L) {
      widening += Math.abs(times * deltaZ2) * debyeHuckelA(T_C) * 0.1 * I_molPerL;
    }
  }
  return { value: sum, standardUncertainty: Math.hypot(own, widening) };
}

/**
 * A constant at zero ionic strength and the temperature asked for, with one standard uncertainty [log10].
 *
 * The published temperature expression is used where there is one; else van 't Hoff's equation with a constant
 * enthalpy; else the value stays as it is and the uncertainty grows as if the enthalpy were 0 ± 20 kJ/mol.
 *
 * @param temperature_C [°C]
 * @validity 0–45 °C
 */
export function constantAt(record: AnyRecord, temperature_C: number): Constant {
  const atZero = logKAtZeroI(record);
  const { analytic, dH_kJPerMol } = record;
  if (analytic !== null) {
    return {
      value: fromExpression(analytic, temperature_C),
      standardUncertainty: atZero.standardUncertainty,
    };
  }
  const shift = vantHoffShift(1, published(record).conditions.T_C, temperature_C);
  if (dH_kJPerMol !== null) {
    return { value: atZero.value + dH_kJPerMol * shift, standardUncertainty: atZero.standardUncertainty };
  }
  return {
    value: atZero.value,
    standardUncertainty: Math.hypot(atZero.standardUncertainty, UNKNOWN_ENTHALPY_KJ_PER_MOL * shift),
  };
}

/** log10 of a constant at zero ionic strength and the temperature asked for [°C]; see `constantAt`. */
export function logKAt(record: AnyRecord, temperature_C: number): number {
  return constantAt(record, temperature_C).value;
}

/** A + B·T + C/T + D·log10(T) + E/T² at a temperature [°C]; missing coefficients are zero. */
export function fromExpression(coefficients: readonly number[], temperature_C: number): number {
  const T = temperature_C + 273.15;
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = coefficients;
  return a + b * T + c / T + d * Math.log10(T) + e / (T * T);
}

/** Change of log10 K between two temperatures [°C] by van 't Hoff's equation with a constant enthalpy [kJ/mol]. */
export function vantHoffShift(dH_kJPerMol: number, from_C: number, to_C: number): number {
  const inverse = 1 / (from_C + 273.15) - 1 / (to_C + 273.15);
  return (dH_kJPerMol / (Math.LN10 * GAS_CONSTANT_KJ_PER_MOL_K)) * inverse;
}
