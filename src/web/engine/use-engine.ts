import { useCallback, useEffect, useRef, useState } from "react";
import type { JobDocument } from "../job/to-document.ts";
import type { SheetOptions } from "../../water/index.ts";
import type {
  AnswerTo,
  Catalogue,
  EngineAnswer,
  EngineReply,
  EngineRequest,
  SheetInput,
  SheetView,
  WordedIssue,
} from "./messages.ts";

/** How long [ms] the page waits after a keystroke before it asks again. */
const DEBOUNCE_MS = 150;

/** What the page knows from the engine. */
export interface EngineView<K extends keyof AnswerTo = "plan"> {
  readonly catalogue: Catalogue | null;
  /** Issues of the latest document answered. */
  readonly issues: readonly WordedIssue[];
  /** The last answer that could be computed; it stays while an issue blocks a newer one. */
  readonly answer: AnswerTo[K] | null;
  /** True when `answer` belongs to an earlier document than the one on the form. */
  readonly waiting: boolean;
  /** True when the latest answer was blocked by an issue. */
  readonly blocked: boolean;
  /** True when the engine broke down: a fault in the program, not in the job. */
  readonly failed: boolean;
  readonly elapsed_ms: number | null;
  /** Reads a laboratory sheet. */
  readSheet(input: SheetInput, options: SheetOptions): Promise<SheetView>;
}

type SheetReply = Extract<EngineReply, { type: "sheet" }>;

/** An answer is kept with the job it belongs to, so that it is never shown for another one. */
interface KeptAnswer<K extends keyof AnswerTo> {
  readonly job: string;
  readonly answer: AnswerTo[K];
}

/**
 * Keeps an engine at work on the document: one question at a time, the newest next, stale answers dropped.
 *
 * @param kind what the document is; it never changes
 * @param job tells one job from another: the last good result is only shown for the job it was made for
 */
export function useEngine<K extends keyof AnswerTo>(
  kind: K,
  document: JobDocument,
  job: string,
): EngineView<K> {
  const worker = useRef<Worker | null>(null);
  const newest = useRef(0);
  const busy = useRef(false);
  const next = useRef<EngineRequest | null>(null);
  const lastCall = useRef(0);
  const reading = useRef(new Map<number, (reply: SheetReply) => void>());
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [answer, setAnswer] = useState<EngineAnswer<K> | null>(null);
  const [kept, setKept] = useState<KeptAnswer<K> | null>(null);
  const currentJob = useRef(job);
  useEffect(() => {
    currentJob.current = job;
  }, [job]);
  const [asked, setAsked] = useState(0);
  const [failed, setFailed] = useState(false);

  const ask = useCallback((request: EngineRequest) => {
    if (busy.current) {
      next.current = request;
      return;
    }
    busy.current = true;
    worker.current?.postMessage(request);
  }, []);

  useEffect(() => {
    const started = new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" });
    started.onmessage = (event: MessageEvent<EngineReply>) => {
      const reply = event.data;
      if (reply.type === "catalogue") setCatalogue(reply.catalogue);
      else if (reply.type === "sheet") {
        reading.current.get(reply.id)?.(reply);
        reading.current.delete(reply.id);
      } else if (isAnswer(reply, kind)) {
        busy.current = false;
        if (reply.id === newest.current) {
          setFailed(false);
          setAnswer(reply);
          if (reply.answer !== null) setKept({ job: currentJob.current, answer: reply.answer });
        }
        const waiting = next.current;
        next.current = null;
        if (waiting !== null) ask(waiting);
      }
    };
    started.onerror = () => {
      busy.current = false;
      setFailed(true);
    };
    worker.current = started;
    return () => {
      started.terminate();
      worker.current = null;
      busy.current = false;
    };
  }, [ask, kind]);

  const text = JSON.stringify(document);
  useEffect(() => {
    const first = newest.current === 0;
    newest.current += 1;
    const id = newest.current;
    setAsked(id);
    const timer = setTimeout(
      () => {
        ask({ type: kind, id, document: JSON.parse(text) as JobDocument });
      },
      first ? 0 : DEBOUNCE_MS,
    );
    return () => {
      clearTimeout(timer);
    };
  }, [text, ask, kind]);

  const readSheet = useCallback(
    (input: SheetInput, options: SheetOptions) =>
      new Promise<SheetView>((resolve) => {
        lastCall.current += 1;
        const id = lastCall.current;
        reading.current.set(id, (reply) => {
          resolve(reply.view);
        });
        worker.current?.postMessage({ type: "sheet", id, input, options } satisfies EngineRequest);
      }),
    [],
  );

  const blocked = answer !== null && answer.answer === null;
  return {
    catalogue,
    issues: answer?.issues ?? [],
    answer: kept?.job === job ? kept.answer : null,
    waiting: answer === null || answer.id !== asked || blocked,
    blocked,
    failed,
    elapsed_ms: answer?.elapsed_ms ?? null,
    readSheet,
  };
}

function isAnswer<K extends keyof AnswerTo>(
  reply: EngineReply,
  kind: K,
): reply is EngineAnswer<K> & EngineReply {
  return reply.type === kind;
}
