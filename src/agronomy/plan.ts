import { componentInfo } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import type { Issue, Read } from "../units/index.ts";
import { alkalinity_mgPerL_asCaCO3, completeWater, hardness_mgPerL_asCaCO3 } from "../water/index.ts";
import type { Water } from "../water/index.ts";
import { drawInputs, USUAL_DRAWS } from "./bands/draws.ts";
import { drawSetting } from "./bands/programme-draws.ts";
import type { DrawSetting, ProgrammeDraws } from "./bands/programme-draws.ts";
import { measureNext, rangeWidth, spreadOf } from "./bands/spread.ts";
import { USUAL_HUMIDITY } from "./chemistry.ts";
import { finishProgramme } from "./finish-programme.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import { findConditioner } from "./find.ts";
import { recordOfOwn } from "./own-active.ts";
import { chemistryFor } from "./own-chemistry.ts";
import { asPlanned, conditioned, lessWater, soughtFree } from "./programmes.ts";
import type { Candidate, Draft, Setting } from "./programmes.ts";
import { rankProgrammes } from "./ranking.ts";
import { sourcesOfPlan } from "./sources.ts";
import type { MixProduct } from "./tank.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, MixItem, Plan, PlanUncertainty, Programme } from "./types.ts";
import { leastOfDraws } from "./verdict.ts";
import type { Computed } from "./verdict.ts";
import { HARDSTAND_VERSION } from "./version.ts";

/** The data sets a plan is computed from. */
export interface PlanData {
  readonly thermo: ThermoData;
  readonly trade: TradeData;
}

/** How a plan is worked out. */
export interface PlanOptions {
  /** Draws of everything uncertain; 0 for central answers without ranges, which take a third of the time. */
  readonly draws?: number;
}

/**
 * Answers a whole job: the completed water, what it does to each active in the planned tank, and every way out with
 * its least sufficient dose, best first.
 *
 * @returns the plan with its warnings, or the issues that stand in its way: readings that cannot be, or a numerical
 * failure with its reason. It does not throw on what a person supplied and never returns NaN.
 */
export function planJob(job: Job, data: PlanData, options: PlanOptions = {}): Read<Plan> {
  const completed = completeWater(job.water, { thermo: data.thermo, temperature_C: job.spray.temperature_C });
  if (!completed.ok) return completed;
  const water = completed.value;
  const mix = mixOf(job, data.trade);
  if (!mix.ok) return mix;
  const asked: Setting = {
    job,
    water,
    mix: mix.value,
    temperature_C: job.spray.temperature_C ?? water.temperature_C,
    chemistry: chemistryFor(job, data, job.spray.humidity ?? USUAL_HUMIDITY),
    drawn: drawnFor(job, water, data.thermo, options.draws ?? USUAL_DRAWS),
    plannedMeets: false,
  };
  const free = soughtFree(asPlanned(asked).tank, asked);
  const setting: Setting = {
    ...asked,
    plannedMeets: free.ok && free.value !== null && free.value >= job.aim.freeShare,
  };

  const issues: Issue[] = [];
  const programmes: Programme[] = [];
  const drawsOf = new Map<string, ProgrammeDraws>();
  for (const draft of draftsOf(setting, data.trade, issues)) {
    const finished = finishSurely(draft, setting, data.trade);
    if (finished.ok) {
      const { programme, draws } = finished.value;
      programmes.push(programme);
      if (draws !== null) drawsOf.set(programme.id, draws);
    } else issues.push(unsolved(nameOf(draft), finished.reason, finished.detail));
  }
  const planned = programmes.find((p) => p.kind === "none");
  if (planned === undefined)
    return { ok: false, issues: issues.map((issue) => ({ ...issue, severity: "error" })) };
  const ranked = rankProgrammes(programmes);
  const best = ranked.find((p) => p.meetsAim === true && !p.blocked) ?? null;
  const filling = (best ?? planned).filling;
  const plan: Plan = {
    hardstand: 1,
    water: waterOfPlan(water, data.thermo),
    tank: planned.tank,
    actives: planned.actives,
    programmes: ranked,
    chosen: best?.id ?? null,
    ...filling,
    sources: sourcesOfPlan({ programmes: ranked }, water, setting, data.trade),
    uncertainty: uncertaintyOf((best ?? planned).id, drawsOf, setting),
    issues,
    versions: { hardstand: HARDSTAND_VERSION, data: `${data.thermo.version}+${data.trade.version}` },
  };
  return { ok: true, issues: [...completed.issues, ...issues], value: plan };
}

/** Confidence [1] that may be missing for a surer draft to be tried, and how often one is. */
const NEARLY_SURE = 0.1;
const SURER_TRIES = 3;

/** Finishes a draft; one that falls a little short of the confidence asked for is replaced by a surer one. */
function finishSurely(draft: Draft, setting: Setting, trade: TradeData): Computed<FinishedProgramme> {
  const { confidence } = setting.job.aim;
  let tried = draft;
  let finished = finishProgramme(tried, setting, trade);
  for (let k = 0; k < SURER_TRIES && finished.ok && tried.surer !== null; k++) {
    const found = finished.value.programme.confidence;
    if (found === null || found >= confidence || found < confidence - NEARLY_SURE) break;
    tried = tried.surer();
    const surer = finishProgramme(tried, setting, trade);
    if (!surer.ok || (surer.value.programme.confidence ?? 0) <= found) break;
    finished = surer;
  }
  return finished;
}

function drawnFor(job: Job, water: Water, thermo: ThermoData, count: number): DrawSetting | null {
  if (count <= 0) return null;
  const { temperature_C, humidity } = job.spray;
  const draws = drawInputs(job.water, water, { thermo, temperature_C }, count);
  return drawSetting(draws, humidity ?? USUAL_HUMIDITY, humidity !== null);
}

/** What the ranges rest on, for the programme that is chosen or, when none is, for nothing added. */
function uncertaintyOf(
  id: string,
  drawsOf: ReadonlyMap<string, ProgrammeDraws>,
  { job, drawn }: Setting,
): PlanUncertainty | null {
  const ofProgramme = drawsOf.get(id);
  if (drawn === null || ofProgramme === undefined) return null;
  const { draws } = drawn;
  const { where } = job.aim;
  const least = leastOfDraws(ofProgramme, where);
  const spread = spreadOf(least, draws, ofProgramme.keys);
  const controls = [...drawsOf.values()].map((one) => one.control);
  return {
    draws: draws.count,
    seed: draws.seed,
    replaced: draws.replaced,
    control: {
      solved: controls.reduce((sum, one) => sum + one.solved, 0),
      difference: ofProgramme.control.difference,
    },
    about: { programme: id, where, width: rangeWidth(least) },
    spread,
    measureNext: measureNext(least, spread, job.water),
  };
}

/** Products of the mix with their records; an id that is not in the data is an issue. */
function mixOf(job: Job, trade: TradeData): Read<readonly MixProduct[]> {
  const found: MixProduct[] = [];
  const issues: Issue[] = [];
  for (const item of job.mix) {
    const { own } = item;
    const active = own === null ? trade.actives.find((a) => a.id === item.active) : recordOfOwn(own, trade);
    if (active === undefined) {
      issues.push({ code: "active-unknown", path: item.path, received: item.active, severity: "error" });
      continue;
    }
    found.push({ item, active, form: formOf(item, active.forms) });
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, value: found, issues: [] };
}

/** The form named, else the only one there is. */
function formOf<T extends { readonly id: string }>(item: MixItem, forms: readonly T[]): T | null {
  if (item.form !== null) return forms.find((f) => f.id === item.form) ?? null;
  return forms.length === 1 ? (forms[0] ?? null) : null;
}

/** Nothing added, less water, and each conditioner at its least sufficient dose. */
function draftsOf(setting: Setting, trade: TradeData, issues: Issue[]): readonly Draft[] {
  const drafts: Draft[] = [asPlanned(setting)];
  const keep = (name: string, draft: Computed<Draft | null>): void => {
    if (!draft.ok) issues.push(unsolved(name, draft.reason, draft.detail));
    else if (draft.value !== null) drafts.push(draft.value);
  };
  keep("less water", lessWater(setting));
  for (const { own, path } of setting.job.conditioners ?? []) {
    if (own?.record === null)
      issues.push({ code: "label-undisclosed", path, received: own.name, severity: "warning" });
  }
  for (const candidate of candidatesOf(setting.job, trade))
    keep(candidate.record.name, conditioned(setting, candidate));
  return drafts;
}

/** The conditioners of the job, or every built-in chemistry offered by default, in its first form. */
function candidatesOf(job: Job, trade: TradeData): readonly Candidate[] {
  if (job.conditioners === null) {
    return trade.conditioners
      .filter((record) => record.offered === "by default")
      .map((record) => ({ record, formId: record.forms[0]?.id ?? record.id, choice: null }));
  }
  return job.conditioners.flatMap((choice): Candidate[] => {
    if (choice.own !== null) {
      const { record } = choice.own;
      return record === null ? [] : [{ record, formId: record.id, choice }];
    }
    const found = findConditioner(trade, choice.form ?? choice.chemistry);
    const byId = findConditioner(trade, choice.chemistry);
    if (found.ok && byId.ok && found.value.record.id === byId.value.record.id)
      return [{ ...found.value, choice }];
    return byId.ok ? [{ ...byId.value, choice }] : [];
  });
}

function nameOf(draft: Draft): string {
  return draft.conditioner?.record.name ?? draft.kind;
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

function waterOfPlan(water: Water, thermo: ThermoData): Plan["water"] {
  const ions = Object.entries(water.totals_molPerL)
    .filter(([, total]) => total > 0)
    .sort((a, b) => componentInfo(thermo, b[0]).charge - componentInfo(thermo, a[0]).charge);
  return {
    source: water.source,
    hardness_mgPerL_asCaCO3: hardness_mgPerL_asCaCO3(water),
    alkalinity_mgPerL_asCaCO3: alkalinity_mgPerL_asCaCO3(water),
    pH: water.pH,
    ions_molPerL: Object.fromEntries(ions),
    chargeBalance_percent: water.chargeBalance_percent,
    assumptions: water.assumptions,
    issues: water.issues,
  };
}
