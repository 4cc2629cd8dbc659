import { blankConditioner, blankOwnProduct } from "./draft-conditioners.ts";
import { blankFeed, blankHalfLife, blankOwnActive, blankProduct } from "./draft-mix.ts";
import { blankDraft, blankOtherWater, blankReading } from "./draft.ts";
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
  const { readings, rest } = draft.water;
  if (readings.length > 0 || "readings" in rest) return draft;
  return { ...draft, water: { ...draft.water, readings: [blankReading()] } };
}

/** The form of a job in which every list has a row of each kind, so that the shape of a row is known. */
function modelDraft(): Draft {
  const own = { ...blankOwnActive(), halfLives: [blankHalfLife()] };
  return {
    ...blankDraft(),
    otherWaters: [blankOtherWater()],
    mix: [{ ...blankProduct(), own }, blankProduct(), blankFeed()],
    conditioners: [blankConditioner(), blankOwnProduct()],
  };
}

/** True when a kept object has the shape of today's draft, so that an old one is not half read. */
export function isDraft(found: unknown): found is Draft {
  return sameShape(found, modelDraft()) && ORIGINS.includes((found as Draft).origin);
}

const ORIGINS: readonly Origin[] = ["sample", "file", "own"];

/** Every entry of a list has the shape of one of the model's; a model of null is an object or null. */
function sameShape(found: unknown, model: unknown): boolean {
  if (Array.isArray(model)) {
    return (
      Array.isArray(found) &&
      (model.length === 0 || found.every((entry) => model.some((one) => sameShape(entry, one))))
    );
  }
  if (typeof model === "object" && model !== null) {
    if (typeof found !== "object" || found === null) return false;
    return Object.entries(model).every(([key, value]) =>
      sameShape((found as Record<string, unknown>)[key], value),
    );
  }
  if (model === null) return found === null || Array.isArray(found);
  return typeof found === typeof model;
}
