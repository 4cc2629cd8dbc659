import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { isWithin, record } from "../validation-recorder.ts";

interface RawCheck {
  readonly id: string;
  readonly topic: string;
  readonly what: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
  readonly tolerance: { readonly kind: "relative" | "absolute"; readonly value: number };
  readonly basis: string;
  readonly source: string;
}

/** One check value with its inputs, read strictly: a missing or mistyped entry throws. */
export interface Check extends RawCheck {
  number(key: string): number;
  numbers(key: string): readonly number[];
  text(key: string): string;
}

const raw = (
  JSON.parse(readFileSync(new URL("./checks.json", import.meta.url), "utf8")) as {
    checks: readonly RawCheck[];
  }
).checks;

/** Why our value differs from a printed one, and the largest relative difference that reason covers. */
export interface KnownDeviation {
  readonly reason: string;
  readonly atMost: number;
}

/** All checks of a topic; throws when there is none, so that no test can pass by being empty. */
export function checksOf(topic: string): readonly Check[] {
  const found = raw.filter((c) => c.topic === topic);
  if (found.length === 0) throw new Error(`no checks on ${topic}`);
  return found.map((c) => ({
    ...c,
    number: (key) => numberAt(c, key),
    numbers: (key) => listAt(c, c.input, key),
    text: (key) => String(present(c, c.input, key)),
  }));
}

/** Topics of the file. */
export const TOPICS: readonly string[] = [...new Set(raw.map((c) => c.topic))];

/**
 * Holds our value (or list of values) against the expected one, writes it to the validation record and fails the test
 * when it lies outside. A known deviation is recorded with its reason, and fails only when it grows beyond its size.
 */
export function compare(
  check: Check,
  key: string,
  ours: number | readonly number[],
  unit: string,
  known?: KnownDeviation,
): void {
  const expected = present(check, check.expected, key);
  const published = Array.isArray(expected) ? listAt(check, check.expected, key) : [Number(expected)];
  const values = typeof ours === "number" ? [ours] : ours;
  expect(values.length, `${check.id} ${key}`).toBe(published.length);
  published.forEach((value, i) => {
    const mine = values[i] ?? Number.NaN;
    const { kind, value: size } = check.tolerance;
    const tolerance = kind === "absolute" ? size : Math.max(size * Math.abs(value), 1e-12);
    const within = isWithin(value, mine, tolerance);
    const place = published.length > 1 ? ` [${String(i + 1)}]` : "";
    record({
      group: `trade: ${check.topic.toLowerCase()}`,
      what: `${check.what}: ${key.replaceAll("_", " ")}${place}`,
      published: value,
      ours: mine,
      unit,
      tolerance,
      within,
      ...(within ? {} : { reason: known?.reason ?? "not explained" }),
      source: `${check.source} (${check.basis})`,
    });
    if (known === undefined)
      expect(within, `${check.id} ${key}${place}: ${mine} against ${value}`).toBe(true);
    else expect(Math.abs(mine / value - 1), `${check.id} ${key}${place}`).toBeLessThan(known.atMost);
  });
}

function present(check: RawCheck, from: Readonly<Record<string, unknown>>, key: string): unknown {
  const value = from[key];
  if (value === undefined) throw new Error(`${check.id} has no ${key}`);
  return value;
}

function numberAt(check: RawCheck, key: string): number {
  const value = present(check, check.input, key);
  if (typeof value !== "number") throw new Error(`${check.id} ${key} is no number`);
  return value;
}

function listAt(check: RawCheck, from: Readonly<Record<string, unknown>>, key: string): readonly number[] {
  const value = present(check, from, key);
  if (!Array.isArray(value) || !value.every((v) => typeof v === "number")) {
    throw new Error(`${check.id} ${key} is no list of numbers`);
  }
  return value as readonly number[];
}
