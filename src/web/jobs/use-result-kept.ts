import { useEffect } from "react";
import { keepResult } from "../../records/index.ts";
import type { Plan } from "../../agronomy/index.ts";
import type { BookView } from "./use-book.ts";
import { newStamp } from "./start-book.ts";

/**
 * Keeps the answer of the open job in the book, so that a list can show it.
 *
 * @param versions of the newest plan; another plan brings another object
 * @param words the answer in words
 */
export function useResultKept(view: BookView, versions: Plan["versions"] | null, words: string): void {
  const { book, change } = view;
  // Only a new plan is an answer: when another job is opened, the plan at hand is still that of the one before.
  useEffect(() => {
    const id = book.open;
    if (versions === null || id === null) return;
    const { at } = newStamp();
    const result = { computed: at, hardstand: versions.hardstand, data: versions.data, words };
    change((before) => keepResult(before, id, result));
  }, [versions]);
}
