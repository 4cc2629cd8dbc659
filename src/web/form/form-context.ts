import { createContext, useContext } from "react";
import type { Dispatch } from "react";
import type { Catalogue, WordedIssue } from "../engine/messages.ts";
import type { EngineView } from "../engine/use-engine.ts";
import type { Draft } from "../job/draft.ts";
import type { JobAction } from "../job/job-state.ts";

/** What every field of the form shares. It stays the same while one types, so that only the field typed into is drawn anew. */
export interface FormView {
  readonly dispatch: Dispatch<JobAction>;
  readonly catalogue: Catalogue | null;
  readonly issues: readonly WordedIssue[];
  readonly readSheet: EngineView["readSheet"];
}

/** Carries the form's view to its fields. */
export const FormContext = createContext<FormView | null>(null);

/** The form's view; only inside the form. */
export function useForm(): FormView {
  const view = useContext(FormContext);
  if (view === null) throw new Error("form fields live inside the form");
  return view;
}

/** Carries the draft to the groups of the form; each hands its part of it on. */
export const DraftContext = createContext<Draft | null>(null);

/** The draft; only inside the form. Whoever asks for it is drawn anew with every keystroke. */
export function useDraft(): Draft {
  const draft = useContext(DraftContext);
  if (draft === null) throw new Error("form fields live inside the form");
  return draft;
}

/** The id of the field that a document path is typed into. */
export function fieldId(path: string): string {
  return `field-${path.replaceAll(/[^A-Za-z0-9]+/g, "-").replace(/-$/, "")}`;
}

/**
 * Issues that belong beside a field: those of its own path and of paths under it. A field may stand for several paths
 * (a reading's value and unit). An empty field is no fault: what is still needed is listed beside the answer.
 */
export function issuesOf(issues: readonly WordedIssue[], path: string): readonly WordedIssue[] {
  return issues.filter(
    ({ path: at, missing }) =>
      !missing && (at === path || at.startsWith(`${path}.`) || at.startsWith(`${path}[`)),
  );
}

/** Moves the keyboard to an element once the page has been drawn again, so that it is never lost with a removed row. */
export function focusSoon(id: string): void {
  requestAnimationFrame(() => {
    document.getElementById(id)?.focus();
  });
}
