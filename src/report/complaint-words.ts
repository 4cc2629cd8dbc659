import type { ActiveComplaint, CauseAnswer, ComplaintAnswer, Range } from "../agronomy/index.ts";
import { figure, perHundred } from "./figures.ts";

/** Shares below this are not worth a word. */
const LEAST_SAID = 0.005;

/** "4 to 22 in 100, most likely 14": a range of shares. */
export function shareRange({ low, central, high }: Range): string {
  if (high < LEAST_SAID) return "nothing to speak of";
  return `${perHundred(low)} to ${perHundred(high)} in 100, most likely ${perHundred(central)}`;
}

/** The answer in one sentence. */
export function complaintHeadline({ weight, actives }: ComplaintAnswer): string {
  const known = actives.filter(({ takenByWater }) => takenByWater !== null);
  const most = known.reduce<ActiveComplaint | null>(
    (found, one) => ((one.takenByWater?.central ?? 0) >= (found?.takenByWater?.central ?? 0) ? one : found),
    null,
  );
  if (weight === "not known" || most?.takenByWater == null)
    return "How much this water could have taken is not known: no binding constants for these actives.";
  const share = `${shareRange(most.takenByWater)} of the ${most.name}`;
  if (weight === "little") return `The water could have taken little: ${share}.`;
  if (weight === "some") return `The water could have taken some of the dose: ${share}.`;
  return `The water could have taken much of the dose: ${share}.`;
}

/** What is said of one active, line by line. */
export function activeComplaintLines(one: ActiveComplaint): readonly string[] {
  const { takenByWater, lostStanding, left_gPerHa, dose_gPerHa, why } = one;
  const left =
    left_gPerHa === null ? "" : ` Left free: ${figure(left_gPerHa.low)} to ${figure(left_gPerHa.high)} g/ha.`;
  return [
    `${one.name}: ${figure(dose_gPerHa)} g/ha applied.${left}`,
    takenByWater === null
      ? `Held by the water: not known. ${why ?? ""}`.trim()
      : `Held by the water: ${shareRange(takenByWater)}.${why === null ? "" : ` ${why}`}`,
    lostStanding === null
      ? `Lost while it stood: not known. ${one.verdict.byClock.why ?? ""}`.trim()
      : `Lost while it stood: ${shareRange(lostStanding)}.`,
  ];
}

/** Where a cause stands: "open; speaks for it: …". */
export function causeText({ standing, speaksFor, speaksAgainst }: CauseAnswer): string {
  const word = { open: "open", excluded: "excluded by the record", found: "found, by the record" }[standing];
  const parts = [word];
  if (speaksFor.length > 0) parts.push(`for it: ${speaksFor.join(" ")}`);
  if (speaksAgainst.length > 0) parts.push(`against it: ${speaksAgainst.join(" ")}`);
  return parts.join("; ");
}

/** How the weight was judged. */
export function limitsText({ limits }: ComplaintAnswer): string {
  return (
    `Called little below ${perHundred(limits.little)} in 100 at most, much from ${perHundred(limits.much)} in 100 ` +
    "most likely. These limits are ours. A full rate leaves room, a low one does not."
  );
}
