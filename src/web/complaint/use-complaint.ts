import { useCallback, useReducer } from "react";
import type { Draft } from "../job/draft.ts";
import { jobReducer } from "../job/job-state.ts";
import type { JobAction } from "../job/job-state.ts";
import { useKept } from "../kept-paper.ts";
import type { KeptPaper } from "../kept-paper.ts";
import type { Keeping } from "../saver.ts";
import { complaintAbout, isComplaint } from "./complaint-draft.ts";
import type { ComplaintDraft } from "./complaint-draft.ts";

/** Where a browser has the record that an earlier version kept. */
const KEPT_BEFORE = "hardstand complaint";
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

/**
 * The record at hand with its undo, kept by this browser at every keystroke; a new one begins from the open job.
 *
 * @param paper where it is kept
 */
export function useComplaint(
  openJob: Draft,
  paper: KeptPaper,
): {
  readonly state: ComplaintState;
  readonly keeping: Keeping;
  dispatch(action: ComplaintAction): void;
  dispatchJob(action: JobAction): void;
} {
  const [state, dispatch] = useReducer(
    complaintReducer,
    openJob,
    (job) => keptState(paper.newest()) ?? { draft: keptBefore() ?? complaintAbout(job), undo: [] },
  );
  const keeping = useKept(paper, state);
  const dispatchJob = useCallback((action: JobAction) => {
    dispatch(inRecord(action));
  }, []);
  return { state, keeping, dispatch, dispatchJob };
}

/** A kept record with its undo; steps that have not the shape of today are left out. */
function keptState(found: unknown): ComplaintState | null {
  if (typeof found !== "object" || found === null) return null;
  const { draft, undo } = found as Partial<ComplaintState>;
  if (!isComplaint(draft)) return null;
  const steps = (Array.isArray(undo) ? (undo as readonly unknown[]) : []).filter(isStep);
  return steps.length === undo?.length ? (found as ComplaintState) : { draft, undo: steps };
}

function isStep(found: unknown): found is ComplaintState["undo"][number] {
  if (typeof found !== "object" || found === null) return false;
  const { what, before } = found as Partial<ComplaintState["undo"][number]>;
  return typeof what === "string" && isComplaint(before);
}

function keptBefore(): ComplaintDraft | null {
  try {
    const kept: unknown = JSON.parse(window.localStorage.getItem(KEPT_BEFORE) ?? "null");
    return isComplaint(kept) ? kept : null;
  } catch {
    return null;
  }
}
