import type { FeedRow, MixEntry, ProductRow } from "../job/draft-mix.ts";
import type { Draft } from "../job/draft.ts";

/** The draft with one product changed. */
export function withProduct(draft: Draft, key: string, change: (row: ProductRow) => ProductRow): Draft {
  return withEntry(draft, key, (row) => (row.kind === "product" ? change(row) : row));
}

/** The draft with one leaf feed changed. */
export function withFeed(draft: Draft, key: string, change: (row: FeedRow) => FeedRow): Draft {
  return withEntry(draft, key, (row) => (row.kind === "feed" ? change(row) : row));
}

/** The draft without one entry of its mix. */
export function withoutEntry(draft: Draft, key: string): Draft {
  return { ...draft, mix: draft.mix.filter((row) => row.key !== key) };
}

function withEntry(draft: Draft, key: string, change: (row: MixEntry) => MixEntry): Draft {
  return { ...draft, mix: draft.mix.map((row) => (row.key === key ? change(row) : row)) };
}
