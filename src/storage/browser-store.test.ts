import "fake-indexeddb/auto";
import { openDB } from "idb";
import { expect, test, vi } from "vitest";
import { addJob, bookChange, deleteJobs, emptyBook } from "../records/index.ts";
import type { Book, BookStore, StoredBook } from "../records/index.ts";
import { browserStore, memoryStore } from "./index.ts";

const AT = "2026-05-04T07:30:00.000Z";

function bookOf(...ids: string[]): Book {
  return ids.reduce((book, id) => {
    const content = { title: id, document: { hardstand: 1 }, form: { text: " 9,5" }, formSteps: [] };
    return addJob(book, content, { id, at: AT, untouched: false });
  }, emptyBook());
}

async function stored(store: BookStore): Promise<StoredBook> {
  const loaded = await store.load();
  if (!loaded.ok) throw new Error(loaded.details);
  return { book: loaded.book, issues: loaded.issues };
}

let databases = 0;
const newName = (): string => `test-${String((databases += 1))}`;

test.each([
  ["memory", () => memoryStore()],
  ["the browser", () => browserStore(newName())],
])("a book kept in %s comes back after each change", async (_, made) => {
  const store = made();
  const one: Book = { ...bookOf("a", "b"), lastCopy: AT };
  expect(await store.write(bookChange(emptyBook(), one))).toEqual({ ok: true });
  expect(await stored(store)).toEqual({ book: one, issues: [] });
  const two = deleteJobs(one, ["b"], { id: "step", at: AT });
  await store.write(bookChange(one, two));
  expect(await stored(store)).toEqual({ book: two, issues: [] });
});

test("another visit finds what the one before wrote", async () => {
  const name = newName();
  const before = browserStore(name);
  await before.write(bookChange(emptyBook(), bookOf("a")));
  before.close();
  expect((await stored(browserStore(name))).book).toEqual(bookOf("a"));
});

test("a store that was closed opens its database again", async () => {
  const store = browserStore(newName());
  await store.write(bookChange(emptyBook(), bookOf("a")));
  store.close();
  expect(await store.write(bookChange(bookOf("a"), bookOf("a", "b")))).toEqual({ ok: true });
  expect((await stored(store)).book.jobs).toHaveLength(2);
});

test("gives way to a newer version in another window, then says that it cannot keep", async () => {
  const name = newName();
  const store = browserStore(name);
  await store.write(bookChange(emptyBook(), bookOf("a")));
  const newer = await openDB(name, 2);
  expect(await store.write(bookChange(emptyBook(), bookOf("b")))).toMatchObject({
    ok: false,
    reason: "unavailable",
  });
  newer.close();
});

test("what cannot be read is named and stays where it is", async () => {
  const name = newName();
  const store = browserStore(name);
  await store.write(bookChange(emptyBook(), bookOf("a")));
  const raw = await openDB(name, 1);
  await raw.put("jobs", { id: "z", document: "none" }, "z");
  await raw.put("steps", { id: "y", at: AT, kind: "moved", jobs: [] }, "y");
  const { book, issues } = await stored(store);
  expect(book.jobs.map(({ id }) => id)).toEqual(["a"]);
  expect(new Set(issues.map(({ code }) => code))).toEqual(
    new Set(["records-instant-bad", "records-document-bad", "records-steps-bad"]),
  );
  await store.write(bookChange(book, bookOf("b")));
  expect(await raw.get("jobs", "z")).toEqual({ id: "z", document: "none" });
  raw.close();
});

test("a change that cannot be kept whole is not kept at all", async () => {
  const store = browserStore(newName());
  await store.write(bookChange(emptyBook(), bookOf("a")));
  const [b] = bookOf("b").jobs;
  // A function cannot be stored.
  const bad = { ...b!, id: "bad", document: { run: () => 1 } };
  const change = { ...bookChange(emptyBook(), bookOf("b")), putJobs: [b!, bad] };
  expect(await store.write(change)).toMatchObject({ ok: false });
  expect((await stored(store)).book.jobs.map(({ id }) => id)).toEqual(["a"]);
});

test("a write ends with its transaction, even where the browser says nothing of what was asked in it", async () => {
  const store = browserStore(newName());
  await store.write(bookChange(emptyBook(), bookOf("a")));
  // Requests that are never answered, in a transaction that the browser ends itself when it is to be written.
  const put = vi
    .spyOn(IDBObjectStore.prototype, "put")
    .mockImplementation(() => new IDBRequest() as IDBRequest<IDBValidKey>);
  const commit = vi.spyOn(IDBTransaction.prototype, "commit").mockImplementation(function (
    this: IDBTransaction,
  ) {
    this.abort();
  });
  try {
    expect(await store.write(bookChange(bookOf("a"), bookOf("a", "b")))).toMatchObject({ ok: false });
  } finally {
    put.mockRestore();
    commit.mockRestore();
  }
  expect(await store.write(bookChange(bookOf("a"), bookOf("a", "c")))).toEqual({ ok: true });
  expect((await stored(store)).book.jobs.map(({ id }) => id)).toEqual(["a", "c"]);
}, 5000);
