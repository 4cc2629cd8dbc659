import { useCallback, useState } from "react";
import type { Answered, EngineReply, WordedIssue } from "../engine/messages.ts";
import { useEngineWorker, useQuestion } from "../engine/use-engine-worker.ts";
import type { EngineLine } from "../engine/use-engine-worker.ts";
import type { JobDocument } from "../job/to-document.ts";

/** What the screen knows of its record. */
export interface ComplaintEngineView extends Pick<EngineLine, "catalogue" | "failed" | "readSheet"> {
  readonly issues: readonly WordedIssue[];
  /** The last answer that could be computed; it stays while an issue blocks a newer one. */
  readonly answered: Answered | null;
  readonly waiting: boolean;
  readonly blocked: boolean;
}

type Reply = Extract<EngineReply, { type: "complaint" }>;

/** Keeps an engine at work on the record of a complaint. */
export function useComplaintEngine(document: JobDocument): ComplaintEngineView {
  const [last, setLast] = useState<Reply | null>(null);
  const [answered, setAnswered] = useState<Answered | null>(null);
  const { catalogue, failed, readSheet, ask } = useEngineWorker((reply) => {
    if (reply.type !== "complaint" || !question.isNewest(reply.id)) return;
    setLast(reply);
    if (reply.answered !== null) setAnswered(reply.answered);
  });
  const put = useCallback(
    (id: number, plain: JobDocument) => {
      ask({ type: "complaint", id, document: plain });
    },
    [ask],
  );
  const question = useQuestion(document, put);
  const blocked = last !== null && last.answered === null;
  const waiting = blocked || !question.stands(last?.id);
  return { catalogue, failed, readSheet, issues: last?.issues ?? [], answered, waiting, blocked };
}
