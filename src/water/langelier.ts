/** Inputs of the handbook formula. */
export interface LangelierInput {
  readonly pH: number;
  readonly dissolvedSolids_mgPerL: number;
  readonly calciumHardness_mgPerL_asCaCO3: number;
  readonly alkalinity_mgPerL_asCaCO3: number;
  readonly temperature_C: number;
}

/** Terms of the handbook formula, so that each can be shown. */
export interface LangelierTerms {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly D: number;
  readonly pHs: number;
  readonly index: number;
}

/**
 * Langelier index by the handbook formula: pHs = (9.3 + A + B) − (C + D), index = pH − pHs; null where a logarithm has
 * nothing to work on.
 *
 * @validity a rule of thumb for drinking waters; the equilibrium model is the better answer
 * @source widely reprinted algebraic form of the saturation index (from memory)
 */
export function langelier(input: LangelierInput): LangelierTerms | null {
  const {
    pH,
    dissolvedSolids_mgPerL,
    calciumHardness_mgPerL_asCaCO3,
    alkalinity_mgPerL_asCaCO3,
    temperature_C,
  } = input;
  const positive = [dissolvedSolids_mgPerL, calciumHardness_mgPerL_asCaCO3, alkalinity_mgPerL_asCaCO3];
  if (positive.some((value) => !(value > 0))) return null;
  const A = (Math.log10(dissolvedSolids_mgPerL) - 1) / 10;
  const B = -13.12 * Math.log10(temperature_C + 273) + 34.55;
  const C = Math.log10(calciumHardness_mgPerL_asCaCO3) - 0.4;
  const D = Math.log10(alkalinity_mgPerL_asCaCO3);
  const pHs = 9.3 + A + B - (C + D);
  return { A, B, C, D, pHs, index: pH - pHs };
}

/** Steps of the temperature factor [°F, factor]. @source saturation-index tables of pool operators (from memory) */
const TEMPERATURE_FACTORS: readonly (readonly [number, number])[] = [
  [32, 0],
  [37, 0.1],
  [46, 0.2],
  [53, 0.3],
  [60, 0.4],
  [66, 0.5],
  [76, 0.6],
  [84, 0.7],
  [94, 0.8],
  [105, 0.9],
];
/** Steps of the calcium factor [mg/L as CaCO3, factor]. */
const CALCIUM_FACTORS: readonly (readonly [number, number])[] = [
  [5, 0.3],
  [25, 1],
  [50, 1.3],
  [75, 1.5],
  [100, 1.6],
  [150, 1.8],
  [200, 1.9],
  [300, 2.1],
  [400, 2.2],
  [800, 2.5],
];
/** Steps of the alkalinity factor [mg/L as CaCO3, factor]. */
const ALKALINITY_FACTORS: readonly (readonly [number, number])[] = [
  [5, 0.7],
  [25, 1.4],
  [50, 1.7],
  [75, 1.9],
  [100, 2],
  [150, 2.2],
  [200, 2.3],
  [300, 2.5],
  [400, 2.6],
  [800, 2.9],
];

/**
 * Saturation index by the table of factors: pH + TF + CF + AF − 12.1, each factor that of the nearest step.
 *
 * @validity dissolved solids below 1000 mg/L; rounded factors
 * @source pool-operator saturation-index tables; the factors from memory, checked on two worked examples
 */
export function saturationIndexByFactors(input: {
  readonly pH: number;
  readonly temperature_F: number;
  readonly calciumHardness_mgPerL_asCaCO3: number;
  readonly alkalinity_mgPerL_asCaCO3: number;
}): {
  readonly temperature: number;
  readonly calcium: number;
  readonly alkalinity: number;
  readonly index: number;
} {
  const temperature = nearest(TEMPERATURE_FACTORS, input.temperature_F);
  const calcium = nearest(CALCIUM_FACTORS, input.calciumHardness_mgPerL_asCaCO3);
  const alkalinity = nearest(ALKALINITY_FACTORS, input.alkalinity_mgPerL_asCaCO3);
  return { temperature, calcium, alkalinity, index: input.pH + temperature + calcium + alkalinity - 12.1 };
}

function nearest(steps: readonly (readonly [number, number])[], value: number): number {
  let best = steps[0];
  for (const step of steps) {
    if (best === undefined || Math.abs(step[0] - value) < Math.abs(best[0] - value)) best = step;
  }
  return best?.[1] ?? 0;
}
