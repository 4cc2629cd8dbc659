import { bindingOf } from "./binding-known.ts";
import { borrowedActivity } from "./borrowed-activity.ts";
import { moneyOf, programmeCost } from "./cost.ts";
import type { Extent } from "./cost.ts";
import { ammoniumSulfateRuleDose } from "./dose-rule.ts";
import { airRemarks } from "./iron-air.ts";
import { memoryRemarks } from "./memory-remarks.ts";
import { leafCalciumRemarks } from "./leaf-calcium.ts";
import { conditionerLabel, fillingOf } from "./filling.ts";
import type { Work } from "./findings.ts";
import { heldValue } from "./held-value.ts";
import { keepDraft } from "./kept-drafts.ts";
import { NOT_MET } from "./programmes.ts";
import type { Draft } from "./programmes.ts";
import { rulesOnActive, rulesOnProgramme, tankFacts } from "./rule-facts.ts";
import type { RuleFacts } from "./fact-list.ts";
import { holdingTimeOf } from "./sprayer.ts";
import type { DosedConditioner } from "./tank.ts";
import type { TradeData } from "./trade-data.ts";
import type { ActiveVerdict, PlannedDose, Programme, ProgrammePart, Remark, TankState } from "./types.ts";
import type { Steps } from "./steps.ts";
import { uncomputedTexts } from "./uncomputed.ts";
import { judgeTank, leastOfDraws } from "./verdict.ts";
import type { Effort } from "./bands/calibrate.ts";
import type { ProgrammeDraws } from "./bands/programme-draws.ts";
import type { Computed } from "./verdict.ts";

const AMMONIUM_SULFATE = "ammonium-sulfate";

/** A programme with the draft and the draws behind it. */
export interface FinishedProgramme {
  readonly draft: Draft;
  readonly programme: Programme;
  readonly draws: ProgrammeDraws | null;
}

/**
 * Judges a draft in full: answers, rules, cost, and how to fill.
 *
 * @param effort that goes into its ranges
 * @param work it is judged in; that of its own setting unless it is judged a second time
 */
export function* finishProgramme(
  draft: Draft,
  trade: TradeData,
  effort: Effort,
  { chemistry, findings }: Work = draft.setting,
): Steps<Computed<FinishedProgramme>> {
  const { setting, volume_LPerHa } = draft;
  const { job, mix } = setting;
  let facts: readonly RuleFacts[] = [];
  let factsOf: TankState | null = null;
  const factsAt = (state: TankState): readonly RuleFacts[] => {
    if (factsOf !== state) facts = tankFacts(setting, trade, volume_LPerHa, draft.conditioners, state);
    factsOf = state;
    return facts;
  };
  const judged = yield* findings.of(() =>
    judgeTank(
      draft.tank,
      chemistry,
      setting.drawn,
      effort,
      { where: job.aim.where, freeShare: job.aim.freeShare, rateFactors: draft.rateFactors },
      holdingTimeOf(job.spray, volume_LPerHa),
      (active, state) => rulesOnActive(trade, factsAt(state), active, volume_LPerHa),
    ),
  );
  if (!judged.ok) return judged;
  const { state, actives, path, drying, draws } = judged.value;
  const confidence =
    draws === null
      ? null
      : shareMeeting(leastOfDraws(draws, job.aim.where, draft.tank, draft.rateFactors), job.aim.freeShare);
  const reasons = rulesOnProgramme(trade, factsAt(state), mix, volume_LPerHa);
  const parts = draft.conditioners.map(partOf);
  const meets = confidence === null ? meetsAim(actives, draft) : confidence >= job.aim.confidence;
  const programme: Programme = {
    id: draft.id,
    conditioner: parts.length === 0 ? "none" : parts.map((part) => part.conditioner).join(" + "),
    name: draft.name,
    kind: draft.kind,
    dose: parts.length === 1 ? (parts[0]?.dose ?? null) : null,
    dose_gPerL: parts.reduce((sum, part) => sum + part.dose_gPerL, 0),
    parts,
    waters: draft.waters,
    waterVolume_LPerHa: volume_LPerHa,
    meetsAim: meets,
    confidence,
    blocked: reasons.some((reason) => reason.level === "block"),
    reasons,
    remarks: [
      ...remarksThatStand(draft, meets),
      ...remarksOn(draft),
      ...leafCalciumRemarks(draft.tank),
      ...airRemarks(state.ferrousIron, state.pH, job.spray.aerated),
      ...borrowedActivity(draft, actives, path, drying.estimated),
      ...memoryRemarks([...state.fromMemory, ...drying.fromMemory]),
    ],
    tank: state,
    actives,
    path,
    drying,
    cost: costOf(draft),
    heldValue: heldValue(mix, actives, job.aim.where, (perHa) => moneyOf(perHa, extentOf(draft))),
    publishedRuleDose: ruleDoseOf(draft, trade),
    filling: fillingOf(draft, trade),
  };
  keepDraft(programme, draft);
  return { ok: true, value: { draft, programme, draws } };
}

/** Share of draws that reach the aim. */
function shareMeeting(values: Float64Array, aim: number): number {
  let met = 0;
  for (const value of values) if (value >= aim) met++;
  return met / values.length;
}

function partOf(conditioner: DosedConditioner): ProgrammePart {
  return {
    conditioner: conditioner.record.id,
    name: conditionerLabel(conditioner),
    dose: plannedDose(conditioner),
    dose_gPerL: conditioner.dose_gPerL,
  };
}

/** Dose as it is measured: litres per 100 L for a liquid, g/L or kg per 100 L for a solid. */
function plannedDose({ record, formId, dose_gPerL }: DosedConditioner): PlannedDose {
  const density = record.forms.find((f) => f.id === formId)?.density_gPerMl ?? null;
  const clean = (value: number): number => Number(value.toPrecision(3));
  if (density !== null) return { value: clean(dose_gPerL / density / 10), unit: "L/100 L" };
  return dose_gPerL >= 10
    ? { value: clean(dose_gPerL / 10), unit: "kg/100 L" }
    : { value: clean(dose_gPerL), unit: "g/L" };
}

/**
 * True when every active whose binding is known keeps the share of the planned rate aimed for; null when it is known of
 * none, or only of those that metals cannot take while others are not known.
 */
function meetsAim(actives: readonly ActiveVerdict[], draft: Draft): boolean | null {
  const { where, freeShare } = draft.setting.job.aim;
  const kinds = draft.tank.actives.map((active) => bindingOf(active).kind);
  if (!kinds.includes("computed") && kinds.includes("not known")) return null;
  const shares = actives.flatMap((active, i): readonly number[] => {
    const { free } = where === "in the tank" ? active.inTank : active.onLeaf;
    return free === null ? [] : [free * (draft.rateFactors[i] ?? 1)];
  });
  return shares.length === 0 ? null : shares.every((free) => free >= freeShare);
}

/** What the search said of a draft, unless the full answer says otherwise: the search goes by first order. */
function remarksThatStand({ remarks }: Draft, meets: boolean | null): readonly Remark[] {
  return meets === true ? remarks.filter(({ code }) => code !== NOT_MET) : remarks;
}

function remarksOn(draft: Draft): readonly Remark[] {
  const remarks: Remark[] = [];
  for (const note of draft.conditioners.flatMap(({ record }) => record.notes)) {
    remarks.push({ code: "conditioner-note", text: note.text, evidence: note.evidence, source: note.source });
  }
  for (const { record } of draft.conditioners) {
    if (record.environment === null) continue;
    const { text, fromMemory, source } = record.environment;
    const evidence = fromMemory ? "common practice" : "published rule";
    remarks.push({ code: "conditioner-environment", text, evidence, source });
  }
  for (const text of uncomputedTexts(draft.setting.chemistry.thermo, draft.tank))
    remarks.push({ code: "binding-not-computed", text, evidence: "computed", source: null });
  return remarks;
}

/** What a draft costs beyond the plan, per hectare and per full load. */
export function costOf(draft: Draft): Programme["cost"] {
  return programmeCost(extentOf(draft), draft.added);
}

function extentOf({ setting, volume_LPerHa }: Draft): Extent {
  const { tank_L, area_ha, seasonArea_ha } = setting.job.spray;
  return { volume_LPerHa, load_L: Math.min(tank_L, volume_LPerHa * area_ha), seasonArea_ha };
}

/** The published cation formula, beside ammonium sulfate only: a reference line, never mixed with our dose. */
function ruleDoseOf(draft: Draft, trade: TradeData): Programme["publishedRuleDose"] {
  const { setting } = draft;
  if (!draft.conditioners.some(({ record }) => record.id === AMMONIUM_SULFATE)) return null;
  const { totals_molPerL } = setting.water;
  const measured = new Set(
    setting.job.water.readings.filter((r) => r.measured.kind !== "not measured").map((r) => r.parameter),
  );
  const mg = (component: string, known: boolean, molarMass_gPerMol: number): number | null =>
    known ? (totals_molPerL[component] ?? 0) * molarMass_gPerMol * 1000 : null;
  const hardness = measured.has("hardness");
  const dose = ammoniumSulfateRuleDose(
    {
      K: mg("K+", measured.has("potassium"), 39.098),
      Na: mg("Na+", measured.has("sodium"), 22.99),
      Ca: mg("Ca+2", measured.has("calcium") || hardness, 40.078),
      Mg: mg("Mg+2", measured.has("magnesium") || hardness, 24.305),
      Fe: measured.has("iron") ? (mg("Fe+3", true, 55.845) ?? 0) + (mg("Fe+2", true, 55.845) ?? 0) : null,
    },
    trade.doseRules,
  );
  const floor = dose.advised === null ? "" : ` ${dose.advised.text}`;
  const { source, locator, terms } = dose;
  return { dose_gPerL: dose.gPerL, text: `${dose.text}${floor}`, source, locator, terms };
}
