import type { ThermoData } from "../chem/index.ts";
import type { Issue, Read } from "../units/index.ts";
import { completeWater } from "../water/index.ts";
import type { Effort } from "./bands/calibrate.ts";
import { USUAL_DRAWS } from "./bands/draws.ts";
import { bindsNothing } from "./binding-known.ts";
import { candidatesOf } from "./candidates.ts";
import { feedConcentration_molPerL, solubility_gPerL } from "./feed.ts";
import { asPlanned, conditioned, freeIn, lessWater } from "./programmes.ts";
import type { Candidate, Draft, Setting } from "./programmes.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import { AS_PLANNED, drawnFor, finishSurely, rankSurely, uncertaintyOf } from "./plan-draws.ts";
import { settingOf, waterOfPlan } from "./setting.ts";
import type { PlanData } from "./setting.ts";
import { sourcesOfPlan } from "./sources.ts";
import { moreActive, otherFormsOf } from "./ways-active.ts";
import { ironSettled } from "./ways-iron.ts";
import { twoParts } from "./ways-two-part.ts";
import type { Single } from "./ways-two-part.ts";
import { alsoConditioned, otherWaysOf } from "./ways-conditioned.ts";
import { leastBlend, otherSource } from "./ways-water.ts";
import type { CompletedSource } from "./ways-water.ts";
import type { Job, Plan, Programme } from "./types.ts";
import type { Computed } from "./verdict.ts";
import { HARDSTAND_VERSION } from "./version.ts";

export type { PlanData } from "./setting.ts";

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
  const steps = planInSteps(job, data, options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** The same, one programme at a time, so that who runs it can do other things between or give it up. */
export function* planInSteps(
  job: Job,
  data: PlanData,
  options: PlanOptions = {},
): Generator<undefined, Read<Plan>> {
  const count = options.draws ?? USUAL_DRAWS;
  const read = settingOf(job, data, count);
  if (!read.ok) return read;
  const asked = read.value;
  const { water } = asked;
  const free = freeIn(asked, job.spray.volume_LPerHa, []);
  const setting: Setting = {
    ...asked,
    plannedMeets:
      free.ok &&
      (free.value === null ? bindsNothing(asPlanned(asked).tank) : free.value >= job.aim.freeShare),
  };

  const issues: Issue[] = [...feedsThatDoNotDissolve(setting)];
  const finished = new Map<string, FinishedProgramme>();
  const finish = (draft: Draft, effort: Effort): Programme | null => {
    const done = finishSurely(draft, data.trade, effort);
    if (!done.ok) {
      issues.push(unsolved(draft.name, done.reason, done.detail));
      return null;
    }
    finished.set(done.value.programme.id, done.value);
    return done.value.programme;
  };
  const singles: Single[] = [];
  const ways = options.waysOut === false ? [plannedOnly(setting)] : draftsOf(setting, data, issues, count);
  for (const [draft, candidate] of ways) {
    yield;
    const programme = finish(draft, "few");
    if (programme !== null && candidate !== null) singles.push({ candidate, draft, programme });
  }
  for (const pair of combined(setting, singles, finished)) {
    yield;
    if (!pair.ok) issues.push(unsolved("two things together", pair.reason, pair.detail));
    const programme = pair.ok && pair.value !== null ? finish(pair.value, "few") : null;
    if (programme !== null && programme.meetsAim !== true) finished.delete(programme.id);
  }
  if (!finished.has(AS_PLANNED))
    return { ok: false, issues: issues.map((issue) => ({ ...issue, severity: "error" })) };
  const { ranked, best, planned } = rankSurely(finished, (draft) => finish(draft, "many"));
  const filling = (best ?? planned).filling;
  const plan: Plan = {
    hardstand: 1,
    water: waterOfPlan(water, data.thermo),
    tank: planned.tank,
    actives: planned.actives,
    programmes: ranked,
    chosen: best?.id ?? null,
    ...filling,
    sources: sourcesOfPlan([...finished.values()], data.trade),
    uncertainty: uncertaintyOf((best ?? planned).id, finished, setting),
    issues,
    versions: { hardstand: HARDSTAND_VERSION, data: `${data.thermo.version}+${data.trade.version}` },
  };
  return { ok: true, issues: [...read.issues, ...issues], value: plan };
}

/** Ways that put two things together, each worked out when it is asked for. */
function* combined(
  setting: Setting,
  singles: readonly Single[],
  finished: ReadonlyMap<string, FinishedProgramme>,
): Generator<Computed<Draft | null>> {
  yield* twoParts(setting, singles);
  yield* alsoConditioned(otherWaysOf(setting, [...finished.values()]), singles);
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

/** A draft, and the conditioner it was searched for. */
type Way = readonly [draft: Draft, candidate: Candidate | null];

function plannedOnly(setting: Setting): Way {
  return [asPlanned(setting), null];
}

/** Every way out, conditioners at their least sufficient dose; each is worked out when it is asked for. */
function* draftsOf(
  setting: Setting,
  { trade, thermo }: PlanData,
  issues: Issue[],
  count: number,
): Generator<Way> {
  yield plannedOnly(setting);
  const found = (
    name: string,
    draft: Computed<Draft | null>,
    candidate: Candidate | null = null,
  ): readonly Way[] => {
    if (!draft.ok) issues.push(unsolved(name, draft.reason, draft.detail));
    return draft.ok && draft.value !== null ? [[draft.value, candidate]] : [];
  };
  yield* found("less water", lessWater(setting));
  for (const { own, path } of setting.job.conditioners ?? []) {
    if (own?.record === null)
      issues.push({ code: "label-undisclosed", path, received: own.name, severity: "warning" });
  }
  for (const source of completedSources(setting, thermo, issues, count)) {
    yield [otherSource(setting, source), null];
    yield* found(`blend with ${source.water.source}`, leastBlend(setting, source));
  }
  yield* found("let the iron settle", ironSettled(setting));
  for (const [i, product] of setting.mix.entries())
    yield* found(`more ${product.active.name}`, moreActive(setting, i));
  for (const draft of otherFormsOf(setting, trade)) yield [draft, null];
  for (const candidate of candidatesOf(setting.job, trade))
    yield* found(candidate.record.name, conditioned(setting, candidate), candidate);
}

/** The job's further sources with their waters completed; one that cannot be is said and left out. */
function completedSources(
  setting: Setting,
  thermo: ThermoData,
  issues: Issue[],
  count: number,
): readonly CompletedSource[] {
  return setting.job.otherWaters.flatMap((other): CompletedSource[] => {
    const completed = completeWater(other.water, { thermo, temperature_C: setting.job.spray.temperature_C });
    // What stands in the way of another source does not stand in the way of the plan.
    for (const issue of completed.issues) {
      const severity = issue.severity === "error" ? "warning" : issue.severity;
      issues.push({ ...issue, path: issue.path.replace(/^water\b/, other.path), severity });
    }
    if (!completed.ok) return [];
    const water = completed.value;
    return [{ other, water, drawn: drawnFor(setting.job, other.water, water, thermo, count) }];
  });
}

/** A programme that could not be computed is said, never dropped in silence. */
function unsolved(name: string, reason: string, detail: string): Issue {
  return {
    code: "programme-not-computed",
    path: `programmes.${name}`,
    received: `${reason}: ${detail}`,
    severity: "warning",
  };
}
