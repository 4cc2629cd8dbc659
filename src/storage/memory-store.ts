import { emptyBook } from "../records/index.ts";
import type { Book, BookStore } from "../records/index.ts";

/** A store that lasts as long as the program: where a browser keeps nothing, and in tests. */
export function memoryStore(start: Book = emptyBook()): BookStore {
  let book = start;
  return {
    load: () => Promise.resolve({ ok: true, book, issues: [] }),
    write: (change) => {
      const taken = new Set([...change.removeJobs, ...change.putJobs.map(({ id }) => id)]);
      const takenSteps = new Set([...change.removeSteps, ...change.putSteps.map(({ id }) => id)]);
      book = {
        jobs: [...book.jobs.filter(({ id }) => !taken.has(id)), ...change.putJobs],
        steps: [...book.steps.filter(({ id }) => !takenSteps.has(id)), ...change.putSteps],
        open: change.open === undefined ? book.open : change.open,
        lastCopy: change.lastCopy === undefined ? book.lastCopy : change.lastCopy,
      };
      return Promise.resolve({ ok: true });
    },
    close: () => undefined,
  };
}
