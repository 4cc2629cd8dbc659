import { openDB } from "idb";
import type { IDBPDatabase } from "idb";
import type { StoreFailure } from "../records/index.ts";

/** A database of this browser that is opened when it is needed, and again when the browser has closed it. */
export interface OpenDatabase {
  /** Does something with the database. @throws what the browser says when it cannot be had */
  use<Result>(work: (database: IDBPDatabase) => Promise<Result>): Promise<Result>;
  close(): void;
}

/** @param tables made where the database is new */
export function databaseNamed(name: string, version: number, tables: readonly string[]): OpenDatabase {
  let opened: Promise<IDBPDatabase> | null = null;
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
  const database = (): Promise<IDBPDatabase> => {
    opened ??= openDB(name, version, {
      upgrade: (made) => {
        for (const table of tables) made.createObjectStore(table);
      },
      // A newer version in another window may go ahead; this one opens again when it needs to.
      blocking: close,
      terminated: forget,
    });
    opened.catch(forget);
    return opened;
  };
  return {
    use: async (work) => {
      for (let attempt = 1; ; attempt++) {
        try {
          return await work(await database());
        } catch (error) {
          // A browser may close a database at any time; then it is opened anew, once.
          const isClosed = error instanceof Error && error.name === "InvalidStateError";
          if (!isClosed || attempt > 1) throw error;
          forget();
        }
      }
    },
    close,
  };
}

/** Puts and takes away in the tables of one write. */
export interface Write {
  put(table: string, value: unknown, key: string): void;
  remove(table: string, key: string): void;
}

/**
 * Writes as one transaction, all of it or nothing. It is handed to the operating system before it counts as written, so
 * it outlives a browser that is killed; waiting for the disk itself would let typing run ahead.
 */
export async function writeAtOnce(
  database: IDBPDatabase,
  tables: readonly string[],
  ask: (write: Write) => void,
): Promise<void> {
  const transaction = database.transaction(tables, "readwrite", { durability: "relaxed" });
  const { done } = transaction;
  // Only the end of the transaction counts: a browser out of room may end it without a word to what was asked in it.
  const asked = (one: Promise<unknown>): void => {
    one.catch(() => undefined);
  };
  try {
    ask({
      put: (table, value, key) => {
        asked(transaction.objectStore(table).put(value, key));
      },
      remove: (table, key) => {
        asked(transaction.objectStore(table).delete(key));
      },
    });
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

/** Why a store did not do as asked. */
export function failure(error: unknown): StoreFailure {
  const name = error instanceof Error ? error.name : "";
  const details = error instanceof Error ? error.message : String(error);
  return { ok: false, reason: name === "QuotaExceededError" ? "full" : "unavailable", details };
}
