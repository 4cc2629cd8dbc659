import type { StoreFailure } from "../records/index.ts";

/** How the keeping of something stands: all is kept, some is on its way, or the store refused. */
export type Keeping = "kept" | "keeping" | StoreFailure["reason"];

/** True when a store refused. */
export function isRefused(keeping: Keeping): keeping is StoreFailure["reason"] {
  return keeping === "full" || keeping === "unavailable";
}

/** Writes the newest of something as soon as the write before has ended, so that each keystroke is on its way at once. */
export interface Saver<Kept> {
  save(kept: Kept): void;
  /** Tells what the store holds by the time something made from it comes to be saved. */
  expect(kept: Kept, inStore: Kept): void;
  /** True while nothing waits to be written. */
  isIdle(): boolean;
}

/** How long [ms] after a refusal the store is asked again: room may have been made elsewhere. */
const ASK_AGAIN_MS = 4000;

/**
 * @param write makes the store, which holds `before`, hold `after`
 * @param stored what the store holds now
 * @param onKeeping told at each change of how it stands
 * @param onWritten told after each write
 */
export function saver<Kept>(
  write: (before: Kept, after: Kept) => Promise<{ readonly ok: true } | StoreFailure>,
  stored: Kept,
  onKeeping: (keeping: Keeping) => void,
  onWritten: () => void = () => undefined,
): Saver<Kept> {
  let inStore = stored;
  let wanted = stored;
  let expected: { readonly kept: Kept; readonly inStore: Kept } | null = null;
  let isWriting = false;

  /** @param again after a refusal that is still being told: nothing new is told unless the store takes it */
  const run = async (again: boolean): Promise<void> => {
    isWriting = true;
    if (!again) onKeeping("keeping");
    let keeping: Keeping = "kept";
    while (wanted !== inStore && keeping === "kept") {
      const target: Kept = wanted;
      const outcome = await write(inStore, target);
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
    save: (kept) => {
      wanted = kept;
      if (expected !== null && kept === expected.kept) inStore = expected.inStore;
      if (!isWriting && wanted !== inStore) void run(false);
    },
    expect: (kept, loaded) => {
      expected = { kept, inStore: loaded };
    },
    isIdle: () => !isWriting && wanted === inStore,
  };
}
