export * from "./book.ts";
export * from "./book-file.ts";
export * from "./book-store.ts";
export * from "./issue-codes.ts";
export * from "./job-record.ts";
export { readStoredBook } from "./read-stored.ts";
export type { RawBook } from "./read-stored.ts";
