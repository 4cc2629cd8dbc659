import { useCallback, useEffect, useRef, useState } from "react";
import type { FlaskShow, SeenColours, ShowCheck } from "../../agronomy/index.ts";
import type { EngineReply, EngineRequest } from "../engine/messages.ts";
import type { FlasksRequest } from "./messages.ts";

/** What the screen knows of its demonstration. */
export interface FlasksView {
  readonly show: FlaskShow | null;
  readonly issues: readonly { readonly severity: string; readonly words: string }[];
  /** True until the bands of the latest document are there too. */
  readonly working: boolean;
  readonly check: ShowCheck | null;
  compare(seen: SeenColours): void;
  /** Asks for the script to print; `then` gets the page, or null when there is none. */
  script(then: (html: string | null) => void): void;
}

/** Computes a demonstration in a worker, so that the page never stands still. */
export function useFlasks(text: string): FlasksView {
  const worker = useRef<Worker | null>(null);
  const newest = useRef(0);
  const waitingForScript = useRef<((html: string | null) => void) | null>(null);
  const [show, setShow] = useState<FlaskShow | null>(null);
  const [issues, setIssues] = useState<FlasksView["issues"]>([]);
  const [working, setWorking] = useState(true);
  const [check, setCheck] = useState<ShowCheck | null>(null);

  useEffect(() => {
    const started = new Worker(new URL("../engine/engine.worker.ts", import.meta.url), { type: "module" });
    started.onmessage = (event: MessageEvent<EngineReply>) => {
      if (event.data.type !== "flasks") return;
      const { reply } = event.data;
      if (reply.id !== newest.current) return;
      if (reply.type === "show") {
        setShow(reply.show);
        setIssues(reply.issues);
        setWorking(!reply.complete);
      } else if (reply.type === "check") setCheck(reply.check);
      else waitingForScript.current?.(reply.html);
    };
    started.onerror = () => {
      setIssues([{ severity: "error", words: "A fault in the program stopped the sums." }]);
      setWorking(false);
    };
    worker.current = started;
    return () => {
      started.terminate();
      worker.current = null;
    };
  }, []);

  const ask = useCallback((request: FlasksRequest) => {
    worker.current?.postMessage({ type: "flasks", request } satisfies EngineRequest);
  }, []);
  useEffect(() => {
    newest.current += 1;
    setWorking(true);
    setCheck(null);
    ask({ type: "run", id: newest.current, text });
  }, [ask, text]);

  const compare = useCallback(
    (seen: SeenColours) => {
      ask({ type: "check", id: newest.current, seen });
    },
    [ask],
  );
  const script = useCallback(
    (then: (html: string | null) => void) => {
      waitingForScript.current = then;
      ask({ type: "script", id: newest.current });
    },
    [ask],
  );
  return { show, issues, working, check, compare, script };
}
