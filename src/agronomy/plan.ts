import { componentInfo } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import type { Issue, Read } from "../units/index.ts";
import { alkalinity_mgPerL_asCaCO3, completeWater, hardness_mgPerL_asCaCO3 } from "../water/index.ts";
import type { Water } from "../water/index.ts";
import { USUAL_DRAWS } from "./bands/draws.ts";
import { USUAL_HUMIDITY } from "./chemistry.ts";
import { feedConcentration_molPerL, solubility_gPerL } from "./feed.ts";
import type { MixFeed } from "./feed.ts";
import { findConditioner } from "./find.ts";
import { asPlanned, conditioned, freeIn, lessWater } from "./programmes.ts";
import { recordOfOwn } from "./own-active.ts";
import { chemistryFor } from "./own-chemistry.ts";
import type { Candidate, Draft, Setting } from "./programmes.ts";
import { drawnFor, finishSurely, uncertaintyOf } from "./plan-draws.ts";
import type { OfDraft } from "./plan-draws.ts";
import { rankProgrammes } from "./ranking.ts";
import { sourcesOfPlan } from "./sources.ts";
import type { MixProduct } from "./tank.ts";
import { moreActive, otherFormsOf } from "./ways-active.ts";
import { ironSettled } from "./ways-iron.ts";
import { twoParts } from "./ways-two-part.ts";
import type { Single } from "./ways-two-part.ts";
import { leastBlend, otherSource } from "./ways-water.ts";
import type { CompletedSource } from "./ways-water.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, MixItem, Plan, Programme } from "./types.ts";
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
  const count = options.draws ?? USUAL_DRAWS;
  const asked: Setting = {
    job,
    water,
    mix: mix.value,
    feeds: feedsOf(job, data.trade),
    temperature_C: job.spray.temperature_C ?? water.temperature_C,
    chemistry: chemistryFor(job, data, job.spray.humidity ?? USUAL_HUMIDITY),
    drawn: drawnFor(job, job.water, water, data.thermo, count),
    plannedMeets: false,
  };
  const free = freeIn(asked, job.spray.volume_LPerHa, []);
  const setting: Setting = {
    ...asked,
    plannedMeets: free.ok && free.value !== null && free.value >= job.aim.freeShare,
  };

  const issues: Issue[] = [...feedsThatDoNotDissolve(setting)];
  const programmes: Programme[] = [];
  const settings = new Set<Setting>();
  const drawsOf = new Map<string, OfDraft>();
  const finish = (draft: Draft): Programme | null => {
    const finished = finishSurely(draft, data.trade);
    settings.add(draft.setting);
    if (!finished.ok) {
      issues.push(unsolved(draft.name, finished.reason, finished.detail));
      return null;
    }
    const { programme, draws } = finished.value;
    if (draws !== null) drawsOf.set(programme.id, { draft, draws });
    return programme;
  };
  const singles: Single[] = [];
  for (const [draft, candidate] of draftsOf(setting, data, issues, count)) {
    const programme = finish(draft);
    if (programme === null) continue;
    programmes.push(programme);
    if (candidate !== null) singles.push({ candidate, draft, programme });
  }
  for (const pair of twoParts(setting, singles)) {
    if (!pair.ok) issues.push(unsolved("two conditioners", pair.reason, pair.detail));
    const programme = pair.ok && pair.value !== null ? finish(pair.value) : null;
    if (programme?.meetsAim === true) programmes.push(programme);
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
    sources: sourcesOfPlan({ programmes: ranked }, setting, [...settings], data.trade),
    uncertainty: uncertaintyOf((best ?? planned).id, drawsOf, setting),
    issues,
    versions: { hardstand: HARDSTAND_VERSION, data: `${data.thermo.version}+${data.trade.version}` },
  };
  return { ok: true, issues: [...completed.issues, ...issues], value: plan };
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

/** Leaf feeds of the mix with their records. */
function feedsOf(job: Job, trade: TradeData): readonly MixFeed[] {
  return job.feeds.flatMap((item): MixFeed[] => {
    const record = trade.feeds.find((feed) => feed.id === item.feed);
    return record === undefined ? [] : [{ item, record }];
  });
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

/** The form named, else the only one there is. */
function formOf<T extends { readonly id: string }>(item: MixItem, forms: readonly T[]): T | null {
  if (item.form !== null) return forms.find((f) => f.id === item.form) ?? null;
  return forms.length === 1 ? (forms[0] ?? null) : null;
}

/** Every way out, conditioners at their least sufficient dose with what they were searched as. */
function draftsOf(
  setting: Setting,
  { trade, thermo }: PlanData,
  issues: Issue[],
  count: number,
): readonly (readonly [Draft, Candidate | null])[] {
  const drafts: (readonly [Draft, Candidate | null])[] = [[asPlanned(setting), null]];
  const keep = (name: string, draft: Computed<Draft | null>, candidate: Candidate | null = null): void => {
    if (!draft.ok) issues.push(unsolved(name, draft.reason, draft.detail));
    else if (draft.value !== null) drafts.push([draft.value, candidate]);
  };
  keep("less water", lessWater(setting));
  for (const { own, path } of setting.job.conditioners ?? []) {
    if (own?.record === null)
      issues.push({ code: "label-undisclosed", path, received: own.name, severity: "warning" });
  }
  for (const source of completedSources(setting, thermo, issues, count)) {
    drafts.push([otherSource(setting, source), null]);
    keep(`blend with ${source.water.source}`, leastBlend(setting, source));
  }
  keep("let the iron settle", ironSettled(setting));
  setting.mix.forEach((product, i) => {
    keep(`more ${product.active.name}`, moreActive(setting, i));
  });
  for (const draft of otherFormsOf(setting, trade)) drafts.push([draft, null]);
  for (const candidate of candidatesOf(setting.job, trade))
    keep(candidate.record.name, conditioned(setting, candidate), candidate);
  return drafts;
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
