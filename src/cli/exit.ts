import { wordIssue } from "../report/index.ts";
import type { Issue } from "../units/index.ts";
import { shownName } from "./document.ts";
import type { CliIo } from "./io.ts";

/** Exit codes of the command line; checks from outside rely on them. */
export const EXIT = { done: 0, failed: 1, badInput: 2, noneFound: 3, outsideRange: 4 } as const;

/** A number that can stand in JSON; null when there is none. */
export function finiteOrNull(value: number | undefined): number | null {
  return value !== undefined && Number.isFinite(value) ? value : null;
}

/** Says every issue about a document on the talk channel, errors first. */
export function sayIssues(issues: readonly Issue[], name: string, io: CliIo): void {
  const errors = issues.filter((issue) => issue.severity === "error");
  const others = issues.filter((issue) => issue.severity !== "error");
  if (errors.length > 0) {
    const things = errors.length === 1 ? "1 thing" : `${errors.length} things`;
    io.stderr(`${shownName(name)}: ${things} to mend.\n`);
  }
  for (const issue of [...errors, ...others]) io.stderr(`- ${wordIssue(issue)}\n`);
}
