import type { ReactElement } from "react";
import type { WordedIssue } from "../engine/messages.ts";
import type { Draft } from "../job/draft.ts";
import { fieldId } from "./form-context.ts";
import { IssueList } from "./messages.tsx";
import { useLanguage, useSay } from "../language/language-context.ts";
import { placeWords } from "./place-words.ts";

interface WaitingProps {
  readonly answer: {
    readonly failed: boolean;
    readonly blocked: boolean;
    readonly issues: readonly WordedIssue[];
  };
  /** True while an earlier answer still stands below. */
  readonly hasAnswer: boolean;
  readonly draft: Draft;
}

/** What the answer waits for: the issues that block it, each a link to its field. */
export function Waiting({ answer, hasAnswer, draft }: WaitingProps): ReactElement {
  const { failed, blocked, issues } = answer;
  const { phrases } = useLanguage();
  const say = useSay();
  const errors = issues.filter((issue) => issue.severity === "error");
  const elsewhere = issues.filter(
    (issue) => issue.severity === "warning" && placeWords(issue.path, draft, say, phrases.name) === null,
  );
  return (
    <>
      {failed && (
        <p className="message message-error">
          {say("A fault in the program stopped the sums. What you typed is safe.")}
        </p>
      )}
      {blocked && (
        <div className="waiting" data-testid="waiting">
          <p>
            <strong>{say(hasAnswer ? "Last good result below." : "The answer will stand here.")}</strong>{" "}
            {say("Waiting for:")}
          </p>
          <ul>
            {errors.map((issue) => (
              <li key={`${issue.path} ${issue.words}`}>
                <a
                  href={`#${fieldId(issue.path)}`}
                  onClick={(event) => {
                    event.preventDefault();
                    focusField(issue.path);
                  }}
                >
                  {placeWords(issue.path, draft, say, phrases.name) ?? say("The job")}
                </a>
                : {issue.words}
              </li>
            ))}
          </ul>
        </div>
      )}
      <IssueList issues={elsewhere} />
    </>
  );
}

/** The field a path is typed into: its own, or that of the nearest path above or below it. */
function fieldOf(path: string): HTMLElement | null {
  const own = window.document.getElementById(fieldId(path));
  if (own !== null) return own;
  const above = path.replace(/[.[][^.[]*$/, "");
  const sibling = window.document.querySelector<HTMLElement>(`[id^="${fieldId(path)}-"]:is(input, select)`);
  return sibling ?? (above === path ? null : fieldOf(above));
}

/** Goes to the field of a path, opening what it is folded into. */
function focusField(path: string): void {
  const field = fieldOf(path);
  for (let fold = field?.closest("details"); fold != null; fold = fold.parentElement?.closest("details"))
    fold.open = true;
  field?.focus();
  field?.scrollIntoView({ block: "center" });
}
