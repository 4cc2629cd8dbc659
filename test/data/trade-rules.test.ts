import { describe, expect, it } from "vitest";
import {
  builtInTrade,
  FACTS,
  factsAskedBy,
  FEED_METALS,
  judgeRules,
  OTHER_PARTNERS,
  SPRAYER_METALS,
  truthOf,
  WATER_TREATMENTS,
} from "../../src/agronomy/index.ts";
import type { FactValue, RuleCondition, RuleFacts, RuleRecord } from "../../src/agronomy/index.ts";

const trade = builtInTrade();
const rules = trade.rules.map((rule) => [rule.id, rule] as const);

type Leaf = Extract<RuleCondition, { readonly fact: string }>;

function leavesOf(condition: RuleCondition): readonly Leaf[] {
  if ("all" in condition) return condition.all.flatMap(leavesOf);
  if ("any" in condition) return condition.any.flatMap(leavesOf);
  return [condition];
}

/** Values of a fact worth trying: those the rule names, values on both sides of its limits, and something else. */
function worthTrying(fact: string, leaves: readonly Leaf[]): readonly FactValue[] {
  const named = leaves.filter((l) => l.fact === fact).map((l) => l.value);
  switch (FACTS[fact]?.kind) {
    case "number":
      return named.flatMap((v) => (typeof v === "number" ? [v - 1e-3, v, v + 1e-3] : []));
    case "boolean":
      return named.some((v) => v === false && leaves.some((l) => l.fact === fact && l.op === "present"))
        ? [true, false, null]
        : [true, false];
    case "list": {
      const words = named.flatMap((v) => (typeof v === "object" ? v : [String(v)]));
      return [[], ...words.map((w) => [w]), words];
    }
    default:
      return [...named.flatMap((v) => (typeof v === "object" ? v : [String(v)])), "something else"];
  }
}

/** Every combination of the values worth trying. */
function situations(rule: RuleRecord): readonly RuleFacts[] {
  const leaves = leavesOf(rule.if);
  return factsAskedBy(rule.if).reduce<readonly RuleFacts[]>(
    (all, fact) => all.flatMap((f) => worthTrying(fact, leaves).map((value) => ({ ...f, [fact]: value }))),
    [{}],
  );
}

describe("every rule", () => {
  it.each(rules)("%s fires in one situation and is silent in another", (_id, rule) => {
    const outcomes = situations(rule).map((facts) => judgeRules([rule], facts));
    const fired = outcomes.filter((o) => o.fired.length === 1);
    const silent = outcomes.filter((o) => o.fired.length === 0 && o.undecided.length === 0);
    expect(fired.length).toBeGreaterThan(0);
    expect(silent.length).toBeGreaterThan(0);
    expect(fired[0]?.fired[0]).toMatchObject({ id: rule.id, level: rule.level, text: rule.text });
  });

  it.each(rules)("%s neither fires nor rules itself out when nothing is known", (_id, rule) => {
    const asked = judgeRules([rule], {});
    expect(asked.fired).toEqual([]);
    expect(asked.undecided.map((u) => u.id)).toEqual([rule.id]);
    for (const fact of asked.undecided[0]?.missing ?? []) expect(factsAskedBy(rule.if)).toContain(fact);
  });

  it.each(rules)("%s asks only for facts of the list, with their kind and unit", (_id, rule) => {
    for (const leaf of leavesOf(rule.if)) {
      const meaning = FACTS[leaf.fact];
      expect(meaning, leaf.fact).toBeDefined();
      if (leaf.op === "present") continue;
      if (typeof leaf.value === "number") {
        expect(meaning?.kind, leaf.fact).toBe("number");
        expect(leaf.unit ?? null, leaf.fact).toBe(meaning?.unit);
      } else if (typeof leaf.value === "boolean") expect(meaning?.kind, leaf.fact).toBe("boolean");
      else expect(["text", "list"], leaf.fact).toContain(meaning?.kind);
    }
  });

  it("names only things that exist", () => {
    const groups = new Set([
      ...trade.formulations.types.map((t) => t.mixingGroup),
      ...trade.formulations.order.map((o) => o.group),
    ]);
    const known: Readonly<Record<string, ReadonlySet<string>>> = {
      "active.id": new Set(trade.actives.map((a) => a.id)),
      "mix.actives": new Set(trade.actives.map((a) => a.id)),
      "active.form": new Set(trade.actives.flatMap((a) => a.forms.map((f) => f.id))),
      "mix.releases": new Set(
        trade.actives.flatMap((a) => a.forms.flatMap((f) => Object.keys(f.counterIons))),
      ),
      "conditioner.id": new Set(["none", ...trade.conditioners.map((c) => c.id)]),
      "conditioner.modes": new Set(trade.conditioners.flatMap((c) => c.modes)),
      "conditioner.releases": new Set(trade.conditioners.flatMap((c) => Object.keys(c.released))),
      "mix.mixingGroups": groups,
      "active.mixingGroup": groups,
      "mix.feeds": new Set([...FEED_METALS, ...FEED_METALS.map((f) => `chelated ${f}`)]),
      "water.treatments": new Set(WATER_TREATMENTS),
      "mix.partners": new Set(OTHER_PARTNERS),
      "sprayer.metals": new Set(SPRAYER_METALS),
    };
    const conditions = [
      ...trade.rules.map((r) => r.if),
      ...trade.cautions.flatMap((c) => (c.if === null ? [] : [c.if])),
    ];
    for (const leaf of conditions.flatMap(leavesOf)) {
      const words =
        typeof leaf.value === "object" ? leaf.value : typeof leaf.value === "string" ? [leaf.value] : [];
      for (const word of words) expect(known[leaf.fact]?.has(word), `${leaf.fact}: ${word}`).toBe(true);
    }
  });

  it("speaks in short sentences", () => {
    const texts = [...trade.rules.map((r) => r.text), ...trade.cautions.map((c) => c.text)];
    const long = texts.flatMap((t) => t.split(/(?<=[.:;])\s/)).filter((s) => s.split(/\s+/).length > 22);
    expect(long).toEqual([]);
  });
});

describe("every conditional caution", () => {
  it.each(trade.cautions.flatMap((c) => (c.if === null ? [] : [[c.id, c.if] as const])))(
    "%s applies to one built-in conditioner and not to all",
    (_id, condition) => {
      const truths = trade.conditioners.flatMap((record) =>
        record.forms.map((form) =>
          truthOf(condition, {
            "conditioner.id": record.id,
            "conditioner.modes": record.modes,
            "conditioner.releases": Object.keys(record.released),
            "conditioner.isDry": form.density_gPerMl === null,
          }),
        ),
      );
      expect(truths).toContain(true);
      expect(truths).toContain(false);
    },
  );
});
