import { expect, test } from "vitest";
import { addJob, emptyBook, findJob } from "../../records/index.ts";
import { blankConditioner } from "../job/draft-conditioners.ts";
import { blankProduct } from "../job/draft-mix.ts";
import { blankDraft } from "../job/draft.ts";
import { draftOf } from "../job/from-document.ts";
import { isDraft, jobReducer } from "../job/job-state.ts";
import type { JobState } from "../job/job-state.ts";
import { documentOf } from "../job/to-document.ts";
import { contentOf, jobName, openState } from "./job-content.ts";

const AT = "2026-05-04T07:30:00.000Z";

/** The book as it is after it was stored and read again. */
function stored(state: JobState): ReturnType<typeof emptyBook> {
  const book = addJob(emptyBook(), contentOf(state), { id: "a", at: AT, untouched: false });
  return JSON.parse(JSON.stringify(book)) as typeof book;
}

test("a form comes back from the book with every text, unit and step", () => {
  const draft = { ...blankDraft(), title: " Ridge", mix: [], conditioners: [blankConditioner()] };
  const typed = jobReducer(
    { draft: { ...draft, mix: [{ ...blankProduct(), rate: { text: " 1,5L/ha", unit: "ac" } }] }, undo: [] },
    { type: "step", what: "Row removed", change: (before) => ({ ...before, conditioners: [] }) },
  );
  expect(openState(stored(typed))).toEqual(typed);
});

test("a form of another shape is not half read: the document is opened", () => {
  const state = { draft: { ...blankDraft(), title: "Ridge" }, undo: [] };
  const book = stored(state);
  const job = findJob(book, "a")!;
  for (const form of [null, {}, { ...job.form, origin: "else" }, { ...job.form, conditioners: [5] }]) {
    const found = openState({ ...book, jobs: [{ ...job, form }] });
    expect(found.draft.title).toBe("Ridge");
    expect(isDraft(found.draft)).toBe(true);
  }
});

test("what the form does not ask for goes through it unharmed", () => {
  const document = {
    hardstand: 1,
    title: "Ridge",
    water: { source: "dam", readings: [{ parameter: "calcium", unit: "mg/L", value: "92" }] },
    spray: { volume: "100 L/ha" },
    mix: [{ active: "glyphosate", rate: "2 L/ha", name: "product one" }],
    conditioners: [{ chemistry: "citric acid", "least dose": "1 g/L", "most dose": "5 g/L" }],
    aim: {},
  };
  expect(documentOf(draftOf(document, "file"))).toEqual(document);
});

test.each([
  ["Ridge ", "dam", "Ridge"],
  [" ", "dam", "dam · glyphosate"],
  ["", "", "glyphosate"],
])("a job with title “%s” and water “%s” is called “%s”", (title, source, expected) => {
  const draft = draftOf({ title, water: { source }, mix: [{ active: "glyphosate" }] }, "own");
  expect(jobName(stored({ draft, undo: [] }).jobs[0]!)).toBe(expected);
});

test("a job that says nothing still has a name", () => {
  expect(jobName(stored({ draft: blankDraft(), undo: [] }).jobs[0]!)).toBe("Job without a title");
});
