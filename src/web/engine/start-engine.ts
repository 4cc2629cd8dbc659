import type { EngineReply } from "./messages.ts";

/** An engine at work, and what it has said so far, or that it broke down, while nobody listened. */
interface Engine {
  readonly worker: Worker;
  readonly early: MessageEvent<unknown>[];
  broken: boolean;
}

/** One that is being started before it is asked for. */
let ahead: Engine | null = null;

/** How long [ms] a first answer is waited for at most by what is to come after it; our choice. */
const PATIENCE_MS = 15_000;

let settle: () => void;

/** Settles when somebody's first question was answered in full, whatever it was about, or will not be. */
export const firstAnswered = new Promise<void>((resolve) => {
  settle = resolve;
});

/** Whether it is an answer with which a question is done. */
function isDone(reply: EngineReply): boolean {
  return reply.type === "flasks" || ("isWhole" in reply && reply.isWhole);
}

/** A thread with an engine in it. */
export function engineThread(): Worker {
  return new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" });
}

function newEngine(): Engine {
  const worker = engineThread();
  const engine: Engine = { worker, early: [], broken: false };
  worker.onmessage = (event: MessageEvent<unknown>) => engine.early.push(event);
  worker.onerror = () => {
    engine.broken = true;
  };
  worker.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
    if (isDone(data as EngineReply)) settle();
  });
  worker.addEventListener("error", () => {
    settle();
  });
  return engine;
}

/** Starts an engine while the page is still being set up: reading its constants takes as long as the first answer. */
export function prepareEngine(): void {
  setTimeout(settle, PATIENCE_MS);
  ahead ??= newEngine();
}

/**
 * An engine of one's own, to be terminated by who asked for it: the one prepared, or a new one.
 *
 * @param listen told everything that it says, what it said before included
 * @param failed called when it breaks down
 */
export function startEngine(listen: (event: MessageEvent<unknown>) => void, failed: () => void): Worker {
  const { worker, early, broken } = ahead ?? newEngine();
  ahead = null;
  worker.onerror = failed;
  worker.onmessage = listen;
  for (const event of early) listen(event);
  if (broken) failed();
  return worker;
}
