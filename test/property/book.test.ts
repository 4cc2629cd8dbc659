import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addJob,
  bookChange,
  bookFile,
  deleteJobs,
  duplicateJob,
  editJob,
  emptyBook,
  importJobs,
  isEmptyChange,
  listJobs,
  openJob,
  readBookFile,
  samePlain,
  undoStep,
} from "../../src/records/index.ts";
import type { Book, JobContent, PlainObject } from "../../src/records/index.ts";
import { memoryStore } from "../../src/storage/memory-store.ts";

const START = Date.UTC(2026, 4, 4);

type Deed =
  | { readonly do: "add"; readonly text: string; readonly untouched: boolean }
  | {
      readonly do: "edit" | "open" | "duplicate" | "delete" | "undo";
      readonly which: number;
      readonly text: string;
    }
  | { readonly do: "import"; readonly text: string };

const text = fc.string({ unit: "grapheme", maxLength: 12 });
const deeds = fc.array(
  fc.oneof(
    fc.record({ do: fc.constant("add" as const), text, untouched: fc.boolean() }),
    fc.record({
      do: fc.constantFrom("edit" as const, "open", "duplicate", "delete", "undo"),
      which: fc.nat(20),
      text,
    }),
    fc.record({ do: fc.constant("import" as const), text }),
  ),
  { maxLength: 40 },
);

const contentOf = (typed: string): JobContent => ({
  title: typed,
  document: { hardstand: 1, water: { source: typed } } as PlainObject,
  form: { source: typed },
  formSteps: [],
});

/** Does one thing after the other to a book and reports each state. */
function play(all: readonly Deed[], look: (before: Book, after: Book, deed: Deed) => void): Book {
  let book = emptyBook();
  let ids = 0;
  const newId = (): string => `id-${String((ids += 1))}`;
  all.forEach((deed, i) => {
    const at = new Date(START + i * 1000).toISOString();
    const next = step(book, deed, { at, newId });
    look(book, next, deed);
    book = next;
  });
  return book;
}

function step(book: Book, deed: Deed, make: { at: string; newId: () => string }): Book {
  const { at, newId } = make;
  if (deed.do === "add")
    return addJob(book, contentOf(deed.text), { id: newId(), at, untouched: deed.untouched });
  if (deed.do === "import") {
    const file = readBookFile(JSON.stringify(bookFile(book, at)));
    if (!file.ok) throw new Error("a file of ours was not read");
    const changed = file.value.map((job, i) => (i % 2 === 0 ? { ...job, title: deed.text } : job));
    return importJobs(book, changed, { id: newId(), at }, newId).book;
  }
  const undoable = book.steps[deed.which % Math.max(1, book.steps.length)];
  if (deed.do === "undo") return undoable === undefined ? book : undoStep(book, undoable.id, at, newId);
  const job = book.jobs[deed.which % Math.max(1, book.jobs.length)];
  if (job === undefined) return book;
  if (deed.do === "edit") return editJob(book, job.id, contentOf(deed.text), at);
  if (deed.do === "open") return openJob(book, job.id);
  if (deed.do === "duplicate") return duplicateJob(book, job.id, { id: newId(), at });
  return deleteJobs(book, [job.id], { id: newId(), at });
}

/** Every text in the book, with what can be brought back. */
function texts(book: Book): Set<string> {
  const deleted = book.steps.flatMap((entry) => (entry.kind === "deleted" ? entry.jobs : []));
  return new Set([...book.jobs, ...deleted].map((job) => JSON.stringify(job.document)));
}

test("whatever is done, ids stay single and no typed text is lost but by typing over it", () => {
  fc.assert(
    fc.property(deeds, (all) => {
      play(all, (before, after, deed) => {
        const ids = after.jobs.map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
        expect(after.open === null || ids.includes(after.open)).toBe(true);
        if (deed.do === "edit") return;
        const untouched = before.jobs
          .filter((job) => job.untouched)
          .map((job) => JSON.stringify(job.document));
        const kept = texts(after);
        for (const typed of texts(before)) expect(kept.has(typed) || untouched.includes(typed)).toBe(true);
      });
    }),
  );
});

test("a store that is only told the differences holds the same book", async () => {
  await fc.assert(
    fc.asyncProperty(deeds, async (all) => {
      const store = memoryStore();
      const changes: ReturnType<typeof bookChange>[] = [];
      const book = play(all, (before, after) => {
        const change = bookChange(before, after);
        expect(isEmptyChange(change)).toBe(before === after || samePlain(before, after));
        changes.push(change);
      });
      for (const change of changes) await store.write(change);
      const loaded = await store.load();
      if (!loaded.ok) throw new Error("not loaded");
      expect(listJobs(loaded.book)).toEqual(listJobs(book));
      expect(new Set(loaded.book.steps)).toEqual(new Set(book.steps));
      expect(loaded.book.open).toBe(book.open);
    }),
  );
});

test("delete and undo is nothing, whatever the book", () => {
  fc.assert(
    fc.property(deeds, fc.nat(20), (all, which) => {
      const book = play(all, () => undefined);
      const job = book.jobs[which % Math.max(1, book.jobs.length)];
      if (job === undefined) return;
      const at = new Date(START).toISOString();
      const deleted = deleteJobs(book, [job.id], { id: "step", at });
      const back = undoStep(deleted, "step", at, () => "unused");
      expect(listJobs(back)).toEqual(listJobs(book));
    }),
  );
});

test("a file of jobs comes back whole into an empty book, and changes nothing in its own", () => {
  fc.assert(
    fc.property(deeds, fc.dictionary(text, fc.jsonValue({ maxDepth: 4 })), (all, document) => {
      const at = new Date(START).toISOString();
      const played = play(all, () => undefined);
      const book = addJob(played, { ...contentOf("x"), document }, { id: "own", at, untouched: false });
      const file = readBookFile(JSON.stringify(bookFile(book, at)));
      expect(file.issues).toEqual([]);
      if (!file.ok) throw new Error("not read");
      const touched = listJobs(book).filter((job) => !job.untouched);
      const fresh = importJobs(emptyBook(), file.value, { id: "step", at }, () => "unused");
      // JSON knows no minus zero.
      expect(JSON.parse(JSON.stringify(listJobs(fresh.book)))).toEqual(JSON.parse(JSON.stringify(touched)));
      expect(importJobs(book, file.value, { id: "step", at }, () => "unused").added).toBe(0);
    }),
  );
});

test("no text makes the reader fail", () => {
  const pieces = fc.oneof(
    fc.json(),
    text,
    fc.json().map((jobs) => `{"hardstandJobs":1,"jobs":[${jobs}]}`),
  );
  fc.assert(
    fc.property(pieces, (typed) => {
      const read = readBookFile(typed);
      expect(read.ok || read.issues.length > 0).toBe(true);
    }),
  );
});
