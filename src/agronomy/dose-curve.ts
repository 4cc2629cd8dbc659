import { DRYING_STOPS } from "./chemistry.ts";
import { tankOf } from "./programmes.ts";
import type { Draft } from "./programmes.ts";
import type { Place, Programme } from "./types.ts";
import { leastFree } from "./verdict.ts";

/** Least free share over the actives at a dose, in the central answer; null where none is known or it was not solved. */
export interface DosePoint {
  /** All conditioners together, form sold [g per L of spray]. */
  readonly dose_gPerL: number;
  readonly inTank: number | null;
  readonly onLeaf: number | null;
}

/** Free share against the dose of a programme's conditioners, with what the dose is measured by. */
export interface DoseCurve {
  /** From nothing added upwards; the dose of the programme is one of them. */
  readonly points: readonly DosePoint[];
  readonly dose_gPerL: number;
  readonly aim: { readonly freeShare: number; readonly where: Place };
  /** Limits of the label [g per L of spray]; null ends were not given. Two conditioners have none together. */
  readonly label: { readonly least_gPerL: number | null; readonly most_gPerL: number | null };
  /** Dose of the published rule [g per L of spray]; null when there is none for this conditioner. */
  readonly publishedRule_gPerL: number | null;
}

/** Steps of the curve from nothing to its end. */
const STEPS = 12;
/** Share of the dose within which a step is taken for it. */
const NEAR = 0.01;
/** How far the curve goes beyond the dose of the programme, and beyond each line that is marked. */
const BEYOND_DOSE = 2;
const BEYOND_LINE = 1.1;

/** The curve of a draft: its conditioners in their proportion, from nothing to about twice the dose. */
export function doseCurveOf(draft: Draft, programme: Programme): DoseCurve | null {
  const { conditioners, setting } = draft;
  const dose_gPerL = conditioners.reduce((sum, one) => sum + one.dose_gPerL, 0);
  if (!(dose_gPerL > 0)) return null;
  const label = labelOf(draft);
  const publishedRule_gPerL =
    conditioners.length === 1 ? (programme.publishedRuleDose?.dose_gPerL ?? null) : null;
  const lines = [label.least_gPerL, label.most_gPerL, publishedRule_gPerL].filter((line) => line !== null);
  const end = Math.max(BEYOND_DOSE * dose_gPerL, ...lines.map((line) => BEYOND_LINE * line));
  const steps = Array.from({ length: STEPS + 1 }, (_, i) => (end * i) / STEPS);
  // A step that can hardly be told from the dose gives way to it.
  const doses = [...steps.filter((step) => Math.abs(step - dose_gPerL) > NEAR * dose_gPerL), dose_gPerL];
  const { freeShare, where } = setting.job.aim;
  return {
    points: doses.sort((a, b) => a - b).map((dose) => pointAt(draft, dose, dose / dose_gPerL)),
    dose_gPerL,
    aim: { freeShare, where },
    label,
    publishedRule_gPerL,
  };
}

function pointAt(draft: Draft, dose_gPerL: number, factor: number): DosePoint {
  const { setting, volume_LPerHa, rateFactors } = draft;
  const dosed =
    factor === 0 ? [] : draft.conditioners.map((one) => ({ ...one, dose_gPerL: one.dose_gPerL * factor }));
  const tank = tankOf(setting, volume_LPerHa, dosed);
  const freeAt = (where: Place): number | null => {
    const free = leastFree(tank, setting.chemistry, where, DRYING_STOPS, rateFactors);
    return free.ok ? free.value : null;
  };
  return { dose_gPerL, inTank: freeAt("in the tank"), onLeaf: freeAt("on the leaf") };
}

function labelOf({ conditioners, setting }: Draft): DoseCurve["label"] {
  const [only, ...more] = conditioners;
  const choice =
    more.length > 0
      ? undefined
      : setting.job.conditioners?.find(({ chemistry }) => chemistry === only?.record.id);
  return { least_gPerL: choice?.leastDose_gPerL ?? null, most_gPerL: choice?.mostDose_gPerL ?? null };
}
