import type { TradeData } from "./trade-data.ts";
import type { OrderDifferenceShown } from "./types.ts";

/**
 * Where published mixing orders put two groups of this tank the other way round than the order given here.
 *
 * @param groups mixing groups of this tank in the order of filling
 */
export function orderDifferences(
  groups: readonly string[],
  trade: TradeData,
): readonly OrderDifferenceShown[] {
  const inTank = [...new Set(groups)];
  const found: OrderDifferenceShown[] = [];
  inTank.forEach((first, i) => {
    for (const second of inTank.slice(i + 1)) {
      const difference = differenceOf(first, second, trade);
      if (difference !== null) found.push(difference);
    }
  });
  return found;
}

function differenceOf(first: string, second: string, trade: TradeData): OrderDifferenceShown | null {
  const { sequences, groupNames } = trade.formulations;
  const placed = sequences.flatMap((sequence) => {
    const place = (group: string): number => sequence.steps.findIndex((step) => step.includes(group));
    const [a, b] = [place(first), place(second)];
    return a === -1 || b === -1 || a === b ? [] : [{ sequence, asHere: a < b }];
  });
  const other = placed.filter(({ asHere }) => !asHere);
  if (other.length === 0) return null;
  const same = placed.filter(({ asHere }) => asHere);
  const [name, otherName] = [groupNames[first] ?? first, groupNames[second] ?? second];
  const who = (those: typeof placed): string => those.map(({ sequence }) => sequence.who).join(", ");
  const text =
    `Published orders differ: ${otherName} before ${name} in ${who(other)}; ` +
    (same.length === 0 ? "the other way round here." : `${name} first in ${who(same)}, as here.`);
  return { text, sources: placed.map(({ sequence }) => sequence.source) };
}
