import type { Issue, Read } from "../units/index.ts";
import type { RecordsIssueCode } from "./issue-codes.ts";
import type { FormStep, JobRecord, PlainObject, ResultSnapshot } from "./job-record.ts";

/** Deepest nesting taken in: a job needs five. */
const MOST_DEEP = 30;

/** Instants as written by this program: a date and a time in UTC. */
const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,3})?Z$/;

const JOB_KEYS = ["id", "title", "created", "changed", "document", "form", "result"];

/** An issue about a record. */
export function recordIssue(code: RecordsIssueCode, path: string, more: Partial<Issue> = {}): Issue {
  return { code, path, severity: "error", ...more };
}

/** True for a JSON object, not a list. */
export function isPlainObject(value: unknown): value is PlainObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Reads one job of a book.
 *
 * @param path where it stands, e.g. "jobs[2]"
 * @returns the job, with warnings; or why it cannot be taken in
 */
export function readJobRecord(value: unknown, path: string): Read<JobRecord> {
  if (!isPlainObject(value)) return refused(recordIssue("records-document-bad", path));
  const { id, title = "", created, changed, document, form = null, result = null } = value;
  const issues: Issue[] = [];
  if (typeof id !== "string" || id.trim() === "" || id.length > 200)
    issues.push(recordIssue("records-id-bad", `${path}.id`));
  if (typeof title !== "string") issues.push(recordIssue("records-title-bad", `${path}.title`));
  for (const [key, instant] of Object.entries({ created, changed })) {
    if (!isInstant(instant)) {
      const received = typeof instant === "string" ? { received: instant } : {};
      issues.push(recordIssue("records-instant-bad", `${path}.${key}`, received));
    }
  }
  if (!isPlainObject(document)) issues.push(recordIssue("records-document-bad", `${path}.document`));
  if (form !== null && !isPlainObject(form)) issues.push(recordIssue("records-form-bad", `${path}.form`));
  if (result !== null && !isResult(result)) issues.push(recordIssue("records-result-bad", `${path}.result`));
  if (isDeeper(value, MOST_DEEP)) issues.push(recordIssue("records-too-deep", path));
  if (issues.length > 0) return { ok: false, issues };
  // Each part was looked at above.
  const job = { id, title, created, changed, document, form, result, untouched: false, formSteps: [] };
  return { ok: true, value: job as unknown as JobRecord, issues: unknownKeys(value, JOB_KEYS, path) };
}

/** Reads a job as a store on this device holds it, with the steps of typing. */
export function readStoredRecord(value: unknown, path: string): Read<JobRecord> {
  const read = readJobRecord(value, path);
  if (!read.ok || !isPlainObject(value)) return read;
  const { untouched, formSteps } = value;
  if (!Array.isArray(formSteps) || !formSteps.every(isFormStep) || isDeeper(formSteps, MOST_DEEP))
    return refused(recordIssue("records-steps-bad", `${path}.formSteps`));
  return { ok: true, value: { ...read.value, untouched: untouched === true, formSteps }, issues: [] };
}

/** A warning for each key that has no place, so that nothing is dropped in silence. */
export function unknownKeys(value: PlainObject, known: readonly string[], path: string): readonly Issue[] {
  return Object.keys(value)
    .filter((key) => !known.includes(key))
    .map((key) =>
      recordIssue("records-key-unknown", path === "" ? key : `${path}.${key}`, { severity: "warning" }),
    );
}

/** True when a text is an instant in UTC as this program writes it. */
export function isInstant(value: unknown): value is string {
  return typeof value === "string" && INSTANT.test(value) && Number.isFinite(Date.parse(value));
}

function isResult(value: unknown): value is ResultSnapshot {
  if (!isPlainObject(value)) return false;
  const { computed, hardstand, data, words } = value;
  return isInstant(computed) && [hardstand, data, words].every((text) => typeof text === "string");
}

function isFormStep(value: unknown): value is FormStep {
  return isPlainObject(value) && typeof value["what"] === "string" && isPlainObject(value["before"]);
}

/** True when a value nests deeper than `levels`. */
function isDeeper(value: unknown, levels: number): boolean {
  if (typeof value !== "object" || value === null) return false;
  return levels === 0 || Object.values(value).some((entry) => isDeeper(entry, levels - 1));
}

function refused(issue: Issue): Read<never> {
  return { ok: false, issues: [issue] };
}
