import { uncomputedPairs } from "../chem/index.ts";
import { programmeCost } from "./cost.ts";
import { ammoniumSulfateRuleDose } from "./dose-rule.ts";
import { conditionerAmount, conditionerLabel, fillingOf } from "./filling.ts";
import type { Draft, Setting } from "./programmes.ts";
import { rulesOnActive, rulesOnProgramme, tankFacts } from "./rule-facts.ts";
import type { RuleFacts } from "./fact-list.ts";
import type { TradeData } from "./trade-data.ts";
import type { ActiveVerdict, Place, PlannedDose, Programme, Remark, TankState } from "./types.ts";
import { judgeTank, leastOfDraws } from "./verdict.ts";
import type { ProgrammeDraws } from "./bands/programme-draws.ts";
import type { Computed } from "./verdict.ts";

const AMMONIUM_SULFATE = "ammonium-sulfate";

/** A programme with the draws behind its ranges. */
export interface FinishedProgramme {
  readonly programme: Programme;
  readonly draws: ProgrammeDraws | null;
}

/** Judges a draft in full: answers, rules, cost, and how to fill. */
export function finishProgramme(
  draft: Draft,
  setting: Setting,
  trade: TradeData,
): Computed<FinishedProgramme> {
  const { job, mix } = setting;
  let facts: RuleFacts = {};
  let factsOf: TankState | null = null;
  const factsAt = (state: TankState): RuleFacts => {
    if (factsOf !== state) facts = tankFacts(setting, trade, draft.volume_LPerHa, draft.conditioner, state);
    factsOf = state;
    return facts;
  };
  const judged = judgeTank(
    draft.tank,
    setting.chemistry,
    setting.drawn,
    job.spray.holdingTime_h,
    (active, state) => rulesOnActive(trade, factsAt(state), active, draft.volume_LPerHa),
  );
  if (!judged.ok) return judged;
  const { state, actives, path, drying, draws } = judged.value;
  const confidence =
    draws === null ? null : shareMeeting(leastOfDraws(draws, job.aim.where), job.aim.freeShare);
  const reasons = rulesOnProgramme(trade, factsAt(state), mix, draft.volume_LPerHa);
  return {
    ok: true,
    value: {
      draws,
      programme: {
        id: idOf(draft),
        conditioner: draft.conditioner?.record.id ?? "none",
        name: nameOf(draft),
        kind: draft.kind,
        dose: plannedDose(draft),
        dose_gPerL: draft.conditioner?.dose_gPerL ?? 0,
        waterVolume_LPerHa: draft.volume_LPerHa,
        meetsAim:
          confidence === null
            ? meetsAim(actives, job.aim.where, job.aim.freeShare)
            : confidence >= job.aim.confidence,
        confidence,
        blocked: reasons.some((reason) => reason.level === "block"),
        reasons,
        remarks: [...draft.remarks, ...remarksOn(draft, setting)],
        tank: state,
        actives,
        path,
        drying,
        cost: costOf(draft, setting),
        publishedRuleDose: ruleDoseOf(draft, setting, trade),
        filling: fillingOf(draft, setting, trade),
      },
    },
  };
}

/** Share of draws that reach the aim. */
function shareMeeting(values: Float64Array, aim: number): number {
  let met = 0;
  for (const value of values) if (value >= aim) met++;
  return met / values.length;
}

function idOf(draft: Draft): string {
  if (draft.conditioner === null) return draft.kind === "none" ? "none" : "less-water";
  const { record, formId } = draft.conditioner;
  return formId === record.forms[0]?.id ? record.id : `${record.id}.${formId}`;
}

function nameOf(draft: Draft): string {
  if (draft.conditioner !== null) return conditionerLabel(draft.conditioner);
  return draft.kind === "none" ? "nothing added" : `less water: ${String(draft.volume_LPerHa)} L/ha`;
}

/** Dose as it is measured: litres per 100 L for a liquid, g/L or kg per 100 L for a solid. */
function plannedDose(draft: Draft): PlannedDose | null {
  if (draft.conditioner === null) return null;
  const { record, formId, dose_gPerL } = draft.conditioner;
  const density = record.forms.find((f) => f.id === formId)?.density_gPerMl ?? null;
  const clean = (value: number): number => Number(value.toPrecision(3));
  if (density !== null) return { value: clean(dose_gPerL / density / 10), unit: "L/100 L" };
  return dose_gPerL >= 10
    ? { value: clean(dose_gPerL / 10), unit: "kg/100 L" }
    : { value: clean(dose_gPerL), unit: "g/L" };
}

/** True when every active whose binding is known keeps the share aimed for; null when none is known. */
function meetsAim(actives: readonly ActiveVerdict[], where: Place, aim: number): boolean | null {
  const shares = actives
    .map((a) => (where === "in the tank" ? a.inTank.free : a.onLeaf.free))
    .filter((free) => free !== null);
  return shares.length === 0 ? null : shares.every((free) => free >= aim);
}

function remarksOn(draft: Draft, setting: Setting): readonly Remark[] {
  const remarks: Remark[] = [];
  const record = draft.conditioner?.record;
  for (const note of record?.notes ?? []) {
    remarks.push({ code: "conditioner-note", text: note.text, evidence: note.evidence, source: note.source });
  }
  const environment = record?.environment ?? null;
  if (environment !== null) {
    remarks.push({
      code: "conditioner-environment",
      text: environment.text,
      evidence: environment.fromMemory ? "common practice" : "published rule",
      source: environment.source,
    });
  }
  for (const pair of uncomputedPairs(setting.chemistry.thermo, Object.keys(draft.tank.totals_molPerL))) {
    remarks.push({
      code: "binding-not-computed",
      text: `Binding of ${pair.metal} by ${pair.ligand} is not computed: ${pair.why}`,
      evidence: "computed",
      source: null,
    });
  }
  return remarks;
}

function costOf(draft: Draft, setting: Setting): Programme["cost"] {
  const { job } = setting;
  const spray = {
    volume_LPerHa: draft.volume_LPerHa,
    load_L: Math.min(job.spray.tank_L, draft.volume_LPerHa * job.spray.area_ha),
  };
  if (draft.conditioner === null) return programmeCost(spray, []);
  const { record } = draft.conditioner;
  const choice = job.conditioners?.find(
    (c) => c.chemistry === record.id && (c.form === null || c.form === draft.conditioner?.formId),
  );
  return programmeCost(spray, [{ ...conditionerAmount(draft.conditioner), price: choice?.price ?? null }]);
}

/** The published cation formula, beside ammonium sulfate only: a reference line, never mixed with our dose. */
function ruleDoseOf(draft: Draft, setting: Setting, trade: TradeData): Programme["publishedRuleDose"] {
  if (draft.conditioner?.record.id !== AMMONIUM_SULFATE) return null;
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
  return { dose_gPerL: dose.gPerL, text: `${dose.text}${floor}`, source: dose.source };
}
