import type { ReactElement } from "react";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import { useSourceName } from "./sources-context.ts";
import type { Evidence as EvidenceClass, RuleVerdict } from "../../agronomy/index.ts";

/** How a statement is known, in words beside it. */
export function Evidence({ of: evidence }: { of: EvidenceClass }): ReactElement {
  const { words } = useLanguage();
  return (
    <span className={`evidence evidence-${evidence.replace(" ", "-")}`}>{words.evidence[evidence]}</span>
  );
}

/** A source as a link to its entry in the list at the end of the page. */
export function SourceLink({ source }: { source: string }): ReactElement {
  const { page } = useLanguage();
  return (
    <a className="source-link" href={`#source-${source}`}>
      {page(useSourceName(source))}
    </a>
  );
}

/** A published rule or a practice that applies here. */
export function Rule({ rule }: { rule: RuleVerdict }): ReactElement {
  const say = sayIn(useLanguage());
  const word = { block: say("Blocks"), warn: say("Warning"), note: say("Note") }[rule.level];
  return (
    <li className={`rule rule-${rule.level}`}>
      <p>
        {rule.level === "warn" && <WarningMark />}
        <strong>{word}.</strong> <Text of={rule.text} /> <Evidence of={rule.evidence} />{" "}
        <SourceLink source={rule.source} />
      </p>
      {rule.contradictedBy !== null && (
        <p className="about">
          {say("Contradicted:")} <Text of={rule.contradictedBy} />
        </p>
      )}
    </li>
  );
}

/** The triangle that goes with every warning. */
export function WarningMark(): ReactElement {
  return (
    <svg className="mark" viewBox="0 0 20 18" width="20" height="18" aria-hidden="true">
      <path
        d="M10 1.5 L19 17 H1 Z"
        fill="none"
        stroke="currentColor"
        strokeWidth="2"
        strokeLinejoin="round"
      />
      <path d="M10 7 V11.5 M10 13.4 V15" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}
