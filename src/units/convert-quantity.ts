import { foldUnit, QUANTITY_TABLES } from "./quantity-units.ts";
import type { Dimension } from "./read-quantity.ts";

/**
 * A number of one unit in another unit of the same dimension.
 *
 * @param from unit as typed, e.g. "US gal/ac"
 * @param to unit wanted, e.g. "L/ha"
 * @returns null when either unit is not one of this dimension, or when one counts litres and the other kilograms
 */
export function convertQuantity(
  value: number,
  dimension: Exclude<Dimension, "price">,
  from: string,
  to: string,
): number | null {
  const table = QUANTITY_TABLES[dimension];
  const given = table(foldUnit(from));
  const wanted = table(foldUnit(to));
  if (given === null || wanted === null || given.per !== wanted.per) return null;
  return ((value - (given.offset ?? 0)) * given.factor) / wanted.factor + (wanted.offset ?? 0);
}
