import type {
  ActiveVerdict,
  ClockShare,
  DryingEnd,
  Evidence,
  LeafShare,
  Money,
  OnMud,
  Place,
  Programme,
  ProgrammePart,
  Share,
} from "../agronomy/index.ts";
import { amountText, costText, figure, inHundred, perHundred, timeText } from "./figures.ts";

/** Held shares below this are not worth a word. */
const LEAST_SHOWN = 0.005;

/** What holds an active, largest first: "calcium 5, magnesium 2". Empty when nothing is held. */
export function heldList(heldBy: Readonly<Record<string, number>>): string {
  return Object.entries(heldBy)
    .filter(([, share]) => share >= LEAST_SHOWN)
    .sort(([, a], [, b]) => b - a)
    .map(([holder, share]) => `${holder} ${perHundred(share)}`)
    .join(", ");
}

/** The range of a share, or that it is not given: "88 to 96". */
export function rangeText(low: number | null, high: number | null): string {
  return low === null || high === null ? "range not known" : `${perHundred(low)} to ${perHundred(high)}`;
}

/** "93 in 100 free (88 to 96); held: calcium 5, magnesium 2", or that it is not known and why. */
export function shareText(share: Share): string {
  if (share.free === null) return `not known. ${share.why ?? ""}`.trim();
  const held = heldList(share.heldBy);
  const range = share.low === null ? "" : ` (${rangeText(share.low, share.high)})`;
  const why = share.why === null ? "" : `. ${share.why}`;
  return `${inHundred(share.free)} free${range}${held === "" ? "" : `; held by ${held}`}${why}`;
}

/** "8 to 12 in 100 on the mud of the water, not in the figures above", or that it is not known; null: no mud tested. */
export function onMudText(mud: OnMud | null): string | null {
  if (mud === null) return null;
  const { low, high, why } = mud;
  if (low === null || high === null) return `not known. ${why ?? ""}`.trim();
  const share = high < LEAST_SHOWN ? "under 1 in 100" : `${perHundred(low)} to ${perHundred(high)} in 100`;
  const full = mud.limitedBy === "capacity" ? " The mud is full then." : "";
  return `${share} on the mud of the water, not in the other figures.${full}${why === null ? "" : ` ${why}`}`;
}

/**
 * What of an active stands on the leaf as its own acid, held by nothing of the water; null where that is little or not
 * known.
 */
export function ownAcidText({ ownAcid, free }: LeafShare): string | null {
  if (free === null || ownAcid === null || ownAcid < LEAST_SHOWN) return null;
  return `Of the free part ${perHundred(ownAcid)} dries to its own acid; no metal holds that. Whether it crystallises there was not measured.`;
}

/** The two ends of the leaf answer: "between 40 in 100 (solid forms) and 92 in 100 (no solid)". */
export function leafEndsText(leaf: LeafShare): string | null {
  if (leaf.withSolid === null || leaf.withoutSolid === null) return null;
  const gap = leaf.withoutSolid.free - leaf.withSolid.free;
  if (Math.abs(gap) < LEAST_SHOWN) return null;
  const ends = `${perHundred(leaf.withSolid.free)} if its calcium salt settles, ${perHundred(leaf.withoutSolid.free)} if not`;
  const central = leaf.solidForms ? "it does" : "it does not";
  return `${ends}; the figure above takes it that ${central}`;
}

/**
 * Where the drop stops drying: "Dried until one part in 376 of the water is left, in balance with air at 80 %
 * humidity", and what the figures there rest on.
 */
export function dryingText(drying: DryingEnd): string {
  const { factor, ended } = drying;
  const air = `air at ${figure(100 * drying.humidity, 3)} % humidity`;
  const left = `one part in ${figure(factor, 2)} of the water is left`;
  const end = {
    "at the humidity": `The drop dries until ${left}, in balance with ${air}.`,
    "at the most factor": `The drop was followed until ${left}; it is still wetter than ${air}.`,
    "not solved further": `The drop was followed until ${left}; further drying could not be solved.`,
  }[ended];
  const outside =
    drying.outsideRange.length === 0
      ? ""
      : " Some salts are beyond the range their activity was measured in.";
  const estimated =
    drying.estimated.length === 0 ? "" : " Activities of the actives' ions are estimates from similar ions.";
  return `${end}${outside}${estimated}`;
}

/** "99 in 100 intact after the holding time; half-life 40 h", or that it is stable or not known. */
export function clockText(clock: ClockShare): string {
  const parts: string[] = [];
  if (clock.intact !== null) {
    const range = clock.low === null ? "" : ` (${rangeText(clock.low, clock.high)})`;
    parts.push(`${inHundred(clock.intact)} intact${range}`);
  }
  if (clock.stable) parts.push("called stable by the sources");
  else if (clock.halfLife_h !== null) parts.push(`half-life ${timeText(clock.halfLife_h)}`);
  if (parts.length === 0) parts.push("not known");
  return `${parts.join("; ")}${clock.why === null ? "" : `. ${clock.why}`}`;
}

/** The dose of a programme in the unit it is measured in, and per litre of spray; both doses where there are two. */
export function doseText(programme: Programme): string {
  const { parts, kind } = programme;
  if (parts.length === 0) {
    if (kind === "less water") return `${figure(programme.waterVolume_LPerHa)} L/ha of water`;
    return kind === "none" ? "nothing added" : "no conditioner";
  }
  return parts.map(partDoseText).join(" and ");
}

function partDoseText({ dose, dose_gPerL }: ProgrammePart): string {
  const shown = `${figure(dose.value)} ${dose.unit}`;
  return dose.unit === "g/L" ? shown : `${shown} (${figure(dose_gPerL)} g/L)`;
}

/** Least free share over the actives that have one, at a place. */
export function leastFree(actives: readonly ActiveVerdict[], where: Place): number | null {
  const known = actives
    .map((active) => (where === "in the tank" ? active.inTank.free : active.onLeaf.free))
    .filter((free) => free !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/** Whether a programme is a way out: "meets the aim", "misses the aim", "blocked", "not known". */
export function standing(programme: Programme): string {
  if (programme.blocked) return "blocked";
  if (programme.meetsAim === null) return "not known";
  return programme.meetsAim ? "meets the aim" : "misses the aim";
}

/** "cost 4.40 per ha, 66.00 per load, 1760.00 a season"; "cost not known" when no price was given. */
export function programmeCostText({ cost, heldValue }: Programme): string {
  const spent = cost.perHa === null ? "cost not known" : `cost ${moneyText(cost)}`;
  return heldValue.perHa === null
    ? spent
    : `${spent}; active still held worth ${costText(heldValue.perHa)} per ha`;
}

/** "4.40 per ha, 66.00 per load, 1760.00 a season"; the season is left out where its area was not said. */
export function moneyText({ perHa, perLoad, perSeason }: Money): string {
  const season = perSeason === null ? "" : `, ${costText(perSeason)} a season`;
  return `${costText(perHa)} per ha, ${costText(perLoad)} per load${season}`;
}

/** "Active held as planned is worth 3.10 per ha …"; null when its price or its binding is not known. */
export function heldValueText(planned: Programme): string | null {
  return planned.heldValue.perHa === null
    ? null
    : `The active held as planned is worth ${moneyText(planned.heldValue)}.`;
}

/** "[computed]": stands behind a statement. */
export function evidenceMark(evidence: Evidence): string {
  return `[${evidence}]`;
}

/** Concentration of an active [mmol/L], for people who check by hand. */
export function concentrationText(active: ActiveVerdict): string {
  return `${figure(active.concentration_molPerL * 1000)} mmol/L`;
}

/** An amount with its label: "ammonium sulfate: 51 kg". */
export function labelledAmount(label: string, amount: number, unit: "L" | "kg" | "mL" | "g"): string {
  return `${label}: ${amountText(amount, unit)}`;
}
