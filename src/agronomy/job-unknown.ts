import type { IssueList, JobIssueCode } from "./job-fields.ts";

/** Says that a name is not in the data, with the nearest ones. */
export function addUnknown(
  code: JobIssueCode,
  path: string,
  received: string,
  suggestions: readonly string[],
  known: readonly string[],
  issues: IssueList,
): void {
  issues.add(code, path, {
    received,
    expected: `one of: ${known.join("; ")}`,
    ...(suggestions.length === 0
      ? {}
      : { hint: `Did you mean ${suggestions.map((one) => `“${one}”`).join(" or ")}?` }),
  });
}
