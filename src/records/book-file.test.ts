import { describe, expect, it } from "vitest";
import { bookFile, importJobs, readBookFile } from "./book-file.ts";
import { addJob, editJob, emptyBook, listJobs, undoStep } from "./book.ts";
import type { Book } from "./book.ts";
import type { JobContent } from "./job-record.ts";

const AT = "2026-05-04T07:30:00.000Z";
const LATER = "2026-05-05T07:30:00.000Z";

const content = (title: string): JobContent => ({
  title,
  document: { hardstand: 1, water: { readings: [{ parameter: "calcium", value: " 92,5 mg/L" }] } },
  form: { calcium: { text: " 92,5", unit: "mg/L" } },
  formSteps: [{ what: "Row removed", before: {} }],
});

function bookOf(...ids: string[]): Book {
  return ids.reduce((book, id) => addJob(book, content(id), { id, at: AT, untouched: false }), emptyBook());
}

const textOf = (book: Book): string => JSON.stringify(bookFile(book, LATER));

function codesOf(text: string): string[] {
  return readBookFile(text).issues.map(({ code, path }) => `${path}: ${code}`);
}

describe("the file of all jobs", () => {
  it("carries every text as typed and leaves the device's own things behind", () => {
    const file = bookFile(bookOf("a", "b"), LATER);
    expect(file).toMatchObject({ hardstandJobs: 1, exported: LATER });
    expect(file.jobs[0]?.document).toEqual(content("a").document);
    expect(file.jobs[0]?.form).toEqual(content("a").form);
    expect(file.jobs[0]).not.toHaveProperty("formSteps");
  });

  it("leaves out a sample that nobody typed into", () => {
    const book = addJob(bookOf("a"), content("sample"), { id: "s", at: AT, untouched: true });
    expect(bookFile(book, LATER).jobs.map(({ id }) => id)).toEqual(["a"]);
  });

  it("comes back whole", () => {
    const read = readBookFile(textOf(bookOf("a", "b")));
    expect(read.issues).toEqual([]);
    if (!read.ok) throw new Error("not read");
    const { book } = importJobs(emptyBook(), read.value, { id: "step", at: LATER }, () => "new");
    const bare = listJobs(bookOf("a", "b")).map((job) => ({ ...job, formSteps: [] }));
    expect(listJobs(book)).toEqual(bare);
  });

  it.each([
    ["", ": records-not-json"],
    ["{", ": records-not-json"],
    ["[]", ": records-not-a-book"],
    ["null", ": records-not-a-book"],
    [`{"jobs":[]}`, ": records-not-a-book"],
    [`{"hardstand":1,"water":{}}`, ": records-single-job"],
    [`{"hardstandJobs":2,"jobs":[]}`, "hardstandJobs: records-version-newer"],
    [`{"hardstandJobs":"1","jobs":[]}`, "hardstandJobs: records-version-unknown"],
    [`{"hardstandJobs":1}`, "jobs: records-jobs-missing"],
    [`{"hardstandJobs":1,"jobs":{}}`, "jobs: records-jobs-missing"],
    [`{"hardstandJobs":1,"jobs":[7]}`, "jobs[0]: records-document-bad"],
  ])("refuses %s", (text, expected) => {
    const read = readBookFile(text);
    expect(read.ok).toBe(false);
    expect(codesOf(text)).toEqual([expected]);
  });

  it("names what is wrong with one job and takes in the others", () => {
    const file = structuredClone(bookFile(bookOf("a", "b"), LATER)) as unknown as {
      jobs: Record<string, unknown>[];
    };
    Object.assign(file.jobs[0]!, { id: " ", changed: "4 May", document: [], form: 3, result: {} });
    Object.assign(file.jobs[1]!, { colour: "green" });
    const text = JSON.stringify(file);
    expect(codesOf(text)).toEqual([
      "jobs[0].id: records-id-bad",
      "jobs[0].changed: records-instant-bad",
      "jobs[0].document: records-document-bad",
      "jobs[0].form: records-form-bad",
      "jobs[0].result: records-result-bad",
      "jobs[1].colour: records-key-unknown",
    ]);
    const read = readBookFile(text);
    expect(read.ok && read.value.map(({ id }) => id)).toEqual(["b"]);
  });

  it("refuses nesting that no job has", () => {
    const deep = `${'{"a":'.repeat(5000)}1${"}".repeat(5000)}`;
    const text = `{"hardstandJobs":1,"jobs":[{"id":"a","created":"${AT}","changed":"${AT}","document":${deep}}]}`;
    expect(codesOf(text)).toEqual(["jobs[0]: records-too-deep"]);
  });
});

describe("import", () => {
  const take = (book: Book, from: Book): ReturnType<typeof importJobs> => {
    const read = readBookFile(textOf(from));
    if (!read.ok) throw new Error("not read");
    let last = 0;
    return importJobs(book, read.value, { id: "step", at: LATER }, () => `new-${String((last += 1))}`);
  };

  it("leaves alone what is there word for word", () => {
    const book = bookOf("a");
    expect(take(book, book)).toEqual({ book, added: 0, same: 1, keptApart: 0 });
  });

  it("keeps both where one id has two contents, and does so once", () => {
    const here = editJob(bookOf("a"), "a", content("typed here"), LATER);
    const first = take(here, bookOf("a"));
    expect(first).toMatchObject({ added: 1, same: 0, keptApart: 1 });
    expect(first.book.jobs.map(({ id, title }) => [id, title])).toEqual([
      ["a", "typed here"],
      ["new-1", "a"],
    ]);
    expect(take(first.book, bookOf("a"))).toMatchObject({ added: 0, same: 1 });
  });

  it("is one step to take back; what was typed into since stays, the rest can be brought back", () => {
    const { book } = take(bookOf("a"), bookOf("b", "c"));
    const typed = editJob(book, "b", content("typed"), LATER);
    const back = undoStep(typed, "step", LATER, () => "new");
    expect(back.jobs.map(({ id }) => id)).toEqual(["a", "b"]);
    expect(undoStep(back, "step", LATER, () => "new").jobs.map(({ id }) => id)).toEqual(["a", "b", "c"]);
  });
});
