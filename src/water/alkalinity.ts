import { HardstandError, MOLAR_MASSES } from "../units/index.ts";

/** Milligrams of CaCO3 per milliequivalent, rounded as the published titration formula has it. */
const CACO3_MG_PER_MEQ_ROUNDED = 50;

/**
 * Alkalinity from an acid titration [mg/L as CaCO3].
 *
 * @source Standard Methods 2320 B: A · N · 50 000 / mL of sample
 */
export function alkalinityFromTitration_mgPerL_asCaCO3(
  acid_mL: number,
  acid_eqPerL: number,
  sample_mL: number,
): number {
  return alkalinityFromTitration_meqPerL(acid_mL, acid_eqPerL, sample_mL) * CACO3_MG_PER_MEQ_ROUNDED;
}

/**
 * Alkalinity from an acid titration [meq/L, which ISO calls mmol/L of hydrogen ions].
 *
 * @source ISO 9963-1:1994
 */
export function alkalinityFromTitration_meqPerL(
  acid_mL: number,
  acid_eqPerL: number,
  sample_mL: number,
): number {
  if (!(sample_mL > 0) || !(acid_mL >= 0) || !(acid_eqPerL > 0)) {
    throw new HardstandError("titration-invalid", "alkalinityFromTitration_meqPerL", {
      acid_mL,
      acid_eqPerL,
      sample_mL,
    });
  }
  return (acid_mL * acid_eqPerL * 1000) / sample_mL;
}

/** Forms of alkalinity, in the unit of the alkalinities they came from. */
export interface AlkalinityForms {
  readonly hydroxide: number;
  readonly carbonate: number;
  readonly hydrogenCarbonate: number;
}

/**
 * Forms of alkalinity from the phenolphthalein (P, to pH 8.3) and the total (T, to pH 4.5) alkalinity, in their unit.
 *
 * @throws HardstandError "alkalinity-forms-invalid" unless 0 ≤ P ≤ T
 * @source Standard Methods 2320 B, table of alkalinity relationships; hydroxide and hydrogen carbonate are taken not to
 * coexist
 */
export function alkalinityForms(phenolphthalein: number, total: number): AlkalinityForms {
  if (!(phenolphthalein >= 0 && total >= phenolphthalein)) {
    throw new HardstandError("alkalinity-forms-invalid", "alkalinityForms", { phenolphthalein, total });
  }
  const hydroxide = Math.max(0, 2 * phenolphthalein - total);
  const carbonate = 2 * (phenolphthalein - hydroxide);
  return { hydroxide, carbonate, hydrogenCarbonate: total - hydroxide - carbonate };
}

/** Hydrogen carbonate [mg/L] that carries an alkalinity [mg/L as CaCO3]. */
export function hydrogenCarbonate_mgPerL(alkalinity_mgPerL_asCaCO3: number): number {
  return (alkalinity_mgPerL_asCaCO3 * 2 * MOLAR_MASSES.HCO3) / MOLAR_MASSES.CaCO3;
}
