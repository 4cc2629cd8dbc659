import type { ActiveRecord, Provenance, Sorption, WaterSensitivity } from "./data-types.ts";
import { recordOfOwn } from "./own-active.ts";
import { sourceOf } from "./sources.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, SourceUsed } from "./types.ts";

/** What the data hold of an active beside what is computed. */
export interface KnownOfActive {
  readonly active: string;
  readonly name: string;
  /** What the binding constants are worth. */
  readonly binding: ActiveRecord["binding"];
  readonly bindingNote: string | null;
  readonly sensitivities: readonly WaterSensitivity[];
  readonly sorption: readonly Sorption[];
  readonly cautions: readonly (Provenance & { readonly text: string })[];
}

/** What the data hold of the actives of a job, each once, with the sources behind it. */
export function knownOfActives(
  { mix }: Pick<Job, "mix">,
  trade: TradeData,
): { readonly actives: readonly KnownOfActive[]; readonly sources: readonly SourceUsed[] } {
  const records = new Map<string, ActiveRecord>();
  for (const { active, own } of mix) {
    const record = own === null ? trade.actives.find(({ id }) => id === active) : recordOfOwn(own, trade);
    if (record !== undefined) records.set(record.id, record);
  }
  const actives = [...records.values()].map((record): KnownOfActive => ({
    active: record.id,
    name: record.name,
    binding: record.binding,
    bindingNote: record.bindingNote,
    sensitivities: record.waterSensitivities,
    sorption: record.sorption,
    cautions: record.cautions,
  }));
  const keys = actives.flatMap(({ sensitivities, sorption, cautions }) =>
    [...sensitivities, ...sorption, ...cautions].map(({ source }) => source),
  );
  return { actives, sources: [...new Set(keys)].sort().map(sourceOf) };
}
