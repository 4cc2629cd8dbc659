import { roundDoseUp } from "./dose-search.ts";
import { conditionerAmount, conditionerLabel } from "./filling.ts";
import { costOf } from "./finish-programme.ts";
import type { Work } from "./findings.ts";
import { doseLimits, draftOf, freeIn, searchDose, SURER } from "./programmes.ts";
import type { Candidate, Draft, Setting } from "./programmes.ts";
import type { Steps } from "./steps.ts";
import type { DosedConditioner } from "./tank.ts";
import type { Programme } from "./types.ts";
import type { Computed } from "./verdict.ts";

/** One conditioner as searched and judged alone. */
export interface Single {
  readonly candidate: Candidate;
  readonly draft: Draft;
  readonly programme: Programme;
}

/** The draft of a way, worked out when it is asked for. */
export type DraftIn = (work: Work) => Steps<Computed<Draft | null>>;

/** Added to the aim of the search, whose drying path has fewer stops than the one the pair is judged by. */
const AIM_MARGIN = 0.001;

const AMMONIUM_SULFATE = "ammonium-sulfate";

/** Partners tried of each kind, the best ones alone first: each costs a dose search. */
const MOST_PARTNERS = 2;

/**
 * An acidifier or a sequestrant beside ammonium sulfate at its lowest usual dose, the partner at the least dose that
 * meets the aim. Only where the pair beats both alone: it meets the aim and neither does, or it costs less than each
 * that does. Without prices no saving is claimed.
 */
export function twoParts(setting: Setting, singles: readonly Single[]): readonly DraftIn[] {
  const open = singles.filter(({ programme }) => !programme.blocked);
  const sulfate = open.find(({ candidate }) => candidate.record.id === AMMONIUM_SULFATE);
  if (sulfate === undefined) return [];
  return partnersOf(open).map((partner) => (work) => pairOf({ ...setting, ...work }, sulfate, partner));
}

/** The best acidifiers and the best sequestrants: what meets the aim first, then the cheaper, then the smaller dose. */
function partnersOf(singles: readonly Single[]): readonly Single[] {
  const ranked = singles
    .filter(({ candidate }) => !candidate.record.modes.includes("supplies ammonium"))
    .sort((a, b) => {
      const meets = Number(b.programme.meetsAim === true) - Number(a.programme.meetsAim === true);
      const cost = (a.programme.cost.perHa ?? Infinity) - (b.programme.cost.perHa ?? Infinity);
      if (meets !== 0) return meets;
      return cost !== 0 && !Number.isNaN(cost) ? cost : a.programme.dose_gPerL - b.programme.dose_gPerL;
    });
  const withMode = (mode: string): readonly Single[] =>
    ranked.filter(({ candidate }) => candidate.record.modes.includes(mode)).slice(0, MOST_PARTNERS);
  return [...new Set([...withMode("sequesters"), ...withMode("acidifies")])];
}

function* pairOf(setting: Setting, sulfate: Single, partner: Single): Steps<Computed<Draft | null>> {
  const none = { ok: true, value: null } as const;
  const base = lowestUsual(sulfate.candidate);
  if (base === null) return none;
  const prices = [partner.candidate.choice?.price ?? null, sulfate.candidate.choice?.price ?? null];
  const enough = [sulfate, partner].filter(({ programme }) => programme.meetsAim === true);
  // Where one alone is enough, the pair has to cost less: without prices that is not known, and no search tells it.
  if (enough.length > 0 && prices.includes(null)) return none;
  const { least, most } = doseLimits(partner.candidate);
  const { record, formId } = partner.candidate;
  const at = (dose_gPerL: number): readonly DosedConditioner[] => [{ record, formId, dose_gPerL }, base];
  const volume = setting.job.spray.volume_LPerHa;
  const alone = yield* freeIn(setting, volume, [base]);
  if (!alone.ok) return alone;
  // Ammonium sulfate enough by itself needs no partner; an aim that cannot be judged has no least dose.
  if (alone.value === null || alone.value >= setting.job.aim.freeShare) return none;
  const aim = Math.min(1, setting.job.aim.freeShare + AIM_MARGIN);
  const found = yield* searchDose(setting, at, aim, { least, most });
  if (!found.ok) return found;
  if (found.value.kind !== "met") return none;
  const draftAt = (dose: number): Draft => {
    const conditioners = at(dose);
    return draftOf(setting, {
      id: conditioners.map((one) => one.record.id).join("+"),
      name: conditioners.map(conditionerLabel).join(" + "),
      kind: "two conditioners",
      conditioners,
      added: conditioners.map((one, i) => ({ ...conditionerAmount(one), price: prices[i] ?? null })),
      remarks: [
        {
          code: "two-conditioners",
          text: "Two conditioners: add one, let it dissolve, then the other. Jar test first, and not on one label alone.",
          evidence: "common practice",
          source: "common-practice",
        },
      ],
      surer: dose < most ? () => draftAt(roundDoseUp(dose * SURER, most)) : null,
    });
  };
  const draft = draftAt(roundDoseUp(found.value.dose, most));
  return beats(draft, enough) ? { ok: true, value: draft } : none;
}

/** Ammonium sulfate at the lowest usual dose, within the label's limits; null when no usual dose is known. */
function lowestUsual(candidate: Candidate): DosedConditioner | null {
  const { record, formId } = candidate;
  const usual = record.usualDose?.low_gPerL ?? null;
  if (usual === null) return null;
  const assay = (record.forms.find((form) => form.id === formId)?.assay_percent ?? 100) / 100;
  const { least, most } = doseLimits(candidate);
  return { record, formId, dose_gPerL: Math.min(most, Math.max(least, roundDoseUp(usual / assay))) };
}

/** Whether a pair that meets the aim is needed, or costs less than each of those that are enough alone. */
function beats(pair: Draft, enough: readonly Single[]): boolean {
  if (enough.length === 0) return true;
  const cost = costOf(pair).perHa;
  return cost !== null && enough.every(({ programme }) => cost < (programme.cost.perHa ?? -Infinity));
}
