import type { IDBPDatabase } from "idb";
import { readStoredBook } from "../records/index.ts";
import type { BookChange, BookStore, StoredBook } from "../records/index.ts";
import { databaseNamed, failure, writeAtOnce } from "./open-database.ts";

const TABLES = ["jobs", "steps", "facts"] as const;

const DATABASE_VERSION = 1;

/**
 * A store in the browser's own database. Records go in as they are and are looked at when they come out: another version
 * may have written them.
 *
 * @param name of the database
 */
export function browserStore(name = "hardstand"): BookStore {
  const { use, close } = databaseNamed(name, DATABASE_VERSION, TABLES);
  return {
    load: async () => {
      try {
        return { ok: true, ...(await use(loadFrom)) };
      } catch (error) {
        return failure(error);
      }
    },
    write: async (change) => {
      try {
        await use((database) => writeTo(database, change));
        return { ok: true };
      } catch (error) {
        return failure(error);
      }
    },
    close,
  };
}

async function loadFrom(database: IDBPDatabase): Promise<StoredBook> {
  const transaction = database.transaction(TABLES);
  const [jobs, steps, open, lastCopy] = (await Promise.all([
    transaction.objectStore("jobs").getAll(),
    transaction.objectStore("steps").getAll(),
    transaction.objectStore("facts").get("open"),
    transaction.objectStore("facts").get("lastCopy"),
  ])) as [unknown[], unknown[], unknown, unknown];
  return readStoredBook({ jobs, steps, open, lastCopy });
}

function writeTo(database: IDBPDatabase, change: BookChange): Promise<void> {
  return writeAtOnce(database, TABLES, ({ put, remove }) => {
    for (const job of change.putJobs) put("jobs", job, job.id);
    for (const id of change.removeJobs) remove("jobs", id);
    for (const step of change.putSteps) put("steps", step, step.id);
    for (const id of change.removeSteps) remove("steps", id);
    if (change.open !== undefined) put("facts", change.open, "open");
    if (change.lastCopy !== undefined) put("facts", change.lastCopy, "lastCopy");
  });
}
