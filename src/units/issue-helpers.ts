import type { Issue, Read, Severity } from "./issue.ts";
import type { UnitsIssueCode } from "./issue-codes.ts";

type Parts = Partial<Pick<Issue, "received" | "expected" | "hint">>;

/** An issue of this layer; an error unless said otherwise. */
export function unitsIssue(
  code: UnitsIssueCode,
  path: string,
  parts: Parts = {},
  severity: Severity = "error",
): Issue {
  return { code, path, severity, ...parts };
}

/** A failed read with one issue. */
export function failed(
  code: UnitsIssueCode,
  path: string,
  parts: Parts = {},
): { readonly ok: false; readonly issues: readonly Issue[] } {
  return { ok: false, issues: [unitsIssue(code, path, parts)] };
}

/** A successful read. */
export function done<T>(value: T, issues: readonly Issue[] = []): Read<T> {
  return { ok: true, value, issues };
}
