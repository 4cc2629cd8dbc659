import { roundDoseUp } from "./dose-search.ts";
import { conditionerAmount, conditionerLabel } from "./filling.ts";
import { costOf } from "./finish-programme.ts";
import type { FinishedProgramme } from "./finish-programme.ts";
import type { Work } from "./findings.ts";
import { doseLimits, draftOf, searchDose, SURER } from "./programmes.ts";
import type { Draft, Setting } from "./programmes.ts";
import type { Steps } from "./steps.ts";
import type { DosedConditioner } from "./tank.ts";
import { blendOf } from "./ways-water.ts";
import type { DraftIn, Single } from "./ways-two-part.ts";
import type { Programme } from "./types.ts";
import type { Computed } from "./verdict.ts";

/** Another water as judged; a blend that is only a start for a conditioner was not judged alone. */
export interface OtherWay {
  readonly draft: Draft;
  readonly programme: Programme | null;
}

/** Share of another source in a blend that only a conditioner makes enough [hundredths]; ours. */
const HALF_PERCENT = 50;

/**
 * Other waters of a plan, as judged. A source that is not enough alone, so that no blend with it is, comes as a half
 * blend too: it saves half of the carting.
 */
export function otherWaysOf(setting: Setting, finished: readonly FinishedProgramme[]): readonly OtherWay[] {
  return finished.flatMap(({ draft, programme }): OtherWay[] => {
    const { kind, setting: own } = draft;
    if (kind !== "other source")
      return kind === "blend" || kind === "iron settled" ? [{ draft, programme }] : [];
    const other = setting.job.otherWaters.find(({ water }) => water.source === own.water.source);
    if (other === undefined || programme.meetsAim !== false) return [{ draft, programme }];
    const half = blendOf(setting, { other, water: own.water, drawn: own.drawn }, HALF_PERCENT);
    return [{ draft, programme }, ...(half.ok ? [{ draft: half.value, programme: null }] : [])];
  });
}

/** Conditioners tried in each water, the best in the planned water first: each costs a dose search. */
const MOST_TRIED = 2;
/** Added to the aim of the search, whose drying path has fewer stops than the one the way is judged by. */
const AIM_MARGIN = 0.001;

/**
 * Another source, a blend or settled water that does not meet the aim alone, with a conditioner at the least dose that
 * does. Only where that beats every conditioner in the planned water: none of them is enough, or it costs less than
 * each that is. Without prices no saving is claimed.
 */
export function alsoConditioned(ways: readonly OtherWay[], singles: readonly Single[]): readonly DraftIn[] {
  const open = singles.filter(({ programme }) => !programme.blocked);
  const enough = open.filter(({ programme }) => programme.meetsAim === true);
  const tried = [...open].sort(cheaperFirst).slice(0, MOST_TRIED);
  return ways
    .filter(({ programme }) => programme === null || (programme.meetsAim === false && !programme.blocked))
    .flatMap(({ draft }) =>
      tried.map((single) => (work: Work) => conditionedWay(draft, work, single, enough)),
    );
}

/** What meets the aim first, then the cheaper, then the smaller dose. */
function cheaperFirst(a: Single, b: Single): number {
  const meets = Number(b.programme.meetsAim === true) - Number(a.programme.meetsAim === true);
  if (meets !== 0) return meets;
  const [costA, costB] = [a.programme.cost.perHa ?? Infinity, b.programme.cost.perHa ?? Infinity];
  return costA === costB ? a.programme.dose_gPerL - b.programme.dose_gPerL : costA - costB;
}

function* conditionedWay(
  way: Draft,
  work: Work,
  { candidate }: Single,
  enough: readonly Single[],
): Steps<Computed<Draft | null>> {
  const setting: Setting = { ...way.setting, ...work };
  const { record, formId, choice } = candidate;
  const { least, most } = doseLimits(candidate);
  const at = (dose_gPerL: number): readonly DosedConditioner[] => [{ record, formId, dose_gPerL }];
  const aim = Math.min(1, setting.job.aim.freeShare + AIM_MARGIN);
  const found = yield* searchDose(setting, at, aim, { least, most });
  if (!found.ok) return found;
  if (found.value.kind !== "met") return { ok: true, value: null };
  const draftAt = (dose: number): Draft => {
    const conditioner: DosedConditioner = { record, formId, dose_gPerL: dose };
    return draftOf(setting, {
      id: `${way.id} + ${record.id}`,
      name: `${way.name} + ${conditionerLabel(conditioner)}`,
      kind: way.kind,
      conditioners: [conditioner],
      waters: way.waters,
      added: [...way.added, { ...conditionerAmount(conditioner), price: choice?.price ?? null }],
      remarks: way.remarks,
      preparation: way.preparation,
      surer: dose < most ? () => draftAt(roundDoseUp(dose * SURER, most)) : null,
    });
  };
  const draft = draftAt(roundDoseUp(found.value.dose, most));
  const cost = costOf(draft).perHa;
  const beats =
    cost === null
      ? enough.length === 0
      : enough.every(({ programme }) => cost < (programme.cost.perHa ?? -Infinity));
  return { ok: true, value: beats ? draft : null };
}
