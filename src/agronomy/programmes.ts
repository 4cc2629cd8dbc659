import type { ConditionerRecord } from "./data-types.ts";
import { SEARCH_STOPS } from "./chemistry.ts";
import type { Chemistry } from "./chemistry.ts";
import type { DrawSetting } from "./bands/programme-draws.ts";
import { leastDose, raisedDose, roundDoseUp } from "./dose-search.ts";
import type { DoseFound } from "./dose-search.ts";
import type { MixFeed } from "./feed.ts";
import { fillTank } from "./tank.ts";
import type { DosedConditioner, MixProduct, Tank } from "./tank.ts";
import type { ConditionerChoice, Job, Remark } from "./types.ts";
import { leastFree, sureFree } from "./verdict.ts";
import type { Computed } from "./verdict.ts";
import type { Water } from "../water/index.ts";

/** A conditioner the search may use, with its record, the form bought and the doses allowed. */
export interface Candidate {
  readonly record: ConditionerRecord;
  readonly formId: string;
  readonly choice: ConditionerChoice | null;
}

/** A programme before it is judged: what goes in and how much. */
export interface Draft {
  readonly kind: "none" | "less water" | "conditioner";
  readonly conditioner: DosedConditioner | null;
  readonly volume_LPerHa: number;
  readonly tank: Tank;
  readonly remarks: readonly Remark[];
  /** The next draft that is surer, for when draws solved in full show that a search to first order fell short. */
  readonly surer: (() => Draft) | null;
}

/** What the search works on. */
export interface Setting {
  readonly job: Job;
  readonly water: Water;
  readonly mix: readonly MixProduct[];
  readonly feeds: readonly MixFeed[];
  readonly temperature_C: number;
  readonly chemistry: Chemistry;
  /** Draws of everything uncertain; null for central answers only. */
  readonly drawn: DrawSetting | null;
  /** Whether the tank as planned, nothing added, already meets the aim. */
  readonly plannedMeets: boolean;
}

/** Share of the planned volume the search goes down to when the least volume was not said. */
const LEAST_VOLUME_SHARE = 0.5;
const VOLUME_STEP_LPERHA = 5;

/** Tank of a setting at a volume with conditioners added. */
export function tankOf(
  setting: Setting,
  volume_LPerHa: number,
  conditioners: readonly DosedConditioner[],
): Tank {
  const spray = { volume_LPerHa, temperature_C: setting.temperature_C };
  return fillTank(setting.water, setting.mix, conditioners, setting.feeds, spray, setting.chemistry.thermo);
}

/** The tank as planned, nothing added. */
export function asPlanned(setting: Setting): Draft {
  const volume_LPerHa = setting.job.spray.volume_LPerHa;
  return {
    kind: "none",
    conditioner: null,
    volume_LPerHa,
    tank: tankOf(setting, volume_LPerHa, []),
    remarks: [],
    surer: null,
  };
}

/**
 * The largest water volume below the planned one that meets the aim; else the least volume allowed. null when the
 * planned volume is already the least or meets the aim, or the aim cannot be judged.
 */
export function lessWater(setting: Setting): Computed<Draft | null> {
  const { job } = setting;
  const planned = job.spray.volume_LPerHa;
  const said = job.spray.leastVolume_LPerHa;
  const least = said ?? planned * LEAST_VOLUME_SHARE;
  if (least >= planned || setting.plannedMeets) return { ok: true, value: null };
  const freeAt = (volume: number): Computed<number | null> =>
    soughtFree(tankOf(setting, volume, []), setting);
  const remarks: Remark[] = [];
  if (said === null) {
    remarks.push({
      code: "least-volume-not-said",
      text: "Least volume not given: searched down to half the planned volume. Label and coverage decide.",
      evidence: "common practice",
      source: "common-practice",
    });
  }
  const atLeast = freeAt(least);
  if (!atLeast.ok) return atLeast;
  if (atLeast.value === null) return { ok: true, value: null };
  let volume = least;
  if (atLeast.value >= job.aim.freeShare) {
    let lo = least;
    let hi = planned;
    while (hi - lo > VOLUME_STEP_LPERHA / 2) {
      const mid = (lo + hi) / 2;
      const free = freeAt(mid);
      if (!free.ok) return free;
      if (free.value !== null && free.value >= job.aim.freeShare) lo = mid;
      else hi = mid;
    }
    volume = Math.max(least, Math.floor(lo / VOLUME_STEP_LPERHA) * VOLUME_STEP_LPERHA);
  }
  if (volume >= planned) return { ok: true, value: null };
  const draftAt = (volume_LPerHa: number): Draft => ({
    kind: "less water",
    conditioner: null,
    volume_LPerHa,
    tank: tankOf(setting, volume_LPerHa, []),
    remarks,
    surer:
      volume_LPerHa - VOLUME_STEP_LPERHA >= least ? () => draftAt(volume_LPerHa - VOLUME_STEP_LPERHA) : null,
  });
  return { ok: true, value: draftAt(volume) };
}

/** Free share that a search has to bring to the aim: in the share of draws asked for, else the central one. */
export function soughtFree(tank: Tank, setting: Setting): Computed<number | null> {
  const { job, chemistry, drawn } = setting;
  if (drawn === null) return leastFree(tank, chemistry, job.aim.where, SEARCH_STOPS);
  return sureFree(tank, chemistry, drawn, job.aim, SEARCH_STOPS);
}

/**
 * Least dose that meets the aim in the share of draws asked for: first that of the central answer over the whole range
 * of doses, as the share need not rise everywhere, then upwards from there.
 */
function doseFor(
  setting: Setting,
  tankAt: (dose: number) => Tank,
  least: number,
  most: number,
): Computed<DoseFound> {
  const { job, chemistry, drawn } = setting;
  const central = (dose: number): Computed<number | null> =>
    leastFree(tankAt(dose), chemistry, job.aim.where, SEARCH_STOPS);
  const found = leastDose(central, job.aim.freeShare, least, most);
  if (drawn === null || !found.ok || found.value.kind !== "met") return found;
  return raisedDose((dose) => soughtFree(tankAt(dose), setting), job.aim.freeShare, found.value.dose, most);
}

/** Factor on a dose that fell a little short of the confidence asked for. */
const SURER = 1.15;

/** One conditioner at the least dose that meets the aim, or at its best dose when none does. */
export function conditioned(setting: Setting, candidate: Candidate): Computed<Draft> {
  const { job } = setting;
  const { record, formId, choice } = candidate;
  const assay = (record.forms.find((f) => f.id === formId)?.assay_percent ?? 100) / 100;
  const searchLimit = record.searchLimit.value_gPerL / assay;
  const most = Math.min(choice?.mostDose_gPerL ?? searchLimit, searchLimit);
  const least = Math.min(choice?.leastDose_gPerL ?? 0, most);
  const volume_LPerHa = job.spray.volume_LPerHa;
  const dosed = (dose_gPerL: number): DosedConditioner => ({ record, formId, dose_gPerL });
  const remarks: Remark[] = [];
  const usual = Math.min(most, Math.max(least, record.usualDose?.low_gPerL ?? most));
  const found: Computed<DoseFound> = setting.plannedMeets
    ? { ok: true, value: { kind: "met", dose: usual, free: job.aim.freeShare } }
    : doseFor(setting, (dose) => tankOf(setting, volume_LPerHa, [dosed(dose)]), least, most);
  if (!found.ok) return found;
  let dose: number;
  if (setting.plannedMeets) {
    dose = roundDoseUp(usual, most);
    remarks.push({
      code: "not-needed-for-binding",
      text: "The aim is met with nothing added. Shown at the usual dose, for comparison.",
      evidence: "computed",
      source: record.usualDose?.source ?? record.searchLimit.source,
    });
  } else if (found.value.kind === "not known") {
    dose = usual;
    remarks.push({
      code: "dose-not-from-binding",
      text: "No active here has known binding constants, so the dose is the usual one, not a computed one.",
      evidence: "common practice",
      source: record.usualDose?.source ?? record.searchLimit.source,
    });
  } else {
    dose = roundDoseUp(found.value.dose, most);
    if (found.value.kind === "not met") {
      remarks.push({
        code: "aim-not-met-at-any-dose",
        text: `No dose up to ${String(roundDoseUp(most, most))} g/L meets the aim${surely(setting)}; this is the best one tried.`,
        evidence: "computed",
        source: record.searchLimit.source,
      });
    }
  }
  const draftAt = (dose_gPerL: number): Draft => {
    const conditioner = dosed(dose_gPerL);
    return {
      kind: "conditioner",
      conditioner,
      volume_LPerHa,
      tank: tankOf(setting, volume_LPerHa, [conditioner]),
      remarks,
      surer: dose_gPerL < most ? () => draftAt(roundDoseUp(dose_gPerL * SURER, most)) : null,
    };
  };
  return { ok: true, value: draftAt(dose) };
}

/** " in 90 of 100 draws": what meeting the aim means where ranges are known. */
function surely({ job, drawn }: Setting): string {
  return drawn === null ? "" : ` in ${String(Math.round(100 * job.aim.confidence))} of 100 draws`;
}
