import { componentInfo } from "../chem/index.ts";
import type { ThermoData } from "../chem/index.ts";
import type { Issue, Read } from "../units/index.ts";
import { alkalinity_mgPerL_asCaCO3, completeWater, hardness_mgPerL_asCaCO3 } from "../water/index.ts";
import type { Water } from "../water/index.ts";
import { USUAL_HUMIDITY } from "./chemistry.ts";
import type { MixFeed } from "./feed.ts";
import { beginWork } from "./findings.ts";
import { recordOfOwn } from "./own-active.ts";
import { chemistryFor } from "./own-chemistry.ts";
import { drawnFor } from "./plan-draws.ts";
import type { Setting } from "./programmes.ts";
import type { MixProduct } from "./tank.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, MixItem, Plan } from "./types.ts";

/** The data sets a plan is computed from. */
export interface PlanData {
  readonly thermo: ThermoData;
  readonly trade: TradeData;
}

/**
 * What a job is computed on: its water completed, its products found, its draws made.
 *
 * @param count draws of everything uncertain; 0 for central answers only
 */
export function settingOf(job: Job, data: PlanData, count: number): Read<Setting> {
  const completed = completeWater(job.water, { thermo: data.thermo, temperature_C: job.spray.temperature_C });
  if (!completed.ok) return completed;
  const water = completed.value;
  const mix = mixOf(job, data.trade);
  if (!mix.ok) return mix;
  const value: Setting = {
    job,
    water,
    mix: mix.value,
    feeds: feedsOf(job, data.trade),
    temperature_C: job.spray.temperature_C ?? water.temperature_C,
    ...beginWork(chemistryFor(job, data, job.spray.humidity ?? USUAL_HUMIDITY)),
    drawn: drawnFor(job, job.water, water, data.thermo, count),
    plannedMeets: false,
  };
  return { ok: true, value, issues: completed.issues };
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

/** The form named, else the only one there is. */
function formOf<T extends { readonly id: string }>(item: MixItem, forms: readonly T[]): T | null {
  if (item.form !== null) return forms.find((f) => f.id === item.form) ?? null;
  return forms.length === 1 ? (forms[0] ?? null) : null;
}

/** A water as a plan shows it. */
export function waterOfPlan(water: Water, thermo: ThermoData): Plan["water"] {
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
