/**
 * Work in steps: between two of them somebody else may have a turn, or the work may be given up. What it comes to does
 * not depend on what happens there.
 */
export type Steps<T> = Generator<void, T, void>;

/** Does all of it at once. */
export function atOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}
