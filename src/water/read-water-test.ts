import { nearestName, shownValue } from "../units/index.ts";
import type { Issue, Read } from "../units/index.ts";
import { unknownKeys } from "./document-keys.ts";
import type { WaterTestOptions } from "./document-keys.ts";
import { waterIssue } from "./ledger.ts";
import { readReading } from "./read-reading.ts";
import type { IronForm, Reading, TestMethod, WaterTest } from "./types.ts";

/** Ways of testing a water, as written in a job. */
export const TEST_METHODS = [
  "laboratory",
  "strip",
  "drop test",
  "meter",
] as const satisfies readonly TestMethod[];

/** Forms of dissolved iron, as written in a job. */
export const IRON_FORMS = ["ferrous", "ferric"] as const satisfies readonly IronForm[];

const KEYS = ["source", "sampled", "method", "iron form", "readings"] as const;
const UNNAMED = "unnamed water";

/**
 * Reads the water block of a job: every reading with its unit brought into the internal one. All problems are
 * reported at once; unknown keys are errors with a suggestion.
 *
 * @param document the block as plain data
 * @param path where the block stands, e.g. "water"
 */
export function readWaterTest(
  document: unknown,
  path: string,
  options: WaterTestOptions = {},
): Read<WaterTest> {
  if (typeof document !== "object" || document === null || Array.isArray(document)) {
    const parts = { received: shownValue(document), expected: "a block with source and readings" };
    return { ok: false, issues: [waterIssue("block-expected", "error", path, parts)] };
  }
  const block = document as Readonly<Record<string, unknown>>;
  const issues: Issue[] = unknownKeys(block, KEYS, path);
  const source = readSource(block["source"], path, issues);
  const sampled = readDate(block["sampled"], path, issues);
  const method = readMethod(block["method"], path, issues);
  const ironForm = readIronForm(block["iron form"], path, issues);
  const readings = readReadings(block["readings"], path, options, issues);
  if (issues.some((issue) => issue.severity === "error")) return { ok: false, issues };
  return { ok: true, value: { source, sampled, method, ironForm, readings }, issues };
}

function isBlank(value: unknown): boolean {
  return value === undefined || value === null || (typeof value === "string" && value.trim() === "");
}

function readSource(value: unknown, path: string, issues: Issue[]): string {
  if (isBlank(value)) {
    issues.push(
      waterIssue("source-missing", "note", `${path}.source`, { expected: "a name such as Top bore" }),
    );
    return UNNAMED;
  }
  if (typeof value === "string") return value.trim();
  if (typeof value === "number") return String(value);
  issues.push(waterIssue("text-expected", "error", `${path}.source`, { received: shownValue(value) }));
  return UNNAMED;
}

const DAYS_IN_MONTH = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

function readDate(value: unknown, path: string, issues: Issue[]): string | null {
  if (isBlank(value)) return null;
  const match = typeof value === "string" ? /^(\d{4})-(\d{2})-(\d{2})(?:[T ].*)?$/.exec(value.trim()) : null;
  if (match !== null) {
    const [, year = "", month = "", day = ""] = match;
    const leap = Number(year) % 4 === 0 && (Number(year) % 100 !== 0 || Number(year) % 400 === 0);
    const last = month === "02" && !leap ? 28 : DAYS_IN_MONTH[Number(month) - 1];
    if (last !== undefined && Number(day) >= 1 && Number(day) <= last) return `${year}-${month}-${day}`;
  }
  const parts = { received: shownValue(value), expected: "a date written as 2026-03-02" };
  issues.push(waterIssue("date-unreadable", "error", `${path}.sampled`, parts));
  return null;
}

function readMethod(value: unknown, path: string, issues: Issue[]): TestMethod {
  const expected = TEST_METHODS.join(", ");
  if (isBlank(value)) {
    issues.push(waterIssue("method-missing", "note", `${path}.method`, { expected }));
    return "laboratory";
  }
  const name = typeof value === "string" ? value.trim().toLowerCase() : "";
  const method = TEST_METHODS.find((known) => known === name);
  if (method !== undefined) return method;
  const near = nearestName(name, TEST_METHODS);
  const hint = near === null ? {} : { hint: `Did you mean ${near}?` };
  issues.push(
    waterIssue("method-unknown", "error", `${path}.method`, {
      received: shownValue(value),
      expected,
      ...hint,
    }),
  );
  return "laboratory";
}

function readIronForm(value: unknown, path: string, issues: Issue[]): IronForm | null {
  if (isBlank(value)) return null;
  const form = IRON_FORMS.find((known) => known === value);
  if (form !== undefined) return form;
  const parts = { received: shownValue(value), expected: IRON_FORMS.join(" or ") };
  issues.push(waterIssue("iron-form-unknown", "error", `${path}.iron form`, parts));
  return null;
}

function readReadings(
  value: unknown,
  path: string,
  options: WaterTestOptions,
  issues: Issue[],
): readonly Reading[] {
  const where = `${path}.readings`;
  if (value === undefined || value === null || (Array.isArray(value) && value.length === 0)) {
    issues.push(waterIssue("readings-missing", "error", where, { expected: "at least a hardness" }));
    return [];
  }
  if (!Array.isArray(value)) {
    issues.push(waterIssue("list-expected", "error", where, { received: shownValue(value) }));
    return [];
  }
  return value.flatMap((entry: unknown, index) => {
    const read = readReading(entry, `${where}[${String(index)}]`, options);
    issues.push(...read.issues);
    return read.ok ? [read.value] : [];
  });
}
