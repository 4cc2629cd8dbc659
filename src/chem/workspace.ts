import { IntegerBasis } from "../numerics/index.ts";

/**
 * Scratch memory of the solver for one compiled system, laid out once for its full size.
 *
 * Vocabulary: *labels* are the components whose balance is solved for (m of them, neither fixed nor absent);
 * *rows* are the species that hold no absent component (n); *candidates* are the solids that may form (q).
 * A row's concentration is ln c_i = beta_i + Σ_k v_ik y_k in the *working basis*, whose k-th member is a row, a
 * present solid (y = 0), or, before the first dominant basis is built, the label itself.
 */
export interface Workspace {
  /** What is left out (1), fixed (2) or in (0) of all components, species and solids, as laid out at present. */
  readonly takingPart: Uint8Array;
  isLaidOut: boolean;
  fixedCount: number;
  m: number;
  n: number;
  q: number;
  /** Component index of each label, species index of each row, solid index of each candidate, and back (-1: none). */
  readonly componentOf: Int32Array;
  readonly labelOf: Int32Array;
  readonly speciesOf: Int32Array;
  readonly solidOf: Int32Array;

  /** Rows and candidates over the labels, multiplied by `coefficientScale`. */
  readonly aStart: Int32Array;
  readonly aIndex: Int32Array;
  readonly aValue: Float64Array;
  readonly sStart: Int32Array;
  readonly sIndex: Int32Array;
  readonly sValue: Float64Array;
  coefficientScale: number;
  integerCoefficients: boolean;
  /** Per row: ln K with the fixed activities added in, charge number, half its square, 20 × the most it can reach. */
  readonly lnK: Float64Array;
  readonly charge: Float64Array;
  readonly halfZ2: Float64Array;
  readonly limit: Float64Array;
  /** Per candidate: ln Ksp with the fixed activities taken off. */
  readonly lnKsp: Float64Array;
  /** Totals of the labels, in two halves. */
  readonly totalHigh: Float64Array;
  readonly totalLow: Float64Array;

  ionicStrength: number;
  readonly lnGamma: Float64Array;
  readonly dLnGamma: Float64Array;
  /** ln K − ln γ per row. */
  readonly b: Float64Array;
  /** Water taken up per row and released per candidate [mol/mol], and ln of its activity; used by interaction models. */
  readonly water: Float64Array;
  readonly solidWater: Float64Array;
  /** ln Ksp at a water activity of 1. */
  readonly lnKspInWater: Float64Array;
  lnWater: number;

  /** Working basis: member k is row `member[k]`, or candidate `−1 − member[k]`. */
  readonly member: Int32Array;
  readonly basis: IntegerBasis;
  /**
   * The rows offered to the chosen basis in their order, how many, and the solids present before: they alone decide
   * what it becomes.
   */
  readonly offered: Int32Array;
  offeredCount: number;
  readonly offeredSolids: Uint8Array;
  isBasisChosen: boolean;
  /** Position of basis member k among the free unknowns, or -1 for a solid; number of free unknowns. */
  readonly freeOf: Int32Array;
  free: number;
  readonly vStart: Int32Array;
  readonly vIndex: Int32Array;
  readonly vValue: Float64Array;
  /** `freeOf` of each entry of v. */
  readonly vFree: Int32Array;
  readonly colStart: Int32Array;
  readonly colRow: Int32Array;
  readonly colValue: Float64Array;
  readonly beta: Float64Array;
  readonly total: Float64Array;
  readonly y: Float64Array;
  readonly lnC: Float64Array;
  readonly c: Float64Array;

  /** Newton's arrays: residuals and their scales per member, matrix over the free unknowns, steps. */
  readonly residual: Float64Array;
  readonly scale: Float64Array;
  readonly matrix: Float64Array;
  readonly diagonal: Float64Array;
  readonly step: Float64Array;
  readonly bordered: Float64Array;
  readonly border: Float64Array;
  readonly weight: Float64Array;
  readonly slope: Float64Array;
  readonly order: Int32Array;
  readonly sortKey: Float64Array;
  readonly scratch: Float64Array;

  /** Solids: present now, amount at the last accepted point, amount at the last solved set, saturation (natural log). */
  readonly present: Uint8Array;
  readonly amount: Float64Array;
  readonly solved: Float64Array;
  readonly saturation: Float64Array;
  /** ln activity per label. */
  readonly lnActivity: Float64Array;
  iterations: number;
  /** Newton steps allowed to the many solves of one bracket. */
  bracketIterations: number;
  /** Largest mismatch left [ln]. */
  tolerance: number;
  maxIterations: number;
  lastResidual: number;
  /** Where the last solve met its end, for the report: a label that depends on others, or a basis member; else -1. */
  troubleAt: number;
}

/** Lays out the scratch memory for the given numbers of components, species and solids and their coefficients. */
export function createWorkspace(
  components: number,
  species: number,
  solids: number,
  speciesEntries: number,
  solidEntries: number,
): Workspace {
  const perLabel = (): Float64Array => new Float64Array(components);
  const perRow = (): Float64Array => new Float64Array(species);
  const perSolid = (): Float64Array => new Float64Array(solids);
  const dense = components * species;
  return {
    takingPart: new Uint8Array(components + species + solids),
    isLaidOut: false,
    fixedCount: 0,
    m: 0,
    n: 0,
    q: 0,
    componentOf: new Int32Array(components),
    labelOf: new Int32Array(components),
    speciesOf: new Int32Array(species),
    solidOf: new Int32Array(solids),
    aStart: new Int32Array(species + 1),
    aIndex: new Int32Array(speciesEntries),
    aValue: new Float64Array(speciesEntries),
    sStart: new Int32Array(solids + 1),
    sIndex: new Int32Array(solidEntries),
    sValue: new Float64Array(solidEntries),
    coefficientScale: 1,
    integerCoefficients: true,
    lnK: perRow(),
    charge: perRow(),
    halfZ2: perRow(),
    limit: perRow(),
    lnKsp: perSolid(),
    totalHigh: perLabel(),
    totalLow: perLabel(),
    ionicStrength: 0,
    lnGamma: perRow(),
    dLnGamma: perRow(),
    b: perRow(),
    water: perRow(),
    solidWater: perSolid(),
    lnKspInWater: perSolid(),
    lnWater: 0,
    member: new Int32Array(components),
    basis: new IntegerBasis(components),
    offered: new Int32Array(species),
    offeredCount: 0,
    offeredSolids: new Uint8Array(solids),
    isBasisChosen: false,
    freeOf: new Int32Array(components),
    free: 0,
    vStart: new Int32Array(species + 1),
    vIndex: new Int32Array(dense),
    vValue: new Float64Array(dense),
    vFree: new Int32Array(dense),
    colStart: new Int32Array(components + 1),
    colRow: new Int32Array(dense),
    colValue: new Float64Array(dense),
    beta: perRow(),
    total: perLabel(),
    y: perLabel(),
    lnC: perRow(),
    c: perRow(),
    residual: perLabel(),
    scale: perLabel(),
    matrix: new Float64Array(components * components),
    diagonal: perLabel(),
    step: perLabel(),
    bordered: perLabel(),
    border: perLabel(),
    weight: perRow(),
    slope: perRow(),
    order: new Int32Array(species),
    sortKey: perRow(),
    scratch: new Float64Array(Math.max(components, species)),
    present: new Uint8Array(solids),
    amount: perSolid(),
    solved: perSolid(),
    saturation: perSolid(),
    lnActivity: perLabel(),
    iterations: 0,
    bracketIterations: 0,
    tolerance: 0,
    maxIterations: 0,
    lastResidual: 0,
    troubleAt: -1,
  };
}
