import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { builtInTrade, planJob, planTogether, readJob } from "../src/agronomy/index.ts";
import type { Job, PlanData } from "../src/agronomy/index.ts";
import { builtInThermo } from "../src/chem/index.ts";
import { planThread, startPlanHelper } from "./plan-thread.ts";
import { least, timesOf } from "./timing.ts";
import type { Times } from "./timing.ts";

/** Runs of a plan, each in a process of its own. */
const PROCESSES = 3;
/** Plans made in two threads in each: which thread gets which task is not the same every time. */
const TOGETHER = 3;

/** Times of a plan in a fresh process: the first, with its data read and systems compiled, and the second. */
export interface PlanTimes {
  readonly job: string;
  /** Draws behind the ranges; 0 for central answers alone. */
  readonly draws: number;
  readonly programmes: number;
  readonly first: Times;
  readonly second: Times;
  /** The same again with a helper in a second thread that has made the plan before; null with one processor only. */
  readonly together: Times | null;
}

/** Said after the name of a job that is planned with every conditioner offered by default, each with its dose search. */
export const EVERY = ", every conditioner";

/** Said after the name of a job that is planned with two conditioners more. */
export const ACIDS = ", phosphoric and sulfuric acid as well";

function documentOf(job: string): unknown {
  if (job.endsWith(ACIDS)) {
    const plain = documentOf(job.slice(0, -ACIDS.length)) as Readonly<Record<string, readonly unknown[]>>;
    const acids = ["phosphoric acid", "sulfuric acid"].map((chemistry) => ({ chemistry }));
    return { ...plain, conditioners: [...(plain["conditioners"] ?? []), ...acids] };
  }
  if (!job.endsWith(EVERY)) return parse(readFileSync(job, "utf8"));
  const { conditioners: _listed, ...rest } = documentOf(job.slice(0, -EVERY.length)) as Record<
    string,
    unknown
  >;
  return rest;
}

function dataHere(): PlanData {
  return { thermo: builtInThermo(), trade: builtInTrade() };
}

function jobOf(name: string, data: PlanData): Job {
  const read = readJob(documentOf(name), { trade: data.trade });
  if (!read.ok) throw new Error(`${name} is no job`);
  return read.value;
}

/** Plans a job twice in this process, then some times with a helper. @param script this program */
export async function planTwice(script: URL, job: string, draws: number): Promise<PlanTimes> {
  let programmes = 0;
  const plan = (): void => {
    const data = dataHere();
    const found = planJob(jobOf(job, data), data, { draws });
    if (!found.ok) throw new Error(`${job} has no plan`);
    programmes = found.value.programmes.length;
  };
  const first = await timesOf(plan);
  const second = await timesOf(plan);
  const data = dataHere();
  const asked = jobOf(job, data);
  const helper = await startPlanHelper(script, asked, { draws });
  let together: Times | null = null;
  for (let k = 0; helper !== null && k < TOGETHER; k++) {
    const times = await timesOf(() => planTogether(asked, data, planThread, helper.line, { draws }));
    together = together === null ? times : least([together, times]);
  }
  helper?.close();
  return { job, draws, programmes, first, second, together };
}

/** Plans a job in several fresh processes; the least times. @param script this program, which takes `--plan JOB DRAWS` */
export function planTimes(script: string, job: string, draws: number): PlanTimes {
  const runs = Array.from({ length: PROCESSES }, (): PlanTimes => {
    const run = spawnSync(process.execPath, [script, "--plan", job, String(draws)], { encoding: "utf8" });
    if (run.status !== 0) throw new Error(run.stderr);
    return JSON.parse(run.stdout) as PlanTimes;
  });
  const together = runs.flatMap((run) => run.together ?? []);
  return {
    ...runs[0]!,
    first: least(runs.map((run) => run.first)),
    second: least(runs.map((run) => run.second)),
    together: together.length === 0 ? null : least(together),
  };
}
