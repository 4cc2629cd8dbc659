import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { builtInTrade, planJob, readJob } from "../src/agronomy/index.ts";
import { builtInThermo } from "../src/chem/index.ts";
import { processorTime_ms } from "./timing.ts";

/** Runs of a plan, each in a process of its own. */
const PROCESSES = 3;

/** Times of a plan in a fresh process [ms]: the first, with its data read and systems compiled, and the second. */
export interface PlanTimes {
  readonly job: string;
  /** Draws behind the ranges; 0 for central answers alone. */
  readonly draws: number;
  readonly programmes: number;
  readonly first_ms: number;
  readonly second_ms: number;
}

/** Said after the name of a job that is planned with every conditioner offered by default, each with its dose search. */
export const EVERY = ", every conditioner";

function documentOf(job: string): unknown {
  if (!job.endsWith(EVERY)) return parse(readFileSync(job, "utf8"));
  const { conditioners: _listed, ...rest } = documentOf(job.slice(0, -EVERY.length)) as Record<
    string,
    unknown
  >;
  return rest;
}

/** Plans a job twice in this process. */
export function planTwice(job: string, draws: number): PlanTimes {
  const document = documentOf(job);
  let programmes = 0;
  const plan = (): void => {
    const data = { thermo: builtInThermo(), trade: builtInTrade() };
    const read = readJob(document, { trade: data.trade });
    const found = read.ok ? planJob(read.value, data, { draws }) : null;
    if (found === null || !found.ok) throw new Error(`${job} has no plan`);
    programmes = found.value.programmes.length;
  };
  const first_ms = processorTime_ms(plan);
  return { job, draws, first_ms, second_ms: processorTime_ms(plan), programmes };
}

/** Plans a job in several fresh processes; the least times. @param script this program, which takes `--plan JOB DRAWS` */
export function planTimes(script: string, job: string, draws: number): PlanTimes {
  const runs = Array.from({ length: PROCESSES }, (): PlanTimes => {
    const run = spawnSync(process.execPath, [script, "--plan", job, String(draws)], { encoding: "utf8" });
    if (run.status !== 0) throw new Error(run.stderr);
    return JSON.parse(run.stdout) as PlanTimes;
  });
  return {
    ...runs[0]!,
    first_ms: Math.min(...runs.map((run) => run.first_ms)),
    second_ms: Math.min(...runs.map((run) => run.second_ms)),
  };
}
