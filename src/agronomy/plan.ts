import type { Issue, Read } from "../units/index.ts";
import { USUAL_DRAWS } from "./bands/draws.ts";
import { bindsNothing } from "./binding-known.ts";
import { feedConcentration_molPerL, solubility_gPerL } from "./feed.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import { AS_PLANNED, uncertaintyOf } from "./plan-draws.ts";
import { rankedWithBest, rankSurely, tasksOf, untilDone } from "./plan-tasks.ts";
import type { OpenTasks, Ranked } from "./plan-tasks.ts";
import { combinedWays, plannedOnly, waysOf } from "./plan-ways.ts";
import { asPlanned, freeIn } from "./programmes.ts";
import type { Setting } from "./programmes.ts";
import { settingOf, waterOfPlan } from "./setting.ts";
import type { PlanData } from "./setting.ts";
import { sourcesOfPlan } from "./sources.ts";
import { atOnce } from "./steps.ts";
import type { Single } from "./ways-two-part.ts";
import type { Job, Plan } from "./types.ts";
import { HARDSTAND_VERSION } from "./version.ts";

export type { PlanData } from "./setting.ts";
export type { OpenTasks, Task } from "./plan-tasks.ts";
export type { Finding } from "./findings.ts";

/** How a plan is worked out. */
export interface PlanOptions {
  /** Draws of everything uncertain; 0 for central answers without ranges, which take a third of the time. */
  readonly draws?: number;
  /** False for the tank as planned alone, without ways out: the first answer while one types. */
  readonly waysOut?: boolean;
}

/**
 * Answers a whole job: the completed water, what it does to each active in the planned tank, and every way out with
 * its least sufficient dose, best first.
 *
 * @returns the plan with its warnings, or the issues that stand in its way: readings that cannot be, or a numerical
 * failure with its reason. It does not throw on what a person supplied and never returns NaN.
 */
export function planJob(job: Job, data: PlanData, options: PlanOptions = {}): Read<Plan> {
  const steps = planInTasks(job, data, options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    atOnce(step.value.wanted[0]!.run());
  }
}

/**
 * The same in tasks that stand by themselves: whoever runs it does those that are wanted, in any order and some of them
 * elsewhere, and can do other things between or give it up. The answer is the same to the last digit.
 */
export function* planInTasks(
  job: Job,
  data: PlanData,
  options: PlanOptions = {},
): Generator<OpenTasks, Read<Plan>> {
  const count = options.draws ?? USUAL_DRAWS;
  const read = settingOf(job, data, count);
  if (!read.ok) return read;
  const setting = withPlannedMeets(read.value);
  const issues: Issue[] = [...feedsThatDoNotDissolve(setting)];
  const ways = options.waysOut === false ? [plannedOnly(setting)] : waysOf(setting, data, issues, count);
  const tasks = tasksOf(setting.chemistry, data.trade);

  const alone = ways.map((way, i) => tasks.ofWay(`way ${String(i)}`, way));
  yield* untilDone(alone, () => tasks.inFull(alone[0]?.outcome?.finished));
  const finished = new Map<string, FinishedProgramme>();
  const singles: Single[] = [];
  alone.forEach(({ outcome }, i) => {
    if (outcome?.issue) issues.push(outcome.issue);
    if (!outcome?.finished) return;
    const { draft, programme } = outcome.finished;
    finished.set(programme.id, outcome.finished);
    const { candidate } = ways[i]!;
    if (candidate !== null) singles.push({ candidate, draft, programme });
  });
  const planned = finished.get(AS_PLANNED);
  if (planned === undefined)
    return { ok: false, issues: issues.map((issue) => ({ ...issue, severity: "error" })) };

  const pairs = combinedWays(setting, singles, [...finished.values()]);
  const together = pairs.map((way, i) => tasks.ofWay(`together ${String(i)}`, way));
  const best = finished.get(rankedWithBest(finished).best?.id ?? "");
  yield* untilDone(together, () => [planned, best].flatMap((one) => tasks.inFull(one)));
  for (const { outcome } of together) {
    if (outcome?.issue) issues.push(outcome.issue);
    const pair = outcome?.finished;
    if (pair?.programme.meetsAim === true) finished.set(pair.programme.id, pair);
  }

  const ranked = yield* rankSurely(finished, issues, tasks);
  const plan = planOf(ranked, finished, setting, data, issues);
  return { ok: true, issues: [...read.issues, ...issues], value: plan };
}

/** The setting with whether the tank as planned, nothing added, meets the aim. */
function withPlannedMeets(setting: Setting): Setting {
  const { spray, aim } = setting.job;
  const free = atOnce(freeIn(setting, spray.volume_LPerHa, []));
  const meets = (share: number | null): boolean =>
    share === null ? bindsNothing(asPlanned(setting).tank) : share >= aim.freeShare;
  return { ...setting, plannedMeets: free.ok && meets(free.value) };
}

function planOf(
  { ranked, best, planned }: Ranked,
  finished: ReadonlyMap<string, FinishedProgramme>,
  setting: Setting,
  { thermo, trade }: PlanData,
  issues: readonly Issue[],
): Plan {
  const decided = best ?? planned;
  return {
    hardstand: 1,
    water: waterOfPlan(setting.water, thermo),
    tank: planned.tank,
    actives: planned.actives,
    programmes: ranked,
    chosen: best?.id ?? null,
    ...decided.filling,
    sources: sourcesOfPlan([...finished.values()], trade),
    uncertainty: uncertaintyOf(decided.id, finished, setting),
    issues,
    versions: { hardstand: HARDSTAND_VERSION, data: `${thermo.version}+${trade.version}` },
  };
}

/** Feeds of which the spray cannot dissolve as much as is planned, at its temperature. */
function feedsThatDoNotDissolve({ feeds, job, temperature_C }: Setting): readonly Issue[] {
  return feeds.flatMap((feed): Issue[] => {
    const most = solubility_gPerL(feed.record, temperature_C);
    const { volume_LPerHa } = job.spray;
    const planned = feedConcentration_molPerL(feed, volume_LPerHa) * feed.record.molarMass_gPerMol;
    if (most === null || planned <= most) return [];
    const received = `${String(Math.round(planned))} g/L of ${feed.record.name}`;
    const expected = `at most ${String(Math.round(most))} g/L at ${String(temperature_C)} °C`;
    return [{ code: "feed-not-dissolved", path: feed.item.path, received, expected, severity: "warning" }];
  });
}
