import type { Finding } from "./findings.ts";
import type { PlanOptions } from "./plan.ts";
import type { Turns } from "./steps.ts";
import type { Job } from "./types.ts";

/** What two threads that work on one plan say to each other: plain data. Of an older plan nothing is heard any more. */
export type PlanMessage =
  /** To the helper: a job to become quick on, all alone. Its answer is of no interest. */
  | { readonly type: "prepare"; readonly job: Job; readonly options: PlanOptions }
  /** To the one who is helped: it was done. */
  | { readonly type: "ready" }
  /** To the helper: a plan to help with, in place of any other. */
  | { readonly type: "plan"; readonly plan: number; readonly job: Job; readonly options: PlanOptions }
  /** Nothing more is done for that plan by who says so. */
  | { readonly type: "over"; readonly plan: number }
  /** A task that is being done. */
  | { readonly type: "begun"; readonly plan: number; readonly key: string }
  /** What was found by it. */
  | {
      readonly type: "done";
      readonly plan: number;
      readonly key: string;
      readonly found: readonly Finding[];
    };

/** Another thread as seen from one. */
export interface PlanLine {
  /** Throws where the message cannot be sent. */
  send(message: PlanMessage): void;
  /** Called by who holds the line with each message that comes in, while `turn` is waited for. */
  heard: (message: PlanMessage) => void;
  /** Called by who holds the line when the other thread is lost, at any time. */
  lost: () => void;
}

/** What a thread works by. */
export interface PlanThread extends Turns {
  /** Calls back after a time [ms]. @returns what calls it off */
  after(time_ms: number, call: () => void): () => void;
}

/**
 * How long [ms] a task that the other thread began is waited for at most before it is done here. Our choice: the longest
 * one takes a third of a second on a usual machine.
 */
const PATIENCE_MS = 5000;

/** A line to another thread; who makes it calls `heard` and `lost`. */
export function planLine(send: (message: PlanMessage) => void): PlanLine {
  return { send, heard: () => undefined, lost: () => undefined };
}

/** The other thread at work on one plan: what it has begun, and what it has found. */
export class Mate {
  readonly found = new Map<string, readonly Finding[]>();
  private readonly begun = new Set<string>();
  /** Told of whatever comes in, while someone waits for it. */
  private wake: (() => void) | null = null;
  private readonly line: PlanLine;
  private readonly plan: number;

  constructor(line: PlanLine, plan: number) {
    this.line = line;
    this.plan = plan;
  }

  hear(message: PlanMessage): void {
    if (!("plan" in message) || message.plan !== this.plan) return;
    if (message.type === "begun") this.begun.add(message.key);
    if (message.type === "done") this.found.set(message.key, message.found);
    if (message.type === "over") this.begun.clear();
    this.wake?.();
  }

  /** Says something to it; where that cannot be, it is as if there were none. */
  tell(message: PlanMessage): void {
    try {
      this.line.send(message);
    } catch {
      this.forget();
    }
  }

  /** What it began is not waited for any longer. */
  forget(): void {
    this.begun.clear();
    this.wake?.();
  }

  /** Whether a task is still to be had: neither begun nor done over there. */
  leaves(key: string): boolean {
    return !this.begun.has(key) && !this.found.has(key);
  }

  /** Waits for anything to come in, up to a limit. */
  async news({ after }: PlanThread): Promise<void> {
    await new Promise<void>((resolve) => {
      const callOff = after(PATIENCE_MS, () => {
        this.forget();
      });
      this.wake = () => {
        callOff();
        resolve();
      };
    });
    this.wake = null;
  }
}
