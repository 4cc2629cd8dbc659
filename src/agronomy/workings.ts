import { balancesOf } from "./balance.ts";
import type { Balance } from "./balance.ts";
import { doseCurveOf } from "./dose-curve.ts";
import type { DoseCurve } from "./dose-curve.ts";
import { draftBehind } from "./kept-drafts.ts";
import type { Programme } from "./types.ts";

/** How the answers of a programme came about, worked out when someone asks. */
export interface Workings {
  /** Where every active is, form by form: in the tank, then on the leaf. */
  readonly balances: readonly Balance[];
  /** Free share against dose; null where nothing is dosed. */
  readonly curve: DoseCurve | null;
}

/**
 * The workings of a programme of a plan that was made here; null for one that was read from a file.
 *
 * @param programme one of `planJob`'s own objects, not a copy
 */
export function workingsOf(programme: Programme): Workings | null {
  const draft = draftBehind(programme);
  if (draft === undefined) return null;
  return { balances: balancesOf(draft), curve: doseCurveOf(draft, programme) };
}
