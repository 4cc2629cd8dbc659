import type { ActiveRecord, Provenance, Sorption, WaterSensitivity } from "./data-types.ts";
import { recordOfOwn } from "./own-active.ts";
import { sourceOf } from "./sources.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job, SourceUsed } from "./types.ts";

/** How strongly mud holds an active, and what that comes to in the water at hand. */
export interface SorptionKnown extends Sorption {
  /** Share [1] that the suspended solids would hold; null: no solids measured, or their organic carbon not known. */
  readonly onMud: { readonly low: number; readonly high: number } | null;
}

/** What the data hold of an active beside what is computed. */
export interface KnownOfActive {
  readonly active: string;
  readonly name: string;
  /** What the binding constants are worth. */
  readonly binding: ActiveRecord["binding"];
  readonly bindingNote: string | null;
  readonly sensitivities: readonly WaterSensitivity[];
  readonly sorption: readonly SorptionKnown[];
  readonly cautions: readonly (Provenance & { readonly text: string })[];
}

/** What the data hold of the actives of a job, each once, with the sources behind it. */
export function knownOfActives(
  { mix, water }: Pick<Job, "mix" | "water">,
  trade: TradeData,
): { readonly actives: readonly KnownOfActive[]; readonly sources: readonly SourceUsed[] } {
  const records = new Map<string, ActiveRecord>();
  for (const { active, own } of mix) {
    const record = own === null ? trade.actives.find(({ id }) => id === active) : recordOfOwn(own, trade);
    if (record !== undefined) records.set(record.id, record);
  }
  const solids = water.readings.find(({ parameter }) => parameter === "suspended solids")?.measured;
  const solids_kgPerL = solids?.kind === "value" ? solids.value * 1e-6 : null;
  const actives = [...records.values()].map((record): KnownOfActive => ({
    active: record.id,
    name: record.name,
    binding: record.binding,
    bindingNote: record.bindingNote,
    sensitivities: record.waterSensitivities,
    sorption: record.sorption.map((one) => ({ ...one, onMud: shareOnMud(one, solids_kgPerL) })),
    cautions: record.cautions,
  }));
  const keys = actives.flatMap(({ sensitivities, sorption, cautions }) =>
    [...sensitivities, ...sorption, ...cautions].map(({ source }) => source),
  );
  return { actives, sources: [...new Set(keys)].sort().map(sourceOf) };
}

/**
 * Share of an active that suspended solids hold at equilibrium: Kd·S / (1 + Kd·S), with the solids S [kg/L].
 *
 * @returns null where the solids were not measured, or only Koc is known: their organic carbon is then missing
 */
export function shareOnMud(
  { measure, low_LPerKg, high_LPerKg }: Pick<Sorption, "measure" | "low_LPerKg" | "high_LPerKg">,
  solids_kgPerL: number | null,
): SorptionKnown["onMud"] {
  if (solids_kgPerL === null || measure !== "Kd") return null;
  const held = (Kd: number): number => (Kd * solids_kgPerL) / (1 + Kd * solids_kgPerL);
  return { low: held(low_LPerKg), high: held(high_LPerKg) };
}
