import type { MixAmount } from "./loads.ts";

/** Price of a product by mass or by volume, in the job's currency. */
export interface Price {
  readonly value: number;
  readonly per: "kg" | "L";
}

/** An amount with what it costs; null: the price was not given. */
export interface PricedAmount extends MixAmount {
  readonly price: Price | null;
}

/** Cost in the job's currency; null: not known, because a price is missing or cannot be applied. */
export interface Cost {
  readonly perHa: number | null;
  readonly perLoad: number | null;
}

/**
 * Cost of what a programme adds, per hectare and per load. Nothing added costs nothing; one missing price makes the
 * whole not known, never zero.
 *
 * @param spray volume per hectare, and the volume of the load `perLoad` is asked for
 */
export function programmeCost(
  spray: { readonly volume_LPerHa: number; readonly load_L: number },
  added: readonly PricedAmount[],
): Cost {
  let perHa = 0;
  for (const item of added) {
    const cost = costPerHa(item, spray.volume_LPerHa);
    if (cost === null) return { perHa: null, perLoad: null };
    perHa += cost;
  }
  return { perHa, perLoad: (perHa * spray.load_L) / spray.volume_LPerHa };
}

function costPerHa(item: PricedAmount, volume_LPerHa: number): number | null {
  const { price, perHa, perL } = item;
  if (price === null) return null;
  if (perHa !== undefined) return price.per === perHa.unit ? price.value * perHa.value : null;
  if (perL === undefined) return null;
  const mass_kg = (perL.value_g * volume_LPerHa) / 1000;
  if (price.per === "kg") return price.value * mass_kg;
  return perL.density_gPerMl === null ? null : (price.value * mass_kg) / perL.density_gPerMl;
}
