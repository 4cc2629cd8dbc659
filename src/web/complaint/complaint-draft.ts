import { blankDraft } from "../job/draft.ts";
import type { Draft } from "../job/draft.ts";
import { draftOf } from "../job/from-document.ts";
import { isDraft } from "../job/job-state.ts";
import { Taker } from "../job/taker.ts";
import { documentOf } from "../job/to-document.ts";
import type { JobDocument } from "../job/to-document.ts";
import { blank, newKey, quantityText } from "../job/typed.ts";
import type { Rest, Typed } from "../job/typed.ts";

/** One conditioner that went in, as typed. */
export interface UsedRow {
  readonly key: string;
  readonly chemistry: string;
  readonly form: string;
  readonly dose: Typed;
  readonly added: string;
  readonly rest: Rest;
}

/** The record of an application that failed, as the form holds it. */
export interface ComplaintDraft {
  /** Water, spray, products and place, as in a job. */
  readonly job: Draft;
  readonly used: readonly UsedRow[];
  readonly seen: { readonly pattern: string; readonly plants: string; readonly loads: string };
  /** Where causes stand by id; one that is not there is open. */
  readonly causes: Readonly<Record<string, "excluded" | "found">>;
  /** What a file says that the form has no box for. */
  readonly rest: Rest;
}

const MARK = "hardstand-complaint";
const VERSION = 1;
/** Parts of a job that a record has too. */
const SHARED = ["title", "water", "spray", "mix", "partners", "site"];

/** An empty row for a conditioner that went in. */
export function blankUsed(): UsedRow {
  return { key: newKey(), chemistry: "", form: "", dose: blank("kg/100 L"), added: "", rest: {} };
}

/** A record that begins with the water, the spray and the products of a job. */
export function complaintAbout(job: Draft): ComplaintDraft {
  return {
    job: { ...blankDraft(), water: job.water, spray: job.spray, mix: job.mix, site: job.site },
    used: [],
    seen: { pattern: "", plants: "", loads: "" },
    causes: {},
    rest: {},
  };
}

/** The form of a record that a file holds; what it has no box for is kept as it is. */
export function complaintOf(document: unknown): ComplaintDraft {
  const record = new Taker(document);
  const used = record.rows("used").map(usedRow);
  const seen = record.inner("seen");
  const checked = record.inner("checked");
  const causes: Record<string, "excluded" | "found"> = {};
  for (const standing of ["excluded", "found"] as const)
    for (const id of checked.words(standing) ?? []) causes[id] = standing;
  const all = record.rest();
  const shared = Object.fromEntries(Object.entries(all).filter(([key]) => SHARED.includes(key)));
  const rest = Object.fromEntries(
    Object.entries(all).filter(
      ([key, value]) => !SHARED.includes(key) && !(key === MARK && value === VERSION),
    ),
  );
  return {
    job: draftOf(shared, "file"),
    used,
    seen: { pattern: seen.text("pattern"), plants: seen.text("plants"), loads: seen.text("loads") },
    causes,
    rest: { ...rest, ...kept("seen", seen), ...kept("checked", checked) },
  };
}

function kept(key: string, part: Taker): Rest {
  const rest = part.rest();
  return Object.keys(rest).length === 0 ? {} : { [key]: rest };
}

function usedRow(entry: Rest): UsedRow {
  const row = new Taker(entry);
  return {
    key: newKey(),
    chemistry: row.text("chemistry"),
    form: row.text("form"),
    dose: row.quantity("dose", blankUsed().dose.unit),
    added: row.text("added"),
    rest: row.rest(),
  };
}

/** The record as a document, as the command line reads it. */
export function recordOf(draft: ComplaintDraft): JobDocument {
  const job = documentOf(draft.job);
  const shared = SHARED.filter((key) => key in job).map((key) => [key, job[key]] as const);
  const ids = (standing: string): readonly string[] =>
    Object.entries(draft.causes)
      .filter(([, at]) => at === standing)
      .map(([id]) => id);
  const { seen, checked, ...rest } = draft.rest;
  return {
    [MARK]: VERSION,
    ...Object.fromEntries(shared),
    ...part("used", draft.used.map(usedDocument)),
    ...part("seen", { ...(seen as Rest | undefined), ...said(draft.seen) }),
    ...part("checked", {
      ...(checked as Rest | undefined),
      ...part("excluded", ids("excluded")),
      ...part("found", ids("found")),
    }),
    ...rest,
  };
}

function usedDocument({ chemistry, form, dose, added, rest }: UsedRow): JobDocument {
  return { ...rest, ...said({ chemistry, form, dose: quantityText(dose) ?? "", added }) };
}

function said(entries: Readonly<Record<string, string>>): JobDocument {
  return Object.fromEntries(Object.entries(entries).filter(([, text]) => text !== ""));
}

/** A part of the document, unless there is nothing in it. */
function part(key: string, value: object): JobDocument {
  return Object.keys(value).length === 0 ? {} : { [key]: value };
}

/** True when a kept object has the shape of today's record. */
export function isComplaint(found: unknown): found is ComplaintDraft {
  if (typeof found !== "object" || found === null) return false;
  const { job, used, seen, causes, rest } = found as Partial<ComplaintDraft>;
  return (
    isDraft(job) &&
    Array.isArray(used) &&
    used.every((row) => typeof row === "object" && "dose" in row) &&
    [seen, causes, rest].every((one) => typeof one === "object")
  );
}
