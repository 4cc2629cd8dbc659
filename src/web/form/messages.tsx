import type { ReactElement, ReactNode } from "react";
import type { WordedIssue } from "../engine/messages.ts";

interface IssueTextProps {
  readonly severity: WordedIssue["severity"];
  readonly words: string;
  /** Read out at once: for what follows from something just done. */
  readonly alert?: boolean;
}

/** One message in the way its severity is shown. */
export function IssueText({ severity, words, alert = false }: IssueTextProps): ReactElement {
  return (
    <p className={`message message-${severity}`} role={alert ? "alert" : undefined}>
      {words}
    </p>
  );
}

/** Issues in words, the worst first. */
export function IssueList({ issues }: { issues: readonly WordedIssue[] }): ReactNode {
  const rank = { error: 0, warning: 1, note: 2 };
  return [...issues]
    .sort((a, b) => rank[a.severity] - rank[b.severity])
    .map((issue) => (
      <IssueText key={`${issue.path} ${issue.words}`} severity={issue.severity} words={issue.words} />
    ));
}
