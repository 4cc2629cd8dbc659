import type { ConditionerRecord } from "./data-types.ts";
import type { PricedAmount } from "./cost.ts";
import { SEARCH_STOPS } from "./chemistry.ts";
import type { DrawSetting } from "./bands/programme-draws.ts";
import { leastDose, raisedDose, roundDoseUp } from "./dose-search.ts";
import type { DoseFound } from "./dose-search.ts";
import type { Work } from "./findings.ts";
import { conditionerAmount, conditionerLabel } from "./filling.ts";
import type { MixFeed } from "./feed.ts";
import { aired } from "./iron-air.ts";
import { leafCalcium_molPerL } from "./leaf-calcium.ts";
import { holdingTimeOf } from "./sprayer.ts";
import type { Steps } from "./steps.ts";
import { fillTank, withoutTraces } from "./tank.ts";
import type { DosedConditioner, MixProduct, Tank } from "./tank.ts";
import type { ConditionerChoice, Job, OrderStep, Remark, WaterShare, WayKind } from "./types.ts";
import { leastFree, sureFree } from "./verdict.ts";
import type { Computed } from "./verdict.ts";
import type { Water } from "../water/index.ts";

/** A conditioner the search may use, with its record, the form bought and the doses allowed. */
export interface Candidate {
  readonly record: ConditionerRecord;
  readonly formId: string;
  readonly choice: ConditionerChoice | null;
}

/** Something to be done before the tank is filled. */
export type Preparation = Omit<OrderStep, "step">;

/** A programme before it is judged: what goes in and how much. */
export interface Draft {
  readonly id: string;
  readonly name: string;
  readonly kind: WayKind;
  /** The water and the products of this way; those of the plan unless the way changes them. */
  readonly setting: Setting;
  readonly conditioners: readonly DosedConditioner[];
  readonly volume_LPerHa: number;
  readonly tank: Tank;
  readonly waters: readonly WaterShare[];
  /** What it costs beyond the plan. */
  readonly added: readonly PricedAmount[];
  readonly remarks: readonly Remark[];
  readonly preparation: readonly Preparation[];
  /** Each product's active per hectare against the plan [1], in the order of the mix; the aim is about the plan's. */
  readonly rateFactors: readonly number[];
  /** The next draft that is surer, for when draws solved in full show that a search to first order fell short. */
  readonly surer: (() => Draft) | null;
}

/** What the search works on. */
export interface Setting extends Work {
  readonly job: Job;
  readonly water: Water;
  readonly mix: readonly MixProduct[];
  readonly feeds: readonly MixFeed[];
  readonly temperature_C: number;
  /** Draws of everything uncertain about this water and the chemistry; null for central answers only. */
  readonly drawn: DrawSetting | null;
  /** Whether the tank as planned, nothing added, already meets the aim. */
  readonly plannedMeets: boolean;
}

/** Code of the remark that no dose was found to meet the aim. */
export const NOT_MET = "aim-not-met-at-any-dose";

/** Share of the planned volume the search goes down to when the least volume was not said. */
const LEAST_VOLUME_SHARE = 0.5;
const VOLUME_STEP_LPERHA = 5;

/** Tank of a setting at a volume with conditioners added. */
export function tankOf(
  setting: Setting,
  volume_LPerHa: number,
  conditioners: readonly DosedConditioner[],
): Tank {
  const { job, water, mix, feeds, temperature_C, chemistry } = setting;
  const spray = { volume_LPerHa, temperature_C };
  const filled = fillTank(water, mix, conditioners, feeds, spray, chemistry.thermo);
  const tank = { ...filled, leafCalcium_molPerL: leafCalcium_molPerL(job.spray, volume_LPerHa) };
  if (job.spray.aerated !== true) return tank;
  // What goes in must not depend, not in the last digit, on what was solved before.
  return aired(tank, chemistry.afresh(), holdingTimeOf(job.spray, volume_LPerHa));
}

/**
 * Free share that a search has to bring to the aim: the least over the actives, in the share of draws asked for where
 * draws are made, else in the central answer.
 *
 * @param factors each active's amount against the plan [1]; 1 if left out
 */
export function* freeIn(
  setting: Setting,
  volume_LPerHa: number,
  conditioners: readonly DosedConditioner[],
  factors: readonly number[] = [],
): Steps<Computed<number | null>> {
  const { job, chemistry, drawn, findings } = setting;
  return yield* findings.of(function* () {
    if (drawn === null) return yield* centralFreeIn(setting, volume_LPerHa, conditioners, factors);
    const tank = withoutTraces(tankOf(setting, volume_LPerHa, conditioners));
    return yield* sureFree(tank, chemistry, drawn, job.aim, SEARCH_STOPS, factors);
  });
}

function* centralFreeIn(
  setting: Setting,
  volume_LPerHa: number,
  conditioners: readonly DosedConditioner[],
  factors: readonly number[] = [],
): Steps<Computed<number | null>> {
  yield;
  const tank = withoutTraces(tankOf(setting, volume_LPerHa, conditioners));
  return leastFree(tank, setting.chemistry, setting.job.aim.where, SEARCH_STOPS, factors);
}

/**
 * Least dose that brings a tank to a free share in the draws asked for: first that of the central answer over the whole
 * range of doses, as the share need not rise everywhere, then upwards from there.
 */
export function* searchDose(
  setting: Setting,
  at: (dose: number) => readonly DosedConditioner[],
  aim: number,
  limits: { readonly least: number; readonly most: number },
): Steps<Computed<DoseFound>> {
  const volume = setting.job.spray.volume_LPerHa;
  const { least, most } = limits;
  return yield* setting.findings.of(function* () {
    const found = yield* leastDose((dose) => centralFreeIn(setting, volume, at(dose)), aim, least, most);
    if (setting.drawn === null || !found.ok || found.value.kind !== "met") return found;
    return yield* raisedDose((dose) => freeIn(setting, volume, at(dose)), aim, found.value.dose, most);
  });
}

/** What a way is, as far as it differs from the tank as planned. */
export type DraftParts = Pick<Draft, "id" | "name" | "kind"> & Partial<Omit<Draft, "setting" | "tank">>;

/** A draft on a setting: the tank as planned but for the parts given. */
export function draftOf(setting: Setting, parts: DraftParts): Draft {
  const volume_LPerHa = parts.volume_LPerHa ?? setting.job.spray.volume_LPerHa;
  const conditioners = parts.conditioners ?? [];
  return {
    setting,
    waters: [{ water: setting.water.source, share: 1 }],
    added: [],
    remarks: [],
    preparation: [],
    rateFactors: setting.mix.map(() => 1),
    surer: null,
    ...parts,
    conditioners,
    volume_LPerHa,
    tank: tankOf(setting, volume_LPerHa, conditioners),
  };
}

/** The tank as planned, nothing added. */
export function asPlanned(setting: Setting): Draft {
  return draftOf(setting, { id: "none", name: "nothing added", kind: "none" });
}

/**
 * The largest water volume below the planned one that meets the aim; else the least volume allowed. null when the
 * planned volume is already the least or meets the aim, or the aim cannot be judged.
 */
export function* lessWater(setting: Setting): Steps<Computed<Draft | null>> {
  const { job } = setting;
  const planned = job.spray.volume_LPerHa;
  const said = job.spray.leastVolume_LPerHa;
  const least = said ?? planned * LEAST_VOLUME_SHARE;
  if (least >= planned || setting.plannedMeets) return { ok: true, value: null };
  const freeAt = (volume: number): Steps<Computed<number | null>> => freeIn(setting, volume, []);
  const remarks: Remark[] = [];
  if (said === null) {
    remarks.push({
      code: "least-volume-not-said",
      text: "Least volume not given: searched down to half the planned volume. Label and coverage decide.",
      evidence: "common practice",
      source: "common-practice",
    });
  }
  const atLeast = yield* freeAt(least);
  if (!atLeast.ok) return atLeast;
  if (atLeast.value === null) return { ok: true, value: null };
  let volume = least;
  if (atLeast.value >= job.aim.freeShare) {
    let lo = least;
    let hi = planned;
    while (hi - lo > VOLUME_STEP_LPERHA / 2) {
      const mid = (lo + hi) / 2;
      const free = yield* freeAt(mid);
      if (!free.ok) return free;
      if (free.value !== null && free.value >= job.aim.freeShare) lo = mid;
      else hi = mid;
    }
    volume = Math.max(least, Math.floor(lo / VOLUME_STEP_LPERHA) * VOLUME_STEP_LPERHA);
  }
  if (volume >= planned) return { ok: true, value: null };
  const draftAt = (volume_LPerHa: number): Draft => {
    const drier = volume_LPerHa - VOLUME_STEP_LPERHA;
    return draftOf(setting, {
      id: "less-water",
      name: `less water: ${String(Number(volume_LPerHa.toPrecision(3)))} L/ha`,
      kind: "less water",
      volume_LPerHa,
      remarks,
      surer: drier >= least ? () => draftAt(drier) : null,
    });
  };
  return { ok: true, value: draftAt(volume) };
}

/** Least and most dose [g of the form sold per L of spray] the search may try. */
export function doseLimits({ record, formId, choice }: Candidate): {
  readonly least: number;
  readonly most: number;
} {
  const assay = (record.forms.find((f) => f.id === formId)?.assay_percent ?? 100) / 100;
  const searchLimit = record.searchLimit.value_gPerL / assay;
  const most = Math.min(choice?.mostDose_gPerL ?? searchLimit, searchLimit);
  return { least: Math.min(choice?.leastDose_gPerL ?? 0, most), most };
}

/** Factor on a dose that fell a little short of the confidence asked for. */
export const SURER = 1.15;

/** A dose, and what is to be said of how it was found. */
interface DoseShown {
  readonly dose: number;
  readonly remark: Remark | null;
}

/**
 * The dose a conditioner is shown at where none can be computed: the usual one within what the label and the search allow,
 * else the label's least, else, where the job asks for it, the highest that would be searched. null for one that nobody
 * asked for and no usual dose is known of.
 *
 * @param why what kept a dose from being computed, as a sentence
 */
function doseForComparison(candidate: Candidate, why: Pick<Remark, "code" | "text">): DoseShown | null {
  const { record, choice } = candidate;
  const { least, most } = doseLimits(candidate);
  const shown = (dose: number, words: string, source: string): DoseShown => ({
    dose: roundDoseUp(dose, most),
    remark: { ...why, text: `${why.text} ${words}`, evidence: "common practice", source },
  });
  const usual = record.usualDose?.low_gPerL ?? null;
  if (record.usualDose !== null && usual !== null) {
    const dose = Math.min(most, Math.max(least, usual));
    return shown(dose, "Shown at the usual dose.", record.usualDose.source);
  }
  const { source } = record.searchLimit;
  if (least > 0) return shown(least, "Shown at the label's least dose.", source);
  if (choice === null) return null;
  return shown(most, "No usual dose is known: shown at the highest dose searched.", source);
}

/** The least dose that meets the aim, or the best one where none does. */
function* doseSearched(setting: Setting, candidate: Candidate): Steps<Computed<DoseShown | null>> {
  const { record, formId } = candidate;
  const { least, most } = doseLimits(candidate);
  if (setting.plannedMeets) {
    const why = { code: "not-needed-for-binding", text: "The aim is met with nothing added." };
    return { ok: true, value: doseForComparison(candidate, why) };
  }
  const at = (dose_gPerL: number): readonly DosedConditioner[] => [{ record, formId, dose_gPerL }];
  const found = yield* searchDose(setting, at, setting.job.aim.freeShare, { least, most });
  if (!found.ok) return found;
  if (found.value.kind === "not known") {
    const why = {
      code: "dose-not-from-binding",
      text: "What metals hold of the actives here is not known, so no dose was computed.",
    };
    return { ok: true, value: doseForComparison(candidate, why) };
  }
  const dose = roundDoseUp(found.value.dose, most);
  if (found.value.kind === "met") return { ok: true, value: { dose, remark: null } };
  const remark: Remark = {
    code: NOT_MET,
    text: `No dose up to ${String(roundDoseUp(most, most))} g/L meets the aim${surely(setting)}; this is the best one tried.`,
    evidence: "computed",
    source: record.searchLimit.source,
  };
  return { ok: true, value: { dose, remark } };
}

/**
 * One conditioner at the least dose that meets the aim, or at its best dose when none does; null for one that nobody
 * asked for, where no dose can be computed and no usual one is known.
 */
export function* conditioned(setting: Setting, candidate: Candidate): Steps<Computed<Draft | null>> {
  const { record, formId, choice } = candidate;
  const { most } = doseLimits(candidate);
  const found = yield* doseSearched(setting, candidate);
  if (!found.ok) return found;
  if (found.value === null) return { ok: true, value: null };
  const { dose, remark } = found.value;
  const remarks = remark === null ? [] : [remark];
  const dosed = (dose_gPerL: number): DosedConditioner => ({ record, formId, dose_gPerL });
  const draftAt = (dose_gPerL: number): Draft => {
    const conditioner = dosed(dose_gPerL);
    return draftOf(setting, {
      id: formId === record.forms[0]?.id ? record.id : `${record.id}.${formId}`,
      name: conditionerLabel(conditioner),
      kind: "conditioner",
      conditioners: [conditioner],
      added: [{ ...conditionerAmount(conditioner), price: choice?.price ?? null }],
      remarks,
      surer: dose_gPerL < most ? () => draftAt(roundDoseUp(dose_gPerL * SURER, most)) : null,
    });
  };
  return { ok: true, value: draftAt(dose) };
}

/** " in 90 of 100 draws": what meeting the aim means where ranges are known. */
function surely({ job, drawn }: Setting): string {
  return drawn === null ? "" : ` in ${String(Math.round(100 * job.aim.confidence))} of 100 draws`;
}
