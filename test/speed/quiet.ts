import { cpus } from "node:os";
import { setTimeout as wait } from "node:timers/promises";

/** From this share of idle time on nothing else is at work that would be in a time taken. Our choice. */
const QUIET = 0.8;
const LOOK_MS = 700;
/** How long quiet is waited for, each time. */
const PATIENCE_MS = 10_000;
/** After so many tries on a busy machine it is taken for one that is always busy. */
const MOST_BUSY = 2;

/** Time [ms] the processors had nothing to do since the machine was started, and all of it. */
function processorTimes(): { readonly idle: number; readonly all: number } {
  const times = cpus().map((cpu) => cpu.times);
  const all = times.flatMap((one) => Object.values(one)).reduce((sum, time) => sum + time, 0);
  return { idle: times.reduce((sum, { idle }) => sum + idle, 0), all };
}

async function isQuiet(): Promise<boolean> {
  const before = processorTimes();
  await wait(LOOK_MS);
  const after = processorTimes();
  return after.idle - before.idle >= QUIET * (after.all - before.all);
}

async function waitForQuiet(): Promise<boolean> {
  for (let waited_ms = 0; waited_ms < PATIENCE_MS; waited_ms += LOOK_MS) if (await isQuiet()) return true;
  return false;
}

/** What was measured, and what it is to be held against. */
export interface Measured {
  readonly value: number;
  readonly bound: number;
  /** All that was measured, for the message of a failure. */
  readonly said: string;
}

/** How long a test of this kind may take, on a busy machine. On a quiet one it is a tenth of that. */
export const TIMEOUT_MS = 300_000;

interface Bounds {
  /** What must hold. */
  readonly bound: number;
  /** What must hold on a machine that had other things to do at every try: there the target cannot be judged. */
  readonly whenBusy: number;
  /** True where the larger value is the better one. */
  readonly larger?: boolean;
  /** How often it is tried on a quiet machine, at most. */
  readonly tries: number;
}

/**
 * Measures until the bound is held, a few times at most: other work makes a time worse, never better, so the best one
 * counts. Tries in which the machine was not quiet before and after are only judged when there are no others. What was
 * measured, and against which of the bounds it is held, is printed.
 *
 * @param what the name of what is measured, with its unit
 */
export async function best(
  what: string,
  { bound, whenBusy, larger = false, tries }: Bounds,
  measure: () => Promise<number>,
): Promise<Measured> {
  const holds = (value: number): boolean => (larger ? value >= bound : value <= bound);
  const quiet: number[] = [];
  const busy: number[] = [];
  while (quiet.length < tries && busy.length < MOST_BUSY && ![...quiet, ...busy].some(holds)) {
    const wasQuiet = await waitForQuiet();
    const value = await measure();
    (wasQuiet && (await isQuiet()) ? quiet : busy).push(value);
  }
  const said = `on a quiet machine: ${quiet.join(", ") || "never"}; on a busy one: ${busy.join(", ") || "never"}`;
  const isJudged = quiet.length > 0 || busy.some(holds);
  const values = quiet.length > 0 && !busy.some(holds) ? quiet : [...quiet, ...busy];
  const value = larger ? Math.max(...values) : Math.min(...values);
  const heldTo = isJudged ? bound : whenBusy;
  console.log(`${what}: ${String(value)}, held to ${String(heldTo)}; ${said}`);
  return { value, bound: heldTo, said };
}
