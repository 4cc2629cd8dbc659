import type {
  BenchList,
  Caution,
  FarmBeside,
  FlaskShow,
  SeenColours,
  ShowCheck,
  SlipSeen,
} from "../../agronomy/index.ts";
import type { JobDocument } from "../job/to-document.ts";

/** The demonstration that was picked. */
export interface Picked {
  /** Counts what was picked, so that the same file opened again is another. */
  readonly count: number;
  /** Name of a ready demonstration; null for a file of one's own. */
  readonly name: string | null;
  readonly document: unknown;
}

/** A flask at one step, in words. */
export interface FlaskStepView {
  readonly flask: string;
  /** What went in; null where the flask has no further step. */
  readonly added: string | null;
  readonly look: string;
  readonly say: string | null;
  /** Who has each metal. */
  readonly held: readonly string[];
  readonly remarks: readonly string[];
}

/** A demonstration computed, with its drawings and its words. */
export interface ShowView {
  readonly show: FlaskShow;
  /** By step, from clear water to the last. The text in a drawing is escaped where it is made. */
  readonly steps: readonly { readonly drawing: string; readonly flasks: readonly FlaskStepView[] }[];
  readonly order: string;
  readonly estimates: string;
}

/** What to have, what to beware of and what may go wrong. */
export interface BenchView {
  readonly bench: BenchList;
  readonly cautions: readonly Caution[];
  readonly slips: readonly SlipSeen[];
}

/** The conditioners of the flasks in a real water. */
export interface FarmView {
  /** null when no job can be planned. */
  readonly farm: FarmBeside | null;
  /** Whose water it is. */
  readonly of: "the open job" | "the demonstration";
}

/** What the screen asks of the engine; `id` counts the documents. */
export type FlasksRequest =
  | { readonly type: "run"; readonly id: number; readonly document: unknown }
  | { readonly type: "script"; readonly id: number; readonly job: JobDocument }
  | { readonly type: "bench"; readonly id: number }
  | { readonly type: "farm"; readonly id: number; readonly job: JobDocument }
  | { readonly type: "check"; readonly id: number; readonly seen: SeenColours };

/** What the engine answers. */
export type FlasksReply =
  | {
      readonly type: "show";
      readonly id: number;
      /** Issues in words. */
      readonly issues: readonly { readonly severity: string; readonly words: string }[];
      /** null when an issue stands in the way. */
      readonly view: ShowView | null;
      /** False for the central colours alone, which come first. */
      readonly complete: boolean;
    }
  | { readonly type: "script"; readonly id: number; readonly html: string | null }
  | { readonly type: "bench"; readonly id: number; readonly bench: BenchView }
  | { readonly type: "farm"; readonly id: number; readonly farm: FarmView }
  | { readonly type: "check"; readonly id: number; readonly check: ShowCheck };
