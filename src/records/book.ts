import { HardstandError } from "../units/index.ts";
import { sameContent, samePlain } from "./job-record.ts";
import type { JobContent, JobRecord, ResultSnapshot } from "./job-record.ts";

/** Something done to the book that can be taken back, also after a reload. */
export type BookStep =
  | {
      readonly kind: "deleted";
      readonly id: string;
      readonly at: string;
      readonly jobs: readonly JobRecord[];
    }
  | {
      readonly kind: "imported";
      readonly id: string;
      readonly at: string;
      /** The jobs as they came, by id and instant of their last change. */
      readonly jobs: readonly Pick<JobRecord, "id" | "changed">[];
    };

/** All jobs of an adviser, and what can be taken back. */
export interface Book {
  readonly jobs: readonly JobRecord[];
  /** Latest last. */
  readonly steps: readonly BookStep[];
  /** Id of the job that was opened last. */
  readonly open: string | null;
  /** Instant of the last copy of all jobs as a file. */
  readonly lastCopy: string | null;
}

/** A mark for something new: its id and the instant, handed in by the shell. */
export interface Stamp {
  readonly id: string;
  readonly at: string;
}

/** How long what was deleted can be brought back [days]. */
export const DAYS_KEPT = 30;

const MS_PER_DAY = 86_400_000;

/** A book with nothing in it. */
export function emptyBook(): Book {
  return { jobs: [], steps: [], open: null, lastCopy: null };
}

/** The jobs in the order of a list: changed last first. */
export function listJobs(book: Book): readonly JobRecord[] {
  return [...book.jobs].sort((a, b) => compareText(b.changed, a.changed) || compareText(a.id, b.id));
}

/** The job with an id, or null. */
export function findJob(book: Book, id: string | null): JobRecord | null {
  return book.jobs.find((job) => job.id === id) ?? null;
}

/** True when two books hold the same, whatever the order it came in and whichever job is open. */
export function sameBook(a: Book, b: Book): boolean {
  const steps = (book: Book): readonly BookStep[] =>
    [...book.steps].sort((one, other) => compareText(one.id, other.id));
  return a.lastCopy === b.lastCopy && samePlain(listJobs(a), listJobs(b)) && samePlain(steps(a), steps(b));
}

/**
 * A new job with content, opened. The job that was open goes when nobody typed into it.
 *
 * @throws HardstandError "id-taken" when the book has a job of that id
 */
export function addJob(book: Book, content: JobContent, stamp: Stamp & { untouched: boolean }): Book {
  if (findJob(book, stamp.id) !== null) throw new HardstandError("id-taken", "addJob", { id: stamp.id });
  const { id, at, untouched } = stamp;
  const job: JobRecord = { ...content, id, created: at, changed: at, untouched, result: null };
  return openJob({ ...book, jobs: [...book.jobs, job] }, id);
}

/** Opens a job. The one that was open goes when nobody typed into it. An id that is not there changes nothing. */
export function openJob(book: Book, id: string): Book {
  if (findJob(book, id) === null || book.open === id) return book;
  return { ...book, jobs: book.jobs.filter((job) => job.id !== book.open || !job.untouched), open: id };
}

/** The book after typing into a job; the same book when nothing differs or the job is gone. */
export function editJob(book: Book, id: string, content: JobContent, at: string): Book {
  return replaceJob(book, id, (job) => {
    if (!sameContent(job, content)) return { ...job, ...content, changed: at, untouched: false };
    return samePlain(job.formSteps, content.formSteps) ? job : { ...job, formSteps: content.formSteps };
  });
}

/** Keeps the answer a job had; its instant of change stays. */
export function keepResult(book: Book, id: string, result: ResultSnapshot): Book {
  return replaceJob(book, id, (job) => {
    const { words, data, hardstand, computed } = job.result ?? {};
    const isSame = words === result.words && data === result.data && hardstand === result.hardstand;
    const isOfThisText = computed !== undefined && computed >= job.changed;
    return isSame && isOfThisText ? job : { ...job, result };
  });
}

/** A copy of a job under a new id, opened; the steps of typing stay with the original, which counts as wanted now. */
export function duplicateJob(book: Book, id: string, stamp: Stamp): Book {
  const job = findJob(book, id);
  if (job === null) return book;
  const wanted = replaceJob(book, id, (original) => ({ ...original, untouched: false }));
  const copied = addJob(wanted, { ...job, formSteps: [] }, { ...stamp, untouched: false });
  return replaceJob(copied, stamp.id, (copy) => ({ ...copy, result: job.result }));
}

/** Takes jobs out of the book; `undoStep` brings them back. */
export function deleteJobs(book: Book, ids: readonly string[], stamp: Stamp): Book {
  const jobs = book.jobs.filter((job) => ids.includes(job.id));
  if (jobs.length === 0) return book;
  const left = book.jobs.filter((job) => !ids.includes(job.id));
  return {
    ...book,
    jobs: left,
    steps: [...book.steps, { kind: "deleted", id: stamp.id, at: stamp.at, jobs }],
    open: left.some((job) => job.id === book.open) ? book.open : null,
  };
}

/**
 * Takes a step back. Deleted jobs return as they were. Imported jobs go again, save those that were changed since; what
 * goes can be brought back in turn.
 *
 * @param newId an id for a job whose own was taken meanwhile, one at a call
 */
export function undoStep(book: Book, stepId: string, at: string, newId: () => string): Book {
  const step = book.steps.find(({ id }) => id === stepId);
  if (step === undefined) return book;
  const without: Book = { ...book, steps: book.steps.filter((other) => other !== step) };
  if (step.kind === "deleted") return step.jobs.reduce((to, job) => bringBack(to, job, newId), without);
  const asTheyCame = step.jobs
    .filter(({ id, changed }) => findJob(book, id)?.changed === changed)
    .map(({ id }) => id);
  return deleteJobs(without, asTheyCame, { id: stepId, at });
}

/** Drops the steps that are too old to be taken back. */
export function forgetOldSteps(book: Book, now: string): Book {
  const oldest = Date.parse(now) - DAYS_KEPT * MS_PER_DAY;
  const steps = book.steps.filter(({ at }) => Date.parse(at) >= oldest);
  return steps.length === book.steps.length ? book : { ...book, steps };
}

function bringBack(book: Book, job: JobRecord, newId: () => string): Book {
  const there = findJob(book, job.id);
  if (there === null) return { ...book, jobs: [...book.jobs, job] };
  if (sameContent(there, job)) return book;
  return { ...book, jobs: [...book.jobs, { ...job, id: newId() }] };
}

function replaceJob(book: Book, id: string, change: (job: JobRecord) => JobRecord): Book {
  const job = findJob(book, id);
  const changed = job === null ? null : change(job);
  if (changed === null || changed === job) return book;
  return { ...book, jobs: book.jobs.map((other) => (other === job ? changed : other)) };
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
