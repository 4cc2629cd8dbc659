import { MOLAR_MASSES, PARAMETER_RULES } from "../units/index.ts";
import type { Parameter } from "../units/index.ts";

/** A slip of unit: the factor by which the value is wrong, and what to ask. */
export interface Slip {
  /** Value as read over value as meant. */
  readonly factor: number;
  readonly hint: string;
}

const { CaCO3, Ca, Mg, HCO3, NO3, N, SO4, S, PO4, P, SiO2, Si, CaO } = MOLAR_MASSES;

/** Degrees over degrees, by their definitions. */
const GERMAN_OVER_FRENCH = CaCO3 / CaO;

/**
 * Slips by parameter. Factors follow from molar masses: a calcium figure counted as CaCO3 but read as calcium is too
 * large by 2.497, and so on.
 */
const SLIPS: Readonly<Partial<Record<Parameter, readonly Slip[]>>> = {
  calcium: [
    { factor: CaCO3 / Ca, hint: "Calcium given as CaCO3 but read as mg/L of calcium?" },
    { factor: Ca / CaCO3, hint: "Calcium in mg/L but read as CaCO3?" },
  ],
  magnesium: [
    { factor: CaCO3 / Mg, hint: "Magnesium given as CaCO3 but read as mg/L of magnesium?" },
    { factor: Mg / CaCO3, hint: "Magnesium in mg/L but read as CaCO3?" },
  ],
  hardness: [
    { factor: GERMAN_OVER_FRENCH, hint: "French degrees read as German ones?" },
    { factor: 1 / GERMAN_OVER_FRENCH, hint: "German degrees read as French ones?" },
    { factor: CaCO3 / CaO, hint: "Hardness as CaCO3 read as CaO?" },
    { factor: 100 / 17.848, hint: "German degrees read as mmol/L, or the other way round?" },
    { factor: 2, hint: "meq/L read as mmol/L?" },
    { factor: 0.5, hint: "mmol/L read as meq/L?" },
  ],
  alkalinity: [
    { factor: (2 * HCO3) / CaCO3, hint: "Hydrogen carbonate (HCO3) read as alkalinity as CaCO3?" },
    { factor: CaCO3 / (2 * HCO3), hint: "Alkalinity as CaCO3 read as hydrogen carbonate (HCO3)?" },
    { factor: 2, hint: "mmol/L of CaCO3 and meq/L mistaken for one another?" },
    { factor: 0.5, hint: "mmol/L of CaCO3 and meq/L mistaken for one another?" },
  ],
  bicarbonate: [
    { factor: CaCO3 / (2 * HCO3), hint: "Alkalinity as CaCO3 given as hydrogen carbonate (HCO3)?" },
    { factor: (2 * HCO3) / CaCO3, hint: "Hydrogen carbonate (HCO3) given as CaCO3?" },
  ],
  nitrate: [
    { factor: NO3 / N, hint: "Nitrate (NO3) read as nitrogen (N)?" },
    { factor: N / NO3, hint: "Nitrogen (N) read as nitrate (NO3)?" },
  ],
  sulfate: [
    { factor: SO4 / S, hint: "Sulfate (SO4) read as sulfur (S)?" },
    { factor: S / SO4, hint: "Sulfur (S) read as sulfate (SO4)?" },
  ],
  phosphate: [
    { factor: PO4 / P, hint: "Phosphate (PO4) read as phosphorus (P)?" },
    { factor: P / PO4, hint: "Phosphorus (P) read as phosphate (PO4)?" },
  ],
  silica: [
    { factor: SiO2 / Si, hint: "Silica (SiO2) read as silicon (Si)?" },
    { factor: Si / SiO2, hint: "Silicon (Si) read as silica (SiO2)?" },
  ],
};

/** Slips of size that any concentration can have. */
const SIZE_SLIPS: readonly Slip[] = [
  { factor: 1000, hint: "µg/L read as mg/L, or mS/cm as µS/cm?" },
  { factor: 0.001, hint: "mg/L read as µg/L, or mS/cm typed as µS/cm?" },
  { factor: 10, hint: "A decimal mark out of place?" },
  { factor: 0.1, hint: "A decimal mark out of place?" },
];

/** How near a ratio must come to a slip's factor. */
const NEAR = 0.04;

/** Every slip of unit a reading of this parameter may hold. */
export function slipsOf(parameter: Parameter): readonly Slip[] {
  const rule = PARAMETER_RULES[parameter];
  const [basis] = rule.kind === "substance" ? [rule.bareBasis] : [null];
  const moles: Slip[] =
    basis === null
      ? []
      : [
          { factor: 1 / MOLAR_MASSES[basis], hint: "mmol/L typed as mg/L?" },
          { factor: MOLAR_MASSES[basis], hint: "mg/L typed as mmol/L?" },
          ...(rule.charge === null
            ? []
            : [{ factor: rule.charge / MOLAR_MASSES[basis], hint: "meq/L typed as mg/L?" }]),
        ];
  return [...(SLIPS[parameter] ?? []), ...moles, ...SIZE_SLIPS];
}

/**
 * The slip of unit that explains why `read` differs from `meant`, as a question; null when none does.
 *
 * @param read value as read, internal unit
 * @param meant value it should have had, same unit
 */
export function slipBetween(parameter: Parameter, read: number, meant: number): string | null {
  if (!(read > 0) || !(meant > 0)) return null;
  const ratio = read / meant;
  const fitting = slipsOf(parameter)
    .map((slip) => ({ slip, miss: Math.abs(Math.log(ratio / slip.factor)) }))
    .filter(({ miss }) => miss <= NEAR)
    .sort((a, b) => a.miss - b.miss);
  return fitting[0]?.slip.hint ?? null;
}
