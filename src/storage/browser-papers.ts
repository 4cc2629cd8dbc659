import type { StoreFailure } from "../records/index.ts";
import { databaseNamed, failure, writeAtOnce } from "./open-database.ts";

const TABLES = ["papers"] as const;

const DATABASE_VERSION = 1;

/** Keeps papers that stand beside the book, each under its name, as they are. Who reads one looks at what it finds. */
export interface PaperStore {
  /** The paper of a name; null where there is none. */
  load(name: string): Promise<{ readonly ok: true; readonly paper: unknown } | StoreFailure>;
  write(name: string, paper: unknown): Promise<{ readonly ok: true } | StoreFailure>;
}

/** Papers in a database of their own, so that the book's stays as it is. @param name of the database */
export function browserPapers(name = "hardstand papers"): PaperStore {
  const { use } = databaseNamed(name, DATABASE_VERSION, TABLES);
  return {
    load: async (paper) => {
      try {
        const found: unknown = await use((database) => database.get("papers", paper));
        return { ok: true, paper: found ?? null };
      } catch (error) {
        return failure(error);
      }
    },
    write: async (key, paper) => {
      try {
        await use((database) =>
          writeAtOnce(database, TABLES, ({ put }) => {
            put("papers", paper, key);
          }),
        );
        return { ok: true };
      } catch (error) {
        return failure(error);
      }
    },
  };
}
