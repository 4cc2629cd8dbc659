import type { FeedRecord } from "./data-types.ts";
import type { MixAmount } from "./loads.ts";

/** A leaf feed of the planned tank. */
export interface FeedItem {
  /** Id of the feed in the data set. */
  readonly feed: string;
  /** Feed substance [mol per L for liquids, mol per kg for solids] of the product. */
  readonly content: { readonly value_mol: number; readonly per: "L" | "kg" };
  /** Product per area [L/ha for liquids, kg/ha for solids]. */
  readonly rate: { readonly value: number; readonly per: "L" | "kg" };
  /** What the person calls the product; never needed. */
  readonly name: string | null;
  readonly path: string;
}

/** A leaf feed with its record found. */
export interface MixFeed {
  readonly item: FeedItem;
  readonly record: FeedRecord;
}

/** Feed substance per litre of spray [mol/L]. */
export function feedConcentration_molPerL({ item }: MixFeed, volume_LPerHa: number): number {
  return (item.rate.value * item.content.value_mol) / volume_LPerHa;
}

/** Name of a feed on card and order. */
export function feedLabel({ item, record }: MixFeed): string {
  return item.name ?? record.name;
}

/** Feeds as amounts per hectare; two of one substance are told apart by their place. */
export function feedAmounts(feeds: readonly MixFeed[]): readonly MixAmount[] {
  return feeds.map((feed, i) => ({
    product: feedId(feed, i),
    label: feedLabel(feed),
    perHa: { value: feed.item.rate.value, unit: feed.item.rate.per },
  }));
}

/** Id of a feed in the amounts and the order of a plan. */
export function feedId({ record }: MixFeed, index: number): string {
  return `feed-${record.id}-${String(index + 1)}`;
}

/**
 * What of a feed the water can dissolve [g of substance per L of water] at a temperature, read between the points of
 * its table and no further; null when not known.
 */
export function solubility_gPerL(record: FeedRecord, temperature_C: number): number | null {
  const points = Object.entries(record.solubility?.gPer100gWater ?? {})
    .map(([at, grams]) => [Number(at), grams * 10] as const)
    .sort((a, b) => a[0] - b[0]);
  const above = points.findIndex(([at]) => at >= temperature_C);
  const high = points[above];
  if (high === undefined) return null;
  const low = points[above - 1];
  if (low === undefined) return high[0] === temperature_C ? high[1] : null;
  return low[1] + ((high[1] - low[1]) * (temperature_C - low[0])) / (high[0] - low[0]);
}
