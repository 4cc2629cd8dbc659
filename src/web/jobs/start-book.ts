import { addJob, emptyBook, findJob, forgetOldSteps, listJobs } from "../../records/index.ts";
import type { Book, BookStore, Stamp } from "../../records/index.ts";
import { browserStore, memoryStore } from "../../storage/index.ts";
import { blankDraft } from "../job/draft.ts";
import type { Draft } from "../job/draft.ts";
import { draftOf } from "../job/from-document.ts";
import { SAMPLES } from "../samples.ts";
import { contentOf } from "./job-content.ts";

/** How long [ms] the browser's store may take to answer before the page starts without it. */
const PATIENCE_MS = 4000;

/** The key under which a window remembers its own job while it lives. */
const WINDOW_JOB = "hardstand open job";

/** What the page starts from. */
export interface StartedBook {
  readonly store: BookStore;
  /** What the store holds. */
  readonly stored: Book;
  /** The same with a job open. */
  readonly book: Book;
  /** True when the store keeps the book between visits. */
  readonly isKept: boolean;
  /** How many kept records could not be read. */
  readonly unreadable: number;
}

/** A new id and the instant now. */
export function newStamp(): Stamp {
  return { id: newId(), at: new Date().toISOString() };
}

/** An id no other job anywhere has. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `job-${Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("")}`;
}

/** Opens the book of this device: the job of this window, else the one opened last, else the first sample. */
export async function startBook(): Promise<StartedBook> {
  const store = browserStore();
  const loaded = await Promise.race([store.load(), late()]);
  const stamp = newStamp();
  if (loaded === null || !loaded.ok) {
    store.close();
    const stored = emptyBook();
    const book = withOpenJob(stored, stamp, firstSample());
    return { store: memoryStore(), stored, book, isKept: false, unreadable: 0 };
  }
  const mine = findJob(loaded.book, windowJob());
  const current = { ...loaded.book, open: mine?.id ?? loaded.book.open };
  const book = withOpenJob(forgetOldSteps(current, stamp.at), stamp, firstSample());
  return { store, stored: loaded.book, book, isKept: true, unreadable: loaded.issues.length };
}

/** The book with a job open: the one changed last, else a new one with the draft given. */
export function withOpenJob(book: Book, stamp: Stamp, draft: Draft): Book {
  if (book.open !== null) return book;
  const last = listJobs(book)[0];
  if (last !== undefined) return { ...book, open: last.id };
  return addJob(book, contentOf({ draft, undo: [] }), { ...stamp, untouched: true });
}

/** Remembers the job of this window, so that a reload opens it and not that of another window. */
export function rememberWindowJob(id: string): void {
  try {
    window.sessionStorage.setItem(WINDOW_JOB, id);
  } catch {
    // A browser may refuse; the job opened last on this device is then opened.
  }
}

function windowJob(): string | null {
  try {
    return window.sessionStorage.getItem(WINDOW_JOB);
  } catch {
    return null;
  }
}

function firstSample(): Draft {
  const first = SAMPLES[0];
  return first === undefined ? blankDraft() : draftOf(first.document, "sample");
}

function late(): Promise<null> {
  return new Promise((resolve) => {
    setTimeout(() => {
      resolve(null);
    }, PATIENCE_MS);
  });
}
