import type { Wording } from "./wording.ts";

/** Sentences for the book of jobs and the file it is copied to. */
export const RECORDS_WORDING: Readonly<Record<string, Wording>> = {
  "records-not-json": {
    say: "This file cannot be read as JSON.",
    mend: "Take a file that was saved here as a copy of all jobs.",
  },
  "records-not-a-book": {
    say: "This file holds no list of jobs.",
    mend: "Take a file that was saved here as a copy of all jobs.",
  },
  "records-single-job": {
    say: "This file holds one job, not a copy of all jobs.",
    mend: "Open it with “Open file”.",
  },
  "records-version-unknown": {
    say: "The version of this copy is not known.",
    mend: "Check that the file was not changed by hand.",
  },
  "records-version-newer": {
    say: "This copy was made by a newer Hardstand.",
    mend: "Bring this one up to date, then take the copy in again.",
  },
  "records-jobs-missing": {
    say: "The list of jobs is missing.",
    mend: "Check that the file was not cut short.",
  },
  "records-key-unknown": {
    say: "This entry is not known and was left out.",
    mend: "Keep the file if you need it.",
  },
  "records-id-bad": { say: "This job has no usable id.", mend: "Give it any name of its own." },
  "records-title-bad": { say: "The title is not a text.", mend: "Write it between quotes." },
  "records-instant-bad": {
    say: "This is not a date with a time.",
    mend: "Write it like 2026-05-04T07:30:00Z.",
  },
  "records-document-bad": {
    say: "There is no job in this entry.",
    mend: "Check that the file was not cut short.",
  },
  "records-form-bad": {
    say: "The form of this job cannot be read.",
    mend: "Take the form out; the job itself is enough.",
  },
  "records-result-bad": {
    say: "The kept result cannot be read.",
    mend: "Take the result out; it is computed anew.",
  },
  "records-steps-bad": {
    say: "These kept steps cannot be read.",
    mend: "They stay stored; nothing else is touched.",
  },
  "records-too-deep": {
    say: "The nesting goes too deep for a job.",
    mend: "Check that the file was not changed by hand.",
  },
};
