/** Processor time of one sample of a measurement [ms]; a call that is shorter is repeated within the sample. */
const SAMPLE_MS = 30;
const SAMPLES = 15;
const WARM_UP_MS = 300;

/** Processor time that some work takes [ms]: unlike the time of a clock it does not grow with what else runs. */
export function processorTime_ms(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** Processor time of one call once the code is warm [ms]: the least of the samples, which other work disturbs least. */
export function timeOf_ms(work: () => void): number {
  const until = performance.now() + WARM_UP_MS;
  while (performance.now() < until) work();
  const repeated = (repeats: number) => (): void => {
    for (let k = 0; k < repeats; k++) work();
  };
  const trial = 50;
  const once = Math.max(1e-3, processorTime_ms(repeated(trial)) / trial);
  const repeats = Math.max(1, Math.round(SAMPLE_MS / once));
  return Math.min(...Array.from({ length: SAMPLES }, () => processorTime_ms(repeated(repeats)) / repeats));
}

/** What some work takes of the processors, all threads together, and by the clock [ms]. */
export interface Times {
  readonly processor_ms: number;
  readonly clock_ms: number;
}

export async function timesOf(work: () => unknown): Promise<Times> {
  const clock = performance.now();
  const before = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(before);
  return { processor_ms: (user + system) / 1000, clock_ms: performance.now() - clock };
}

/** The least of each. */
export function least(times: readonly Times[]): Times {
  return {
    processor_ms: Math.min(...times.map((one) => one.processor_ms)),
    clock_ms: Math.min(...times.map((one) => one.clock_ms)),
  };
}
