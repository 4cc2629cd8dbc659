import { DOTS, dotsOf } from "./dots.tsx";
import { ENGLISH } from "../../words/index.ts";
import type { Language } from "../../words/index.ts";
import { sayIn } from "../language/language-context.ts";
import type { ActiveVerdict, ClockShare, LeafShare, OnMud, Programme, Share } from "../../agronomy/index.ts";

/** A share as a whole-number figure in a hundred; the edges are said, never rounded to "all" or "none". */
export function inHundred(share: number, language: Language = ENGLISH): string {
  const say = sayIn(language);
  if (share > 0.995 && share < 1) return say("over 99");
  if (share > 0 && share < 0.005) return say("under 1");
  return String(Math.round(100 * share));
}

/** How often the aim is met over the draws: "18 of 20"; null when nothing was drawn. */
export function sureWords(confidence: number | null, language: Language = ENGLISH): string | null {
  if (confidence === null) return null;
  return sayIn(language)("{count} of {all}", { count: dotsOf(confidence), all: DOTS });
}

/** A number with the significant digits that make sense on a page, without exponents where a person can read it. */
export function figure(value: number, digits = 3, { figures }: Language = ENGLISH): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e6) {
    const [mantissa, exponent] = value.toExponential(digits - 1).split("e");
    return `${(mantissa ?? "").replace(".", figures.decimal)} × 10${raised(Number(exponent))}`;
  }
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  return figures.fixed(value, Math.min(decimals, 8));
}

/** An exponent in raised digits. */
function raised(exponent: number): string {
  const digits = { "-": "⁻", 0: "⁰", 1: "¹", 2: "²", 3: "³", 4: "⁴", 5: "⁵", 6: "⁶", 7: "⁷", 8: "⁸", 9: "⁹" };
  return [...String(exponent)].map((sign) => digits[sign as keyof typeof digits]).join("");
}

/** A time in the unit a person would use. */
export function duration(hours: number, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const two = (value: number): string => figure(value, 2, language);
  if (hours < 1) return `${two(hours * 60)} min`;
  if (hours < 72) return `${two(hours)} h`;
  return hours < 24 * 730
    ? say("{count} days", { count: two(hours / 24) })
    : say("{count} years", { count: two(hours / 8766) });
}

/** What holds the rest, largest first: "31 by calcium, 4 by magnesium". Shares under half a hundredth are left out. */
export function heldWords(heldBy: Readonly<Record<string, number>>, language: Language = ENGLISH): string {
  return heldParts(heldBy)
    .filter(([, share]) => share >= 0.005)
    .map(([holder, share]) => `${inHundred(share, language)} ${holderWords(holder, language)}`)
    .join(", ");
}

/** Held shares, largest first. */
export function heldParts(heldBy: Readonly<Record<string, number>>): readonly (readonly [string, number])[] {
  return Object.entries(heldBy)
    .filter(([, share]) => share > 0)
    .sort((a, b) => b[1] - a[1]);
}

/** "by calcium"; what comes out of solution as itself is not held by anything. */
export function holderWords(holder: string, language: Language = ENGLISH): string {
  const name = language.phrases.name(holder);
  const say = sayIn(language);
  return holder.startsWith("undissolved")
    ? say("as {holder}", { holder: name })
    : say("by {holder}", { holder: name });
}

/** The range beside a figure; null when none was computed. */
export function rangeWords(share: Pick<Share, "low" | "high">, language: Language = ENGLISH): string | null {
  if (share.low === null || share.high === null) return null;
  return sayIn(language)("{low} to {high}", {
    low: inHundred(share.low, language),
    high: inHundred(share.high, language),
  });
}

/** The two ends of the leaf answer in one sentence; null when they agree or are not known. */
export function endsWords(leaf: LeafShare, active: string, language: Language = ENGLISH): string | null {
  const { withSolid, withoutSolid } = leaf;
  if (withSolid === null || withoutSolid === null) return null;
  if (Math.abs(withSolid.free - withoutSolid.free) < 0.005) return null;
  return sayIn(language)(
    "{withSolid} if its calcium salt forms at once, {withoutSolid} if it never forms. Which one a drop of {active} does is not known.",
    {
      withSolid: inHundred(withSolid.free, language),
      withoutSolid: inHundred(withoutSolid.free, language),
      active: language.phrases.name(active),
    },
  );
}

/** What dries to the active's own acid on the leaf, in words; null where that is little or not known. */
export function ownAcidWords({ ownAcid, free }: LeafShare, language: Language = ENGLISH): string | null {
  if (free === null || ownAcid === null || ownAcid < 0.005) return null;
  return sayIn(language)(
    "{share} of the free part dries to its own acid; no metal holds that. Whether it crystallises there was not measured.",
    { share: inHundred(ownAcid, language) },
  );
}

/** What the mud of the water takes, in words; null where mud was not tested. */
export function onMudWords(mud: OnMud | null, language: Language = ENGLISH): string | null {
  if (mud === null) return null;
  const say = sayIn(language);
  const { low, high, why } = mud;
  const reason = why === null ? [] : [language.phrases.say(why).text];
  if (low === null || high === null) return [say("On the mud of the water: not known."), ...reason].join(" ");
  const share = high < 0.005 ? say("under 1") : rangeWords({ low, high }, language);
  const said = say("On the mud of the water: {share} in 100, not in the other figures.", {
    share: share ?? "",
  });
  const full = mud.limitedBy === "capacity" ? [language.words.answers.mudIsFull] : [];
  const memory = mud.fromMemory ? [language.words.answers.mudFromMemory] : [];
  return [said, ...full, ...reason, ...memory].join(" ");
}

/** The clock answer in one sentence. */
export function clockWords(clock: ClockShare, language: Language = ENGLISH): string {
  const say = sayIn(language);
  if (clock.stable) return say("Stable over the holding time, say the sources.");
  if (clock.intact === null) {
    return [say("Not known."), language.phrases.say(clock.why ?? "").text].join(" ").trim();
  }
  const share = inHundred(clock.intact, language);
  const range = rangeWords(clock, language);
  const intact =
    range === null
      ? say("{share} in 100 intact when the last is sprayed.", { share })
      : say("{share} in 100 intact when the last is sprayed ({range}).", { share, range });
  if (clock.halfLife_h === null) return intact;
  return `${intact} ${say("Half of it is gone after {time}.", { time: duration(clock.halfLife_h, language) })}`;
}

/** The picture of an active in words, for those who do not see it. */
export function pictureWords(verdict: ActiveVerdict, language: Language = ENGLISH): string {
  const say = sayIn(language);
  const freeWords = (where: string, { free, heldBy }: Share | LeafShare): string => {
    if (free === null) return say("{where}: not known.", { where });
    const share = inHundred(free, language);
    const held = heldWords(heldBy, language);
    return held === ""
      ? say("{where}: {share} in 100 free.", { where, share })
      : say("{where}: {share} in 100 free; held: {held}.", { where, share, held });
  };
  return [
    freeWords(say("In the tank"), verdict.inTank),
    freeWords(say("On the leaf"), verdict.onLeaf),
    endsWords(verdict.onLeaf, verdict.name, language),
  ]
    .filter((part) => part !== null)
    .join(" ");
}

/** Where a share is looked at, in the words of a sentence. */
export function placeWords(where: "in the tank" | "on the leaf", language: Language = ENGLISH): string {
  return where === "in the tank" ? language.words.plan.inTheTank : language.words.plan.onTheLeaf;
}

/** The answer where the aim is judged, for the active that has least of it free; null when none is known. */
export function leastFreeOf(
  actives: readonly ActiveVerdict[],
  where: "in the tank" | "on the leaf",
): { readonly verdict: ActiveVerdict; readonly share: Share | LeafShare; readonly free: number } | null {
  let least: { verdict: ActiveVerdict; share: Share | LeafShare; free: number } | null = null;
  for (const verdict of actives) {
    const share = where === "in the tank" ? verdict.inTank : verdict.onLeaf;
    if (share.free !== null && (least === null || share.free < least.free)) {
      least = { verdict, share, free: share.free };
    }
  }
  return least;
}

/** The dose in words, both where there are two; null when nothing is added. */
export function doseWords({ parts }: Programme, language: Language = ENGLISH): string | null {
  if (parts.length === 0) return null;
  return (
    parts
      // As on the card and the command line: a dose of 2 g/L is not one of 2.00.
      .map(({ dose }) => `${language.figures.figure(dose.value)} ${dose.unit}`)
      .reduce((one, other) => sayIn(language)("{one} and {other}", { one, other }))
  );
}

/** Cost per hectare, or that it is not known. */
export function costWords(cost: number | null, language: Language = ENGLISH): string {
  const say = sayIn(language);
  if (cost === null) return say("cost not known");
  return cost === 0 ? say("no cost") : say("{cost} per ha", { cost: language.figures.fixed(cost, 2) });
}
