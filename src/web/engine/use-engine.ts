import { useCallback, useEffect, useRef, useState } from "react";
import type { JobDocument } from "../job/to-document.ts";
import type { EngineReply, FirstAnswer, Planned, WordedIssue } from "./messages.ts";
import { useEngineWorker, useQuestion } from "./use-engine-worker.ts";
import type { EngineLine, EngineNews } from "./use-engine-worker.ts";

/** What the page knows from the engine. */
export interface EngineView extends Pick<EngineLine, "catalogue" | "failed" | "readSheet"> {
  /** Issues of the latest document answered. */
  readonly issues: readonly WordedIssue[];
  /** The last plan that could be computed; it stays while an issue blocks a newer one. */
  readonly planned: Planned | null;
  /** The tank as planned, of the document on the form, while its ways out are still worked out; else null. */
  readonly first: FirstAnswer | null;
  /** True when `planned` belongs to an earlier document than the one on the form. */
  readonly waiting: boolean;
  /** True when the latest answer was blocked by an issue. */
  readonly blocked: boolean;
  readonly elapsed_ms: number | null;
}

type PlanReply = Extract<EngineReply, { type: "plan" }>;
type FirstReply = Extract<EngineReply, { type: "first" }>;

/** An answer is kept with the job it belongs to, so that it is never shown for another one. */
interface Kept<T> {
  readonly job: string;
  readonly value: T;
}

/** What the engine has answered, by the number of the question. */
interface Answers {
  readonly last: PlanReply | null;
  readonly first: (Kept<FirstAnswer> & { readonly id: number; readonly elapsed_ms: number }) | null;
  readonly planned: Kept<Planned> | null;
}

const NOTHING: Answers = { last: null, first: null, planned: null };

/** Takes an answer in; one to an older question is dropped. */
function takeIn(answers: Answers, reply: PlanReply | FirstReply, job: string): Answers {
  if (reply.type === "first") {
    const { id, elapsed_ms, plan } = reply;
    return { ...answers, first: { id, elapsed_ms, job, value: { plan, job: reply.job } } };
  }
  const planned = reply.planned === null ? answers.planned : { job, value: reply.planned };
  return { last: reply, first: null, planned };
}

/**
 * Keeps an engine at work on the document: the newest question, stale answers dropped.
 *
 * @param job tells one job from another: the last good result is only shown for the job it was made for
 */
export function useEngine(document: JobDocument, job: string): EngineView {
  const [answers, setAnswers] = useState(NOTHING);
  const currentJob = useRef(job);
  useEffect(() => {
    currentJob.current = job;
  }, [job]);
  const { catalogue, failed, readSheet, ask } = useEngineWorker((reply: EngineNews) => {
    if ((reply.type === "plan" || reply.type === "first") && question.isNewest(reply.id))
      setAnswers((before) => takeIn(before, reply, currentJob.current));
  });
  const put = useCallback(
    (id: number, plain: JobDocument) => {
      ask({ type: "plan", id, document: plain });
    },
    [ask],
  );
  const question = useQuestion(document, put);
  const { last, first, planned } = answers;
  const blocked = last !== null && last.planned === null;
  return {
    catalogue,
    issues: last?.issues ?? [],
    planned: planned?.job === job ? planned.value : null,
    first: first?.job === job ? first.value : null,
    waiting: blocked || !question.stands(last?.id),
    blocked,
    failed,
    elapsed_ms: last?.elapsed_ms ?? null,
    readSheet,
  };
}
