import type { CauseAnswer, Complaint } from "./complaint-types.ts";
import type { TradeData } from "./trade-data.ts";

/** Every usual cause in the order of exclusion, with what was seen that speaks for and against it. */
export function causesOf({ seen, excluded, found }: Complaint, trade: TradeData): readonly CauseAnswer[] {
  return trade.complaintCauses.map(({ id, name, check, signs, evidence, source }): CauseAnswer => {
    const said = (way: "for" | "against"): readonly string[] =>
      signs
        .filter((sign) => sign.says === way && sign.is.includes(seen[sign.about] ?? ""))
        .map(({ text }) => text);
    return {
      id,
      name,
      check,
      standing: found.includes(id) ? "found" : excluded.includes(id) ? "excluded" : "open",
      speaksFor: said("for"),
      speaksAgainst: said("against"),
      evidence,
      source,
    };
  });
}
