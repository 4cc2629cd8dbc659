import type { Issue } from "../units/index.ts";
import type { TitledJob } from "./job.ts";
import type { ActiveVerdict, Evidence, Plan, Remark, RuleVerdict, SourceUsed, TankState } from "./types.ts";

/** How a failure lay over the ground. */
export const PATTERNS = ["even", "strips", "patches", "edges"] as const;
/** How the plants looked. */
export const PLANTS = ["all weakened", "dead beside healthy", "large ones survive"] as const;
/** Which loads failed. */
export const LOADS = ["all loads", "one load", "one source"] as const;
/** When a conditioner went in. */
export const ADDED = ["before the products", "after the products"] as const;

/** What was seen in the field; null where it was not said. */
export interface Seen {
  readonly pattern: (typeof PATTERNS)[number] | null;
  readonly plants: (typeof PLANTS)[number] | null;
  readonly loads: (typeof LOADS)[number] | null;
}

/** The record of an application that failed. */
export interface Complaint {
  readonly title: string | null;
  /** Water, spray and products as applied; its conditioners are those used, each with the dose as its only one. */
  readonly job: TitledJob;
  /** When each conditioner of the job went in, in its order; null where not said. */
  readonly added: readonly ((typeof ADDED)[number] | null)[];
  readonly seen: Seen;
  /** Ids of causes already excluded, and of those found. */
  readonly excluded: readonly string[];
  readonly found: readonly string[];
}

/** A share with its range [1]. */
export interface Range {
  readonly low: number;
  readonly central: number;
  readonly high: number;
}

/** What the water could have done to one active. */
export interface ActiveComplaint {
  readonly active: string;
  readonly name: string;
  /** Active applied [g per ha], on the basis of its record. */
  readonly dose_gPerHa: number;
  /** Share of the dose the water could have held: from the tank's least to the leaf's most; null: not known. */
  readonly takenByWater: Range | null;
  /** Share broken down while the load stood; null: not known. */
  readonly lostStanding: Range | null;
  /** Active left free of the water [g per ha]; null: not known. */
  readonly left_gPerHa: Range | null;
  /** Said when a share is null or rests on an analogy. */
  readonly why: string | null;
  readonly verdict: ActiveVerdict;
}

/** Where a cause stands after the record. */
export type CauseStanding = "excluded" | "found" | "open";

/** One of the usual causes. */
export interface CauseAnswer {
  readonly id: string;
  readonly name: string;
  readonly check: string;
  readonly standing: CauseStanding;
  /** What was seen that speaks for it, and against it. */
  readonly speaksFor: readonly string[];
  readonly speaksAgainst: readonly string[];
  readonly evidence: Evidence;
  readonly source: string;
}

/** How much of a dose the water could have taken, in a word. Limits are ours, no published source. */
export type Weight = "little" | "some" | "much" | "not known";

/** The answer to a complaint: what the water could have taken, beside the other usual causes. Never proof. */
export interface ComplaintAnswer {
  readonly "hardstand-complaint": 1;
  readonly title: string | null;
  readonly water: Plan["water"];
  readonly tank: TankState;
  readonly actives: readonly ActiveComplaint[];
  /** Of the active that could have lost most. */
  readonly weight: Weight;
  /** What the weight is judged by. */
  readonly limits: { readonly little: number; readonly much: number };
  readonly causes: readonly CauseAnswer[];
  readonly rules: readonly RuleVerdict[];
  readonly remarks: readonly Remark[];
  /** What this answer is not. */
  readonly noProof: string;
  readonly sources: readonly SourceUsed[];
  readonly issues: readonly Issue[];
  readonly versions: { readonly hardstand: string; readonly data: string };
}
