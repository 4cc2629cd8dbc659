import { useEffect, useMemo, useReducer, useRef, useState } from "react";
import type { Dispatch } from "react";
import { addJob, editJob, sameBook } from "../../records/index.ts";
import type { Book } from "../../records/index.ts";
import { blankDraft } from "../job/draft.ts";
import type { Draft } from "../job/draft.ts";
import { jobReducer } from "../job/job-state.ts";
import type { JobAction, JobState } from "../job/job-state.ts";
import type { Keeping, Saver } from "../saver.ts";
import { bookSaver } from "./book-saver.ts";
import { contentOf, openState } from "./job-content.ts";
import { newStamp, rememberWindowJob, withOpenJob } from "./start-book.ts";
import type { StartedBook } from "./start-book.ts";

/** The book as the page works with it. */
export interface BookView {
  readonly book: Book;
  /** The form of the open job. */
  readonly state: JobState;
  /** What happens to the form of the open job. */
  readonly dispatch: Dispatch<JobAction>;
  readonly keeping: Keeping;
  /** False when this browser keeps nothing between visits. */
  readonly isKept: boolean;
  readonly unreadable: number;
  /** Changes the book. A job is open afterwards, whatever was done. */
  change(what: (book: Book) => Book): void;
  /** Begins a job beside the others and opens it. @param isOwn true when it holds something a person wants kept */
  begin(draft: Draft, isOwn: boolean): void;
}

/** Keeps the book at hand and on the device: every change is written at once, and other windows follow. */
export function useBook(start: StartedBook): BookView {
  const [book, apply] = useReducer(
    (before: Book, change: (book: Book) => Book): Book => change(before),
    start.book,
  );
  const keeping = useKeeping(start, book, apply);
  const { open } = book;
  useEffect(() => {
    if (open !== null) rememberWindowJob(open);
  }, [open]);
  const state = useMemo(() => openState(book), [book]);
  const deeds = useMemo(() => deedsOn(apply), []);
  return { book, state, keeping, isKept: start.isKept, unreadable: start.unreadable, ...deeds };
}

type Apply = Dispatch<(book: Book) => Book>;

function deedsOn(apply: Apply): Pick<BookView, "change" | "begin" | "dispatch"> {
  const change = (what: (book: Book) => Book): void => {
    const stamp = newStamp();
    apply((book) => withOpenJob(what(book), stamp, blankDraft()));
  };
  return {
    change,
    begin: (draft, isOwn) => {
      const stamp = newStamp();
      change((book) => addJob(book, contentOf({ draft, undo: [] }), { ...stamp, untouched: !isOwn }));
    },
    dispatch: (action) => {
      const { at } = newStamp();
      apply((book) =>
        book.open === null
          ? book
          : editJob(book, book.open, contentOf(jobReducer(openState(book), action)), at),
      );
    },
  };
}

/** Writes each new book, and takes over what another window wrote. */
function useKeeping(start: StartedBook, book: Book, apply: Apply): Keeping {
  const [keeping, setKeeping] = useState<Keeping>(start.isKept ? "kept" : "unavailable");
  const saver = useRef<Saver<Book> | null>(null);
  const newest = useRef(book);
  useEffect(() => {
    const others = new BroadcastChannel("hardstand book");
    const told = (state: Keeping): void => {
      setKeeping(start.isKept ? state : "unavailable");
    };
    const made = bookSaver(start.store, start.stored, told, () => {
      others.postMessage("written");
    });
    saver.current = made;
    made.save(newest.current);
    const follow = async (): Promise<void> => {
      if (!start.isKept || !made.isIdle()) return;
      const loaded = await start.store.load();
      const mine = newest.current;
      if (!loaded.ok || !made.isIdle()) return;
      const theirs = { ...loaded.book, open: mine.open };
      if (sameBook(theirs, mine)) return;
      const adopted = withOpenJob(stillOpen(theirs), newStamp(), blankDraft());
      made.expect(adopted, theirs);
      // Whatever was typed meanwhile comes first.
      apply((now) => (now === mine ? adopted : now));
    };
    const onShown = (): void => {
      if (window.document.visibilityState === "visible") void follow();
    };
    others.onmessage = () => void follow();
    window.document.addEventListener("visibilitychange", onShown);
    return () => {
      others.close();
      window.document.removeEventListener("visibilitychange", onShown);
      saver.current = null;
    };
  }, [start, apply]);
  useEffect(() => {
    newest.current = book;
    saver.current?.save(book);
  }, [book]);
  return keeping;
}

/** The job open here may have been deleted in another window. */
function stillOpen(book: Book): Book {
  return book.jobs.some(({ id }) => id === book.open) ? book : { ...book, open: null };
}
