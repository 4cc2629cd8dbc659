import { openDB } from "idb";
import type { DBSchema, IDBPDatabase } from "idb";
import { readStoredBook } from "../records/index.ts";
import type { BookChange, BookStore, StoredBook, StoreFailure } from "../records/index.ts";

/** Records go in as they are and are looked at when they come out: another version may have written them. */
interface Tables extends DBSchema {
  jobs: { key: string; value: unknown };
  steps: { key: string; value: unknown };
  facts: { key: string; value: unknown };
}

const TABLES = ["jobs", "steps", "facts"] as const;

const DATABASE_VERSION = 1;

/**
 * A store in the browser's own database. Each write is one transaction. It is handed to the operating system before it
 * counts as written, so it outlives a browser that is killed; waiting for the disk itself would let typing run ahead.
 *
 * @param name of the database
 */
export function browserStore(name = "hardstand"): BookStore {
  let opened: Promise<IDBPDatabase<Tables>> | null = null;
  const forget = (): void => {
    opened = null;
  };
  const close = (): void => {
    opened?.then(
      (made) => {
        made.close();
      },
      () => undefined,
    );
    forget();
  };
  const database = (): Promise<IDBPDatabase<Tables>> => {
    opened ??= openDB<Tables>(name, DATABASE_VERSION, {
      upgrade: (made) => {
        for (const table of TABLES) made.createObjectStore(table);
      },
      // A newer version in another window may go ahead; this one opens again when it needs to.
      blocking: close,
      terminated: forget,
    });
    opened.catch(forget);
    return opened;
  };
  return {
    load: async () => {
      try {
        return { ok: true, ...(await loadFrom(await database())) };
      } catch (error) {
        return failure(error);
      }
    },
    write: async (change) => {
      for (let attempt = 1; ; attempt++) {
        try {
          await writeTo(await database(), change);
          return { ok: true };
        } catch (error) {
          // A browser may close a database at any time; then it is opened anew, once.
          const isClosed = error instanceof Error && error.name === "InvalidStateError";
          if (!isClosed || attempt > 1) return failure(error);
          forget();
        }
      }
    },
    close,
  };
}

async function loadFrom(database: IDBPDatabase<Tables>): Promise<StoredBook> {
  const transaction = database.transaction(TABLES);
  const [jobs, steps, open, lastCopy] = await Promise.all([
    transaction.objectStore("jobs").getAll(),
    transaction.objectStore("steps").getAll(),
    transaction.objectStore("facts").get("open"),
    transaction.objectStore("facts").get("lastCopy"),
  ]);
  return readStoredBook({ jobs, steps, open, lastCopy });
}

async function writeTo(database: IDBPDatabase<Tables>, change: BookChange): Promise<void> {
  const transaction = database.transaction(TABLES, "readwrite", { durability: "relaxed" });
  const jobs = transaction.objectStore("jobs");
  const steps = transaction.objectStore("steps");
  const facts = transaction.objectStore("facts");
  const { done } = transaction;
  // Only the end of the transaction counts: a browser out of room may end it without a word to what was asked in it.
  const ask = (asked: Promise<unknown>): void => {
    asked.catch(() => undefined);
  };
  try {
    for (const job of change.putJobs) ask(jobs.put(job, job.id));
    for (const id of change.removeJobs) ask(jobs.delete(id));
    for (const step of change.putSteps) ask(steps.put(step, step.id));
    for (const id of change.removeSteps) ask(steps.delete(id));
    if (change.open !== undefined) ask(facts.put(change.open, "open"));
    if (change.lastCopy !== undefined) ask(facts.put(change.lastCopy, "lastCopy"));
    transaction.commit();
    await done;
  } catch (error) {
    // What was asked before the fault must not stay: half a change is worse than none.
    if (transaction.error === null) abort(transaction);
    await done.catch(() => undefined);
    throw transaction.error ?? error;
  }
}

function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // It has ended already.
  }
}

function failure(error: unknown): StoreFailure {
  const name = error instanceof Error ? error.name : "";
  const details = error instanceof Error ? error.message : String(error);
  return { ok: false, reason: name === "QuotaExceededError" ? "full" : "unavailable", details };
}
