import matter from "../../data/suspended-matter.json" with { type: "json" };
import type { Water } from "../water/index.ts";
import type { Sorption } from "./data-types.ts";
import type { Tank, TankActive } from "./tank.ts";
import type { Ends, OnMud } from "./types.ts";

/**
 * Suspended solids of a water [mg/L]: as weighed, else from its turbidity by the published slopes of rivers; null where
 * neither was measured.
 *
 * @source data/suspended-matter.json
 */
export function suspendedSolids_mgPerL(
  water: Pick<Water, "turbidity_NTU" | "suspendedSolids_mgPerL">,
): Ends | null {
  const { turbidity_NTU: turbidity, suspendedSolids_mgPerL: weighed } = water;
  if (weighed !== null) return { low: weighed, high: weighed };
  if (turbidity === null) return null;
  const { low_mgPerLPerNTU: low, high_mgPerLPerNTU: high } = matter.turbidity;
  return { low: low * turbidity, high: high * turbidity };
}

/**
 * Share of an active that the mud of the water takes in the tank, from the least to the most of what is published of
 * its affinity and of what clay can hold. It stands beside the free share and is in no other answer.
 *
 * A litre with S kg of mud takes the share K·S/(1 + K·S) at a distribution K [L/kg], but not more than its capacity
 * times S. Where no capacity is published, K alone decides, which overstates what a strong tank loses.
 *
 * @returns null where the water was tested neither for turbidity nor for suspended solids
 */
export function onMud({ product, concentration_molPerL }: TankActive, tank: Tank): OnMud | null {
  const solids = tank.suspendedSolids_mgPerL;
  if (solids === null) return null;
  const { active } = product;
  const records = active.sorption;
  const capacities = matter.capacity.filter((record) => record.active === active.id);
  const known = { suspendedSolids_mgPerL: solids, evidence: "computed" } as const;
  if (records.length === 0) {
    const why = "How strongly mud holds it was not found.";
    return { ...known, low: null, high: null, limitedBy: null, fromMemory: false, why, sources: [] };
  }
  const dose_gPerL = concentration_molPerL * active.molarMass_gPerMol;
  const ends = (end: "low" | "high"): MudEnd => {
    const mud_kgPerL = solids[end] * 1e-6;
    const affinity = furthest(end, affinities_LPerKg(records, end));
    const k = affinity?.value ?? 0;
    const byAffinity = (k * mud_kgPerL) / (1 + k * mud_kgPerL);
    const capacity = furthest(
      end,
      capacities.map((one) => ({ value: one[`${end}_gPerKg`], fromMemory: one.fromMemory })),
    );
    const most = capacity === null ? 1 : (capacity.value * mud_kgPerL) / dose_gPerL;
    const full = most < byAffinity;
    const fromMemory = (full ? capacity : affinity)?.fromMemory ?? false;
    return { share: Math.min(byAffinity, most), full, fromMemory };
  };
  const [low, high] = [ends("low"), ends("high")];
  const byCarbon = records.some(({ measure }) => measure === "Koc");
  const sources = [
    ...records.map(({ source }) => source),
    ...capacities.map(({ source }) => source),
    ...(byCarbon ? [matter.organicCarbon.source] : []),
    ...(solids.low === solids.high ? [] : [matter.turbidity.source]),
  ];
  return {
    ...known,
    low: low.share,
    high: high.share,
    limitedBy: high.full ? "capacity" : "affinity",
    fromMemory: low.fromMemory || high.fromMemory,
    why: capacities.length === 0 ? "What clay takes at most was not found: the high end is too high." : null,
    sources: [...new Set(sources)],
  };
}

/** One end of what mud takes. */
interface MudEnd {
  readonly share: number;
  /** Whether the mud is full there. */
  readonly full: boolean;
  /** Whether a figure that sets it is from memory. */
  readonly fromMemory: boolean;
}

/** A figure, and whether it is from memory. */
interface Figure {
  readonly value: number;
  readonly fromMemory: boolean;
}

/** How strongly mud holds an active by each record [L/kg]; those per kg of organic carbon by the carbon of the mud. */
function affinities_LPerKg(records: readonly Sorption[], end: "low" | "high"): readonly Figure[] {
  const { organicCarbon } = matter;
  return records.map((one) =>
    one.measure === "Koc"
      ? {
          value: organicCarbon[end] * one[`${end}_LPerKg`],
          fromMemory: one.fromMemory || organicCarbon.fromMemory,
        }
      : { value: one[`${end}_LPerKg`], fromMemory: one.fromMemory },
  );
}

/** The least or the most of several figures; null where there is none. */
function furthest(end: "low" | "high", figures: readonly Figure[]): Figure | null {
  const inOrder = [...figures].sort((one, other) => one.value - other.value);
  return inOrder.at(end === "low" ? 0 : -1) ?? null;
}
