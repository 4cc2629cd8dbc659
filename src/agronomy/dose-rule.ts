import { ATOMIC_WEIGHTS, GRAIN_MG, HardstandError, MOLAR_MASSES, US_GALLON_L } from "../units/index.ts";
import { builtInTrade } from "./trade-data.ts";
import type { DoseRules, FormulaIon } from "./trade-data.ts";
import type { Evidence, RuleTerm } from "./types.ts";

/** g/L in one pound per 100 US gal: 1.198264… @source international pound and US gallon, exact */
export const G_PER_L_IN_LB_PER_100_US_GAL = (7000 * GRAIN_MG) / 1000 / (100 * US_GALLON_L);

/** Molar mass of ammonium sulfate [g/mol]. */
const AMMONIUM_SULFATE_G_PER_MOL =
  2 * (ATOMIC_WEIGHTS.N + 4 * ATOMIC_WEIGHTS.H) + ATOMIC_WEIGHTS.S + 4 * ATOMIC_WEIGHTS.O;

/** The ammonium sulfate dose of the published cation formula, as a reference line beside a computed dose. */
export interface RuleDose {
  readonly lbPer100USgal: number;
  readonly gPerL: number;
  readonly kgPer100L: number;
  /** Ions whose reading is not known: the dose is then a least one. */
  readonly missing: readonly FormulaIon[];
  /** What the formula's own authors advise whatever it says. */
  readonly advised: {
    readonly low_gPerL: number;
    readonly high_gPerL: number;
    readonly text: string;
    readonly source: string;
  } | null;
  readonly text: string;
  readonly evidence: Evidence;
  readonly source: string;
  /** Page or item in that source. */
  readonly locator: string | null;
  /** What each known ion adds. */
  readonly terms: readonly RuleTerm[];
}

const IONS: readonly FormulaIon[] = ["K", "Na", "Ca", "Mg", "Fe"];

/**
 * Ammonium sulfate by the published cation formula [lb per 100 US gal and g/L].
 *
 * @param ions_mgPerL readings of the water, as the element; null where not known
 * @throws HardstandError "reading-invalid" for a negative or infinite reading
 * @source Nalewaja & Matysiak (1993), as printed in the North Dakota weed control guide 2015, p. 72, item 11
 */
export function ammoniumSulfateRuleDose(
  ions_mgPerL: Readonly<Record<FormulaIon, number | null>>,
  rules: DoseRules = builtInTrade().doseRules,
): RuleDose {
  const formula = rules.cationFormula;
  const missing: FormulaIon[] = [];
  const terms: RuleTerm[] = [];
  for (const ion of IONS) {
    const reading = ions_mgPerL[ion];
    if (reading === null) {
      missing.push(ion);
      continue;
    }
    if (!(reading >= 0 && Number.isFinite(reading))) {
      throw new HardstandError("reading-invalid", "ammoniumSulfateRuleDose", { ion, reading });
    }
    const coefficient_lbPer100USgal = formula.coefficients_lbPer100USgal_per_mgPerL[ion];
    terms.push({ ion, reading_mgPerL: reading, coefficient_lbPer100USgal });
  }
  const pounds = terms.reduce((sum, term) => sum + term.reading_mgPerL * term.coefficient_lbPer100USgal, 0);
  const gPerL = pounds * G_PER_L_IN_LB_PER_100_US_GAL;
  const floor = rules.ranges.find((r) => r.id === "formula-authors-floor");
  return {
    lbPer100USgal: pounds,
    gPerL,
    kgPer100L: gPerL / 10,
    missing,
    advised:
      floor === undefined
        ? null
        : {
            low_gPerL: floor.low_lbPer100USgal * G_PER_L_IN_LB_PER_100_US_GAL,
            high_gPerL: floor.high_lbPer100USgal * G_PER_L_IN_LB_PER_100_US_GAL,
            text: floor.text,
            source: floor.source,
          },
    text:
      missing.length > 0
        ? `${formula.text} Not known here: ${missing.join(", ")}; the dose is a least one.`
        : formula.text,
    evidence: formula.evidence,
    source: formula.source,
    locator: formula.locator,
    terms,
  };
}

/** Ammonium sulfate that the formula's coefficient implies [mol per mol of ion]: several times any pairing one for one. */
export function impliedRatio_molPerMol(ion: FormulaIon, rules: DoseRules = builtInTrade().doseRules): number {
  const perMg_gPerL =
    rules.cationFormula.coefficients_lbPer100USgal_per_mgPerL[ion] * G_PER_L_IN_LB_PER_100_US_GAL;
  return (perMg_gPerL / AMMONIUM_SULFATE_G_PER_MOL) * 1000 * ATOMIC_WEIGHTS[ion];
}

/** Hardness [mmol/L of calcium and magnesium] from mg/L as CaCO3. */
export function hardness_mmolPerL(hardness_mgPerL_asCaCO3: number): number {
  return hardness_mgPerL_asCaCO3 / MOLAR_MASSES.CaCO3;
}

/**
 * Substance [g/L] that matches hardness mole for mole. Arithmetic, not advice: the true need follows from constants
 * and pH.
 */
export function oneToOneDose_gPerL(molarMass_gPerMol: number, hardness_mgPerL_asCaCO3: number): number {
  return (hardness_mmolPerL(hardness_mgPerL_asCaCO3) * molarMass_gPerMol) / 1000;
}

/**
 * Acid [g/L] that uses up an alkalinity when each mole gives `protonsUsed` protons: a lower bound where a proton is
 * given only in part at the pH aimed for.
 */
export function acidForAlkalinity_gPerL(
  molarMass_gPerMol: number,
  protonsUsed: number,
  alkalinity_mgPerL_asCaCO3: number,
): number {
  return (((2 * alkalinity_mgPerL_asCaCO3) / MOLAR_MASSES.CaCO3 / protonsUsed) * molarMass_gPerMol) / 1000;
}

/** Active and hardness of a spray in moles, with the trade's rule of thumb of two molecules held by each ion. */
export interface HardnessRatio {
  readonly active_mmolPerL: number;
  readonly hardness_mmolPerL: number;
  /** Moles of active for each mole of calcium and magnesium. */
  readonly ratio_molPerMol: number;
  /** Share held if each ion held two molecules: the trade's upper bound, not an equilibrium. */
  readonly heldIfTwoPerIon: number;
}

/** Moles of an active beside the moles of hardness in the same litre of spray. */
export function hardnessRatio(
  rate_gPerHa: number,
  volume_LPerHa: number,
  molarMass_gPerMol: number,
  hardness_mgPerL_asCaCO3: number,
): HardnessRatio {
  const active_mmolPerL = (rate_gPerHa / volume_LPerHa / molarMass_gPerMol) * 1000;
  const hardness = hardness_mmolPerL(hardness_mgPerL_asCaCO3);
  return {
    active_mmolPerL,
    hardness_mmolPerL: hardness,
    ratio_molPerMol: active_mmolPerL / hardness,
    heldIfTwoPerIon: Math.min(1, (2 * hardness) / active_mmolPerL),
  };
}
