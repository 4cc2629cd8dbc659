import type { FlaskShow, SeenColours, ShowCheck } from "../../agronomy/index.ts";

/** What the screen asks of its worker; `id` counts the documents. */
export type FlasksRequest =
  | { readonly type: "run"; readonly id: number; readonly text: string }
  | { readonly type: "script"; readonly id: number }
  | { readonly type: "check"; readonly id: number; readonly seen: SeenColours };

/** What the worker answers. */
export type FlasksReply =
  | {
      readonly type: "show";
      readonly id: number;
      /** Issues in words. */
      readonly issues: readonly { readonly severity: string; readonly words: string }[];
      /** null when an issue stands in the way. */
      readonly show: FlaskShow | null;
      /** False for the central colours alone, which come first. */
      readonly complete: boolean;
    }
  | { readonly type: "script"; readonly id: number; readonly html: string | null }
  | { readonly type: "check"; readonly id: number; readonly check: ShowCheck };
