import type { ReactElement } from "react";
import type { Job, Programme } from "../../agronomy/index.ts";
import type { Planned } from "../engine/messages.ts";
import { DotRow } from "./dots.tsx";
import { Evidence } from "./evidence.tsx";
import { costWords, inHundred, leastFreeOf, sureWords } from "./words.ts";
import { programmeWords } from "./ways-out.tsx";

/** How sure the aim is met, in a sentence and in dots that can be counted. */
function Sure({ programme, aim }: { programme: Programme; aim: Job["aim"] }): ReactElement | null {
  const { confidence } = programme;
  const sure = sureWords(confidence);
  if (confidence === null || sure === null) return null;
  return (
    <>
      <p>
        In {sure} cases that fit what you know, at least {inHundred(aim.freeShare)} in 100 stays free{" "}
        {aim.where}.
      </p>
      <DotRow share={confidence} />
    </>
  );
}

/** The answer at a glance: what is free as planned and with the row picked, each with its figure first. */
export function AnswerLine({ planned, picked }: { planned: Planned; picked: Programme }): ReactElement {
  const { plan, job } = planned;
  const { aim } = job;
  const before = leastFreeOf(plan.actives, aim.where);
  const after = leastFreeOf(picked.actives, aim.where);
  const several = plan.actives.length > 1;
  const name = (of: typeof before): string => (several && of !== null ? ` of ${of.verdict.name}` : "");
  return (
    <div className="answer-line">
      <p>
        <span className="figure">{before === null ? "Not known" : inHundred(before.free)}</span>
        {before !== null && <span className="unit"> in 100</span>} free{name(before)} {aim.where}, nothing
        added <Evidence of="computed" />
      </p>
      {picked.kind !== "none" && (
        <p>
          <span className="figure">{after === null ? "Not known" : inHundred(after.free)}</span>
          {after !== null && <span className="unit"> in 100</span>} with {programmeWords(picked)},{" "}
          {costWords(picked.cost.perHa)} <Evidence of="computed" />
        </p>
      )}
      <Sure programme={picked} aim={aim} />
      {picked.kind === "none" && plan.chosen === null && <p>Nothing tried meets the aim.</p>}
    </div>
  );
}
