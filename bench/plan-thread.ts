import { availableParallelism } from "node:os";
import { parentPort, Worker } from "node:worker_threads";
import { helpPlans, planLine, prepareHelper } from "../src/agronomy/index.ts";
import type { Job, PlanData, PlanLine, PlanOptions, PlanMessage, PlanThread } from "../src/agronomy/index.ts";

/** How long [ms] a plan is worked on before the next turn, as in the page. */
const TURN_MS = 8;
let lastTurn_ms = performance.now();

/** What a thread of Node works by. */
export const planThread: PlanThread = {
  turn: async () => {
    await new Promise((resolve) => void setImmediate(resolve));
    lastTurn_ms = performance.now();
  },
  isDue: () => performance.now() - lastTurn_ms >= TURN_MS,
  after: (time_ms, call) => {
    const timer = setTimeout(call, time_ms);
    return () => {
      clearTimeout(timer);
    };
  },
};

/** Another thread that helps with plans, once it has made one: null where there is one processor only. */
export async function startPlanHelper(
  script: URL,
  job: Job,
  options: PlanOptions,
): Promise<{ readonly line: PlanLine; close(): void } | null> {
  if (availableParallelism() < 2) return null;
  const worker = new Worker(script);
  const line = planLine((message) => {
    worker.postMessage(message);
  });
  worker.on("message", (message: PlanMessage) => {
    line.heard(message);
  });
  await new Promise<void>((resolve, reject) => {
    worker.on("error", reject);
    prepareHelper(line, job, options, resolve);
  });
  return { line, close: () => void worker.terminate() };
}

/** Helps the thread that started this one with its plans. */
export function helpFromHere(data: PlanData): void {
  if (parentPort === null) return;
  const port = parentPort;
  const line = planLine((message) => {
    port.postMessage(message);
  });
  port.on("message", (message: PlanMessage) => {
    line.heard(message);
  });
  helpPlans(line, data, planThread);
}
