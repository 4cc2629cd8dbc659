import { useCallback, useEffect, useRef, useState } from "react";
import type { SeenColours, ShowCheck } from "../../agronomy/index.ts";
import { useEngineWorker } from "../engine/use-engine-worker.ts";
import type { JobDocument } from "../job/to-document.ts";
import type { BenchView, FarmView, FlasksRequest, ShowView } from "./messages.ts";

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

const FAULT = [{ severity: "error", words: "A fault in the program stopped the sums." }];

/** Computes a demonstration in a worker, so that the page never stands still. */
export function useFlasks(text: string): FlasksView {
  const newest = useRef(0);
  const waitingForScript = useRef<((html: string | null) => void) | null>(null);
  const [view, setView] = useState<ShowView | null>(null);
  const [issues, setIssues] = useState<FlasksView["issues"]>([]);
  const [working, setWorking] = useState(true);
  const [check, setCheck] = useState<ShowCheck | null>(null);
  const [bench, setBench] = useState<BenchView | null>(null);
  const [farm, setFarm] = useState<FarmView | null>(null);

  const { ask: askEngine, failed } = useEngineWorker((news) => {
    if (news.type !== "flasks" || news.reply.id !== newest.current) return;
    const { reply } = news;
    if (reply.type === "show") {
      setView(reply.view);
      setIssues(reply.issues);
      setWorking(!reply.complete);
    } else if (reply.type === "check") setCheck(reply.check);
    else if (reply.type === "bench") setBench(reply.bench);
    else if (reply.type === "farm") setFarm(reply.farm);
    else waitingForScript.current?.(reply.html);
  });
  const ask = useCallback(
    (request: FlasksRequest) => {
      askEngine({ type: "flasks", request });
    },
    [askEngine],
  );
  useEffect(() => {
    newest.current += 1;
    setWorking(true);
    setCheck(null);
    setBench(null);
    setFarm(null);
    ask({ type: "run", id: newest.current, text });
  }, [ask, text]);

  return {
    view,
    issues: failed ? FAULT : issues,
    working: working && !failed,
    check,
    bench,
    farm,
    compare: (seen) => {
      ask({ type: "check", id: newest.current, seen });
    },
    askBench: () => {
      ask({ type: "bench", id: newest.current });
    },
    askFarm: (job) => {
      ask({ type: "farm", id: newest.current, job });
    },
    script: (job, then) => {
      waitingForScript.current = then;
      ask({ type: "script", id: newest.current, job });
    },
  };
}
