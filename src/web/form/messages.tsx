import type { ReactNode } from "react";
import type { WordedIssue } from "../engine/messages.ts";

/** Issues in words, the worst first. */
export function IssueList({ issues }: { issues: readonly WordedIssue[] }): ReactNode {
  const rank = { error: 0, warning: 1, note: 2 };
  return [...issues]
    .sort((a, b) => rank[a.severity] - rank[b.severity])
    .map((issue) => (
      <p key={`${issue.path} ${issue.words}`} className={`message message-${issue.severity}`}>
        {issue.words}
      </p>
    ));
}
