import { describe, expect, it } from "vitest";
import {
  addJob,
  deleteJobs,
  duplicateJob,
  editJob,
  emptyBook,
  findJob,
  forgetOldSteps,
  keepResult,
  listJobs,
  openJob,
  sameBook,
  undoStep,
} from "./book.ts";
import type { Book } from "./book.ts";
import type { JobContent } from "./job-record.ts";
import { samePlain } from "./job-record.ts";

const content = (title: string): JobContent => ({
  title,
  document: { hardstand: 1, water: { source: title } },
  form: null,
  formSteps: [],
});
const day = (n: number): string => new Date(Date.UTC(2026, 4, n)).toISOString();
const noId = (): string => {
  throw new Error("no id is needed");
};

function bookOf(...titles: string[]): Book {
  return titles.reduce(
    (book, title, i) => addJob(book, content(title), { id: title, at: day(i + 1), untouched: false }),
    emptyBook(),
  );
}

describe("a book of jobs", () => {
  it("lists what changed last first, and opens what was added", () => {
    const book = editJob(bookOf("a", "b", "c"), "a", content("a, later"), day(9));
    expect(listJobs(book).map(({ id }) => id)).toEqual(["a", "c", "b"]);
    expect(book.open).toBe("c");
  });

  it("lets go of a job that nobody typed into, once another is opened", () => {
    const fresh = addJob(bookOf("a"), content(""), { id: "blank", at: day(2), untouched: true });
    expect(findJob(openJob(fresh, "a"), "blank")).toBeNull();
    const typed = editJob(fresh, "blank", content("x"), day(3));
    expect(findJob(openJob(typed, "a"), "blank")).not.toBeNull();
  });

  it("stays the very same when nothing was typed, so that nothing is written", () => {
    const book = bookOf("a");
    expect(editJob(book, "a", content("a"), day(5))).toBe(book);
    expect(editJob(book, "gone", content("a"), day(5))).toBe(book);
    expect(openJob(book, "a")).toBe(book);
    expect(openJob(book, "gone")).toBe(book);
    expect(undoStep(book, "gone", day(5), noId)).toBe(book);
    expect(deleteJobs(book, ["gone"], { id: "s", at: day(5) })).toBe(book);
  });

  it("keeps steps of typing even where they end at the same text", () => {
    const steps = [{ what: "Row removed", before: { rows: 2 } }];
    const book = editJob(bookOf("a"), "a", { ...content("a"), formSteps: steps }, day(5));
    expect(findJob(book, "a")).toMatchObject({ formSteps: steps, changed: day(1) });
  });

  it("keeps the answer without calling the job changed, and only when it is another", () => {
    const answer = { computed: day(2), hardstand: "0.1.0", data: "1", words: "84 in 100 free." };
    const book = keepResult(bookOf("a"), "a", answer);
    expect(findJob(book, "a")).toMatchObject({ result: answer, changed: day(1) });
    expect(keepResult(book, "a", { ...answer, computed: day(3) })).toBe(book);
    const typed = editJob(book, "a", content("b"), day(4));
    expect(findJob(keepResult(typed, "a", { ...answer, computed: day(5) }), "a")?.result?.computed).toBe(
      day(5),
    );
  });

  it("duplicates under a new id, and both are then apart", () => {
    const book = duplicateJob(bookOf("a"), "a", { id: "b", at: day(4) });
    const typed = editJob(book, "b", content("other"), day(5));
    expect(findJob(typed, "a")?.title).toBe("a");
    expect(findJob(typed, "b")).toMatchObject({ title: "other", created: day(4) });
    expect(typed.open).toBe("b");
  });

  it("keeps a sample that somebody duplicates", () => {
    const sample = addJob(emptyBook(), content("s"), { id: "s", at: day(1), untouched: true });
    expect(duplicateJob(sample, "s", { id: "t", at: day(2) }).jobs.map(({ id }) => id)).toEqual(["s", "t"]);
  });

  it("refuses an id that is taken", () => {
    expect(() => addJob(bookOf("a"), content("b"), { id: "a", at: day(2), untouched: false })).toThrow(
      "id-taken",
    );
  });
});

describe("undo", () => {
  it("brings deleted jobs back as they were", () => {
    const book = bookOf("a", "b", "c");
    const without = deleteJobs(book, ["a", "c"], { id: "step", at: day(5) });
    expect(without.jobs.map(({ id }) => id)).toEqual(["b"]);
    expect(without.open).toBeNull();
    const back = undoStep(without, "step", day(6), noId);
    expect(listJobs(back)).toEqual(listJobs(book));
    expect(back.steps).toEqual([]);
  });

  it("keeps both when the id was taken meanwhile by other content, and one when it is the same", () => {
    const deleted = deleteJobs(bookOf("a"), ["a"], { id: "step", at: day(5) });
    const other = addJob(deleted, content("other"), { id: "a", at: day(6), untouched: false });
    expect(undoStep(other, "step", day(7), () => "new").jobs.map(({ id, title }) => [id, title])).toEqual([
      ["a", "other"],
      ["new", "a"],
    ]);
    const again = addJob(deleted, content("a"), { id: "a", at: day(6), untouched: false });
    expect(undoStep(again, "step", day(7), noId).jobs).toHaveLength(1);
  });

  it("is forgotten after thirty days, not before", () => {
    const deleted = deleteJobs(bookOf("a"), ["a"], { id: "step", at: day(1) });
    expect(forgetOldSteps(deleted, day(31))).toBe(deleted);
    expect(forgetOldSteps(deleted, day(32)).steps).toEqual([]);
  });
});

describe("sameBook", () => {
  const book = deleteJobs(bookOf("a", "b", "c"), ["b"], { id: "s", at: day(5) });
  it("looks at jobs, steps and the last copy, not at their order nor at what is open", () => {
    expect(sameBook(book, { ...book, jobs: [...book.jobs].reverse(), open: "a" })).toBe(true);
    expect(sameBook(book, { ...book, lastCopy: day(6) })).toBe(false);
    expect(sameBook(book, { ...book, steps: [] })).toBe(false);
    expect(sameBook(book, editJob(book, "a", content("x"), day(6)))).toBe(false);
  });
});

describe("samePlain", () => {
  it("looks at content, not at the order of keys", () => {
    expect(samePlain({ a: 1, b: [1, { c: null }] }, { b: [1, { c: null }], a: 1 })).toBe(true);
  });
  it.each([
    [{ a: 1 }, { a: 1, b: undefined }],
    [
      [1, 2],
      [2, 1],
    ],
    [{ 0: 1 }, [1]],
    [null, {}],
    ["1", 1],
  ])("tells %j from %j", (a, b) => {
    expect(samePlain(a, b)).toBe(false);
  });
});
