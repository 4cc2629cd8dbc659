import type { Issue, Read } from "../units/index.ts";
import { USUAL_DRAWS } from "./bands/draws.ts";
import { candidatesOf } from "./candidates.ts";
import { causesOf } from "./complaint-causes.ts";
import type { ActiveComplaint, Complaint, ComplaintAnswer, Range, Weight } from "./complaint-types.ts";
import { finishProgramme } from "./finish-programme.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import { draftOf } from "./programmes.ts";
import type { Setting } from "./programmes.ts";
import { settingOf, waterOfPlan } from "./setting.ts";
import type { PlanData } from "./setting.ts";
import { sourceOf, sourcesOfPlan } from "./sources.ts";
import { atOnce } from "./steps.ts";
import type { Steps } from "./steps.ts";
import { activeConcentration_molPerL } from "./tank.ts";
import type { DosedConditioner, MixProduct } from "./tank.ts";
import type { ActiveVerdict, Remark } from "./types.ts";
import type { Computed } from "./verdict.ts";
import { HARDSTAND_VERSION } from "./version.ts";

/** Shares of a dose below which the water took little, and from which it took much. Ours, no published source. */
export const WEIGHT_LIMITS = { little: 0.05, much: 0.2 } as const;

/** What an answer to a complaint is not. */
export const NO_PROOF =
  "This is no proof. It says what this water could have taken from the dose, not what happened in the field. " +
  "Exclude the other causes first.";

const AFTER = "after the products";

/**
 * How much of the dose the water of a failed application could have taken, by the engine that plans, beside the other
 * usual causes to exclude first.
 *
 * @returns the answer, or the issues that stand in its way
 */
export function checkComplaint(
  complaint: Complaint,
  data: PlanData,
  options: ComplaintOptions = {},
): Read<ComplaintAnswer> {
  return atOnce(complaintInSteps(complaint, data, options));
}

/** How a complaint is answered. */
export interface ComplaintOptions {
  /** Draws behind the ranges; 0 for the two ends of the leaf answer alone. */
  readonly draws?: number;
}

/** The same in steps: whoever runs them can do other things between, or give it up. */
export function* complaintInSteps(
  complaint: Complaint,
  data: PlanData,
  { draws = USUAL_DRAWS }: ComplaintOptions = {},
): Steps<Read<ComplaintAnswer>> {
  const read = settingOf(complaint.job, data, draws);
  if (!read.ok) return read;
  const setting = read.value;
  const { all, early, issues: undisclosed } = usedOf(complaint, data);
  const applied = yield* judged(setting, all, data);
  if (!applied.ok) return unsolved(applied.reason, applied.detail);
  // A conditioner that came last may not have won back what was held: both ends are then shown.
  const late = early.length < all.length;
  const without = late ? yield* judged(setting, early, data) : applied;
  if (!without.ok) return unsolved(without.reason, without.detail);
  const { programme } = applied.value;
  const actives = programme.actives.map((verdict, i) =>
    activeComplaint(verdict, without.value.programme.actives[i] ?? verdict, setting.mix[i], setting),
  );
  const causes = causesOf(complaint, data.trade);
  const rules = [...programme.reasons, ...programme.actives.flatMap((one) => one.rules)];
  const sources = sourcesOfPlan([applied.value], data.trade);
  const known = new Set(sources.map(({ key }) => key));
  const further = [...new Set(causes.map(({ source }) => source))].filter((key) => !known.has(key));
  const issues = [...read.issues, ...undisclosed];
  return {
    ok: true,
    issues,
    value: {
      "hardstand-complaint": 1,
      title: complaint.title,
      water: waterOfPlan(setting.water, data.thermo),
      tank: programme.tank,
      actives,
      weight: weightOf(actives),
      limits: WEIGHT_LIMITS,
      causes,
      rules: [...new Map(rules.map((rule) => [rule.id, rule])).values()],
      remarks: [...(late ? [ADDED_LATE] : []), ...programme.remarks],
      noProof: NO_PROOF,
      sources: [...sources, ...further.map(sourceOf)].sort((a, b) => (a.key < b.key ? -1 : 1)),
      issues,
      versions: { hardstand: HARDSTAND_VERSION, data: `${data.thermo.version}+${data.trade.version}` },
    },
  };
}

const ADDED_LATE: Remark = {
  code: "conditioner-added-late",
  text: "A conditioner went in after the products. The range runs from its full work to none at all.",
  evidence: "common practice",
  source: "common-practice",
};

interface Used {
  readonly all: readonly DosedConditioner[];
  /** Those not known to have come after the products. */
  readonly early: readonly DosedConditioner[];
  readonly issues: readonly Issue[];
}

/** The conditioners that went in, at their doses; one whose label does not disclose enough is said and left out. */
function usedOf({ job, added }: Complaint, { trade }: PlanData): Used {
  const choices = job.conditioners ?? [];
  const candidates = candidatesOf(job, trade);
  const all: DosedConditioner[] = [];
  const early: DosedConditioner[] = [];
  for (const { record, formId, choice } of candidates) {
    if (choice === null) continue;
    const dosed = { record, formId, dose_gPerL: choice.leastDose_gPerL ?? 0 };
    all.push(dosed);
    if (added[choices.indexOf(choice)] !== AFTER) early.push(dosed);
  }
  const issues = choices.flatMap(({ own, path }): readonly Issue[] =>
    own !== null && own.record === null
      ? [{ code: "label-undisclosed", path, received: own.name, severity: "warning" }]
      : [],
  );
  return { all, early, issues };
}

function* judged(
  setting: Setting,
  conditioners: readonly DosedConditioner[],
  { trade }: PlanData,
): Steps<Computed<FinishedProgramme>> {
  const draft = draftOf(setting, { id: "applied", name: "as applied", kind: "conditioner", conditioners });
  return yield* finishProgramme(draft, trade, "many");
}

function unsolved(reason: string, detail: string): Read<never> {
  return {
    ok: false,
    issues: [
      { code: "programme-not-computed", path: "used", received: `${reason}: ${detail}`, severity: "error" },
    ],
  };
}

function activeComplaint(
  verdict: ActiveVerdict,
  without: ActiveVerdict,
  product: MixProduct | undefined,
  { job }: Setting,
): ActiveComplaint {
  const { volume_LPerHa } = job.spray;
  const dose_gPerHa =
    product === undefined
      ? 0
      : activeConcentration_molPerL(product, volume_LPerHa) *
        volume_LPerHa *
        product.active.molarMass_gPerMol;
  const taken = widest(takenIn(verdict), takenIn(without));
  return {
    active: verdict.active,
    name: verdict.name,
    dose_gPerHa,
    takenByWater: taken,
    lostStanding: lostIn(verdict),
    left_gPerHa:
      taken === null
        ? null
        : {
            low: dose_gPerHa * (1 - taken.high),
            central: dose_gPerHa * (1 - taken.central),
            high: dose_gPerHa * (1 - taken.low),
          },
    why: verdict.onLeaf.why ?? verdict.inTank.why,
    verdict,
  };
}

/** Share held by the metals of the water: from the least of tank and leaf to the most, with the calcium salt. */
function takenIn({ inTank, onLeaf }: ActiveVerdict): Range | null {
  if (inTank.free === null || onLeaf.free === null) return null;
  // What settles in the tank as the active's own acid is held by no metal; on the leaf it counts as free already.
  const acid = inTank.ownAcid ?? 0;
  const inTankHeld = (free: number): number => Math.max(0, 1 - free - acid);
  const least = Math.min(inTankHeld(inTank.high ?? inTank.free), 1 - (onLeaf.high ?? onLeaf.free));
  return {
    low: least,
    central: 1 - onLeaf.free,
    high: Math.max(
      inTankHeld(inTank.low ?? inTank.free),
      1 - (onLeaf.low ?? onLeaf.free),
      1 - (onLeaf.withSolid?.free ?? onLeaf.free),
    ),
  };
}

function widest(a: Range | null, b: Range | null): Range | null {
  if (a === null || b === null) return null;
  return { low: Math.min(a.low, b.low), central: a.central, high: Math.max(a.high, b.high) };
}

function lostIn({ byClock: { intact, low, high } }: ActiveVerdict): Range | null {
  if (intact === null) return null;
  return { low: 1 - (high ?? intact), central: 1 - intact, high: 1 - (low ?? intact) };
}

/** The weight of the active that could have lost most. */
function weightOf(actives: readonly ActiveComplaint[]): Weight {
  const ranges = actives.flatMap(({ takenByWater }) => (takenByWater === null ? [] : [takenByWater]));
  if (ranges.length === 0) return "not known";
  if (Math.max(...ranges.map(({ high }) => high)) < WEIGHT_LIMITS.little) return "little";
  return Math.max(...ranges.map(({ central }) => central)) >= WEIGHT_LIMITS.much ? "much" : "some";
}
