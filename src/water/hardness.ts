import { HardstandError, MOLAR_MASSES } from "../units/index.ts";
import { HARDNESS_SCALES } from "./check-data.ts";
import type { Water } from "./types.ts";

const { Ca, Mg, Fe, Mn, CaCO3 } = MOLAR_MASSES;

/** mg of CaCO3 per mol. */
const CACO3_MG_PER_MOL = CaCO3 * 1000;

/** Hardness of a water, calcium and magnesium only, as advisers quote it [mg/L as CaCO3]. */
export function hardness_mgPerL_asCaCO3(water: Water): number {
  return water.hardness_molPerL * CACO3_MG_PER_MOL;
}

/** Total alkalinity of a water [mg/L as CaCO3]. */
export function alkalinity_mgPerL_asCaCO3(water: Water): number {
  return (water.alkalinity_molPerL / 2) * CACO3_MG_PER_MOL;
}

/** Metals that count as hardness [mg/L of the metal]. */
export interface HardnessMetals {
  readonly calcium: number;
  readonly magnesium: number;
  /** Counted by some published formulas; left out by most advisers. */
  readonly iron?: number;
  readonly manganese?: number;
}

/**
 * Hardness by calculation from metals [mg/L as CaCO3].
 *
 * @source Standard Methods 2340 B: 2.497 Ca + 4.118 Mg, here from the atomic weights
 */
export function hardnessFromMetals_mgPerL_asCaCO3(metals_mgPerL: HardnessMetals): number {
  const { calcium, magnesium, iron = 0, manganese = 0 } = metals_mgPerL;
  return CaCO3 * (calcium / Ca + magnesium / Mg + iron / Fe + manganese / Mn);
}

/** Volumes of an EDTA titration. */
export interface EdtaTitration {
  readonly titrant_mL: number;
  /** Titrant used by pure water; 0 when left out. */
  readonly blank_mL?: number;
  readonly sample_mL: number;
}

/**
 * Hardness by EDTA titration [mg/L as CaCO3].
 *
 * @param strength_mgPerMl CaCO3 that 1 mL of titrant takes up [mg]
 * @source Standard Methods 2340 C: A · B · 1000 / mL of sample
 */
export function hardnessFromEdta_mgPerL_asCaCO3(titration: EdtaTitration, strength_mgPerMl: number): number {
  return (netTitrant_mL(titration) * strength_mgPerMl * 1000) / titration.sample_mL;
}

/**
 * Calcium plus magnesium by EDTA titration [mmol/L].
 *
 * @source ISO 6059:1984: c(Ca + Mg) = c(EDTA) · V(EDTA) / V(sample)
 */
export function hardnessFromEdta_mmolPerL(titration: EdtaTitration, edta_mmolPerL: number): number {
  return (netTitrant_mL(titration) * edta_mmolPerL) / titration.sample_mL;
}

/** Strength of an EDTA solution from a calcium standard [mg CaCO3 per mL of titrant]. @source Standard Methods 2340 C */
export function edtaStrength_mgPerMl(standard: {
  readonly standard_mL: number;
  readonly standard_mgPerMl: number;
  readonly titrant_mL: number;
}): number {
  if (!(standard.titrant_mL > 0))
    throw new HardstandError("titration-invalid", "edtaStrength_mgPerMl", { ...standard });
  return (standard.standard_mL * standard.standard_mgPerMl) / standard.titrant_mL;
}

/**
 * Calcium by EDTA at pH 12 to 13 and magnesium by difference from the total hardness [mg/L].
 *
 * @source Standard Methods 3500-Ca B and 3500-Mg B
 */
export function calciumAndMagnesium_mgPerL(
  calciumTitration: EdtaTitration,
  strength_mgPerMl: number,
  totalHardness_mgPerL_asCaCO3: number,
): {
  readonly calcium: number;
  readonly magnesium: number;
  readonly calciumHardness: number;
  readonly magnesiumHardness: number;
} {
  const calciumHardness = hardnessFromEdta_mgPerL_asCaCO3(calciumTitration, strength_mgPerMl);
  const magnesiumHardness = totalHardness_mgPerL_asCaCO3 - calciumHardness;
  return {
    calcium: (calciumHardness / CaCO3) * Ca,
    magnesium: (magnesiumHardness / CaCO3) * Mg,
    calciumHardness,
    magnesiumHardness,
  };
}

function netTitrant_mL(titration: EdtaTitration): number {
  const net = titration.titrant_mL - (titration.blank_mL ?? 0);
  if (!(titration.sample_mL > 0) || !(net >= 0)) {
    throw new HardstandError("titration-invalid", "netTitrant_mL", { ...titration });
  }
  return net;
}

/**
 * Hardness parted into carbonate and non-carbonate, and alkalinity above the hardness, all in the unit of the
 * arguments (both as CaCO3 or both in equivalents).
 *
 * @source Standard Methods 2340 A
 */
export function splitHardness(
  hardness: number,
  alkalinity: number,
): { readonly carbonate: number; readonly nonCarbonate: number; readonly sodiumAlkalinity: number } {
  const counted = Math.max(0, alkalinity);
  const carbonate = Math.min(hardness, counted);
  return { carbonate, nonCarbonate: hardness - carbonate, sodiumAlkalinity: Math.max(0, counted - hardness) };
}

/** A hardness class, never without the scale it belongs to. */
export interface HardnessClass {
  readonly scale: string;
  readonly class: string;
  readonly source: string;
}

/**
 * Class of a hardness on a published scale, with the scale's name: two scales may call one water by different names.
 *
 * @throws HardstandError "scale-unknown"
 */
export function hardnessClass(hardness_mgPerL_asCaCO3: number, scaleId: string): HardnessClass {
  const scale = HARDNESS_SCALES.find(({ id }) => id === scaleId);
  if (scale === undefined) throw new HardstandError("scale-unknown", "hardnessClass", { scaleId });
  const step = scale.steps.find(
    ({ upTo_mgPerL_asCaCO3: top }) => top === null || hardness_mgPerL_asCaCO3 <= top,
  );
  if (step === undefined) throw new HardstandError("scale-open", "hardnessClass", { scaleId });
  return { scale: scale.name, class: step.class, source: scale.source };
}
