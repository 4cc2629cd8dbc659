import { settleNear } from "../../chem/index.ts";
import type { Conditions, Equilibrium } from "../../chem/index.ts";
import { quantileOf } from "../../numerics/index.ts";
import { NUCLEATING_SOLIDS, PATH_TOLERANCE } from "../chemistry.ts";
import type { Chemistry } from "../chemistry.ts";
import { airedDraws } from "../iron-air.ts";
import type { LeafPath, LeafPaths } from "../leaf.ts";
import type { Steps } from "../steps.ts";
import { TRACE_OF_LEAST } from "../tank.ts";
import type { Tank } from "../tank.ts";
import type { Place as WhereAim } from "../types.ts";
import type { Computed } from "../verdict.ts";
import { abridge } from "./abridge.ts";
import { calibrate, shareOf } from "./calibrate.ts";
import type { Control, Decision, Effort, Told } from "./calibrate.ts";
import type { Draws } from "./draws.ts";
import { MOST_ITERATIONS, solveDraw } from "./exact.ts";
import type { SolvedDraw } from "./exact.ts";
import { activityFactors, constantFactors } from "./factors.ts";
import { assumptionSource, drawnAssumption, HUMIDITY_MEASURED, standardSource } from "./model-uncertainty.ts";
import { drawnTotal, predict } from "./neighbourhood.ts";
import type { DropEnd, Place, Predicted } from "./neighbourhood.ts";

/** Keys of what is drawn about drying. */
export const NUCLEATION_KEY = "assumed:nucleationSI";
export const HUMIDITY_ASSUMED_KEY = "assumed:humidityAssumed";
export const HUMIDITY_MEASURED_KEY = "reading:humidity";

/** What the free shares of a programme are held against. */
export interface DrawnAim {
  readonly where: WhereAim;
  readonly freeShare: number;
  /** Each active's amount against the plan [1], in the order of the tank; 1 if left out. */
  readonly rateFactors: readonly number[];
}

/** Free shares of one programme over the draws. */
export interface ProgrammeDraws {
  /** By component, per draw. */
  readonly inTank: ReadonlyMap<string, Float64Array>;
  readonly onLeaf: ReadonlyMap<string, Float64Array>;
  /** pH of the full tank. */
  readonly pH: Float64Array;
  /** Share of the draws in which a calcium salt of an active formed on the leaf. */
  readonly solidForms: number;
  readonly control: Control;
  /** Keys of the uncertain constants and activity coefficients. */
  readonly keys: readonly string[];
  /** Keys of the sources of what was drawn beside the water and the constants. */
  readonly sources: readonly string[];
}

/** What ranges are worked out with, the same for all programmes of a plan. */
export interface DrawSetting {
  readonly draws: Draws;
  /** Relative humidity of the air of each draw [1]. */
  readonly humidity: Float64Array;
  /** Source of how the humidity is drawn. */
  readonly humiditySource: string;
  /** Supersaturation at which the calcium salt nucleates, of each draw. */
  readonly threshold: Float64Array;
}

/** Least and most relative humidity drawn: drops dry no further, and no slower. */
const HUMIDITY_RANGE = [0.3, 0.985] as const;

/** Draws of the air and of the threshold, beside those of the water. */
export function drawSetting(draws: Draws, humidity: number, measured: boolean): DrawSetting {
  const [low, high] = HUMIDITY_RANGE;
  const drawn = measured
    ? draws.normal(HUMIDITY_MEASURED_KEY).map((z) => humidity + HUMIDITY_MEASURED * z)
    : draws.uniform(HUMIDITY_ASSUMED_KEY).map((u) => drawnAssumption("humidityAssumed", u));
  return {
    draws,
    humidity: drawn.map((value) => Math.min(high, Math.max(low, value))),
    humiditySource: measured ? standardSource("humidityMeasured") : assumptionSource("humidityAssumed"),
    threshold: draws.uniform(NUCLEATION_KEY).map((u) => drawnAssumption("nucleationSI", u)),
  };
}

/** Draws of a blend: a share of one water's draws, the rest of another's. */
export function blendedDraws(one: DrawSetting, other: DrawSetting, share: number): DrawSetting {
  const a = one.draws;
  const b = other.draws;
  const names = new Set([...a.waterTotals.keys(), ...b.waterTotals.keys()]);
  const none = new Float64Array(a.count);
  const mixed = (x: number, y: number): number => share * x + (1 - share) * y;
  const waterTotals = new Map<string, Float64Array>();
  const centralTotals: Record<string, number> = {};
  for (const name of names) {
    const [inA, inB] = [a.waterTotals.get(name) ?? none, b.waterTotals.get(name) ?? none];
    waterTotals.set(
      name,
      inA.map((x, i) => mixed(x, inB[i]!)),
    );
    centralTotals[name] = mixed(a.centralTotals[name] ?? 0, b.centralTotals[name] ?? 0);
  }
  const readingSources = [...new Set([...a.readingSources, ...b.readingSources])];
  return { ...other, draws: { ...b, waterTotals, centralTotals, readingSources } };
}

/** Draws of a water that has lost part of some components; the charge is made up by protons. */
export function settledDraws(setting: DrawSetting, names: readonly string[], left: number): DrawSetting {
  const { draws } = setting;
  const waterTotals = new Map(draws.waterTotals);
  const centralTotals: Record<string, number> = { ...draws.centralTotals };
  for (const name of names) {
    const drawn = draws.waterTotals.get(name);
    if (drawn !== undefined)
      waterTotals.set(
        name,
        drawn.map((total) => left * total),
      );
    centralTotals[name] = left * (centralTotals[name] ?? 0);
  }
  return { ...setting, draws: { ...draws, waterTotals, centralTotals } };
}

/**
 * Carries the draws through a programme.
 *
 * @param answer of the full tank, `paths` of the leaf, as found for central values
 * @param components of the actives asked for, at least one
 * @param effort "first order" for a search; else corrected by draws solved in full
 * @param aim what the shares are held against, so that the draws in doubt can be solved; null for nothing
 */
export function* drawProgramme(
  tank: Tank,
  central: { readonly answer: Equilibrium; readonly paths: LeafPaths },
  components: readonly string[],
  asked: DrawSetting,
  chemistry: Chemistry,
  effort: Effort,
  aim: DrawnAim | null = null,
): Steps<Computed<ProgrammeDraws>> {
  const setting = airedDraws(asked, tank);
  const { draws, humidity, threshold } = setting;
  const carried = function* (
    place: Place,
    told: (predicted: Predicted) => readonly Told[] = () => ["free share"],
    decision: Decision | null = null,
  ): Steps<Computed<Predicted & { readonly control: Control }>> {
    yield;
    const predicted = predict(place, components, draws, humidity);
    if (!predicted.ok) return predicted;
    const { value } = predicted;
    return {
      ok: true,
      value: yield* calibrate(place, components, value, draws, humidity, effort, told(value), decision),
    };
  };
  const deciding = (where: DrawnAim["where"], among: Decision["among"]): Decision | null =>
    aim?.where === where ? { logits: components.map((name) => logitAsked(aim, tank, name)), among } : null;
  const inTank = tankPlace(tank, central.answer, chemistry, draws);
  const full = yield* carried(
    inTank,
    undefined,
    deciding("in the tank", () => () => true),
  );
  if (!full.ok) return full;
  const never = leafPlace(tank, central.paths.never, "never", chemistry, setting);
  const excess = pathExcess(central.paths.never, never);
  const formsIn = (saturation: Float64Array | null, i: number): boolean =>
    (saturation?.[i] ?? -Infinity) + excess > threshold[i]!;
  const without = yield* carried(
    never,
    ({ saturation }) => toldWithout(saturation, excess, threshold),
    deciding(
      "on the leaf",
      ({ saturation }) =>
        (i) =>
          !formsIn(saturation, i),
    ),
  );
  if (!without.ok) return without;

  const forms = Array.from(threshold, (_, i) => formsIn(without.value.saturation, i));
  const logits = without.value.logits.map((column) => column.slice());
  let control = worse(full.value.control, without.value.control);
  const places = [inTank, never];
  if (forms.includes(true)) {
    const path = central.paths["at equilibrium"];
    const solid = leafPlace(tank, path, "at equilibrium", chemistry, setting);
    places.push(solid);
    if (holdsSolid(solid.equilibrium)) {
      const withSolid = yield* carried(
        solid,
        undefined,
        deciding("on the leaf", () => (i) => forms[i]!),
      );
      if (!withSolid.ok) return withSolid;
      control = worse(control, withSolid.value.control);
      logits.forEach((column, a) => {
        for (let i = 0; i < column.length; i++) if (forms[i]) column[i] = withSolid.value.logits[a]![i]!;
      });
    } else {
      // What the salt forms from is the drop without it: the same system, unless other traces count.
      const same = never.equilibrium.system === solid.equilibrium.system;
      const near = same ? without.value.near : (): DropEnd => solid;
      yield* solveFew(solid, components, setting, forms, logits, near, MOST_SINGLE[effort]);
    }
  }
  const shares = (columns: readonly Float64Array[]): ReadonlyMap<string, Float64Array> =>
    new Map(components.map((component, a) => [component, columns[a]!.map(shareOf)]));
  return {
    ok: true,
    value: {
      inTank: shares(full.value.logits),
      onLeaf: shares(logits),
      pH: full.value.pH,
      solidForms: forms.filter(Boolean).length / forms.length,
      control,
      keys: [...new Set(never.factors.map((factor) => factor.key))],
      sources: sourcesBehind(places, setting),
    },
  };
}

/** Sources of the spreads that were drawn at these places. */
function sourcesBehind(places: readonly Place[], { humiditySource }: DrawSetting): readonly string[] {
  const ofFactors = places.flatMap(({ factors }) => factors.flatMap(({ source }) => source ?? []));
  const ofAir = places.some(({ waterActivity }) => waterActivity !== null) ? [humiditySource] : [];
  const ofWaiting = places.some(({ waiting }) => waiting !== null) ? [assumptionSource("nucleationSI")] : [];
  return [...new Set([...ofFactors, ...ofAir, ...ofWaiting])];
}

/** ln(free / held) that the aim asks for of a component; null when no share can meet it. */
function logitAsked({ freeShare, rateFactors }: DrawnAim, tank: Tank, component: string): number | null {
  const factors = tank.actives.flatMap((active, i) =>
    active.component === component ? [rateFactors[i] ?? 1] : [],
  );
  const share = freeShare / Math.min(...factors);
  return share < 1 ? Math.log(share / (1 - share)) : null;
}

/** How far a saturation index to first order may be off [log10] when it is asked whether a solid forms in any draw. */
const SATURATION_DOUBT = 1;

/** What is to be told of a drop without the solid: its shares unless all draws form it, its saturation where some may. */
function toldWithout(
  saturation: Float64Array | null,
  excess: number,
  threshold: Float64Array,
): readonly Told[] {
  if (saturation === null) return ["free share"];
  const margins = saturation.map((index, i) => index + excess - threshold[i]!);
  if (Math.max(...margins) < -SATURATION_DOUBT) return ["free share"];
  return Math.min(...margins) > SATURATION_DOUBT ? [] : ["free share", "saturation"];
}

/**
 * Most draws solved one by one where the central answer has no solid to start from. Our choice, a cost: each is solved
 * from afar, and the draws between two solved ones are like them.
 */
const MOST_SINGLE: Readonly<Record<Effort, number>> = { "first order": 12, few: 20, many: 40 };

/** Draws in which a solid forms that the central answer does not have: some solved in full, the others as the last solved. */
function* solveFew(
  place: Place,
  components: readonly string[],
  { draws, humidity }: DrawSetting,
  forms: readonly boolean[],
  logits: readonly Float64Array[],
  near: (draw: number) => DropEnd,
  most: number,
): Steps<void> {
  const at = forms.flatMap((does, i) => (does ? [i] : []));
  const every = Math.ceil(at.length / most);
  let last: SolvedDraw | null = null;
  for (const [k, i] of at.entries()) {
    if (k % every === 0) {
      last = solveDraw(place, components, draws, i, humidity, near(i));
      yield;
    }
    if (last !== null) for (const [a, column] of logits.entries()) column[i] = last.logits[a]!;
  }
}

function worse(a: Control, b: Control): Control {
  return { solved: a.solved + b.solved, difference: Math.max(a.difference, b.difference) };
}

const largest = new WeakMap<Float64Array, number>();

/** Largest of a column, found once. */
function largestOf(column: Float64Array): number {
  let found = largest.get(column);
  if (found === undefined) {
    found = column.reduce((a, b) => Math.max(a, b), 0);
    largest.set(column, found);
  }
  return found;
}

/** What no draw brings enough of to hold a share of any active that could be told. */
function negligibleIn(tank: Tank, draws: Draws): (component: string) => boolean {
  const own = new Set(tank.actives.map(({ component }) => component));
  const least = Math.min(...tank.actives.map((active) => active.concentration_molPerL));
  return (component) => {
    const { totals_molPerL } = tank;
    const column = draws.waterTotals.get(component);
    const drawn = column === undefined ? 0 : drawnTotal(tank, component, largestOf(column), draws);
    const most = Math.max(totals_molPerL[component] ?? 0, drawn);
    return most < TRACE_OF_LEAST * least && !own.has(component);
  };
}

/** The full tank as a place to draw around. */
export function tankPlace(tank: Tank, answer: Equilibrium, chemistry: Chemistry, draws: Draws): Place {
  const { equilibrium, conditions } = abridge(
    answer,
    chemistry.conditionsInTank(tank, answer),
    1,
    negligibleIn(tank, draws),
  );
  return {
    equilibrium,
    conditions,
    factor: 1,
    waterActivity: null,
    elsewhere: [],
    factors: constantFactors(equilibrium.system, chemistry.thermo, tank.temperature_C),
    waterShare: tank.waterShare,
    waiting: null,
  };
}

/** The end of a drying path as a place to draw around. */
export function leafPlace(
  tank: Tank,
  path: LeafPath,
  solid: "never" | "at equilibrium",
  chemistry: Chemistry,
  { draws, humidity }: DrawSetting,
): Place {
  const { equilibrium: end, factor } = path.steps.at(-1)!;
  const { equilibrium, conditions } = abridge(
    end,
    chemistry.conditionsOnLeaf(tank, solid),
    factor,
    negligibleIn(tank, draws),
  );
  const { system } = equilibrium;
  const nucleating = NUCLEATING_SOLIDS.flatMap((name) => system.solidIndex.get(name) ?? []).filter((index) =>
    Number.isFinite(equilibrium.saturationIndices[index]),
  );
  const waterActivity = path.ended === "at the humidity" ? equilibrium.waterActivity : null;
  return {
    equilibrium,
    conditions,
    factor,
    waterActivity,
    elsewhere:
      waterActivity === null
        ? []
        : inOtherAir({ ...conditions, start: equilibrium }, equilibrium, factor, humidity),
    factors: [
      ...constantFactors(system, chemistry.thermo, tank.temperature_C),
      ...activityFactors(equilibrium),
    ],
    waterShare: tank.waterShare,
    waiting: solid === "never" ? (nucleating[0] ?? null) : null,
  };
}

/** Shares of the draws that have drier air than the places at which a drop is looked at beside the central one. */
const OTHER_AIR = [0.04, 0.25, 0.75, 0.96] as const;
/**
 * How near to those [water activity] it is looked at. Our choice, coarse to save solves: each answer is used with the
 * water activity it has, so being off costs nothing.
 */
const OTHER_AIR_NEAR = 0.01;

/** The end of drying in other air, from the central one outwards; as far as it can be solved. */
function inOtherAir(
  conditions: Conditions,
  central: Equilibrium,
  factor: number,
  humidity: Float64Array,
): readonly DropEnd[] {
  const sorted = humidity.slice().sort();
  const airs = OTHER_AIR.map((p) => quantileOf(sorted, p));
  const here = central.waterActivity ?? 1;
  const found: DropEnd[] = [];
  const outwards = (list: readonly number[]): void => {
    let near = factor;
    let start = central;
    for (const air of list) {
      const end = settleNear(
        central.system,
        { ...conditions, start, maxIterations: MOST_ITERATIONS, tolerance: PATH_TOLERANCE },
        near,
        air,
        OTHER_AIR_NEAR,
        start,
      );
      if (!end.ok) return;
      found.push({ factor: end.factor, equilibrium: end.equilibrium });
      near = end.factor;
      start = end.equilibrium;
    }
  };
  outwards(airs.filter((air) => air < here).reverse());
  outwards(airs.filter((air) => air > here));
  return found;
}

function holdsSolid({ system, solids }: Equilibrium): boolean {
  return NUCLEATING_SOLIDS.some((name) => (solids[system.solidIndex.get(name) ?? -1] ?? 0) > 0);
}

/** How much higher the saturation index of what waits at a place was on the way than at the end of its path. */
function pathExcess(path: LeafPath, { equilibrium: end, waiting }: Place): number {
  if (waiting === null) return 0;
  const name = end.system.solidNames[waiting]!;
  const indices = path.steps.map(({ equilibrium }) => {
    const at = equilibrium.system.solidIndex.get(name);
    return at === undefined ? -Infinity : equilibrium.saturationIndices[at]!;
  });
  return Math.max(...indices) - indices.at(-1)!;
}
