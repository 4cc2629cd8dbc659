import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { parse } from "yaml";
import { builtInTrade, planJob, readJob } from "../src/agronomy/index.ts";
import { builtInThermo } from "../src/chem/index.ts";

/** Runs of a plan in a process of its own. */
const PROCESSES = 5;

/** Times of a plan in a fresh process [ms]: the first, with its data read and systems compiled, and the second. */
export interface PlanTimes {
  readonly job: string;
  readonly programmes: number;
  readonly first_ms: number;
  readonly second_ms: number;
}

/** Plans a job twice in this process. */
export function planTwice(job: string): PlanTimes {
  const document: unknown = parse(readFileSync(job, "utf8"));
  let programmes = 0;
  const plan_ms = (): number => {
    const started = performance.now();
    const data = { thermo: builtInThermo(), trade: builtInTrade() };
    const read = readJob(document, { trade: data.trade });
    const plan = read.ok ? planJob(read.value, data) : null;
    if (plan === null || !plan.ok) throw new Error(`${job} has no plan`);
    programmes = plan.value.programmes.length;
    return performance.now() - started;
  };
  const first_ms = plan_ms();
  return { job, first_ms, second_ms: plan_ms(), programmes };
}

/** Plans a job in several fresh processes; the least times. @param script this program, which takes `--plan JOB` */
export function planTimes(script: string, job: string): PlanTimes {
  const runs = Array.from({ length: PROCESSES }, (): PlanTimes => {
    const run = spawnSync(process.execPath, [script, "--plan", job], { encoding: "utf8" });
    if (run.status !== 0) throw new Error(run.stderr);
    return JSON.parse(run.stdout) as PlanTimes;
  });
  return {
    job,
    programmes: runs[0]!.programmes,
    first_ms: Math.min(...runs.map((run) => run.first_ms)),
    second_ms: Math.min(...runs.map((run) => run.second_ms)),
  };
}
