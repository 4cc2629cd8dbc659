/** An engine at work, and what it has said so far, or that it broke down, while nobody listened. */
interface Engine {
  readonly worker: Worker;
  readonly early: MessageEvent<unknown>[];
  broken: boolean;
}

/** One that is being started before it is asked for. */
let ahead: Engine | null = null;

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
  return engine;
}

/** Starts an engine while the page is still being set up: reading its constants takes as long as the first answer. */
export function prepareEngine(): void {
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
