import type { ReactElement } from "react";
import type { Job, Plan } from "../../agronomy/index.ts";
import { Section } from "../form/section.tsx";
import { useSay } from "../language/language-context.ts";
import { ActiveAnswer } from "./active-answer.tsx";

interface ThreeAnswersProps {
  readonly plan: Plan;
  readonly job: Job;
  /** True while the ranges and the ways out are still worked out. */
  readonly first: boolean;
}

/** What the water does to each active as planned. */
export function ThreeAnswers({ plan, job, first }: ThreeAnswersProps): ReactElement {
  const planned = plan.programmes.find((programme) => programme.kind === "none");
  const say = useSay();
  const more = first ? ` ${say("Ranges and ways out follow in a moment.")}` : "";
  return (
    <Section
      id="section-answers"
      title="Three answers"
      lead={`${say("The tank as planned, nothing added.")}${more}`}
    >
      {plan.actives.map((verdict) => (
        <ActiveAnswer
          key={verdict.active}
          idPrefix="planned"
          verdict={verdict}
          path={planned?.path ?? []}
          tank={plan.tank}
          holdingTime_h={job.spray.holdingTime_h}
        />
      ))}
    </Section>
  );
}
