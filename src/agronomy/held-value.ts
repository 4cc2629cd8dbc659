import type { MixProduct } from "./tank.ts";
import type { ActiveVerdict, Money, Place } from "./types.ts";

/**
 * Price of the active still held where the aim is judged, in the job's currency: product per hectare, times its price,
 * times the share held. Actives whose binding is not known are left out; one missing price of the others makes the whole
 * not known, never zero.
 *
 * @param money turns an amount per hectare into all three
 */
export function heldValue(
  mix: readonly MixProduct[],
  actives: readonly ActiveVerdict[],
  where: Place,
  money: (perHa: number | null) => Money,
): Money {
  let perHa = 0;
  let judged = 0;
  for (const [i, { item }] of mix.entries()) {
    const verdict = actives[i];
    const free = (where === "in the tank" ? verdict?.inTank.free : verdict?.onLeaf.free) ?? null;
    if (free === null) continue;
    if (item.price === null) return money(null);
    perHa += item.rate.value * item.price * (1 - free);
    judged += 1;
  }
  return money(judged === 0 ? null : perHa);
}
