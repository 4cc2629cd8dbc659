import type { MixAmount } from "./loads.ts";
import type { Money } from "./types.ts";

/** Price of a product by mass or by volume, in the job's currency. */
export interface Price {
  readonly value: number;
  readonly per: "kg" | "L";
}

/** An amount with what it costs; null: the price was not given. */
export interface PricedAmount extends MixAmount {
  readonly price: Price | null;
}

/** What amounts per hectare are turned into amounts per load and per season by. */
export interface Extent {
  readonly volume_LPerHa: number;
  /** Volume of the load `perLoad` is asked for. */
  readonly load_L: number;
  /** Ground sprayed like this in a season; null when not said. */
  readonly seasonArea_ha: number | null;
}

/** An amount per hectare with what it comes to per load and per season; all null when it is not known. */
export function moneyOf(perHa: number | null, extent: Extent): Money {
  if (perHa === null) return { perHa: null, perLoad: null, perSeason: null };
  const { volume_LPerHa, load_L, seasonArea_ha } = extent;
  return {
    perHa,
    perLoad: (perHa * load_L) / volume_LPerHa,
    perSeason: seasonArea_ha === null ? null : perHa * seasonArea_ha,
  };
}

/**
 * Cost of what a programme adds, per hectare, per load and per season. Nothing added costs nothing; one missing price makes the
 * whole not known, never zero.
 */
export function programmeCost(extent: Extent, added: readonly PricedAmount[]): Money {
  let perHa = 0;
  for (const item of added) {
    const cost = costPerHa(item, extent.volume_LPerHa);
    if (cost === null) return moneyOf(null, extent);
    perHa += cost;
  }
  return moneyOf(perHa, extent);
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
