import { ENGLISH, sayIn } from "../../words/index.ts";
import type { Say } from "../../words/index.ts";
import { findJob } from "../../records/index.ts";
import type { Book, JobContent, JobRecord, PlainObject } from "../../records/index.ts";
import { entryName } from "../job/draft-mix.ts";
import { blankDraft } from "../job/draft.ts";
import type { Draft } from "../job/draft.ts";
import { draftOf } from "../job/from-document.ts";
import { isDraft } from "../job/job-state.ts";
import type { JobState } from "../job/job-state.ts";
import { documentOf } from "../job/to-document.ts";

/** What the book keeps of a form: the document, and the form itself with every text and unit as typed. */
export function contentOf({ draft, undo }: JobState): JobContent {
  return {
    title: draft.title,
    document: documentOf(draft),
    form: plain(draft),
    formSteps: undo.map(({ what, before }) => ({ what, before: plain(before) })),
  };
}

/** The form of a kept job. A form of another shape is not half read: the job's document is opened instead. */
export function stateOf(job: JobRecord): JobState {
  const draft = isDraft(job.form) ? job.form : { ...draftOf(job.document, "file"), title: job.title };
  const undo = job.formSteps.flatMap(({ what, before }) => (isDraft(before) ? [{ what, before }] : []));
  return { draft, undo };
}

/** The form of the job that is open; a blank one when none is. */
export function openState(book: Book): JobState {
  const job = findJob(book, book.open);
  return job === null ? { draft: blankDraft(), undo: [] } : stateOf(job);
}

/** What a job is called in a list: its title, else its water and its actives. */
export function jobName(
  { title, document }: Pick<JobRecord, "title" | "document">,
  say: Say = sayIn(ENGLISH),
): string {
  if (title.trim() !== "") return title.trim();
  const { water, mix } = draftOf(document, "own");
  const actives = mix
    .filter(({ kind }) => kind === "product")
    .map(entryName)
    .filter(isText);
  const parts = [water.source, actives.join(", ")];
  return parts.filter(isText).join(" · ") || say("Job without a title");
}

function isText(text: string): boolean {
  return text.trim() !== "";
}

/** A draft is plain data; only its type says more. */
function plain(draft: Draft): PlainObject {
  return { ...draft };
}
