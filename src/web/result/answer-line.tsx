import type { ReactElement } from "react";
import type { Programme } from "../../agronomy/index.ts";
import type { Planned } from "../engine/messages.ts";
import { Evidence } from "./evidence.tsx";
import { costWords, inHundred, leastFreeOf } from "./words.ts";
import { programmeWords } from "./ways-out.tsx";

/** The answer at a glance: what is free as planned and with the row picked, each with its figure first. */
export function AnswerLine({ planned, picked }: { planned: Planned; picked: Programme }): ReactElement {
  const { plan, aim } = planned;
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
      {picked.kind === "none" && plan.chosen === null && <p>Nothing tried meets the aim.</p>}
    </div>
  );
}
