import { useCallback, useEffect, useRef, useState } from "react";
import { startEngine } from "../engine/start-engine.ts";
import type { SeenColours, ShowCheck } from "../../agronomy/index.ts";
import type { EngineReply, EngineRequest } from "../engine/messages.ts";
import type { JobDocument } from "../job/to-document.ts";
import { sayIn, useLanguage } from "../language/language-context.ts";
import type { BenchView, FarmView, FlasksReply, Picked, ShowView } from "./messages.ts";

/** What the screen knows of its demonstration. */
export interface FlasksView {
  readonly view: ShowView | null;
  readonly issues: readonly { readonly severity: string; readonly words: string }[];
  /** True until the bands of the latest document are there too. */
  readonly working: boolean;
  readonly check: ShowCheck | null;
  /** null until it was asked for and answered. */
  readonly bench: BenchView | null;
  /** null until it was asked for and answered. */
  readonly farm: FarmView | null;
  compare(seen: SeenColours): void;
  askBench(): void;
  askFarm(job: JobDocument): void;
  /** Asks for the script to print; `then` gets the page, or null when there is none. */
  script(job: JobDocument, then: (html: string | null) => void): void;
}

/** Computes a demonstration in a worker, so that the page never stands still. */
export function useFlasks(picked: Picked): FlasksView {
  const language = useLanguage();
  const newest = useRef(0);
  const waitingForScript = useRef<((html: string | null) => void) | null>(null);
  const [view, setView] = useState<ShowView | null>(null);
  const [issues, setIssues] = useState<FlasksView["issues"]>([]);
  const [working, setWorking] = useState(true);
  const [check, setCheck] = useState<ShowCheck | null>(null);
  const [bench, setBench] = useState<BenchView | null>(null);
  const [farm, setFarm] = useState<FarmView | null>(null);

  const ask = useFlasksEngine({
    onReply: (reply) => {
      if (reply.id !== newest.current) return;
      if (reply.type === "show") {
        setView(reply.view);
        setIssues(reply.issues);
        setWorking(!reply.complete);
      } else if (reply.type === "check") setCheck(reply.check);
      else if (reply.type === "bench") setBench(reply.bench);
      else if (reply.type === "farm") setFarm(reply.farm);
      else waitingForScript.current?.(reply.html);
    },
    onFault: () => {
      setIssues([{ severity: "error", words: sayIn(language)("A fault in the program stopped the sums.") }]);
      setWorking(false);
    },
  });
  useEffect(() => {
    newest.current += 1;
    setWorking(true);
    setCheck(null);
    setBench(null);
    setFarm(null);
    const { tag, pack } = language;
    ask({ type: "language", tag, pack });
    ask({ type: "flasks", request: { type: "run", id: newest.current, document: picked.document } });
  }, [ask, picked, language]);

  return {
    view,
    issues,
    working,
    check,
    bench,
    farm,
    compare: (seen) => {
      ask({ type: "flasks", request: { type: "check", id: newest.current, seen } });
    },
    askBench: () => {
      ask({ type: "flasks", request: { type: "bench", id: newest.current } });
    },
    askFarm: (job) => {
      ask({ type: "flasks", request: { type: "farm", id: newest.current, job } });
    },
    script: (job, then) => {
      waitingForScript.current = then;
      ask({ type: "flasks", request: { type: "script", id: newest.current, job } });
    },
  };
}

interface Ears {
  readonly onReply: (reply: FlasksReply) => void;
  readonly onFault: () => void;
}

/** An engine for the time the screen is open. @returns asks it */
function useFlasksEngine(ears: Ears): (request: EngineRequest) => void {
  const worker = useRef<Worker | null>(null);
  const current = useRef(ears);
  useEffect(() => {
    current.current = ears;
  });
  useEffect(() => {
    const listen = (event: MessageEvent<unknown>): void => {
      const reply = event.data as EngineReply;
      if (reply.type === "flasks") current.current.onReply(reply.reply);
    };
    const started = startEngine(listen, () => {
      current.current.onFault();
    });
    worker.current = started;
    return () => {
      started.terminate();
      worker.current = null;
    };
  }, []);
  return useCallback((request: EngineRequest) => {
    worker.current?.postMessage(request);
  }, []);
}
