import type { ActiveVerdict, Load, Plan, Programme, Share } from "../../src/agronomy/index.ts";

/** A figure at three figures, as it is kept; what is no figure stays as it is. */
export function threeFigures<T>(value: T): T | number {
  return typeof value === "number" && Number.isFinite(value) ? Number(value.toPrecision(3)) : value;
}

const ids = (rules: readonly { readonly id: string }[]): string => rules.map((rule) => rule.id).join(", ");

/** Free share with its range, as one line; null where it is not known. */
function withRange({ free, low, high }: Share): string | null {
  return free === null ? null : `${threeFigures(free)} (${threeFigures(low)} to ${threeFigures(high)})`;
}

function ofActive({ inTank, onLeaf, byClock, rules }: ActiveVerdict): object {
  return {
    inTank: withRange(inTank),
    onLeaf: withRange(onLeaf),
    onLeafWithSolid: threeFigures(onLeaf.withSolid?.free ?? null),
    onLeafWithoutSolid: threeFigures(onLeaf.withoutSolid?.free ?? null),
    halfLife_h: threeFigures(byClock.halfLife_h),
    intact: threeFigures(byClock.intact),
    rules: ids(rules),
  };
}

function ofProgramme(programme: Programme, index: number): object {
  const share = (place: "inTank" | "onLeaf"): object =>
    Object.fromEntries(programme.actives.map((one) => [one.active, threeFigures(one[place].free)]));
  return {
    place: index + 1,
    dose_gPerL: threeFigures(programme.dose_gPerL),
    waterVolume_LPerHa: threeFigures(programme.waterVolume_LPerHa),
    meetsAim: programme.meetsAim,
    confidence: threeFigures(programme.confidence),
    blocked: programme.blocked,
    pH: threeFigures(programme.tank.pH),
    inTank: share("inTank"),
    onLeaf: share("onLeaf"),
    driedTo: threeFigures(programme.drying.factor),
    costPerHa: threeFigures(programme.cost.perHa),
    reasons: ids(programme.reasons),
  };
}

function ofLoad(load: Load | null): object | null {
  if (load === null) return null;
  const amounts = load.amounts.map((one) => [one.product, `${threeFigures(one.amount)} ${one.unit}`]);
  return {
    volume_L: threeFigures(load.volume_L),
    area_ha: threeFigures(load.area_ha),
    amounts: Object.fromEntries(amounts),
  };
}

/** What of a plan is kept: its figures at three figures, and the ids of what it says. Wording is left out. */
export function summaryOf(plan: Plan): object {
  return {
    water: {
      hardness_mgPerL_asCaCO3: threeFigures(plan.water.hardness_mgPerL_asCaCO3),
      alkalinity_mgPerL_asCaCO3: threeFigures(plan.water.alkalinity_mgPerL_asCaCO3),
      pH: threeFigures(plan.water.pH),
    },
    tank: {
      pH: threeFigures(plan.tank.pH),
      ionicStrength_molPerL: threeFigures(plan.tank.ionicStrength_molPerL),
      solids: plan.tank.solids.map((solid) => solid.name).join(", "),
    },
    actives: Object.fromEntries(plan.actives.map((one) => [one.active, ofActive(one)])),
    programmes: Object.fromEntries(plan.programmes.map((one, index) => [one.id, ofProgramme(one, index)])),
    chosen: plan.chosen,
    order: plan.order.map((step) => step.adds ?? (step.pause ? "pause" : "water")).join(", "),
    loads: { count: plan.loads.count, full: ofLoad(plan.loads.full), last: ofLoad(plan.loads.last) },
    cautions: ids(plan.cautions),
  };
}

/** The leaves of an object, each under its path. */
function leaves(value: unknown, path = ""): [path: string, leaf: unknown][] {
  if (value === null || typeof value !== "object") return [[path, value]];
  return Object.entries(value).flatMap(([key, below]) => leaves(below, path === "" ? key : `${path}.${key}`));
}

/** What differs between a kept summary and a new one, a line each: `path: kept → now`. */
export function differences(kept: unknown, now: unknown): string[] {
  const [before, after] = [new Map(leaves(kept)), new Map(leaves(now))];
  const said = (side: ReadonlyMap<string, unknown>, path: string): string =>
    side.has(path) ? JSON.stringify(side.get(path)) : "nothing";
  return [...new Set([...before.keys(), ...after.keys()])]
    .filter((path) => said(before, path) !== said(after, path))
    .map((path) => `${path}: ${said(before, path)} → ${said(after, path)}`);
}
