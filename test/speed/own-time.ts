import { readFileSync, writeFileSync } from "node:fs";

/** An event of a trace, as far as it matters here: of "X" events, its beginning and length [µs], and the time its thread worked. */
interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  ts: number;
  dur?: number;
  readonly tdur?: number;
}

/**
 * Rewrites a trace so that every task takes the time its own thread worked on it, and all within it likewise less.
 *
 * By the clock on the wall a task also takes the time in which the processor was given to somebody else: the tracing
 * itself, the browser, the tool that measures. Where these share two processors with the page, that is more than half of
 * it, and none of it is the page's. What the thread waits for within a task, such as a disk, is taken off as well.
 *
 * @param path of the trace, JSON with `traceEvents`; it is overwritten
 * @throws an error where no task tells the time of its thread
 */
export function countOwnTimeOnly(path: string): void {
  const trace = JSON.parse(readFileSync(path, "utf8")) as { traceEvents: TraceEvent[] };
  /** The task of each thread that goes on, or the last one. */
  const tasks = new Map<string, { readonly start: number; readonly end: number; readonly share: number }>();
  const lasting = trace.traceEvents
    .filter(({ ph }) => ph === "X")
    .toSorted((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  for (const event of lasting) {
    const { ts, dur = 0, tdur } = event;
    const thread = `${String(event.pid)} ${String(event.tid)}`;
    if (event.name === "RunTask" && tdur !== undefined && dur > 0 && ts >= (tasks.get(thread)?.end ?? 0))
      tasks.set(thread, { start: ts, end: ts + dur, share: Math.min(1, tdur / dur) });
    const task = tasks.get(thread);
    if (task === undefined || ts >= task.end) continue;
    event.ts = Math.round(task.start + (ts - task.start) * task.share);
    event.dur = Math.round(dur * task.share);
  }
  if (tasks.size === 0) throw new Error(`${path}: no task tells the time of its thread`);
  writeFileSync(path, JSON.stringify(trace));
}
