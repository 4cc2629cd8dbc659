import type { Issue, Read } from "../units/index.ts";
import { findJob, listJobs } from "./book.ts";
import type { Book, Stamp } from "./book.ts";
import { sameContent } from "./job-record.ts";
import type { JobRecord } from "./job-record.ts";
import { isPlainObject, readJobRecord, recordIssue, unknownKeys } from "./read-record.ts";

/** Version of the file of all jobs that is written and read. */
export const BOOK_FILE_VERSION = 1;

/** A job as it stands in a file: without what belongs to one device. */
export type FiledJob = Omit<JobRecord, "untouched" | "formSteps">;

/** All jobs as one file, see `schemas/records.schema.json`. */
export interface BookFile {
  readonly hardstandJobs: typeof BOOK_FILE_VERSION;
  /** Instant of the copy, ISO 8601 in UTC. */
  readonly exported: string;
  readonly jobs: readonly FiledJob[];
}

/** All jobs as one file, changed last first. Samples and blanks that nobody typed into are left out. */
export function bookFile(book: Book, at: string): BookFile {
  const jobs = listJobs(book).filter((job) => !job.untouched);
  return { hardstandJobs: BOOK_FILE_VERSION, exported: at, jobs: jobs.map(filedJob) };
}

function filedJob(job: JobRecord): FiledJob {
  const { id, title, created, changed, document, form, result } = job;
  return { id, title, created, changed, document, form, result };
}

/**
 * Reads the text of a file of jobs.
 *
 * @returns the jobs that can be read, with an issue for each that cannot; or why the file is none
 */
export function readBookFile(text: string): Read<readonly JobRecord[]> {
  let found: unknown;
  try {
    found = JSON.parse(text);
  } catch (error) {
    const received = error instanceof Error ? { received: error.message } : {};
    return refused(recordIssue("records-not-json", "", received));
  }
  if (!isPlainObject(found)) return refused(recordIssue("records-not-a-book", ""));
  const version = found["hardstandJobs"];
  if (version === undefined && "hardstand" in found) return refused(recordIssue("records-single-job", ""));
  if (version === undefined) return refused(recordIssue("records-not-a-book", ""));
  if (version !== BOOK_FILE_VERSION) return refused(versionIssue(version));
  const jobs = found["jobs"];
  if (!Array.isArray(jobs)) return refused(recordIssue("records-jobs-missing", "jobs"));
  const read = jobs.map((job, i) => readJobRecord(job, `jobs[${String(i)}]`));
  const issues = [
    ...unknownKeys(found, ["hardstandJobs", "exported", "jobs"], ""),
    ...read.flatMap((one) => one.issues),
  ];
  const value = read.flatMap((one) => (one.ok ? [one.value] : []));
  return value.length === 0 && jobs.length > 0 ? { ok: false, issues } : { ok: true, value, issues };
}

/** What came of an import. */
export interface Imported {
  readonly book: Book;
  /** Jobs taken in, those of `kept apart` among them. */
  readonly added: number;
  /** Jobs that were there already, word for word. */
  readonly same: number;
  /** Jobs whose id was there with other content: taken in beside it under a new id. */
  readonly keptApart: number;
}

/**
 * Takes jobs in beside those that are there. Nothing is ever replaced: where an id is there with other content, both
 * are kept. One import is one step, which `undoStep` takes back.
 *
 * @param newId an id that no job has, one at a call
 */
export function importJobs(
  book: Book,
  jobs: readonly JobRecord[],
  stamp: Stamp,
  newId: () => string,
): Imported {
  const added: JobRecord[] = [];
  let same = 0;
  let keptApart = 0;
  for (const job of jobs) {
    const there = findJob(book, job.id) ?? added.find(({ id }) => id === job.id) ?? null;
    if (there === null) {
      added.push(job);
    } else if ([...book.jobs, ...added].some((other) => sameContent(other, job))) {
      same += 1;
    } else {
      added.push({ ...job, id: newId() });
      keptApart += 1;
    }
  }
  if (added.length === 0) return { book, added: 0, same, keptApart };
  const step = {
    kind: "imported" as const,
    id: stamp.id,
    at: stamp.at,
    jobs: added.map(({ id, changed }) => ({ id, changed })),
  };
  return {
    book: { ...book, jobs: [...book.jobs, ...added], steps: [...book.steps, step] },
    added: added.length,
    same,
    keptApart,
  };
}

function versionIssue(version: unknown): Issue {
  const isNewer = typeof version === "number" && version > BOOK_FILE_VERSION;
  return recordIssue(isNewer ? "records-version-newer" : "records-version-unknown", "hardstandJobs", {
    received: JSON.stringify(version) ?? "",
    expected: String(BOOK_FILE_VERSION),
  });
}

function refused(issue: Issue): Read<never> {
  return { ok: false, issues: [issue] };
}
