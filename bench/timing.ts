/** Time of one sample of a measurement [ms]; a call that is shorter is repeated within the sample. */
const SAMPLE_MS = 4;
const SAMPLES = 75;
const WARM_UP_MS = 300;

/** The middle value of several. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : 0.5 * (sorted[middle - 1]! + sorted[middle]!);
}

function time_ms(work: () => void, repeats: number): number {
  const started = performance.now();
  for (let k = 0; k < repeats; k++) work();
  return performance.now() - started;
}

/** Time of one call once the code is warm [ms]: the least of the samples, which other work disturbs least. */
export function timeOf_ms(work: () => void): number {
  const until = performance.now() + WARM_UP_MS;
  while (performance.now() < until) work();
  const once = Math.max(1e-4, time_ms(work, 1));
  const repeats = Math.max(1, Math.round(SAMPLE_MS / once));
  return Math.min(...Array.from({ length: SAMPLES }, () => time_ms(work, repeats) / repeats));
}
