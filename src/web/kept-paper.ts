import { useEffect, useSyncExternalStore } from "react";
import { browserPapers } from "../storage/index.ts";
import type { PaperStore } from "../storage/index.ts";
import { saver } from "./saver.ts";
import type { Keeping } from "./saver.ts";

/** A paper that this browser keeps between visits, beside the book. */
export interface KeptPaper {
  /** What is to be kept, or what was found; null where there is nothing. Who reads it looks at what it is. */
  newest(): unknown;
  keep(paper: unknown): void;
  keeping(): Keeping;
  /** Is told when the keeping changes. @returns ends it */
  watch(told: () => void): () => void;
}

/** How long [ms] the browser's store may take to answer before the screen opens without it. */
const PATIENCE_MS = 4000;

const opened = new Map<string, Promise<KeptPaper>>();
let store: PaperStore | null = null;

/** The paper of a name, as it was kept last. */
export function keptPaper(name: string): Promise<KeptPaper> {
  const known = opened.get(name) ?? openPaper(name, (store ??= browserPapers()));
  opened.set(name, known);
  return known;
}

async function openPaper(name: string, { load, write }: PaperStore): Promise<KeptPaper> {
  const late = new Promise<null>((resolve) => {
    setTimeout(() => {
      resolve(null);
    }, PATIENCE_MS);
  });
  const loaded = await Promise.race([load(name), late]);
  const isKept = loaded?.ok === true;
  let newest: unknown = isKept ? loaded.paper : null;
  let keeping: Keeping = isKept ? "kept" : "unavailable";
  const watching = new Set<() => void>();
  const { save } = saver<unknown>(
    (_, paper) => write(name, paper),
    newest,
    (state) => {
      keeping = state;
      for (const told of watching) told();
    },
  );
  return {
    newest: () => newest,
    keep: (paper) => {
      newest = paper;
      // What could not be read is not written over.
      if (isKept) save(paper);
    },
    keeping: () => keeping,
    watch: (told) => {
      watching.add(told);
      return () => {
        watching.delete(told);
      };
    },
  };
}

/** Keeps each new state of a paper, and says how its keeping stands. */
export function useKept(paper: KeptPaper, state: unknown): Keeping {
  useEffect(() => {
    paper.keep(state);
  }, [paper, state]);
  return useSyncExternalStore(paper.watch, paper.keeping);
}
