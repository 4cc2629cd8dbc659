import { bookChange, isEmptyChange } from "../../records/index.ts";
import type { Book, BookStore } from "../../records/index.ts";
import { saver } from "../saver.ts";
import type { Keeping, Saver } from "../saver.ts";

/** Saves the book by what has changed in it. */
export function bookSaver(
  store: BookStore,
  stored: Book,
  onKeeping: (keeping: Keeping) => void,
  onWritten: () => void,
): Saver<Book> {
  const write: BookStore["write"] = (change) =>
    isEmptyChange(change) ? Promise.resolve({ ok: true }) : store.write(change);
  return saver((before, after) => write(bookChange(before, after)), stored, onKeeping, onWritten);
}
