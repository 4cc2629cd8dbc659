import { blankConditioner, blankDraft, blankReading } from "./draft.ts";
import type { Draft, Origin } from "./draft.ts";

/** A step that can be undone: what it was called, and the draft before it. */
export interface Undoable {
  readonly what: string;
  readonly before: Draft;
}

/** Everything the page keeps about the job. */
export interface JobState {
  readonly draft: Draft;
  /** Latest last; only steps that take something away or replace it. */
  readonly undo: readonly Undoable[];
}

/** What can happen to the job. */
export type JobAction =
  | { readonly type: "edit"; readonly change: (draft: Draft) => Draft }
  | { readonly type: "step"; readonly what: string; readonly change: (draft: Draft) => Draft }
  | { readonly type: "undo" };

/** Steps kept for undo. */
const UNDO_KEPT = 20;

/** The next state of the job. Typing edits in place; taking away or replacing is a step that undo gives back. */
export function jobReducer(state: JobState, action: JobAction): JobState {
  switch (action.type) {
    case "edit":
      return { ...state, draft: withRoomToType(action.change(state.draft)) };
    case "step":
      return {
        draft: withRoomToType(action.change(state.draft)),
        undo: [...state.undo, { what: action.what, before: state.draft }].slice(-UNDO_KEPT),
      };
    case "undo": {
      const last = state.undo.at(-1);
      return last === undefined ? state : { draft: last.before, undo: state.undo.slice(0, -1) };
    }
  }
}

/** A table without rows has nowhere to type: one empty row is kept. */
function withRoomToType(draft: Draft): Draft {
  if (draft.water.readings.length > 0) return draft;
  return { ...draft, water: { ...draft.water, readings: [blankReading()] } };
}

/** The form of a job in which every list has a row, so that the shape of a row is known. */
function modelDraft(): Draft {
  return { ...blankDraft(), conditioners: [blankConditioner()] };
}

/** True when a kept object has the shape of today's draft, so that an old one is not half read. */
export function isDraft(found: unknown): found is Draft {
  return sameShape(found, modelDraft()) && ORIGINS.includes((found as Draft).origin);
}

const ORIGINS: readonly Origin[] = ["sample", "file", "own"];

function sameShape(found: unknown, model: unknown): boolean {
  if (Array.isArray(model)) {
    const first: unknown = model[0];
    return Array.isArray(found) && (first === undefined || found.every((entry) => sameShape(entry, first)));
  }
  if (typeof model === "object" && model !== null) {
    if (typeof found !== "object" || found === null) return false;
    return Object.entries(model).every(([key, value]) =>
      sameShape((found as Record<string, unknown>)[key], value),
    );
  }
  return typeof found === typeof model;
}
