import type { Read } from "../units/index.ts";
import { planInTasks } from "./plan.ts";
import type { PlanData, PlanOptions } from "./plan.ts";
import { Mate } from "./plan-mate.ts";
import type { PlanLine, PlanThread } from "./plan-mate.ts";
import type { OpenTasks, Task } from "./plan-tasks.ts";
import { atOnce, inTurns } from "./steps.ts";
import type { Job, Plan } from "./types.ts";

export { planLine } from "./plan-mate.ts";
export type { PlanLine, PlanMessage, PlanThread } from "./plan-mate.ts";

/** Which task comes next here, of those that nobody has begun; undefined to wait for what the other comes to. */
type Choice = (free: OpenTasks) => Task | undefined;
/** Alone, nothing is done that may not be wanted. */
const oneByOne: Choice = ({ wanted }) => wanted[0];
const fromTheFront: Choice = ({ wanted, spare }) => wanted[0] ?? spare[0];
/** The last one is left to the other thread while there is something else to do: both would begin it at once. */
const fromTheBack: Choice = ({ wanted, spare }) =>
  wanted.length === 1 ? (spare[0] ?? wanted[0]) : (wanted.at(-1) ?? spare[0]);

/** A plan being worked out in one thread. */
interface Share {
  readonly steps: Generator<OpenTasks, Read<Plan>>;
  readonly plan: number;
  /** Who works on it too; null for nobody. */
  readonly mate: Mate | null;
  readonly choice: Choice;
  readonly thread: PlanThread;
  readonly givenUp: () => boolean;
}

/** Does the tasks of a plan, those apart that were done elsewhere; null when it is given up. */
async function workThrough({
  steps,
  plan,
  mate,
  choice,
  thread,
  givenUp,
}: Share): Promise<Read<Plan> | null> {
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    await thread.turn();
    if (givenUp()) return null;
    const { wanted, spare } = step.value;
    const known = wanted.find(({ key }) => mate?.found.has(key));
    if (known !== undefined) {
      atOnce(known.run(mate?.found.get(known.key)));
      continue;
    }
    const isFree = ({ key }: Task): boolean => mate?.leaves(key) ?? true;
    const task = choice({ wanted: wanted.filter(isFree), spare: spare.filter(isFree) });
    if (task === undefined) {
      await mate?.news(thread);
      continue;
    }
    mate?.tell({ type: "begun", plan, key: task.key });
    const found = await inTurns(task.run(), thread, givenUp);
    if (found === null) return null;
    mate?.tell({ type: "done", plan, key: task.key, found });
  }
}

/** Numbers of the plans that were asked for. */
let plans = 0;

/**
 * Answers a job as `planJob` does, to the last digit, with a helper at work on it in another thread where there is one.
 * Where that is lost or does nothing, everything is done here.
 *
 * @param line to the thread that runs `helpPlans` on the same data; null for none. One plan at a time is helped with
 * @param givenUp whether nobody waits for the answer any more; asked after each turn
 * @returns null when it was given up
 */
export function planTogether(
  job: Job,
  data: PlanData,
  thread: PlanThread,
  line: PlanLine | null,
  options?: PlanOptions,
): Promise<Read<Plan>>;
export function planTogether(
  job: Job,
  data: PlanData,
  thread: PlanThread,
  line: PlanLine | null,
  options: PlanOptions,
  givenUp: () => boolean,
): Promise<Read<Plan> | null>;
export async function planTogether(
  job: Job,
  data: PlanData,
  thread: PlanThread,
  line: PlanLine | null,
  options: PlanOptions = {},
  givenUp: () => boolean = () => false,
): Promise<Read<Plan> | null> {
  plans += 1;
  const plan = plans;
  const steps = planInTasks(job, data, options);
  if (line === null) return workThrough({ steps, plan, mate: null, choice: oneByOne, thread, givenUp });
  // What is still at work on an older plan hears no more of it.
  line.lost();
  const mate = new Mate(line, plan);
  line.heard = (message) => {
    mate.hear(message);
  };
  line.lost = () => {
    mate.forget();
  };
  mate.tell({ type: "plan", plan, job, options });
  try {
    return await workThrough({ steps, plan, mate, choice: fromTheFront, thread, givenUp });
  } finally {
    mate.tell({ type: "over", plan });
  }
}

/**
 * Has a helper make the plan of a job for itself, all alone. A thread is several times slower at its first plan than at
 * its next ones, since what it runs is not compiled yet: to wait for it then takes longer than to do without.
 *
 * @param ready called when it is worth being asked
 */
export function prepareHelper(line: PlanLine, job: Job, options: PlanOptions, ready: () => void): void {
  line.heard = ({ type }) => {
    if (type === "ready") ready();
  };
  line.send({ type: "prepare", job, options });
}

/**
 * Helps with the plans that come in over a line, for as long as there is one: does what the other thread has not begun,
 * from the other end, and tells what it finds.
 */
export function helpPlans(line: PlanLine, data: PlanData, thread: PlanThread): void {
  let asked = 0;
  let mate: Mate | null = null;
  const help = (plan: number, job: Job, options: PlanOptions): void => {
    asked = plan;
    const other = new Mate(line, plan);
    mate = other;
    const steps = planInTasks(job, data, options);
    workThrough({ steps, plan, mate, choice: fromTheBack, thread, givenUp: () => asked !== plan }).catch(
      () => {
        other.tell({ type: "over", plan });
      },
    );
  };
  const prepare = async (job: Job, options: PlanOptions): Promise<void> => {
    const steps = planInTasks(job, data, options);
    await workThrough({ steps, plan: 0, mate: null, choice: oneByOne, thread, givenUp: () => false });
    line.send({ type: "ready" });
  };
  line.heard = (message) => {
    if (message.type === "prepare") void prepare(message.job, message.options);
    else if (message.type === "plan") help(message.plan, message.job, message.options);
    else if (message.type === "over" && message.plan === asked) {
      asked = 0;
      mate?.forget();
    } else mate?.hear(message);
  };
}
