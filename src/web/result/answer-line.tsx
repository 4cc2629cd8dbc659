import type { ReactElement } from "react";
import type { Job, Programme } from "../../agronomy/index.ts";
import type { FirstAnswer, Planned } from "../engine/messages.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import { DotRow } from "./dots.tsx";
import { Evidence } from "./evidence.tsx";
import { costWords, inHundred, leastFreeOf, placeWords, sureWords } from "./words.ts";
import { programmeWords } from "./programme-words.ts";

/** How sure the aim is met, in a sentence and in dots that can be counted. */
function Sure({ programme, aim }: { programme: Programme; aim: Job["aim"] }): ReactElement | null {
  const { confidence } = programme;
  const language = useLanguage();
  const say = sayIn(language);
  const sure = sureWords(confidence, language);
  if (confidence === null || sure === null) return null;
  return (
    <>
      <p>
        {say("In {sure} cases that fit what you know, at least {share} in 100 stays free {where}.", {
          sure,
          share: inHundred(aim.freeShare, language),
          where: placeWords(aim.where, language),
        })}
      </p>
      <DotRow share={confidence} />
    </>
  );
}

interface AnswerLineProps {
  readonly planned: Planned;
  /** The tank as planned of a newer document, while its ways out are still worked out. */
  readonly first: FirstAnswer | null;
  readonly picked: Programme;
}

/** The answer at a glance: what is free as planned and with the row picked, each with its figure first. */
export function AnswerLine({ planned, first, picked }: AnswerLineProps): ReactElement {
  const { plan, job } = planned;
  const { aim } = job;
  const newest = first ?? planned;
  const before = leastFreeOf(newest.plan.actives, newest.job.aim.where);
  const after = leastFreeOf(picked.actives, aim.where);
  const language = useLanguage();
  const say = sayIn(language);
  const where = placeWords(newest.job.aim.where, language);
  const of =
    newest.plan.actives.length > 1 && before !== null ? language.phrases.name(before.verdict.name) : null;
  return (
    <div className="answer-line">
      <p>
        <Share free={before?.free ?? null} />{" "}
        {of === null
          ? say("free {where}, nothing added", { where })
          : say("free of {active} {where}, nothing added", { active: of, where })}{" "}
        <Evidence of="computed" />
      </p>
      {picked.kind !== "none" && (
        <p>
          <Share free={after?.free ?? null} />{" "}
          {say("with {way}, {cost}", {
            way: programmeWords(picked, language),
            cost: costWords(picked.cost.perHa, language),
          })}{" "}
          <Evidence of="computed" />
        </p>
      )}
      <Sure programme={picked} aim={aim} />
      {picked.kind === "none" && plan.chosen === null && <p>{say("Nothing tried meets the aim.")}</p>}
    </div>
  );
}

/** A free share as a large figure, or that it is not known. */
function Share({ free }: { free: number | null }): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  if (free === null) return <span className="figure">{say("Not known")}</span>;
  return (
    <>
      <span className="figure">{inHundred(free, language)}</span>
      <span className="unit"> {say("in 100")}</span>
    </>
  );
}
