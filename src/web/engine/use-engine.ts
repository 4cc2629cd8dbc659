import { startTransition, useCallback, useLayoutEffect, useMemo, useRef, useState } from "react";
import { useLanguage } from "../language/language-context.ts";
import type { JobDocument } from "../job/to-document.ts";
import { startStandBy } from "./stand-by.ts";
import type { StandBy } from "./stand-by.ts";
import { startEngine } from "./start-engine.ts";
import type { SheetOptions } from "../../water/index.ts";
import type {
  AboutReply,
  AboutRequest,
  AnswerTo,
  Catalogue,
  EngineAnswer,
  EngineReply,
  EngineRequest,
  FirstAnswer,
  LanguageRequest,
  SheetInput,
  SheetView,
  WordedIssue,
} from "./messages.ts";

/** What the page knows from the engine. */
export interface EngineView<K extends keyof AnswerTo = "plan"> {
  readonly catalogue: Catalogue | null;
  /** Issues of the latest document answered. */
  readonly issues: readonly WordedIssue[];
  /** The last answer that could be computed; it stays while an issue blocks a newer one. */
  readonly answer: AnswerTo[K] | null;
  /** The tank as planned, of the document on the form, while its ways out are still worked out; else null. */
  readonly first: FirstAnswer | null;
  /** True when `answer` belongs to an earlier document than the one on the form. */
  readonly waiting: boolean;
  /** True when the latest answer was blocked by an issue. */
  readonly blocked: boolean;
  /** True when the engine broke down: a fault in the program, not in the job. */
  readonly failed: boolean;
  readonly elapsed_ms: number | null;
  /** Reads a laboratory sheet. */
  readSheet(input: SheetInput, options: SheetOptions): Promise<SheetView>;
  /** Asks about a programme of the plan shown; null when that plan is no longer at hand. */
  askAbout(about: AboutRequest): Promise<AboutReply | null>;
}

/** Where an answer stands, in a word for the page's marks. */
export function stateWord({
  failed,
  blocked,
  waiting,
}: Pick<EngineView, "failed" | "blocked" | "waiting">): "working" | "blocked" | "done" | "failed" {
  if (failed) return "failed";
  if (blocked) return "blocked";
  return waiting ? "working" : "done";
}

type FirstReply = Extract<EngineReply, { type: "first" }>;
type SheetReply = Extract<EngineReply, { type: "sheet" }>;

/** An answer is kept with the job it belongs to, so that it is never shown for another one. */
interface Kept<T> {
  readonly job: string;
  readonly value: T;
}

/** What the engine has answered. */
interface Answers<K extends keyof AnswerTo> {
  readonly last: EngineAnswer<K> | null;
  /** The question that `last` answers. */
  readonly answered: string | null;
  readonly first: Kept<FirstAnswer> | null;
  readonly good: Kept<AnswerTo[K]> | null;
}

/** Takes an answer to the standing question in. */
function takeIn<K extends keyof AnswerTo>(
  before: Answers<K>,
  reply: EngineAnswer<K> | FirstReply,
  { job, text }: Question,
): Answers<K> {
  if ("plan" in reply) {
    // The whole answer to the same question is there already, from the other engine.
    if (before.answered === text) return before;
    return { ...before, first: { job, value: { plan: reply.plan, job: reply.job } } };
  }
  const good = reply.answer === null ? before.good : { job, value: reply.answer };
  const issues = unlessSame(before.last?.issues ?? NONE, reply.issues);
  // Of a first answer the whole one is still to come.
  const answered = reply.isWhole ? text : before.answered;
  return { last: { ...reply, issues }, answered, first: null, good };
}

const NONE: readonly WordedIssue[] = [];

/**
 * How long [ms] nothing is typed before a whole plan is begun, where first answers come from elsewhere: a plan that the
 * next key makes vain only keeps the first answer to that key waiting. Our choice, a little over the time between two keys.
 */
const PAUSE_MS = 250;

/** The issues as they were, where they say the same: what shows them is then not drawn anew. */
function unlessSame(before: readonly WordedIssue[], now: readonly WordedIssue[]): readonly WordedIssue[] {
  return JSON.stringify(before) === JSON.stringify(now) ? before : now;
}

/** The question that stands: its number, the job it is about, and all that its answer depends on. */
interface Question {
  readonly id: number;
  readonly job: string;
  readonly document: JobDocument;
  readonly text: string;
}

/**
 * Keeps an engine at work on the document: the newest question, stale answers dropped.
 *
 * @param kind what the document is; it never changes
 * @param job tells one job from another: the last good result is only shown for the job it was made for
 */
export function useEngine<K extends keyof AnswerTo>(
  kind: K,
  document: JobDocument,
  job: string,
): EngineView<K> {
  const { tag, pack } = useLanguage();
  const worker = useRef<Worker | null>(null);
  const standBy = useRef<StandBy | null>(null);
  const spoken = useRef<LanguageRequest>({ type: "language", tag, pack });
  const newest = useRef<Question>({ id: 0, job, document, text: "" });
  const lastCall = useRef(0);
  const reading = useRef(new Map<number, (reply: SheetReply) => void>());
  const asking = useRef(new Map<number, (reply: AboutReply | null) => void>());
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [answers, setAnswers] = useState<Answers<K>>({
    last: null,
    answered: null,
    first: null,
    good: null,
  });
  const [failed, setFailed] = useState(false);

  useLayoutEffect(() => {
    const listen = (event: MessageEvent<unknown>): void => {
      const reply = event.data as EngineReply;
      if (reply.type === "catalogue") setCatalogue(reply.catalogue);
      else if (reply.type === "sheet") {
        reading.current.get(reply.id)?.(reply);
        reading.current.delete(reply.id);
      } else if (reply.type === "about") {
        asking.current.get(reply.id)?.(reply.reply);
        asking.current.delete(reply.id);
      } else if (isAnswer(reply, kind) && reply.id === newest.current.id) {
        setFailed(false);
        const question = newest.current;
        const take = (): void => {
          setAnswers((before) => takeIn(before, reply, question));
        };
        // The first answer is short and wanted at once. The whole one is long, and a keystroke comes before it.
        if ("plan" in reply || !reply.isWhole) take();
        else startTransition(take);
      }
    };
    const started = startEngine(listen, () => {
      setFailed(true);
    });
    worker.current = started;
    // Not before somebody goes to a field: a page that is only looked at needs no second engine.
    const onField = ({ target }: FocusEvent): void => {
      if (target instanceof Element && target.matches("input, select"))
        standBy.current ??= startStandBy(listen, spoken.current, newest.current);
    };
    if (kind === "plan") window.document.addEventListener("focusin", onField);
    // Sooner than the new document is there: until then the plan would keep the processors from showing what was typed.
    const onTyped = (): void => {
      started.postMessage({ type: "rest" } satisfies EngineRequest);
    };
    window.document.addEventListener("beforeinput", onTyped);
    return () => {
      window.document.removeEventListener("focusin", onField);
      window.document.removeEventListener("beforeinput", onTyped);
      started.terminate();
      worker.current = null;
      standBy.current?.end();
      standBy.current = null;
    };
  }, [kind]);

  // The page has the words already; a language of its own would be in the worker's files a second time.
  useLayoutEffect(() => {
    const request: LanguageRequest = { type: "language", tag, pack };
    spoken.current = request;
    worker.current?.postMessage(request);
    standBy.current?.speak(request);
  }, [tag, pack, kind]);

  const text = useMemo(() => JSON.stringify({ tag, job, document }), [tag, job, document]);
  // Before the page is drawn: the engine works while it is.
  useLayoutEffect(() => {
    const id = newest.current.id + 1;
    const { job, document } = JSON.parse(text) as { job: string; document: JobDocument };
    newest.current = { id, job, document, text };
    const isFirstElsewhere = standBy.current?.ask(newest.current) ?? false;
    const ask = (): void => {
      worker.current?.postMessage({ type: kind, id, document, isFirstElsewhere } satisfies EngineRequest);
    };
    if (!isFirstElsewhere) {
      ask();
      return;
    }
    worker.current?.postMessage({ type: "over", id } satisfies EngineRequest);
    const pause = setTimeout(ask, PAUSE_MS);
    return () => {
      clearTimeout(pause);
    };
  }, [text, kind]);

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

  const askAbout = useCallback(
    (about: AboutRequest) =>
      new Promise<AboutReply | null>((resolve) => {
        lastCall.current += 1;
        const id = lastCall.current;
        asking.current.set(id, resolve);
        worker.current?.postMessage({ type: "about", id, about } satisfies EngineRequest);
      }),
    [],
  );

  const { last, answered, first, good } = answers;
  const blocked = last !== null && last.answer === null;
  return {
    catalogue,
    issues: last?.issues ?? NONE,
    answer: good?.job === job ? good.value : null,
    // Who goes back to what was answered last has the whole answer at once.
    first: first?.job === job && answered !== text ? first.value : null,
    waiting: answered !== text || blocked,
    blocked,
    failed,
    elapsed_ms: last?.elapsed_ms ?? null,
    readSheet,
    askAbout,
  };
}

function isAnswer<K extends keyof AnswerTo>(
  reply: EngineReply,
  kind: K,
): reply is (EngineAnswer<K> & EngineReply) | FirstReply {
  return reply.type === kind || reply.type === "first";
}
