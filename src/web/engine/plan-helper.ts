import { helpPlans, planLine, prepareHelper } from "../../agronomy/index.ts";
import type { Job, PlanData, PlanLine, PlanMessage, PlanThread } from "../../agronomy/index.ts";

/** What the engine's script is called where it runs a second time, to help the first with its plans. */
const HELPER = "plan helper";

const turns = new MessageChannel();
const waiting: (() => void)[] = [];
let lastTurn_ms = performance.now();
let restsUntil_ms = 0;
turns.port1.onmessage = () => {
  const now_ms = performance.now();
  if (now_ms < restsUntil_ms) {
    setTimeout(nextTurn, restsUntil_ms - now_ms);
    return;
  }
  lastTurn_ms = now_ms;
  waiting.shift()?.();
};

function nextTurn(): void {
  turns.port2.postMessage(null);
}

/** Said to the helper when somebody types. */
const REST = "rest";
/**
 * How long [ms] a plan rests when somebody types: what the key changed is then on its way, and gives the plan up. Our
 * choice. Where nothing changed, the plan goes on.
 */
const REST_MS = 150;

/** Lets the work on a plan rest, here and in the helper. */
export function rest(): void {
  restsUntil_ms = performance.now() + REST_MS;
  helper?.worker.postMessage(REST);
}

/**
 * How long [ms] a plan is worked on before the next turn. Our choice: a key makes a plan vain, and what is still at work on
 * it then keeps the first answer to that key waiting wherever there are no more processors than threads.
 */
const TURN_MS = 8;

/** What a worker works by. */
export const planThread: PlanThread = {
  turn: () =>
    new Promise((resolve) => {
      waiting.push(resolve);
      nextTurn();
    }),
  isDue: () => performance.now() - lastTurn_ms >= TURN_MS,
  after: (time_ms, call) => {
    const timer = setTimeout(call, time_ms);
    return () => {
      clearTimeout(timer);
    };
  },
};

/** Helps the engine that started this worker, where that is what it was started for. @returns whether it was */
export function helpIfAsked(data: PlanData): boolean {
  if (self.name !== HELPER) return false;
  const line = planLine((message) => {
    self.postMessage(message);
  });
  self.onmessage = ({ data: said }: MessageEvent<PlanMessage | typeof REST>) => {
    if (said === REST) rest();
    else line.heard(said);
  };
  helpPlans(line, data, planThread);
  return true;
}

/** A second worker of this script, and whether it is worth being asked; null before one is started. */
let helper: {
  readonly worker: Worker;
  readonly line: PlanLine;
  state: "preparing" | "ready" | "lost";
} | null = null;
let answered = 0;

/** The line to a helper that is quick already; null while there is none. */
export function lineToHelper(): PlanLine | null {
  return helper?.state === "ready" ? helper.line : null;
}

/**
 * Starts the helper once a second job was answered: who looks at one answer only needs none. There is none on one
 * processor, on a device with little memory, in a browser whose workers start no others, or where it broke down.
 *
 * @param job just answered: the helper becomes quick on it
 */
export function callForHelp(job: Job): void {
  answered += 1;
  if (helper === null && answered > 1) startHelper(job);
}

/** Memory [GB] of a device below which a second copy of the data is not worth its room, where the browser tells. Our choice. */
const LEAST_MEMORY_GB = 4;

function startHelper(job: Job): void {
  if (!(navigator.hardwareConcurrency > 1) || typeof Worker === "undefined") return;
  const { deviceMemory } = navigator as { readonly deviceMemory?: number };
  if (deviceMemory !== undefined && deviceMemory < LEAST_MEMORY_GB) return;
  try {
    const worker = new Worker(self.location.href, { type: "module", name: HELPER });
    const line = planLine((message) => {
      worker.postMessage(message);
    });
    const started: NonNullable<typeof helper> = { worker, line, state: "preparing" };
    helper = started;
    worker.onmessage = (event: MessageEvent<PlanMessage>) => {
      line.heard(event.data);
    };
    worker.onerror = (event) => {
      // Plans are made without it: nothing for the page to hear of.
      event.preventDefault();
      started.state = "lost";
      line.lost();
    };
    prepareHelper(line, job, {}, () => {
      started.state = "ready";
    });
  } catch {
    // No worker, no helper.
  }
}
