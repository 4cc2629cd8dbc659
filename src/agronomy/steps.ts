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

/** How a thread lets others have a turn. */
export interface Turns {
  /** Lets what came in meanwhile be taken in. */
  turn(): Promise<void>;
  /** Whether the last turn was so long ago that the next one is due. */
  isDue(): boolean;
}

/**
 * Does all of it, and lets others have a turn whenever one is due.
 *
 * @param givenUp whether nobody waits for it any more; asked after each turn
 * @returns null when it was given up
 */
export async function inTurns<T>(steps: Steps<T>, turns: Turns, givenUp: () => boolean): Promise<T | null> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    if (!turns.isDue()) continue;
    await turns.turn();
    if (givenUp()) return null;
  }
}
