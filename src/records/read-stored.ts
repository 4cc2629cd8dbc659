import type { Issue } from "../units/index.ts";
import type { Book, BookStep } from "./book.ts";
import type { StoredBook } from "./book-store.ts";
import type { JobRecord } from "./job-record.ts";
import { isInstant, isPlainObject, readStoredRecord, recordIssue } from "./read-record.ts";

/** What a store holds, as it comes out: another version of the program may have written it. */
export interface RawBook {
  readonly jobs: readonly unknown[];
  readonly steps: readonly unknown[];
  readonly open: unknown;
  readonly lastCopy: unknown;
}

/** The book that a store holds. What cannot be read is left where it is and named in the issues. */
export function readStoredBook(raw: RawBook): StoredBook {
  const issues: Issue[] = [];
  const jobs = raw.jobs.flatMap((value, i) => storedJob(value, `jobs[${String(i)}]`, issues));
  const steps = raw.steps.flatMap((value, i) => storedStep(value, `steps[${String(i)}]`, issues));
  steps.sort((a, b) => Date.parse(a.at) - Date.parse(b.at));
  const open = jobs.find(({ id }) => id === raw.open)?.id ?? null;
  const book: Book = { jobs, steps, open, lastCopy: isInstant(raw.lastCopy) ? raw.lastCopy : null };
  return { book, issues };
}

function storedJob(value: unknown, path: string, issues: Issue[]): readonly JobRecord[] {
  const read = readStoredRecord(value, path);
  issues.push(...read.issues);
  return read.ok ? [read.value] : [];
}

function storedStep(value: unknown, path: string, issues: Issue[]): readonly BookStep[] {
  if (isPlainObject(value)) {
    const { kind, id, at, jobs } = value;
    if (typeof id === "string" && isInstant(at) && Array.isArray(jobs)) {
      if (kind === "deleted") {
        const kept = jobs.flatMap((job, i) => storedJob(job, `${path}.jobs[${String(i)}]`, issues));
        return [{ kind, id, at, jobs: kept }];
      }
      if (kind === "imported" && jobs.every(isJobMark)) return [{ kind, id, at, jobs }];
    }
  }
  issues.push(recordIssue("records-steps-bad", path));
  return [];
}

function isJobMark(value: unknown): value is Pick<JobRecord, "id" | "changed"> {
  return isPlainObject(value) && typeof value["id"] === "string" && isInstant(value["changed"]);
}
