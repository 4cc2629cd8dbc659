import type { Computed } from "./verdict.ts";

/** What a dose search found. */
export type DoseFound =
  | { readonly kind: "met"; readonly dose: number; readonly free: number }
  /** No dose tried meets the aim; `dose` is the best one tried. */
  | { readonly kind: "not met"; readonly dose: number; readonly free: number }
  | { readonly kind: "not known" };

const COARSE_STEPS = 7;
const SPAN = 300;
const RELATIVE_WIDTH = 0.02;

/**
 * Least dose in (0, `most`] whose free share reaches `aim`, by a coarse geometric scan upward and bisection in the
 * first interval that crosses it. The scan comes first because the share need not rise with the dose everywhere:
 * a solid may appear, or an acid may pass its best pH.
 *
 * @param freeAt free share at a dose, 0…1; null when it cannot be known
 * @param least label minimum, in the dose's own unit; 0 when there is none
 * @param most highest dose that may be tried, in the same unit
 */
export function leastDose(
  freeAt: (dose: number) => Computed<number | null>,
  aim: number,
  least: number,
  most: number,
): Computed<DoseFound> {
  const low = Math.max(least, most / SPAN);
  let previous: number | null = null;
  let best: { dose: number; free: number } | null = null;
  for (let i = 0; i < COARSE_STEPS; i++) {
    const dose = most <= low ? most : low * (most / low) ** (i / (COARSE_STEPS - 1));
    const free = freeAt(dose);
    if (!free.ok) return free;
    if (free.value === null) return { ok: true, value: { kind: "not known" } };
    if (best === null || free.value > best.free) best = { dose, free: free.value };
    if (free.value >= aim) {
      if (previous === null && least > 0) return { ok: true, value: { kind: "met", dose, free: free.value } };
      return bisect(freeAt, aim, previous ?? dose / 30, { dose, free: free.value });
    }
    previous = dose;
    if (most <= low) break;
  }
  return { ok: true, value: best === null ? { kind: "not known" } : { kind: "not met", ...best } };
}

function bisect(
  freeAt: (dose: number) => Computed<number | null>,
  aim: number,
  below: number,
  above: { readonly dose: number; readonly free: number },
): Computed<DoseFound> {
  let lo = below;
  let hi = above;
  while (hi.dose / lo > 1 + RELATIVE_WIDTH) {
    const dose = Math.sqrt(lo * hi.dose);
    const free = freeAt(dose);
    if (!free.ok) return free;
    if (free.value !== null && free.value >= aim) hi = { dose, free: free.value };
    else lo = dose;
  }
  return { ok: true, value: { kind: "met", ...hi } };
}

/** Rounds a dose up to two significant figures, so that it can be measured and still meets the aim. */
export function roundDoseUp(dose: number): number {
  if (!(dose > 0)) return 0;
  const unit = 10 ** (Math.floor(Math.log10(dose)) - 1);
  return Number((Math.ceil(dose / unit - 1e-9) * unit).toPrecision(2));
}
