import { HardstandError } from "../units/index.ts";
import type { RuleCondition, RuleRecord } from "./data-types.ts";
import type { FactValue, RuleFacts } from "./fact-list.ts";
import type { RuleVerdict } from "./types.ts";

/** Truth of a condition: "unknown" when the facts at hand cannot settle it. */
export type Truth = true | false | "unknown";

/** A rule that could not be settled, with the facts that would settle it. */
export interface UndecidedRule {
  readonly id: string;
  readonly level: RuleRecord["level"];
  readonly text: string;
  /** Facts not known, any of which may be enough. */
  readonly missing: readonly string[];
}

/** Rules that apply, and rules that nobody can settle yet. */
export interface RuleJudgement {
  readonly fired: readonly RuleVerdict[];
  readonly undecided: readonly UndecidedRule[];
}

interface Settled {
  readonly truth: Truth;
  readonly missing: readonly string[];
}

type Leaf = Extract<RuleCondition, { readonly fact: string }>;

/**
 * Judges rules by three-valued logic: a rule fires only when its condition is true for certain, and is left undecided
 * when a fact it hangs on is not known. A missing fact is never taken for "no".
 *
 * @throws HardstandError "rule-fact-kind" when a fact is of a kind its rule cannot compare with
 */
export function judgeRules(rules: readonly RuleRecord[], facts: RuleFacts): RuleJudgement {
  const fired: RuleVerdict[] = [];
  const undecided: UndecidedRule[] = [];
  for (const rule of rules) {
    const { truth, missing } = settle(rule.if, facts);
    if (truth === true) fired.push(verdictOf(rule));
    else if (truth === "unknown") {
      undecided.push({ id: rule.id, level: rule.level, text: rule.text, missing: [...new Set(missing)] });
    }
  }
  return { fired, undecided };
}

/** Truth of one condition on the facts at hand. */
export function truthOf(condition: RuleCondition, facts: RuleFacts): Truth {
  return settle(condition, facts).truth;
}

/** Names of all facts a condition asks for. */
export function factsAskedBy(condition: RuleCondition): readonly string[] {
  if ("all" in condition) return [...new Set(condition.all.flatMap(factsAskedBy))];
  if ("any" in condition) return [...new Set(condition.any.flatMap(factsAskedBy))];
  return [condition.fact];
}

/** True when a rule speaks of one active (it asks for a fact "active.…"); false when it speaks of the whole tank. */
export function isAboutActive(rule: RuleRecord): boolean {
  return factsAskedBy(rule.if).some((fact) => fact.startsWith("active."));
}

function verdictOf(rule: RuleRecord): RuleVerdict {
  const { id, level, text, evidence, source, contradictedBy } = rule;
  return { id, level, text, evidence, source, contradictedBy };
}

function settle(condition: RuleCondition, facts: RuleFacts): Settled {
  if ("all" in condition) return combine(condition.all, facts, false);
  if ("any" in condition) return combine(condition.any, facts, true);
  const value = facts[condition.fact] ?? null;
  if (condition.op === "present")
    return { truth: isStated(value) === (condition.value === true), missing: [] };
  if (value === null) return { truth: "unknown", missing: [condition.fact] };
  return { truth: compare(condition, value), missing: [] };
}

/** "all" is settled by the first false, "any" by the first true; else one unknown leaves the whole unknown. */
function combine(parts: readonly RuleCondition[], facts: RuleFacts, settledBy: boolean): Settled {
  const missing: string[] = [];
  for (const part of parts) {
    const settled = settle(part, facts);
    if (settled.truth === settledBy) return { truth: settledBy, missing: [] };
    if (settled.truth === "unknown") missing.push(...settled.missing);
  }
  return missing.length > 0 ? { truth: "unknown", missing } : { truth: !settledBy, missing: [] };
}

function isStated(value: FactValue): boolean {
  return value !== null && !(typeof value === "object" && value.length === 0);
}

function compare(leaf: Leaf, value: Exclude<FactValue, null>): boolean {
  switch (leaf.op) {
    case "=":
      return contains(leaf, value);
    case "!=":
      return !contains(leaf, value);
    case "in":
      return isAmong(leaf, value);
    case "<":
    case "<=":
    case ">":
    case ">=":
      return isOrdered(leaf, value);
    case "present":
      return isStated(value);
  }
}

function contains(leaf: Leaf, value: Exclude<FactValue, null>): boolean {
  if (typeof value === "object") {
    if (typeof leaf.value !== "string") throw mismatch(leaf, value);
    return value.includes(leaf.value);
  }
  if (typeof value !== typeof leaf.value) throw mismatch(leaf, value);
  return value === leaf.value;
}

function isAmong(leaf: Leaf, value: Exclude<FactValue, null>): boolean {
  if (typeof leaf.value !== "object") throw mismatch(leaf, value);
  const wanted = leaf.value;
  if (typeof value === "object") return value.some((v) => wanted.includes(v));
  if (typeof value !== "string") throw mismatch(leaf, value);
  return wanted.includes(value);
}

function isOrdered(leaf: Leaf, value: Exclude<FactValue, null>): boolean {
  if (typeof value !== "number" || typeof leaf.value !== "number" || Number.isNaN(value))
    throw mismatch(leaf, value);
  switch (leaf.op) {
    case "<":
      return value < leaf.value;
    case "<=":
      return value <= leaf.value;
    case ">":
      return value > leaf.value;
    default:
      return value >= leaf.value;
  }
}

function mismatch(leaf: Leaf, value: FactValue): HardstandError {
  return new HardstandError("rule-fact-kind", "judgeRules", {
    fact: leaf.fact,
    op: leaf.op,
    wanted: leaf.value,
    value,
  });
}
