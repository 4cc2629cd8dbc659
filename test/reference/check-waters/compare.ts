import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { isWithin, record } from "../validation-recorder.ts";

/** One published check, as carried in cases.json. */
export interface CheckCase {
  readonly id: string;
  readonly what: string;
  readonly input: Record<string, unknown>;
  readonly expected: Record<string, unknown>;
  readonly tolerance: Record<string, number>;
  readonly source: string;
  readonly fromMemory: boolean;
}

const cases = JSON.parse(readFileSync(new URL("cases.json", import.meta.url), "utf8")) as CheckCase[];

/** The published check with this id. */
export function checkCase(id: string): CheckCase {
  const found = cases.find((c) => c.id === id);
  if (found === undefined) throw new Error(`no check "${id}"`);
  return found;
}

/** A number of a check's expected values, by key. */
export function published(check: CheckCase, key: string): number {
  const value = check.expected[key];
  if (typeof value !== "number") throw new Error(`no number "${key}" in ${check.id}`);
  return value;
}

/** A list of numbers of a check's input or expected values. */
export function list(values: Record<string, unknown>, key: string): readonly number[] {
  const value = values[key];
  if (!Array.isArray(value)) throw new Error(`no list "${key}"`);
  return value as number[];
}

/** One comparison of ours with a published value. */
export interface Comparison {
  readonly check: CheckCase;
  readonly group: string;
  readonly what: string;
  readonly published: number;
  readonly ours: number;
  readonly unit?: string;
  readonly tolerance: number;
  /**
   * Set where our value is known to lie outside the tolerance: what it is, and why. The comparison then fails when
   * our value moves away from this, and also when it comes within the tolerance: either must be looked at.
   */
  readonly outside?: { readonly ours: number; readonly reason: string };
}

/** Records a comparison and asserts what it should show: within the tolerance, or the known deviation. */
export function compare(comparison: Comparison): void {
  const { check, group, what, published: theirs, ours, unit = "", tolerance, outside } = comparison;
  expect(Number.isFinite(ours), `${check.id}: ${what} is not a number`).toBe(true);
  const within = isWithin(theirs, ours, tolerance);
  record({
    group,
    what,
    published: theirs,
    ours,
    unit,
    tolerance,
    within,
    ...(within ? {} : { reason: outside?.reason ?? "not explained" }),
    source: check.fromMemory ? `${check.source} (in part from memory)` : check.source,
  });
  const told = `${check.id}: ${what}: published ${String(theirs)}, ours ${String(ours)}, tolerance ${String(tolerance)}`;
  if (outside === undefined) {
    expect(within, told).toBe(true);
  } else {
    expect(within, `${told}: now within, the known deviation is out of date`).toBe(false);
    const resolution = Math.max(1e-12, 0.002 * Math.abs(outside.ours));
    expect(
      Math.abs(ours - outside.ours),
      `${told}: known deviation was ${String(outside.ours)}`,
    ).toBeLessThanOrEqual(resolution);
  }
}
