import { useCallback, useEffect, useRef, useState } from "react";
import type { JobDocument } from "../job/to-document.ts";
import type { SheetOptions } from "../../water/index.ts";
import type {
  Catalogue,
  EngineReply,
  EngineRequest,
  FirstAnswer,
  Planned,
  SheetInput,
  SheetView,
  WordedIssue,
} from "./messages.ts";

/** How long [ms] the page waits after a keystroke before it asks again. */
const DEBOUNCE_MS = 50;

/** What the page knows from the engine. */
export interface EngineView {
  readonly catalogue: Catalogue | null;
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
  /** True when the engine broke down: a fault in the program, not in the job. */
  readonly failed: boolean;
  readonly elapsed_ms: number | null;
  /** Reads a file's text, JSON or YAML, into a document. */
  open(text: string): Promise<OpenReply>;
  /** Reads a laboratory sheet. */
  readSheet(input: SheetInput, options: SheetOptions): Promise<SheetView>;
}

type PlanReply = Extract<EngineReply, { type: "plan" }>;
type FirstReply = Extract<EngineReply, { type: "first" }>;
type OpenReply = Extract<EngineReply, { type: "opened" }>;
type SheetReply = Extract<EngineReply, { type: "sheet" }>;

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

/** The question that stands: its number, and the document it is about. */
interface Question {
  readonly id: number;
  readonly text: string;
}

/**
 * Keeps an engine at work on the document: the newest question, stale answers dropped.
 *
 * @param job tells one job from another: the last good result is only shown for the job it was made for
 */
export function useEngine(document: JobDocument, job: string): EngineView {
  const worker = useRef<Worker | null>(null);
  const newest = useRef(0);
  const lastCall = useRef(0);
  const opening = useRef(new Map<number, (reply: OpenReply) => void>());
  const reading = useRef(new Map<number, (reply: SheetReply) => void>());
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [answers, setAnswers] = useState(NOTHING);
  const currentJob = useRef(job);
  useEffect(() => {
    currentJob.current = job;
  }, [job]);
  const [asked, setAsked] = useState<Question | null>(null);
  const [failed, setFailed] = useState(false);

  useEffect(() => {
    const started = new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" });
    started.onmessage = (event: MessageEvent<EngineReply>) => {
      const reply = event.data;
      if (reply.type === "catalogue") setCatalogue(reply.catalogue);
      else if (reply.type === "opened") {
        opening.current.get(reply.id)?.(reply);
        opening.current.delete(reply.id);
      } else if (reply.type === "sheet") {
        reading.current.get(reply.id)?.(reply);
        reading.current.delete(reply.id);
      } else if (reply.type !== "flasks" && reply.id === newest.current) {
        setFailed(false);
        setAnswers((before) => takeIn(before, reply, currentJob.current));
      }
    };
    started.onerror = () => {
      setFailed(true);
    };
    worker.current = started;
    return () => {
      started.terminate();
      worker.current = null;
    };
  }, []);

  const text = JSON.stringify(document);
  useEffect(() => {
    const first = newest.current === 0;
    newest.current += 1;
    const id = newest.current;
    setAsked({ id, text });
    const timer = setTimeout(
      () => {
        const request: EngineRequest = { type: "plan", id, document: JSON.parse(text) as JobDocument };
        worker.current?.postMessage(request);
      },
      first ? 0 : DEBOUNCE_MS,
    );
    return () => {
      clearTimeout(timer);
    };
  }, [text]);

  const open = useCallback(
    (contents: string) =>
      new Promise<OpenReply>((resolve) => {
        lastCall.current += 1;
        const id = lastCall.current;
        opening.current.set(id, resolve);
        worker.current?.postMessage({ type: "open", id, text: contents } satisfies EngineRequest);
      }),
    [],
  );

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

  const { last, first, planned } = answers;
  const blocked = last !== null && last.planned === null;
  return {
    catalogue,
    issues: last?.issues ?? [],
    planned: planned?.job === job ? planned.value : null,
    first: first?.job === job ? first.value : null,
    // The question is put after the page is drawn, so a new document waits even before it has a number.
    waiting: last === null || last.id !== asked?.id || asked.text !== text || blocked,
    blocked,
    failed,
    elapsed_ms: last?.elapsed_ms ?? null,
    open,
    readSheet,
  };
}
