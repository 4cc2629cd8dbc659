import { atFactor, sensitivities } from "../../chem/index.ts";
import type { Conditions, Equilibrium, Sensitivity, SensitivityParameter } from "../../chem/index.ts";
import { freeLogit } from "../shares.ts";
import type { Tank } from "../tank.ts";
import type { Computed } from "../verdict.ts";
import type { Draws } from "./draws.ts";
import { stretched } from "./factors.ts";
import type { Factor } from "./factors.ts";

/** One equilibrium of a programme, and what it takes to solve one near it. */
export interface Place {
  readonly equilibrium: Equilibrium;
  /** Conditions of the full tank, before any water has gone. */
  readonly conditions: Conditions;
  /** Concentration factor of the equilibrium. */
  readonly factor: number;
  /** Water activity that the factor was found for; null where the factor is given. */
  readonly waterActivity: number | null;
  /** The same drop in drier and in wetter air. */
  readonly elsewhere: readonly DropEnd[];
  readonly factors: readonly Factor[];
  /** Water from the source [L per L of spray]. */
  readonly waterShare: number;
  /** A solid that is not allowed here but might nucleate, by its index; null for none. */
  readonly waiting: number | null;
}

/** A drop in balance with the air, and its concentration factor. */
export interface DropEnd {
  readonly factor: number;
  readonly equilibrium: Equilibrium;
}

/** What first-order propagation gives for each draw. */
export interface Predicted {
  /** ln(free / held) by component asked for, per draw. */
  readonly logits: readonly Float64Array[];
  /** Saturation index of the waiting solid; null when none waits. */
  readonly saturation: Float64Array | null;
  readonly pH: Float64Array;
  /** Where the whole equilibrium of a draw is likely to lie: the start of a solve. */
  readonly near: (draw: number) => DropEnd;
  /** Change of each of `logits` and of `saturation` from one water activity to another, as the central drop has it. */
  readonly overAir: (
    from: number,
    to: number,
  ) => {
    readonly logits: readonly number[];
    readonly saturation: number;
  };
}

/** A species that is a smaller part than this of each of its components moves nothing. */
const NEGLIGIBLE = 1e-4;

/**
 * Carries the draws to first order through one equilibrium: exact derivatives at the central answer, on the logit of
 * the free shares. On the leaf the derivatives hold at constant water activity: the factor follows.
 */
export function predict(
  place: Place,
  components: readonly string[],
  draws: Draws,
  humidity: Float64Array | null,
): Computed<Predicted> {
  const { equilibrium, conditions, factor, factors } = place;
  const { system } = equilibrium;
  const species = factors.flatMap((f) => f.species.map(([index]) => index));
  const solids = factors.flatMap((f) => f.solids.map(([index]) => index));
  const totals = Object.keys(conditions.totals_molPerL).filter(
    (name) => (conditions.totals_molPerL[name] ?? 0) > 0,
  );
  const parameters: SensitivityParameter[] = [];
  const speciesAt = new Map<number, number>();
  const solidAt = new Map<number, number>();
  for (const index of new Set(species)) {
    if (!matters(equilibrium, index)) continue;
    speciesAt.set(index, parameters.length);
    parameters.push({ kind: "logK", name: system.speciesNames[index]! });
  }
  for (const index of new Set(solids)) {
    if (!(equilibrium.solids[index]! > 0)) continue;
    solidAt.set(index, parameters.length);
    parameters.push({ kind: "logKsp", name: system.solidNames[index]! });
  }
  const firstTotal = parameters.length;
  for (const name of totals) parameters.push({ kind: "total", name });
  const result = sensitivities(atFactor(conditions, factor), equilibrium, parameters);
  if (!result.ok) return { ok: false, reason: result.reason, detail: `ranges: ${result.detail}` };

  const responses = responsesOf(place, components, result.value, firstTotal);
  const moved = totals.map((name) => relativeTotals(place, name, draws));
  const drawn = factors.map((one) => columnOf(one, draws));
  const columns: Columns = { speciesAt, solidAt, firstTotal, moved, drawn };
  const columnsOf = (of: Response): Float64Array => carry(of, place, draws, humidity, columns);
  return {
    ok: true,
    value: {
      logits: responses.logits.map(columnsOf),
      saturation: responses.saturation === null ? null : columnsOf(responses.saturation),
      pH: columnsOf(responses.pH),
      near: (i) =>
        likelyEnd(place, result.value, firstTotal, humidity?.[i] ?? null, movesOf(place, i, columns)),
      overAir: (from, to) => ({
        logits: responses.logits.map(({ overHumidity }) => changeOver(overHumidity, from, to)),
        saturation: changeOver(responses.saturation?.overHumidity ?? [], from, to),
      }),
    },
  };
}

/** Furthest that a start is moved along the factor, and each of its concentrations [log10]. */
const FURTHEST_START = 0.5;
const FURTHEST_CONCENTRATION = 0.6;

/** Change of log10 of every parameter in one draw. */
function movesOf(place: Place, i: number, columns: Columns): Float64Array {
  const { speciesAt, solidAt, firstTotal, moved, drawn } = columns;
  const moves = new Float64Array(firstTotal + moved.length);
  place.factors.forEach((factor, f) => {
    const z = drawn[f]![i]!;
    for (const [index, w] of factor.species) {
      const p = speciesAt.get(index);
      if (p !== undefined) moves[p]! += w * z;
    }
    for (const [index, w] of factor.solids) {
      const p = solidAt.get(index);
      if (p !== undefined) moves[p]! += w * z;
    }
  });
  moved.forEach((column, k) => (moves[firstTotal + k] = column?.[i] ?? 0));
  return moves;
}

/** The end of a draw by the derivatives, from the end in the air that is closest to the draw's. */
function likelyEnd(
  place: Place,
  all: readonly Sensitivity[],
  firstTotal: number,
  air: number | null,
  moves: Float64Array,
): DropEnd {
  const { equilibrium, factor, waterActivity, elsewhere } = place;
  let from: DropEnd = { factor, equilibrium };
  let alongFactor = 0;
  if (air !== null && waterActivity !== null) {
    const apart = (end: DropEnd): number =>
      Math.abs(Math.log(end.equilibrium.waterActivity ?? 1) - Math.log(air));
    for (const end of elsewhere) if (apart(end) < apart(from)) from = end;
    let asked = Math.log10(air / (from.equilibrium.waterActivity ?? air));
    let perFactor = 0;
    all.forEach(({ dLog10WaterActivity }, p) => {
      asked -= moves[p]! * dLog10WaterActivity;
      if (p >= firstTotal) perFactor += dLog10WaterActivity;
    });
    if (Math.abs(perFactor) > 1e-9)
      alongFactor = Math.min(FURTHEST_START, Math.max(-FURTHEST_START, asked / perFactor));
  }
  const shift = new Float64Array(from.equilibrium.log10Concentrations.length);
  const solids = from.equilibrium.solids.slice();
  all.forEach(({ dLog10Concentrations, dSolids_molPerL }, p) => {
    const move = moves[p]! + (p >= firstTotal ? alongFactor : 0);
    if (move === 0) return;
    for (let s = 0; s < shift.length; s++) shift[s]! += move * dLog10Concentrations[s]!;
    for (let s = 0; s < solids.length; s++) solids[s]! += move * dSolids_molPerL[s]!;
  });
  // From a start that is too far off Newton's method goes nowhere.
  const log10Concentrations = from.equilibrium.log10Concentrations.map(
    (value, s) => value + Math.min(FURTHEST_CONCENTRATION, Math.max(-FURTHEST_CONCENTRATION, shift[s]!)),
  );
  for (let s = 0; s < solids.length; s++) if (!(from.equilibrium.solids[s]! > 0)) solids[s] = 0;
  return {
    factor: from.factor * 10 ** alongFactor,
    equilibrium: { ...from.equilibrium, log10Concentrations, solids },
  };
}

function matters({ system, concentrations }: Equilibrium, index: number): boolean {
  const { formation } = system.definition.species[index]!;
  const c = concentrations[index]!;
  if (!(c > 0)) return false;
  return Object.entries(formation).some(([component, n]) => {
    if (n <= 0 || component === "H+") return false;
    const free = totalOf(system, concentrations, component);
    return c * n > NEGLIGIBLE * free;
  });
}

const sums = new WeakMap<Float64Array, Map<string, number>>();

/** Dissolved total of a component, worked out once an equilibrium. */
function totalOf(system: Equilibrium["system"], concentrations: Float64Array, component: string): number {
  const known = sums.get(concentrations) ?? new Map<string, number>();
  sums.set(concentrations, known);
  let total = known.get(component);
  if (total === undefined) {
    total = system.definition.species.reduce(
      (sum, s, i) => sum + Math.max(0, s.formation[component] ?? 0) * concentrations[i]!,
      0,
    );
    known.set(component, total);
  }
  return total;
}

/** A number with its derivatives by log10 of each parameter, at constant water activity, and its course over humidity. */
interface Response {
  readonly value: number;
  readonly by: Float64Array;
  readonly overHumidity: Course;
}

/** Points of a number over water activity, the driest first. */
type Course = readonly (readonly [waterActivity: number, value: number])[];

function responsesOf(
  place: Place,
  components: readonly string[],
  all: readonly Sensitivity[],
  firstTotal: number,
): { readonly logits: readonly Response[]; readonly saturation: Response | null; readonly pH: Response } {
  const { equilibrium, waterActivity, waiting } = place;
  const { system } = equilibrium;
  const water = Float64Array.from(all, (s) => s.dLog10WaterActivity);
  const waterByFactor = sumFrom(water, firstTotal);
  const held = waterActivity !== null && Math.abs(waterByFactor) > 1e-9;
  const settled = (of: (equilibrium: Equilibrium) => number, by: Float64Array): Response => {
    const value = of(equilibrium);
    if (!held) return { value, by, overHumidity: [] };
    const perWater = sumFrom(by, firstTotal) / waterByFactor;
    const overHumidity = [equilibrium, ...place.elsewhere.map((end) => end.equilibrium)]
      .map((one) => [one.waterActivity ?? 1, of(one)] as const)
      .sort((a, b) => a[0] - b[0]);
    return { value, by: by.map((d, p) => d - perWater * water[p]!), overHumidity };
  };
  const logits = components.map((component) =>
    settled((one) => freeLogit(one, component, []).value, freeLogit(equilibrium, component, all).by),
  );
  const proton = system.componentIndex.get("H+")!;
  const pH = settled(
    (one) => one.pH ?? 7,
    Float64Array.from(all, (s) => -s.dLog10Activities[proton]!),
  );
  let saturation: Response | null = null;
  if (waiting !== null) {
    const { formation, water: waters = 0 } = system.definition.solids[waiting]!;
    const by = Float64Array.from(all, (s) => {
      let d = waters * s.dLog10WaterActivity;
      for (const [component, n] of Object.entries(formation))
        d += n * s.dLog10Activities[system.componentIndex.get(component)!]!;
      return d;
    });
    saturation = settled((one) => one.saturationIndices[waiting]!, by);
  }
  return { logits, saturation, pH };
}

function sumFrom(values: Float64Array, first: number): number {
  let sum = 0;
  for (let i = first; i < values.length; i++) sum += values[i]!;
  return sum;
}

interface Columns {
  readonly speciesAt: ReadonlyMap<number, number>;
  readonly solidAt: ReadonlyMap<number, number>;
  readonly firstTotal: number;
  /** Change of log10 of each total of each draw; null where it is not drawn. */
  readonly moved: readonly (Float64Array | null)[];
  /** Draws of each factor of the place. */
  readonly drawn: readonly Float64Array[];
}

/** Adds up what each draw of each input does. */
function carry(
  { value, by, overHumidity }: Response,
  place: Place,
  draws: Draws,
  humidity: Float64Array | null,
  { speciesAt, solidAt, firstTotal, moved, drawn }: Columns,
): Float64Array {
  const out = new Float64Array(draws.count).fill(value);
  const add = (weight: number, column: Float64Array): void => {
    if (weight === 0) return;
    for (let i = 0; i < out.length; i++) out[i]! += weight * column[i]!;
  };
  place.factors.forEach((factor, f) => {
    let weight = 0;
    for (const [index, w] of factor.species) weight += w * (by[speciesAt.get(index) ?? -1] ?? 0);
    for (const [index, w] of factor.solids) weight += w * (by[solidAt.get(index) ?? -1] ?? 0);
    if (Math.abs(weight) > 1e-6) add(weight, drawn[f]!);
  });
  moved.forEach((column, k) => {
    if (column !== null) add(by[firstTotal + k]!, column);
  });
  if (humidity !== null && overHumidity.length > 1) {
    for (let i = 0; i < out.length; i++) out[i]! += courseAt(overHumidity, humidity[i]!) - value;
  }
  return out;
}

/** Columns stretched before, by how far. */
const uneven = new WeakMap<Float64Array, Map<number, Float64Array>>();

/** Draws of a factor, stretched where its spread is uneven. */
export function columnOf(factor: Factor, draws: Draws): Float64Array {
  const column = draws.normal(factor.key);
  const { belowPerAbove } = factor;
  if (belowPerAbove === undefined) return column;
  const ofColumn = uneven.get(column) ?? new Map<number, Float64Array>();
  uneven.set(column, ofColumn);
  const found = ofColumn.get(belowPerAbove) ?? column.map((z) => stretched(factor, z));
  ofColumn.set(belowPerAbove, found);
  return found;
}

function changeOver(course: Course, from: number, to: number): number {
  return course.length > 1 ? courseAt(course, to) - courseAt(course, from) : 0;
}

/** A course at a humidity: straight between its points, and level beyond them. */
function courseAt(course: Course, humidity: number): number {
  const k = course.findIndex(([at]) => at >= humidity);
  if (k <= 0) return course[k === 0 ? 0 : course.length - 1]![1];
  const [low, atLow] = course[k - 1]!;
  const [high, atHigh] = course[k]!;
  return atLow + ((humidity - low) / (high - low)) * (atHigh - atLow);
}

/**
 * Change of a total of each draw, as a change of its log10 that is straight in the total: so the charges of all totals
 * change together and the pH follows. null where the water has none of it.
 */
function relativeTotals(place: Place, name: string, draws: Draws): Float64Array | null {
  const drawn = draws.waterTotals.get(name);
  if (drawn === undefined) return null;
  const central = place.conditions.totals_molPerL[name]!;
  const { waterShare } = place;
  const own = ownTotal(central, waterShare, draws.centralTotals[name] ?? 0);
  return drawn.map((inWater) => ((own + waterShare * inWater) / central - 1) / Math.LN10);
}

/** Total of a component in the tank of a draw [mol/L]: what the water brings changes, the rest stays. */
export function drawnTotal(
  { totals_molPerL, waterShare }: Pick<Tank, "totals_molPerL" | "waterShare">,
  name: string,
  inWater_molPerL: number,
  draws: Draws,
): number {
  const own = ownTotal(totals_molPerL[name] ?? 0, waterShare, draws.centralTotals[name] ?? 0);
  return own + waterShare * inWater_molPerL;
}

/** What of a total [mol/L] the water does not bring. */
function ownTotal(central_molPerL: number, waterShare: number, inWater_molPerL: number): number {
  return Math.max(0, central_molPerL - waterShare * inWater_molPerL);
}
