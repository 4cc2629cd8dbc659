import { useCallback, useEffect, useReducer } from "react";
import type { Draft } from "../job/draft.ts";
import { jobReducer } from "../job/job-state.ts";
import type { JobAction } from "../job/job-state.ts";
import { complaintAbout, isComplaint } from "./complaint-draft.ts";
import type { ComplaintDraft } from "./complaint-draft.ts";

/** Where this browser keeps the record at hand. */
const KEPT = "hardstand complaint";
/** Steps kept for undo. */
const UNDO_KEPT = 20;

/** The record at hand, with what undo would give back. */
export interface ComplaintState {
  readonly draft: ComplaintDraft;
  readonly undo: readonly { readonly what: string; readonly before: ComplaintDraft }[];
}

type Change = (draft: ComplaintDraft) => ComplaintDraft;

/** What can happen to the record: typing, a step that undo gives back, and undo. */
export type ComplaintAction =
  | { readonly type: "edit"; readonly change: Change }
  | { readonly type: "step"; readonly what: string; readonly change: Change }
  | { readonly type: "undo" };

/** The next state of the record. */
export function complaintReducer(state: ComplaintState, action: ComplaintAction): ComplaintState {
  if (action.type === "undo") {
    const last = state.undo.at(-1);
    return last === undefined ? state : { draft: last.before, undo: state.undo.slice(0, -1) };
  }
  const draft = action.change(state.draft);
  if (action.type === "edit") return { ...state, draft };
  return { draft, undo: [...state.undo, { what: action.what, before: state.draft }].slice(-UNDO_KEPT) };
}

/** What happens to the job inside a record, as something that happens to the record. */
export function inRecord(action: JobAction): ComplaintAction {
  if (action.type === "undo") return action;
  const change: Change = (record) => ({
    ...record,
    job: jobReducer({ draft: record.job, undo: [] }, { type: "edit", change: action.change }).draft,
  });
  return action.type === "edit" ? { type: "edit", change } : { type: "step", what: action.what, change };
}

/** The record at hand, kept by this browser at every keystroke; a new one begins from the open job. */
export function useComplaint(openJob: Draft): {
  readonly state: ComplaintState;
  dispatch(action: ComplaintAction): void;
  dispatchJob(action: JobAction): void;
} {
  const [state, dispatch] = useReducer(complaintReducer, openJob, (job) => ({
    draft: found() ?? complaintAbout(job),
    undo: [],
  }));
  useEffect(() => {
    try {
      window.localStorage.setItem(KEPT, JSON.stringify(state.draft));
    } catch {
      // A browser may refuse; the record can still be saved as a file.
    }
  }, [state.draft]);
  const dispatchJob = useCallback((action: JobAction) => {
    dispatch(inRecord(action));
  }, []);
  return { state, dispatch, dispatchJob };
}

function found(): ComplaintDraft | null {
  try {
    const kept: unknown = JSON.parse(window.localStorage.getItem(KEPT) ?? "null");
    return isComplaint(kept) ? kept : null;
  } catch {
    return null;
  }
}
