import file from "../../data/water-checks.json" with { type: "json" };

/** Provenance that stands beside every figure. */
export interface CheckProvenance {
  /** Key in the list of sources. */
  readonly source: string;
  readonly locator: string | null;
  readonly fromMemory: boolean;
  readonly note: string | null;
}

/** What is taken for a reading that is missing, with the range it stands for. */
export interface AssumedFigure extends CheckProvenance {
  readonly central: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
}

/** One step of a hardness scale; the last step has no upper end. */
export interface HardnessStep {
  readonly upTo_mgPerL_asCaCO3: number | null;
  readonly class: string;
}

/** A published scale of hardness classes. */
export interface HardnessScale extends CheckProvenance {
  readonly id: string;
  readonly name: string;
  readonly steps: readonly HardnessStep[];
}

/** Criteria, assumptions, conductances and scales for water tests, with their sources. */
export const WATER_CHECKS = file;

/** What is taken for missing readings. */
export const ASSUMED: Readonly<Record<keyof typeof file.assumptions, AssumedFigure>> = file.assumptions;

/** Published scales of hardness classes. */
export const HARDNESS_SCALES: readonly HardnessScale[] = file.hardnessScales;
