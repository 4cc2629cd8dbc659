import { DOTS, dotsOf } from "./dots.tsx";
import type { ActiveVerdict, ClockShare, LeafShare, Programme, Share } from "../../agronomy/index.ts";

/** A share as a whole-number figure in a hundred; the edges are said, never rounded to "all" or "none". */
export function inHundred(share: number): string {
  if (share > 0.995 && share < 1) return "over 99";
  if (share > 0 && share < 0.005) return "under 1";
  return String(Math.round(100 * share));
}

/** How often the aim is met over the draws: "18 of 20"; null when nothing was drawn. */
export function sureWords(confidence: number | null): string | null {
  return confidence === null ? null : `${String(dotsOf(confidence))} of ${String(DOTS)}`;
}

/** A number with the significant digits that make sense on a page, without exponents where a person can read it. */
export function figure(value: number, digits = 3): string {
  if (value === 0) return "0";
  const size = Math.abs(value);
  if (size < 1e-4 || size >= 1e6) {
    const [mantissa, exponent] = value.toExponential(digits - 1).split("e");
    return `${mantissa ?? ""} × 10${raised(Number(exponent))}`;
  }
  const decimals = Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  return value.toFixed(Math.min(decimals, 8));
}

/** An exponent in raised digits. */
function raised(exponent: number): string {
  const digits = { "-": "⁻", 0: "⁰", 1: "¹", 2: "²", 3: "³", 4: "⁴", 5: "⁵", 6: "⁶", 7: "⁷", 8: "⁸", 9: "⁹" };
  return [...String(exponent)].map((sign) => digits[sign as keyof typeof digits]).join("");
}

/** A time in the unit a person would use. */
export function duration(hours: number): string {
  if (hours < 1) return `${figure(hours * 60, 2)} min`;
  if (hours < 72) return `${figure(hours, 2)} h`;
  return hours < 24 * 730 ? `${figure(hours / 24, 2)} days` : `${figure(hours / 8766, 2)} years`;
}

/** What holds the rest, largest first: "31 by calcium, 4 by magnesium". Shares under half a hundredth are left out. */
export function heldWords(heldBy: Readonly<Record<string, number>>): string {
  return heldParts(heldBy)
    .filter(([, share]) => share >= 0.005)
    .map(([holder, share]) => `${inHundred(share)} ${holderWords(holder)}`)
    .join(", ");
}

/** Held shares, largest first. */
export function heldParts(heldBy: Readonly<Record<string, number>>): readonly (readonly [string, number])[] {
  return Object.entries(heldBy)
    .filter(([, share]) => share > 0)
    .sort((a, b) => b[1] - a[1]);
}

/** "by calcium"; what comes out of solution as itself is not held by anything. */
export function holderWords(holder: string): string {
  return holder.startsWith("undissolved") ? `as ${holder}` : `by ${holder}`;
}

/** The range beside a figure; null when none was computed. */
export function rangeWords(share: Pick<Share, "low" | "high">): string | null {
  if (share.low === null || share.high === null) return null;
  return `${inHundred(share.low)} to ${inHundred(share.high)}`;
}

/** The two ends of the leaf answer in one sentence; null when they agree or are not known. */
export function endsWords(leaf: LeafShare, active: string): string | null {
  const { withSolid, withoutSolid } = leaf;
  if (withSolid === null || withoutSolid === null) return null;
  if (Math.abs(withSolid.free - withoutSolid.free) < 0.005) return null;
  return `${inHundred(withSolid.free)} if its calcium salt forms at once, ${inHundred(withoutSolid.free)} if it never forms. Which one a drop of ${active} does is not known.`;
}

/** What dries to the active's own acid on the leaf, in words; null where that is little or not known. */
export function ownAcidWords({ ownAcid, free }: LeafShare): string | null {
  if (free === null || ownAcid === null || ownAcid < 0.005) return null;
  return `${inHundred(ownAcid)} of the free part dries to its own acid; no metal holds that. Whether it crystallises there was not measured.`;
}

/** The clock answer in one sentence. */
export function clockWords(clock: ClockShare): string {
  if (clock.stable) return "Stable over the holding time, say the sources.";
  if (clock.intact === null) return `Not known. ${clock.why ?? ""}`.trim();
  const range = rangeWords(clock);
  const half = clock.halfLife_h === null ? "" : ` Half of it is gone after ${duration(clock.halfLife_h)}.`;
  return `${inHundred(clock.intact)} in 100 intact when the last is sprayed${range === null ? "" : ` (${range})`}.${half}`;
}

/** The picture of an active in words, for those who do not see it. */
export function pictureWords(verdict: ActiveVerdict): string {
  const tank =
    verdict.inTank.free === null
      ? "In the tank: not known."
      : `In the tank: ${inHundred(verdict.inTank.free)} in 100 free${suffix(heldWords(verdict.inTank.heldBy))}.`;
  const leaf =
    verdict.onLeaf.free === null
      ? "On the leaf: not known."
      : `On the leaf: ${inHundred(verdict.onLeaf.free)} in 100 free${suffix(heldWords(verdict.onLeaf.heldBy))}.`;
  const ends = endsWords(verdict.onLeaf, verdict.name);
  return [tank, leaf, ends].filter((part) => part !== null).join(" ");
}

function suffix(held: string): string {
  return held === "" ? "" : `; held: ${held}`;
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
export function doseWords({ parts }: Programme): string | null {
  if (parts.length === 0) return null;
  return parts.map(({ dose }) => `${figure(dose.value)} ${dose.unit}`).join(" and ");
}

/** Cost per hectare, or that it is not known. */
export function costWords(cost: number | null): string {
  if (cost === null) return "cost not known";
  return cost === 0 ? "no cost" : `${cost.toFixed(2)} per ha`;
}
