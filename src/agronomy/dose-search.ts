import type { Steps } from "./steps.ts";
import type { Computed } from "./verdict.ts";

/** What a dose search found. */
export type DoseFound =
  | { readonly kind: "met"; readonly dose: number; readonly free: number }
  /** No dose tried meets the aim; `dose` is the best one tried. */
  | { readonly kind: "not met"; readonly dose: number; readonly free: number }
  | { readonly kind: "not known" };

/** Free share at a dose, 0…1; null when it cannot be known. */
type FreeAt = (dose: number) => Steps<Computed<number | null>>;

const COARSE_STEPS = 7;
const SPAN = 300;
const RELATIVE_WIDTH = 0.02;

/**
 * Least dose in (0, `most`] whose free share reaches `aim`, by a coarse geometric scan upward and a guarded secant in
 * the first interval that crosses it. The scan comes first because the share need not rise with the dose everywhere:
 * a solid may appear, or an acid may pass its best pH.
 *
 * @param least label minimum, in the dose's own unit; 0 when there is none
 * @param most highest dose that may be tried, in the same unit
 */
export function* leastDose(
  freeAt: FreeAt,
  aim: number,
  least: number,
  most: number,
): Steps<Computed<DoseFound>> {
  const low = Math.max(least, most / SPAN);
  let previous: Tried | null = null;
  let best: { readonly dose: number; readonly free: number } | null = null;
  for (let i = 0; i < COARSE_STEPS; i++) {
    const dose = most <= low ? most : low * (most / low) ** (i / (COARSE_STEPS - 1));
    const free = yield* freeAt(dose);
    if (!free.ok) return free;
    if (free.value === null) return { ok: true, value: { kind: "not known" } };
    if (best === null || free.value > best.free) best = { dose, free: free.value };
    if (free.value >= aim) {
      if (previous === null && least > 0) return { ok: true, value: { kind: "met", dose, free: free.value } };
      return yield* narrow(freeAt, aim, previous ?? { dose: dose / 30, free: null }, {
        dose,
        free: free.value,
      });
    }
    previous = { dose, free: free.value };
    if (most <= low) break;
  }
  return { ok: true, value: best === null ? { kind: "not known" } : { kind: "not met", ...best } };
}

/** Most times that a dose is raised, and by what factor each. */
const RAISES = 8;
const RAISE = 1.5;

/**
 * Least dose from `from` up to `most` whose free share reaches `aim`, where the share is known to rise there: upwards by
 * steps, then narrowed.
 *
 * @param from dose below which the answer is known not to lie
 */
export function* raisedDose(
  freeAt: FreeAt,
  aim: number,
  from: number,
  most: number,
): Steps<Computed<DoseFound>> {
  let below: Tried | null = null;
  let best: { readonly dose: number; readonly free: number } | null = null;
  for (let k = 0; k <= RAISES; k++) {
    const dose = k === RAISES ? most : Math.min(most, from * RAISE ** k);
    const free = yield* freeAt(dose);
    if (!free.ok) return free;
    if (free.value === null) return { ok: true, value: { kind: "not known" } };
    if (best === null || free.value > best.free) best = { dose, free: free.value };
    if (free.value >= aim) {
      if (below === null) return { ok: true, value: { kind: "met", dose, free: free.value } };
      return yield* narrow(freeAt, aim, below, { dose, free: free.value });
    }
    below = { dose, free: free.value };
    if (dose >= most) break;
  }
  return { ok: true, value: best === null ? { kind: "not known" } : { kind: "not met", ...best } };
}

/** A dose tried and its free share; null when that end was not evaluated. */
interface Tried {
  readonly dose: number;
  readonly free: number | null;
}

/** Free share above the aim that is near enough to stop. */
const NEAR_AIM = 0.0005;

/** Narrows the interval between a dose that misses the aim and one that meets it, on the logarithm of the dose. */
function* narrow(
  freeAt: FreeAt,
  aim: number,
  below: Tried,
  above: { readonly dose: number; readonly free: number },
): Steps<Computed<DoseFound>> {
  let lo = below;
  let hi = above;
  for (let k = 0; hi.dose / lo.dose > 1 + RELATIVE_WIDTH && hi.free - aim > NEAR_AIM; k++) {
    // Every third step halves, so that a jump (a solid that forms) cannot stall the secant.
    const secant = lo.free === null ? 0.5 : (aim - lo.free) / (hi.free - lo.free);
    const part = k % 3 === 2 ? 0.5 : Math.min(0.9, Math.max(0.1, secant));
    const dose = lo.dose * (hi.dose / lo.dose) ** part;
    const free = yield* freeAt(dose);
    if (!free.ok) return free;
    if (free.value !== null && free.value >= aim) hi = { dose, free: free.value };
    else lo = { dose, free: free.value };
  }
  return { ok: true, value: { kind: "met", ...hi } };
}

/**
 * Rounds a dose up to two significant figures, so that it can be measured and still meets the aim; where that would
 * pass the most that may be used, to three figures below that limit.
 */
export function roundDoseUp(dose: number, most = Infinity): number {
  if (!(dose > 0)) return 0;
  const rounded = roundTo(dose, 2, Math.ceil);
  return rounded <= most ? rounded : roundTo(most, 3, Math.floor);
}

function roundTo(value: number, figures: number, way: (x: number) => number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) - figures + 1);
  const slack = way === Math.ceil ? -1e-9 : 1e-9;
  return Number((way(value / unit + slack) * unit).toPrecision(figures));
}
