import { appendFileSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { expect } from "vitest";

/** One line of the validation table: a published value beside ours. */
export interface ValidationRow {
  /** Topic of the table the row belongs to, e.g. "activity coefficients". */
  readonly group: string;
  /** What was computed, with its conditions. */
  readonly what: string;
  readonly published: number;
  readonly ours: number;
  /** Unit of `published`, `ours` and `tolerance`; "" for pH, log10 values and ratios. */
  readonly unit: string;
  /** Half-width of the tolerance, in the unit of the value. */
  readonly tolerance: number;
  /** True when |ours − published| ≤ tolerance. */
  readonly within: boolean;
  /** Why a value lies outside its tolerance, or what the comparison cannot tell. */
  readonly reason?: string;
  /** Author (year), table of the published value. */
  readonly source: string;
}

const here = dirname(fileURLToPath(import.meta.url));
const directory = join(here, "..", "..", "test-output", "validation");
const started = new Set<string>();

function outputFile(): string {
  const testPath = expect.getState().testPath ?? "unnamed.test.ts";
  const name = relative(join(here, ".."), testPath).replace(/\.test\.ts$/, "");
  const file = join(directory, `${name.replace(/[^A-Za-z0-9-]+/g, "--")}.jsonl`);
  if (!started.has(file)) {
    mkdirSync(directory, { recursive: true });
    writeFileSync(file, "");
    started.add(file);
  }
  return file;
}

/**
 * Appends one row to the validation record of the running test file. The record is emptied at the first row of each
 * run, so that it never mixes two runs.
 *
 * @throws Error when a number is not finite, or when `within` contradicts the numbers, or when a value outside its
 * tolerance gives no reason: the table must not be able to say something the numbers do not.
 */
export function record(row: ValidationRow): void {
  const numbers = [row.published, row.ours, row.tolerance];
  if (!numbers.every(Number.isFinite)) throw new Error(`validation row not finite: ${JSON.stringify(row)}`);
  const within = Math.abs(row.ours - row.published) <= row.tolerance * (1 + 1e-9);
  if (within !== row.within) throw new Error(`validation row contradicts itself: ${JSON.stringify(row)}`);
  if (!within && !row.reason) throw new Error(`outside tolerance without a reason: ${JSON.stringify(row)}`);
  appendFileSync(outputFile(), `${JSON.stringify(row)}\n`);
}

/** True when two values agree within a half-width; the same rule `record` uses. */
export function isWithin(published: number, ours: number, tolerance: number): boolean {
  return Math.abs(ours - published) <= tolerance * (1 + 1e-9);
}
