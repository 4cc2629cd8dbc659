import type { Issue, Read } from "../units/index.ts";
import { ADDED, LOADS, PATTERNS, PLANTS } from "./complaint-types.ts";
import type { Complaint, Seen } from "./complaint-types.ts";
import { IssueList, describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields } from "./job-fields.ts";
import { readJob } from "./job.ts";
import type { TradeData } from "./trade-data.ts";

/** Version of the record of a complaint that is read. */
export const COMPLAINT_VERSION = 1;

const MARK = "hardstand-complaint";
/** Keys a record shares with a job, read by the job's own reader. */
const JOB_KEYS = ["title", "water", "spray", "mix", "partners", "site"];
const KEYS = [MARK, ...JOB_KEYS, "used", "seen", "checked"];
const USED_KEYS = ["chemistry", "form", "dose", "added"];

/**
 * Reads the record of an application that failed.
 *
 * @param document plain data of unknown shape
 * @returns the record in internal units, or every problem at once, each with its path
 */
export function readComplaint(document: unknown, { trade }: { readonly trade: TradeData }): Read<Complaint> {
  const issues = new IssueList();
  const top = openFields(document, "", KEYS, issues);
  if (top === null) return { ok: false, issues: issues.all };
  if (
    !isMissing(top, MARK, `${MARK}: ${String(COMPLAINT_VERSION)}`, issues) &&
    top.get(MARK) !== COMPLAINT_VERSION
  )
    issues.add("version-unknown", MARK, {
      received: describe(top.get(MARK)),
      expected: String(COMPLAINT_VERSION),
    });
  const used = readUsed(top, issues);
  const causes = trade.complaintCauses.map(({ id }) => id);
  const checked =
    top.get("checked") === undefined
      ? null
      : openFields(top.get("checked"), "checked", ["excluded", "found"], issues);
  const excluded = readCauses(checked, "excluded", causes, issues);
  const found = readCauses(checked, "found", causes, issues);
  const seen = readSeen(top, issues);
  const asJob: Record<string, unknown> = { hardstand: 1, conditioners: used.map(({ choice }) => choice) };
  for (const key of JOB_KEYS) if (top.get(key) !== undefined) asJob[key] = top.get(key);
  const job = readJob(asJob, { trade });
  const all = [...issues.all, ...inRecord(job.issues)];
  if (!job.ok || issues.blocks) return { ok: false, issues: all };
  const added = used.map(({ added: when }) => when);
  return {
    ok: true,
    value: { title: job.value.title, job: job.value, added, seen, excluded, found },
    issues: all,
  };
}

/** Issues of the job's reader with the paths of the record, each once. */
function inRecord(issues: readonly Issue[]): readonly Issue[] {
  const told = new Map<string, Issue>();
  for (const issue of issues) {
    const path = issue.path
      .replace(/^conditioners/, "used")
      .replace(/^(used\[\d+\])\.(?:least|most) dose$/, "$1.dose");
    const key = `${issue.code} ${path}`;
    if (!told.has(key)) told.set(key, { ...issue, path });
  }
  return [...told.values()];
}

interface UsedEntry {
  /** As a job's conditioner whose least and most dose are the one used. */
  readonly choice: unknown;
  readonly added: Complaint["added"][number];
}

function readUsed(top: Fields, issues: IssueList): readonly UsedEntry[] {
  const list = top.get("used");
  if (list === undefined) return [];
  if (!Array.isArray(list)) {
    issues.add("list-expected", "used", {
      received: describe(list),
      expected: "the conditioners that went in",
    });
    return [];
  }
  return list.map((entry: unknown, index): UsedEntry => {
    const path = `used[${String(index)}]`;
    const fields = openFields(entry, path, USED_KEYS, issues);
    if (fields === null) return { choice: {}, added: null };
    isMissing(fields, "dose", "a dose such as 1 kg/100 L", issues);
    const choice: Record<string, unknown> = {};
    for (const key of ["chemistry", "form"]) if (fields.get(key) !== undefined) choice[key] = fields.get(key);
    const dose = fields.get("dose");
    if (dose !== undefined) Object.assign(choice, { "least dose": dose, "most dose": dose });
    return { choice, added: readChoice(fields, "added", ADDED, issues) };
  });
}

function readSeen(top: Fields, issues: IssueList): Seen {
  const fields =
    top.get("seen") === undefined
      ? null
      : openFields(top.get("seen"), "seen", ["pattern", "plants", "loads"], issues);
  if (fields === null) return { pattern: null, plants: null, loads: null };
  return {
    pattern: readChoice(fields, "pattern", PATTERNS, issues),
    plants: readChoice(fields, "plants", PLANTS, issues),
    loads: readChoice(fields, "loads", LOADS, issues),
  };
}

function readChoice<T extends string>(
  fields: Fields,
  key: string,
  choice: readonly T[],
  issues: IssueList,
): T | null {
  const text = textOf(fields, key, issues);
  if (text === null) return null;
  const found = choice.find((one) => one === text.toLowerCase());
  if (found === undefined)
    issues.add("choice-unknown", fields.at(key), { received: text, expected: choice.join(", ") });
  return found ?? null;
}

function readCauses(
  checked: Fields | null,
  key: string,
  causes: readonly string[],
  issues: IssueList,
): readonly string[] {
  const list = checked?.get(key);
  if (checked === null || list === undefined) return [];
  if (!Array.isArray(list)) {
    issues.add("list-expected", checked.at(key), { received: describe(list), expected: causes.join(", ") });
    return [];
  }
  return list.flatMap((entry: unknown, index): readonly string[] => {
    const cause =
      typeof entry === "string" ? causes.find((one) => one === entry.trim().toLowerCase()) : undefined;
    if (cause !== undefined) return [cause];
    const parts = { received: describe(entry), expected: causes.join(", ") };
    issues.add("choice-unknown", `${checked.at(key)}[${String(index)}]`, parts);
    return [];
  });
}
