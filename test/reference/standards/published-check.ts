import checksFile from "./published-checks.json" with { type: "json" };

/** A published value or worked example, as it stands in the fixture. */
export interface PublishedCheck {
  readonly id: string;
  readonly group: string;
  readonly what: string;
  readonly input: Readonly<Record<string, unknown>>;
  readonly expected: unknown;
  readonly tolerance: unknown;
  readonly source: string;
  readonly fromMemory: boolean;
}

export const PUBLISHED_CHECKS = checksFile.checks as unknown as readonly PublishedCheck[];

/** A published number beside ours. */
export interface NumberPair {
  readonly label?: string;
  readonly published: number;
  readonly ours: number;
  readonly tolerance: number;
  readonly unit: string;
  /** Why ours lies outside the tolerance; only where it does. */
  readonly reason?: string;
}

/** A published verdict in words beside ours. */
export interface WordPair {
  readonly label?: string;
  readonly published: string;
  readonly ours: string;
}

export type Pair = NumberPair | WordPair;
export type Handler = (check: PublishedCheck) => readonly Pair[];

/** A number of a check's input. */
export function num(check: PublishedCheck, key: string): number {
  const value = check.input[key];
  if (typeof value !== "number") throw new Error(`${check.id}: input ${key} is not a number`);
  return value;
}

/** A number of a check's expected values; the value itself when no key is given. */
export function expectedNumber(check: PublishedCheck, key?: string): number {
  const value = key === undefined ? check.expected : (check.expected as Record<string, unknown>)[key];
  if (typeof value !== "number") throw new Error(`${check.id}: expected ${key ?? ""} is not a number`);
  return value;
}

/** A list of a check's input or expected values. */
export function list<T>(value: unknown): readonly T[] {
  if (!Array.isArray(value)) throw new Error("not a list");
  return value as readonly T[];
}

/** Half-width of the tolerance for a value: absolute, or relative to the published one. */
export function halfWidth(check: PublishedCheck, published: number, key?: string): number {
  const { tolerance } = check;
  if (typeof tolerance === "number") return tolerance;
  const parts = tolerance as Record<string, number>;
  if (key !== undefined && parts[key] !== undefined) return parts[key];
  if (parts.relative !== undefined) return parts.relative * Math.abs(published);
  throw new Error(`${check.id}: no tolerance for ${key ?? "the value"}`);
}

/** Pairs for the numbers of `expected` that `ours` names. */
export function pairs(
  check: PublishedCheck,
  ours: Readonly<Record<string, number>>,
  unit: string,
): readonly Pair[] {
  return Object.entries(ours).map(([label, value]): Pair => {
    const published = expectedNumber(check, label);
    return { label, published, ours: value, tolerance: halfWidth(check, published, label), unit };
  });
}

/** A handler for one number. */
export function single(unit: string, compute: (check: PublishedCheck) => number): Handler {
  return (check) => {
    const published = expectedNumber(check);
    return [{ published, ours: compute(check), tolerance: halfWidth(check, published), unit }];
  };
}
