import { blankDraft, blankReading } from "./draft.ts";
import type { Draft } from "./draft.ts";

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

const STORAGE_KEY = "hardstand job 1";

/** Where the job is kept between visits: the browser's own storage, or a stand-in. */
export interface KeptText {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

/** The state kept from the last visit; null when there is none or it cannot be read. */
export function restoreState(kept: KeptText): JobState | null {
  try {
    const text = kept.getItem(STORAGE_KEY);
    if (text === null) return null;
    const found: unknown = JSON.parse(text);
    return isJobState(found) ? found : null;
  } catch {
    return null;
  }
}

/** Keeps the state. @returns false when the browser refused, so that the page can say so. */
export function keepState(kept: KeptText, state: JobState): boolean {
  try {
    kept.setItem(STORAGE_KEY, JSON.stringify(state));
    return true;
  } catch {
    return false;
  }
}

/** True when a kept object has the shape of today's draft, so that an old one is not half read. */
function isJobState(found: unknown): found is JobState {
  if (typeof found !== "object" || found === null) return false;
  const { draft, undo } = found as { draft?: unknown; undo?: unknown };
  return Array.isArray(undo) && sameShape(draft, blankDraft());
}

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
