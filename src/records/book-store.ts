import type { Issue } from "../units/index.ts";
import type { Book, BookStep } from "./book.ts";
import type { JobRecord } from "./job-record.ts";

/** What differs between two states of a book: written as one, or not at all. */
export interface BookChange {
  readonly putJobs: readonly JobRecord[];
  readonly removeJobs: readonly string[];
  readonly putSteps: readonly BookStep[];
  readonly removeSteps: readonly string[];
  /** Left out when it stayed the same. */
  readonly open?: string | null;
  readonly lastCopy?: string | null;
}

/** A stored book. What could not be read stays in the store untouched and is named in the issues. */
export interface StoredBook {
  readonly book: Book;
  readonly issues: readonly Issue[];
}

/** Why a store did not do as asked: no room left, not to be had here, or something else. */
export type StoreFailure = {
  readonly ok: false;
  readonly reason: "full" | "unavailable";
  readonly details: string;
};

/** Where a book is kept; adapters are in the storage layer. */
export interface BookStore {
  load(): Promise<({ readonly ok: true } & StoredBook) | StoreFailure>;
  write(change: BookChange): Promise<{ readonly ok: true } | StoreFailure>;
  close(): void;
}

/** What must be written so that a store that holds `before` holds `after`. */
export function bookChange(before: Book, after: Book): BookChange {
  return {
    putJobs: newOrChanged(before.jobs, after.jobs),
    removeJobs: gone(before.jobs, after.jobs),
    putSteps: newOrChanged(before.steps, after.steps),
    removeSteps: gone(before.steps, after.steps),
    ...(before.open === after.open ? {} : { open: after.open }),
    ...(before.lastCopy === after.lastCopy ? {} : { lastCopy: after.lastCopy }),
  };
}

/** True when there is nothing to write. */
export function isEmptyChange(change: BookChange): boolean {
  const { putJobs, removeJobs, putSteps, removeSteps, open, lastCopy } = change;
  const lists = [putJobs, removeJobs, putSteps, removeSteps];
  return lists.every((list) => list.length === 0) && open === undefined && lastCopy === undefined;
}

/** Records are never changed in place, so one that is the same object is the same record. */
function newOrChanged<T extends { readonly id: string }>(
  before: readonly T[],
  after: readonly T[],
): readonly T[] {
  const known = new Set(before);
  return after.filter((entry) => !known.has(entry));
}

function gone(before: readonly { id: string }[], after: readonly { id: string }[]): readonly string[] {
  const left = new Set(after.map(({ id }) => id));
  return before.map(({ id }) => id).filter((id) => !left.has(id));
}
