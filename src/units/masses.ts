/**
 * Standard atomic weights, abridged to five figures [g/mol].
 *
 * @source IUPAC Commission on Isotopic Abundances and Atomic Weights (2021) abridged standard atomic weights
 */
export const ATOMIC_WEIGHTS = {
  H: 1.008,
  B: 10.81,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  F: 18.998,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Mn: 54.938,
  Fe: 55.845,
  Cu: 63.546,
  Zn: 65.38,
  Br: 79.904,
} as const;

type Element = keyof typeof ATOMIC_WEIGHTS;

/** Sum of atomic weights [g/mol]. */
export function molarMassOf(atoms: Readonly<Partial<Record<Element, number>>>): number {
  return Object.entries(atoms).reduce((sum, [element, n]) => sum + ATOMIC_WEIGHTS[element as Element] * n, 0);
}

/** Molar masses of what water tests count in [g/mol], from the atomic weights. */
export const MOLAR_MASSES = {
  CaCO3: molarMassOf({ Ca: 1, C: 1, O: 3 }),
  CaO: molarMassOf({ Ca: 1, O: 1 }),
  MgO: molarMassOf({ Mg: 1, O: 1 }),
  Ca: ATOMIC_WEIGHTS.Ca,
  Mg: ATOMIC_WEIGHTS.Mg,
  Na: ATOMIC_WEIGHTS.Na,
  K: ATOMIC_WEIGHTS.K,
  Fe: ATOMIC_WEIGHTS.Fe,
  Mn: ATOMIC_WEIGHTS.Mn,
  Al: ATOMIC_WEIGHTS.Al,
  Zn: ATOMIC_WEIGHTS.Zn,
  Cu: ATOMIC_WEIGHTS.Cu,
  Cl: ATOMIC_WEIGHTS.Cl,
  F: ATOMIC_WEIGHTS.F,
  N: ATOMIC_WEIGHTS.N,
  S: ATOMIC_WEIGHTS.S,
  P: ATOMIC_WEIGHTS.P,
  B: ATOMIC_WEIGHTS.B,
  Si: ATOMIC_WEIGHTS.Si,
  NH4: molarMassOf({ N: 1, H: 4 }),
  NH3: molarMassOf({ N: 1, H: 3 }),
  NO3: molarMassOf({ N: 1, O: 3 }),
  NO2: molarMassOf({ N: 1, O: 2 }),
  SO4: molarMassOf({ S: 1, O: 4 }),
  PO4: molarMassOf({ P: 1, O: 4 }),
  P2O5: molarMassOf({ P: 2, O: 5 }),
  HCO3: molarMassOf({ H: 1, C: 1, O: 3 }),
  CO3: molarMassOf({ C: 1, O: 3 }),
  OH: molarMassOf({ O: 1, H: 1 }),
  SiO2: molarMassOf({ Si: 1, O: 2 }),
  H4SiO4: molarMassOf({ H: 4, Si: 1, O: 4 }),
  H3BO3: molarMassOf({ H: 3, B: 1, O: 3 }),
  K2O: molarMassOf({ K: 2, O: 1 }),
  NaCl: molarMassOf({ Na: 1, Cl: 1 }),
} as const;

/** What a reading can be counted as ("as N", "as CaCO3"). */
export type Basis = keyof typeof MOLAR_MASSES;
