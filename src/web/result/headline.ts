import type { Programme } from "../../agronomy/index.ts";
import type { Planned } from "../engine/messages.ts";
import { inHundred, leastFreeOf } from "./words.ts";
import { programmeWords } from "./ways-out.tsx";

/** The result in two short sentences, for a screen reader and for the top of the page. */
export function headline({ plan, job: { aim } }: Planned, picked: Programme): string {
  const before = leastFreeOf(plan.actives, aim.where);
  const first =
    before === null
      ? `Free share ${aim.where}: not known.`
      : `${before.verdict.name}: ${inHundred(before.free)} in 100 free ${aim.where}, nothing added.`;
  if (picked.kind === "none") return plan.chosen === null ? `${first} Nothing tried meets the aim.` : first;
  const after = leastFreeOf(picked.actives, aim.where);
  const second =
    after === null
      ? `With ${programmeWords(picked)}: not known.`
      : `With ${programmeWords(picked)}: ${inHundred(after.free)}.`;
  return `${first} ${second}`;
}
