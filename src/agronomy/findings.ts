import type { Chemistry } from "./chemistry.ts";
import type { Steps } from "./steps.ts";

/** What one expensive part of a task came to: plain data, which can be handed from one thread to another. */
export type Finding = unknown;

/**
 * What the expensive parts of a task come to, one after the other: dose searches, and a tank judged with its draws. A
 * task is deterministic, so that who has its findings does all the rest of it anew in next to no time.
 */
export interface Findings {
  /** What the next part comes to: as it was found before, else by doing it now. A part within a part counts to it. */
  of<T>(part: () => Steps<T>): Steps<T>;
  /** All so far. */
  readonly all: readonly Finding[];
}

/** @param known what was found when the same task was done before, in the same order */
export function findingsFrom(known: readonly Finding[] = []): Findings {
  const all: Finding[] = [];
  let within = false;
  return {
    all,
    *of<T>(part: () => Steps<T>): Steps<T> {
      if (within) return yield* part();
      let found: T;
      if (all.length < known.length) found = known[all.length] as T;
      else {
        within = true;
        try {
          found = yield* part();
        } finally {
          within = false;
        }
      }
      all.push(found);
      return found;
    },
  };
}

/** What a task is done with: answers that start from its own earlier ones only, and what it finds. */
export interface Work {
  readonly chemistry: Chemistry;
  readonly findings: Findings;
}

/** The work of a task that begins. @param known what it found when it was done before */
export function beginWork(chemistry: Chemistry, known: readonly Finding[] = []): Work {
  return { chemistry: chemistry.afresh(), findings: findingsFrom(known) };
}
