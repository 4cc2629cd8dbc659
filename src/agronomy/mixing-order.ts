import { findFormulation } from "./find.ts";
import type { OrderRule, TradeData } from "./trade-data.ts";
import type { OrderStep } from "./types.ts";

/** Something that goes into the tank. A conditioner gives its mixing group, a product its formulation code. */
export interface OrderItem {
  readonly product: string;
  readonly label: string;
  readonly kind: "conditioner" | "product";
  readonly formulation?: string;
  readonly mixingGroup?: string;
}

interface Placed {
  readonly item: OrderItem;
  /** null when the formulation is not known. */
  readonly group: string | null;
  readonly rank: number;
}

type Draft = Omit<OrderStep, "step">;

const NOT_FOR_WATER = "not-for-water";
const BAGS = "water-soluble-bag";

/**
 * The order of filling: water to the first mark, bags, conditioner and a wait, then the products by formulation, then
 * the rest of the water. The label overrules it, and a jar test overrules both.
 */
export function mixingOrder(items: readonly OrderItem[], trade: TradeData): readonly OrderStep[] {
  const placed = placedItems(items, trade);
  const drafts: Draft[] = [firstWater(trade)];
  placed.forEach((entry, i) => {
    drafts.push(addStep(entry, trade.formulations.order));
    const next = placed[i + 1];
    if (entry.group === BAGS && next?.group !== BAGS) drafts.push(waitForBags());
    if (entry.group === "conditioner" && next?.group !== "conditioner") drafts.push(waitForConditioner());
  });
  drafts.push(topUp());
  return drafts.map((draft, i) => ({ step: i + 1, ...draft }));
}

/** Mixing groups of what goes in, in the order of filling; what has no known group is left out. */
export function groupsInOrder(items: readonly OrderItem[], trade: TradeData): readonly string[] {
  return placedItems(items, trade).flatMap(({ group }) => (group === null ? [] : [group]));
}

function placedItems(items: readonly OrderItem[], trade: TradeData): readonly Placed[] {
  const rules = trade.formulations.order;
  return items
    .map((item): Placed => {
      const group = groupOf(item, trade);
      const rank = rules.findIndex((rule) => rule.group === group);
      return { item, group, rank: rank === -1 ? rules.length : rank };
    })
    .sort((a, b) => a.rank - b.rank);
}

function groupOf(item: OrderItem, trade: TradeData): string | null {
  if (item.mixingGroup !== undefined) return item.mixingGroup;
  if (item.kind === "conditioner") return "conditioner";
  if (item.formulation === undefined) return null;
  const found = findFormulation(trade, item.formulation);
  return found.ok ? found.value.mixingGroup : null;
}

function firstWater(trade: TradeData): Draft {
  const { share, text, evidence, source } = trade.formulations.firstFill;
  return {
    what: `Fill to ${share === 0.5 ? "half" : `${String(Math.round(share * 100))} %`} with clean water and start the agitator. Stop here.`,
    why: `Water and movement before any product. ${text}`,
    adds: null,
    pause: true,
    evidence,
    source,
  };
}

function addStep(entry: Placed, rules: readonly OrderRule[]): Draft {
  const { item, group } = entry;
  const rule = rules[entry.rank];
  if (rule === undefined) return unplaced(item, group);
  return {
    what: rule.say.replace("{label}", item.label),
    why: rule.why,
    adds: item.product,
    pause: false,
    evidence: rule.evidence,
    source: rule.source,
  };
}

function unplaced(item: OrderItem, group: string | null): Draft {
  const common = {
    adds: item.product,
    pause: true,
    evidence: "common practice",
    source: "common-practice",
  } as const;
  if (group === NOT_FOR_WATER) {
    return {
      ...common,
      what: `Stop: ${item.label} is not made for mixing with water.`,
      why: "Its formulation is used dry, undiluted or in oil.",
    };
  }
  return {
    ...common,
    what: `Add ${item.label} where its label says.`,
    why: "Its formulation has no place in the default order. Ask the label, then jar test.",
  };
}

function waitForBags(): Draft {
  return {
    what: "Wait until every bag is gone, and look.",
    why: "Salt on a bag that is not dissolved leaves a gel that plugs screens.",
    adds: null,
    pause: true,
    evidence: "published rule",
    source: "manitoba-mixing-2013",
  };
}

function waitForConditioner(): Draft {
  return {
    what: "Wait until the conditioner is dissolved and mixed in. Measure the pH.",
    why: "Added late or half dissolved it has to win back what is already held.",
    adds: null,
    pause: true,
    evidence: "published rule",
    source: "sdsu-mixing-order",
  };
}

function topUp(): Draft {
  return {
    what: "Fill up with water and keep the agitator on until the tank is empty.",
    why: "Suspensions settle. Spray the same day.",
    adds: null,
    pause: false,
    evidence: "published rule",
    source: "vce-bse-351p",
  };
}
