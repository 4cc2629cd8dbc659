import type { Balance, BalanceLine } from "../../agronomy/index.ts";
import { ENGLISH, sayIn } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import type { Sum } from "./sums.ts";
import { figure, placeWords } from "./words.ts";

/** Forms put into the sum one by one; the rest are counted together. */
const MOST_TERMS = 6;

/** Free forms over all forms, with the amounts put in [mmol/L]. */
export function balanceSum(balance: Balance, language: Language = ENGLISH): Sum {
  const { name, where, lines, total_molPerL, free_molPerL, free } = balance;
  const say = sayIn(language);
  const terms = lines.filter(({ holders }) => holders.length === 0).slice(0, MOST_TERMS);
  const rest = free_molPerL - terms.reduce((sum, line) => sum + line.active_molPerL, 0);
  const shown = terms.map((line) => figure(1000 * line.active_molPerL, 4, language));
  if (rest > 1e-4 * total_molPerL) shown.push(figure(1000 * rest, 4, language));
  return {
    what: say("Free share of {active}, {where}", {
      active: language.phrases.name(name),
      where: placeWords(where, language),
    }),
    formula: say("free forms ÷ all forms"),
    numbers: `(${shown.join(" + ")}) ÷ ${figure(1000 * total_molPerL, 4, language)} mmol/L`,
    result: figure(free, 3, language),
    source: null,
  };
}

/** "10^(10.17 + 1 × −9.42 + 1 × −5.01) ÷ 0.71": how a form follows from its constant. */
export function formationText({ logK, from, log10Gamma }: BalanceLine, language: Language = ENGLISH): string {
  const signed = (value: number): string => figure(value, 4, language).replace("-", "−");
  const parts = from.map(
    ({ times, log10Activity }) => `${String(times).replace("-", "−")} × ${signed(log10Activity)}`,
  );
  const start = logK === null || logK === 0 ? [] : [signed(logK)];
  return `10^(${[...start, ...parts].join(" + ")}) ÷ ${figure(10 ** (log10Gamma ?? 0), 3, language)}`;
}
