import type { Issue, Severity } from "../units/index.ts";
import type { AssumedFigure } from "./check-data.ts";
import type { Draw } from "./drawn.ts";
import type { WaterIssueCode } from "./issue-codes.ts";
import type { Assumption } from "./types.ts";

type Parts = Partial<Pick<Issue, "received" | "expected" | "hint">>;

/** An issue of this layer. */
export function waterIssue(code: WaterIssueCode, severity: Severity, path: string, parts: Parts = {}): Issue {
  return { code, path, severity, ...parts };
}

/** What a completion took for granted and what it found worth saying, in order. */
export interface Ledger {
  readonly assumptions: Assumption[];
  readonly issues: Issue[];
  /** Where in its distribution each uncertain input is taken. */
  readonly draw: Draw;
}

/** An empty ledger; without draws every input has its central value. */
export function newLedger(draw: Draw = () => null): Ledger {
  return { assumptions: [], issues: [], draw };
}

/** An assumption as it is put down; the evidence is common practice unless the figure is computed. */
export type AssumptionEntry = Omit<Assumption, "evidence" | "source"> & {
  readonly evidence?: Assumption["evidence"];
  readonly source?: string;
};

/** Puts down an assumption. */
export function assume(ledger: Ledger, entry: AssumptionEntry): void {
  ledger.assumptions.push({ evidence: "common practice", source: "common-practice", ...entry });
}

/** Puts down an assumption whose value is `scale` times a figure of the data, with its range and source. */
export function assumeFigure(
  ledger: Ledger,
  entry: Pick<Assumption, "code" | "about" | "unit" | "why">,
  figure: AssumedFigure,
  scale = 1,
): number {
  const value = figure.central * scale;
  ledger.assumptions.push({
    ...entry,
    value,
    low: figure.low * scale,
    high: figure.high * scale,
    evidence: figure.source === "common-practice" ? "common practice" : "computed",
    source: figure.source,
  });
  return value;
}

/** Puts down an issue. */
export function say(
  ledger: Ledger,
  code: WaterIssueCode,
  severity: Severity,
  path: string,
  parts: Parts = {},
): void {
  ledger.issues.push(waterIssue(code, severity, path, parts));
}

/** Whether an error was put down. */
export function hasError(ledger: Ledger): boolean {
  return ledger.issues.some((issue) => issue.severity === "error");
}
