import { useCallback, useEffect, useRef, useState } from "react";
import type { SheetOptions } from "../../water/index.ts";
import type { JobDocument } from "../job/to-document.ts";
import type { Catalogue, EngineReply, EngineRequest, SheetInput, SheetView } from "./messages.ts";

/** How long [ms] the page waits after a keystroke before it asks again. */
const DEBOUNCE_MS = 50;

/** An engine of a screen's own, for as long as the screen is there. */
export interface EngineLine {
  /** What the selects offer; null until the engine has started. */
  readonly catalogue: Catalogue | null;
  /** True when the engine broke down: a fault in the program, not in what was typed. */
  readonly failed: boolean;
  ask(request: EngineRequest): void;
  /** Reads a laboratory sheet. */
  readSheet(input: SheetInput, options: SheetOptions): Promise<SheetView>;
}

type SheetReply = Extract<EngineReply, { type: "sheet" }>;
/** What a screen hears of the engine besides its catalogue and its sheets. */
export type EngineNews = Exclude<EngineReply, SheetReply | { readonly type: "catalogue" }>;

/** Starts an engine, and ends it with the screen. @param onReply what the engine answers */
export function useEngineWorker(onReply: (reply: EngineNews) => void): EngineLine {
  const worker = useRef<Worker | null>(null);
  const lastSheet = useRef(0);
  const reading = useRef(new Map<number, (reply: SheetReply) => void>());
  const hear = useRef(onReply);
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    hear.current = onReply;
  });
  useEffect(() => {
    const started = new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" });
    started.onmessage = ({ data: reply }: MessageEvent<EngineReply>) => {
      if (reply.type === "catalogue") setCatalogue(reply.catalogue);
      else if (reply.type === "sheet") {
        reading.current.get(reply.id)?.(reply);
        reading.current.delete(reply.id);
      } else {
        setFailed(false);
        hear.current(reply);
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
  const ask = useCallback((request: EngineRequest) => {
    worker.current?.postMessage(request);
  }, []);
  const readSheet = useCallback(
    (input: SheetInput, options: SheetOptions) =>
      new Promise<SheetView>((resolve) => {
        lastSheet.current += 1;
        const id = lastSheet.current;
        reading.current.set(id, (reply) => {
          resolve(reply.view);
        });
        ask({ type: "sheet", id, input, options });
      }),
    [ask],
  );
  return { catalogue, failed, ask, readSheet };
}

/** The question that stands: its number, and the document it is about. */
interface Question {
  readonly id: number;
  readonly text: string;
}

/**
 * Puts each newer document to the engine, a moment after it was typed.
 *
 * @param put asks the engine; the same function every time
 * @returns whether an answer with this number is one to the document as it stands
 */
export function useQuestion(
  document: JobDocument,
  put: (id: number, document: JobDocument) => void,
): { readonly isNewest: (id: number) => boolean; readonly stands: (id: number | undefined) => boolean } {
  const newest = useRef(0);
  const [asked, setAsked] = useState<Question | null>(null);
  const text = JSON.stringify(document);
  useEffect(() => {
    const first = newest.current === 0;
    newest.current += 1;
    const id = newest.current;
    setAsked({ id, text });
    const timer = setTimeout(
      () => {
        put(id, JSON.parse(text) as JobDocument);
      },
      first ? 0 : DEBOUNCE_MS,
    );
    return () => {
      clearTimeout(timer);
    };
  }, [text, put]);
  const isNewest = useCallback((id: number) => id === newest.current, []);
  // The question is put after the page is drawn, so a new document waits even before it has a number.
  return { isNewest, stands: (id) => id !== undefined && id === asked?.id && asked.text === text };
}
