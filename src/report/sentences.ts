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
  RuleVerdict,
  Share,
} from "../agronomy/index.ts";
import { ENGLISH, fill } from "../words/index.ts";
import type { Language } from "../words/index.ts";

/** Held shares below this are not worth a word. */
const LEAST_SHOWN = 0.005;

/** What holds an active, largest first: "calcium 5, magnesium 2". Empty when nothing is held. */
export function heldList(
  heldBy: Readonly<Record<string, number>>,
  { figures, phrases }: Language = ENGLISH,
): string {
  return Object.entries(heldBy)
    .filter(([, share]) => share >= LEAST_SHOWN)
    .sort(([, a], [, b]) => b - a)
    .map(([holder, share]) => `${phrases.name(holder)} ${figures.perHundred(share)}`)
    .join(", ");
}

/** The range of a share, or that it is not given: "88 to 96". */
export function rangeText(
  low: number | null,
  high: number | null,
  { words, figures }: Language = ENGLISH,
): string {
  return low === null || high === null
    ? words.answers.rangeNotKnown
    : fill(words.answers.range, { low: figures.perHundred(low), high: figures.perHundred(high) });
}

/** "93 in 100 free (88 to 96); held: calcium 5, magnesium 2", or that it is not known and why. */
export function shareText(share: Share, language: Language = ENGLISH): string {
  const { answers } = language.words;
  const why = share.why === null ? null : language.phrases.say(share.why).text;
  if (share.free === null) return why === null ? `${answers.notKnown}.` : `${answers.notKnown}. ${why}`;
  const held = heldList(share.heldBy, language);
  const free = fill(answers.free, { share: language.figures.inHundred(share.free) });
  const parts = [withRange(free, share, language)];
  if (held !== "") parts.push(fill(answers.heldBy, { holders: held }));
  return `${parts.join("; ")}${why === null ? "" : `. ${why}`}`;
}

function withRange(
  said: string,
  { low, high }: { readonly low: number | null; readonly high: number | null },
  language: Language,
): string {
  if (low === null) return said;
  return fill(language.words.answers.inRange, { share: said, range: rangeText(low, high, language) });
}

/** "8 to 12 in 100 on the mud of the water, not in the figures above", or that it is not known; null: no mud tested. */
export function onMudText(mud: OnMud | null, language: Language = ENGLISH): string | null {
  if (mud === null) return null;
  const { answers } = language.words;
  const { low, high, why } = mud;
  const reason = why === null ? [] : [language.phrases.say(why).text];
  if (low === null || high === null) return [`${answers.notKnown}.`, ...reason].join(" ");
  const share =
    high < LEAST_SHOWN
      ? answers.underOneInHundred
      : fill(answers.inHundredRange, { range: rangeText(low, high, language) });
  const full = mud.limitedBy === "capacity" ? [answers.mudIsFull] : [];
  const memory = mud.fromMemory ? [answers.mudFromMemory] : [];
  return [fill(answers.onMud, { share }), ...full, ...reason, ...memory].join(" ");
}

/**
 * What of an active stands on the leaf as its own acid, held by nothing of the water; null where that is little or not
 * known.
 */
export function ownAcidText(
  { ownAcid, free }: LeafShare,
  { words, figures }: Language = ENGLISH,
): string | null {
  if (free === null || ownAcid === null || ownAcid < LEAST_SHOWN) return null;
  return fill(words.answers.ownAcid, { share: figures.perHundred(ownAcid) });
}

/** How a jar test is done, before its amounts. */
export function jarStart(jarVolume_L: number, { words, figures }: Language = ENGLISH): string {
  return fill(words.answers.jarStart, { volume: figures.figure(jarVolume_L) });
}

/** The two ends of the leaf answer: "between 40 in 100 (solid forms) and 92 in 100 (no solid)". */
export function leafEndsText(leaf: LeafShare, { words, figures }: Language = ENGLISH): string | null {
  if (leaf.withSolid === null || leaf.withoutSolid === null) return null;
  const gap = leaf.withoutSolid.free - leaf.withSolid.free;
  if (Math.abs(gap) < LEAST_SHOWN) return null;
  const ends = fill(words.answers.leafEnds, {
    withSolid: figures.perHundred(leaf.withSolid.free),
    withoutSolid: figures.perHundred(leaf.withoutSolid.free),
  });
  return fill(leaf.solidForms ? words.answers.leafEndsSettled : words.answers.leafEndsFree, { ends });
}

/**
 * Where the drop stops drying: "Dried until one part in 376 of the water is left, in balance with air at 80 %
 * humidity", and what the figures there rest on.
 */
export function dryingText(drying: DryingEnd, { words, figures }: Language = ENGLISH): string {
  const { answers } = words;
  const air = fill(answers.air, { humidity: figures.figure(100 * drying.humidity, 3) });
  const left = fill(answers.left, { factor: figures.figure(drying.factor, 2) });
  const end = {
    "at the humidity": fill(answers.driedAtHumidity, { left, air }),
    "at the most factor": fill(answers.driedAtMost, { left, air }),
    "not solved further": fill(answers.driedNotFurther, { left }),
  }[drying.ended];
  const said = [end];
  if (drying.outsideRange.length > 0) said.push(answers.saltsOutside);
  if (drying.estimated.length > 0) said.push(answers.activitiesEstimated);
  return said.join(" ");
}

/** "99 in 100 intact after the holding time; half-life 40 h", or that it is stable or not known. */
export function clockText(clock: ClockShare, language: Language = ENGLISH): string {
  const { answers } = language.words;
  const parts: string[] = [];
  if (clock.intact !== null) {
    const intact = fill(answers.intact, { share: language.figures.inHundred(clock.intact) });
    parts.push(withRange(intact, clock, language));
  }
  if (clock.stable) parts.push(answers.calledStable);
  else if (clock.halfLife_h !== null)
    parts.push(fill(answers.halfLife, { time: language.figures.timeText(clock.halfLife_h) }));
  if (parts.length === 0) parts.push(answers.notKnown);
  return `${parts.join("; ")}${clock.why === null ? "" : `. ${language.phrases.say(clock.why).text}`}`;
}

/** The water volume of a programme in the measures of the job, the metric one beside. */
export function waterVolumeText(programme: Programme, { figures }: Language = ENGLISH): string {
  const { waterVolume_LPerHa, filling } = programme;
  return figures.measured(waterVolume_LPerHa, "L/ha", filling.loads.measures);
}

/** Name of a programme; water and rates in the measures of the job, which the name the engine gives does not know. */
export function wayName(programme: Programme, language: Language = ENGLISH): string {
  const { kind, name, filling } = programme;
  if (kind === "less water")
    return fill(language.words.answers.lessWater, { volume: waterVolumeText(programme, language) });
  const told = language.phrases.name(name);
  const { measures } = filling.loads;
  if (kind !== "more active" || measures === "metric") return told;
  return told.replace(/(\d+(?:[.,]\d+)?) (L|kg)\/ha/g, (_, rate: string, of: "L" | "kg") =>
    language.figures.rateText(Number(rate.replace(",", ".")), of, measures),
  );
}

/** The dose of a programme in the unit it is measured in, and per litre of spray; both doses where there are two. */
export function doseText(programme: Programme, language: Language = ENGLISH): string {
  const { answers } = language.words;
  const { parts, kind } = programme;
  if (parts.length === 0) {
    if (kind === "less water")
      return fill(answers.waterDose, { volume: waterVolumeText(programme, language) });
    return kind === "none" ? answers.nothingAdded : answers.noConditioner;
  }
  return parts
    .map((part) => partDoseText(part, language))
    .reduce((one, other) => fill(answers.and, { one, other }));
}

function partDoseText({ dose, dose_gPerL }: ProgrammePart, { figures }: Language): string {
  const shown = `${figures.figure(dose.value)} ${dose.unit}`;
  return dose.unit === "g/L" ? shown : `${shown} (${figures.figure(dose_gPerL)} g/L)`;
}

/** Least free share over the actives that have one, at a place. */
export function leastFree(actives: readonly ActiveVerdict[], where: Place): number | null {
  const known = actives
    .map((active) => (where === "in the tank" ? active.inTank.free : active.onLeaf.free))
    .filter((free) => free !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/** Whether a programme is a way out: "meets the aim", "misses the aim", "blocked", "not known". */
export function standing(programme: Programme, { words }: Language = ENGLISH): string {
  if (programme.blocked) return words.answers.blocked;
  if (programme.meetsAim === null) return words.answers.notKnown;
  return programme.meetsAim ? words.answers.meetsAim : words.answers.missesAim;
}

/** "cost 4.40 per ha, 66.00 per load, 1760.00 a season"; "cost not known" when no price was given. */
export function programmeCostText({ cost, heldValue }: Programme, language: Language = ENGLISH): string {
  const { answers } = language.words;
  const spent =
    cost.perHa === null ? answers.costNotKnown : fill(answers.cost, { money: moneyText(cost, language) });
  return heldValue.perHa === null
    ? spent
    : fill(answers.stillHeld, { cost: spent, worth: language.figures.costText(heldValue.perHa) });
}

/** "4.40 per ha, 66.00 per load, 1760.00 a season"; the season is left out where its area was not said. */
export function moneyText(
  { perHa, perLoad, perSeason }: Money,
  { words, figures }: Language = ENGLISH,
): string {
  const spent = { perHa: figures.costText(perHa), perLoad: figures.costText(perLoad) };
  return perSeason === null
    ? fill(words.answers.money, spent)
    : fill(words.answers.moneySeason, { ...spent, perSeason: figures.costText(perSeason) });
}

/** "Active held as planned is worth 3.10 per ha …"; null when its price or its binding is not known. */
export function heldValueText(planned: Programme, language: Language = ENGLISH): string | null {
  return planned.heldValue.perHa === null
    ? null
    : fill(language.words.answers.heldValue, { money: moneyText(planned.heldValue, language) });
}

/** How hard a rule speaks: "blocked", "warning", "note". */
export function levelText(level: RuleVerdict["level"], { words }: Language = ENGLISH): string {
  return { block: words.plan.blocked, warn: words.plan.warning, note: words.plan.note }[level];
}

/** Where a share is looked at, in words. */
export function placeText(where: Place, { words }: Language = ENGLISH): string {
  return where === "in the tank" ? words.plan.inTheTank : words.plan.onTheLeaf;
}

/** "[computed]": stands behind a statement. */
export function evidenceMark(evidence: Evidence, { words }: Language = ENGLISH): string {
  return `[${words.evidence[evidence]}]`;
}

/** Concentration of an active [mmol/L], for people who check by hand. */
export function concentrationText(active: ActiveVerdict, { figures }: Language = ENGLISH): string {
  return `${figures.figure(active.concentration_molPerL * 1000)} mmol/L`;
}
