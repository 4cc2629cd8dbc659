import { findConditioner } from "./find.ts";
import type { Candidate } from "./programmes.ts";
import type { TradeData } from "./trade-data.ts";
import type { Job } from "./types.ts";

/** The conditioners of the job, or every built-in chemistry offered by default, in its first form. */
export function candidatesOf(job: Job, trade: TradeData): readonly Candidate[] {
  if (job.conditioners === null) {
    return trade.conditioners
      .filter((record) => record.offered === "by default")
      .map((record) => ({ record, formId: record.forms[0]?.id ?? record.id, choice: null }));
  }
  return job.conditioners.flatMap((choice): Candidate[] => {
    if (choice.own !== null) {
      const { record } = choice.own;
      return record === null ? [] : [{ record, formId: record.id, choice }];
    }
    const found = findConditioner(trade, choice.form ?? choice.chemistry);
    const byId = findConditioner(trade, choice.chemistry);
    if (found.ok && byId.ok && found.value.record.id === byId.value.record.id)
      return [{ ...found.value, choice }];
    return byId.ok ? [{ ...byId.value, choice }] : [];
  });
}
