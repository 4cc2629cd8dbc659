import type { ActiveComplaint, CauseAnswer, ComplaintAnswer, Range } from "../agronomy/index.ts";
import { ENGLISH, sayIn } from "../words/index.ts";
import type { Language } from "../words/index.ts";

/** Shares below this are not worth a word. */
const LEAST_SAID = 0.005;

/** "4 to 22 in 100, most likely 14": a range of shares. */
export function shareRange({ low, central, high }: Range, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const { perHundred } = language.figures;
  if (high < LEAST_SAID) return say("nothing to speak of");
  return say("{low} to {high} in 100, most likely {central}", {
    low: perHundred(low),
    high: perHundred(high),
    central: perHundred(central),
  });
}

/** The answer in one sentence. */
export function complaintHeadline(
  { weight, actives }: ComplaintAnswer,
  language: Language = ENGLISH,
): string {
  const say = sayIn(language);
  const known = actives.filter(({ takenByWater }) => takenByWater !== null);
  const most = known.reduce<ActiveComplaint | null>(
    (found, one) => ((one.takenByWater?.central ?? 0) >= (found?.takenByWater?.central ?? 0) ? one : found),
    null,
  );
  if (weight === "not known" || most?.takenByWater == null)
    return say("How much this water could have taken is not known: no binding constants for these actives.");
  const active = language.phrases.name(most.name);
  const share = shareRange(most.takenByWater, language);
  if (weight === "little")
    return say("The water could have taken little of the {active}: {share}.", { active, share });
  if (weight === "some")
    return say("The water could have taken some of the {active}: {share}.", { active, share });
  return say("The water could have taken much of the {active}: {share}.", { active, share });
}

/** What is said of one active, line by line. */
export function activeComplaintLines(one: ActiveComplaint, language: Language = ENGLISH): readonly string[] {
  const say = sayIn(language);
  const { figure } = language.figures;
  const { takenByWater, lostStanding, left_gPerHa, dose_gPerHa, why } = one;
  const because = (reason: string | null): string =>
    reason === null ? "" : ` ${language.phrases.say(reason).text}`;
  const applied = say("{active}: {dose} g/ha applied.", {
    active: language.phrases.name(one.name),
    dose: figure(dose_gPerHa),
  });
  const left =
    left_gPerHa === null
      ? ""
      : ` ${say("Left free: {low} to {high} g/ha.", { low: figure(left_gPerHa.low), high: figure(left_gPerHa.high) })}`;
  return [
    `${applied}${left}`,
    takenByWater === null
      ? `${say("Held by the water: not known.")}${because(why)}`
      : `${say("Held by the water: {share}.", { share: shareRange(takenByWater, language) })}${because(why)}`,
    lostStanding === null
      ? `${say("Lost while it stood: not known.")}${because(one.verdict.byClock.why)}`
      : say("Lost while it stood: {share}.", { share: shareRange(lostStanding, language) }),
  ];
}

/** Where a cause stands: "open; speaks for it: …". */
export function causeText(
  { standing, speaksFor, speaksAgainst }: CauseAnswer,
  language: Language = ENGLISH,
): string {
  const say = sayIn(language);
  const told = (texts: readonly string[]): string =>
    texts.map((text) => language.phrases.say(text).text).join(" ");
  const parts = [
    {
      open: say("open"),
      excluded: say("excluded by the record"),
      found: say("found, by the record"),
    }[standing],
  ];
  if (speaksFor.length > 0) parts.push(say("for it: {signs}", { signs: told(speaksFor) }));
  if (speaksAgainst.length > 0) parts.push(say("against it: {signs}", { signs: told(speaksAgainst) }));
  return parts.join("; ");
}

/** How the weight was judged. */
export function limitsText({ limits }: ComplaintAnswer, language: Language = ENGLISH): string {
  const { perHundred } = language.figures;
  return sayIn(language)(
    "Called little below {little} in 100 at most, much from {much} in 100 most likely. These limits are ours. A full rate leaves room, a low one does not.",
    { little: perHundred(limits.little), much: perHundred(limits.much) },
  );
}
