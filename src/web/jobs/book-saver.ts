import { bookChange, isEmptyChange } from "../../records/index.ts";
import type { Book, BookStore, StoreFailure } from "../../records/index.ts";

/** How the keeping of the book stands: all is kept, some is on its way, or the store refused. */
export type Keeping = "kept" | "keeping" | StoreFailure["reason"];

/** Writes the newest book as soon as the write before has ended, so that each keystroke is on its way at once. */
export interface BookSaver {
  save(book: Book): void;
  /** Tells what the store holds by the time a book made from it comes to be saved. */
  expect(book: Book, inStore: Book): void;
  /** True while nothing waits to be written. */
  isIdle(): boolean;
}

/** How long [ms] after a refusal the store is asked again: room may have been made elsewhere. */
const ASK_AGAIN_MS = 4000;

/**
 * @param stored the book that the store holds now
 * @param onKeeping told at each change of how it stands
 * @param onWritten told after each write
 */
export function bookSaver(
  store: BookStore,
  stored: Book,
  onKeeping: (keeping: Keeping) => void,
  onWritten: () => void,
): BookSaver {
  let inStore = stored;
  let wanted = stored;
  let expected: { readonly book: Book; readonly inStore: Book } | null = null;
  let isWriting = false;

  /** @param again after a refusal that is still being told: nothing new is told unless the store takes it */
  const run = async (again: boolean): Promise<void> => {
    isWriting = true;
    if (!again) onKeeping("keeping");
    let keeping: Keeping = "kept";
    while (wanted !== inStore && keeping === "kept") {
      const target: Book = wanted;
      const change = bookChange(inStore, target);
      const outcome = isEmptyChange(change) ? { ok: true as const } : await store.write(change);
      if (outcome.ok) {
        inStore = target;
        onWritten();
        // What was typed while the store refused may have room, or there may be room by now.
      } else if (wanted === target) keeping = outcome.reason;
    }
    isWriting = false;
    onKeeping(keeping);
    if (keeping !== "kept") setTimeout(askAgain, ASK_AGAIN_MS);
  };

  const askAgain = (): void => {
    if (!isWriting && wanted !== inStore) void run(true);
  };

  return {
    save: (book) => {
      wanted = book;
      if (book === expected?.book) inStore = expected.inStore;
      if (!isWriting && wanted !== inStore) void run(false);
    },
    expect: (book, loaded) => {
      expected = { book, inStore: loaded };
    },
    isIdle: () => !isWriting && wanted === inStore,
  };
}
