/** Every code this layer can give, with what it means in one line. */
export const ISSUE_CODES_RECORDS = {
  "records-not-json": "the text is not JSON",
  "records-not-a-book": "the file holds something other than a book of jobs",
  "records-single-job": "the file holds one job, not a book of jobs",
  "records-version-unknown": "the format of the book has no version that is known",
  "records-version-newer": "the book was written by a newer version of the program",
  "records-jobs-missing": "the book has no list of jobs",
  "records-key-unknown": "a key that has no place in a book",
  "records-id-bad": "the id of a job is missing or is not a name",
  "records-title-bad": "the title of a job is not a text",
  "records-instant-bad": "an instant is missing or is not a date with a time",
  "records-document-bad": "a job holds no JOB document",
  "records-form-bad": "the form of a job is not an object",
  "records-result-bad": "the kept result of a job is not one",
  "records-steps-bad": "the steps of a job are not steps",
  "records-too-deep": "the nesting goes deeper than any job",
} as const;

/** A code of `ISSUE_CODES_RECORDS`. */
export type RecordsIssueCode = keyof typeof ISSUE_CODES_RECORDS;
