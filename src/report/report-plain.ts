import type { ActiveVerdict, Evidence, Job, MixItem, Plan, Programme } from "../agronomy/index.ts";
import { countOutOf } from "../units/index.ts";
import type { Measures } from "../units/index.ts";
import { fill, growerWords } from "../words/index.ts";
import type { Language, Said } from "../words/index.ts";
import type { CardFacts } from "./card.ts";
import { doseText, leastFree, placeText, rangeText, wayName } from "./sentences.ts";
import { inputWords } from "./uncertainty-words.ts";

/** One sentence of the first page, with how it is known; null where it only repeats what was asked. */
export interface PlainLine {
  readonly said: Said;
  readonly evidence: Evidence | null;
}

/** A heading of the first page with what stands under it. */
export interface PlainPart {
  readonly key: "asked" | "does" | "todo" | "sure" | "cost" | "cautions";
  readonly heading: string;
  readonly lines: readonly PlainLine[];
}

/** The first page of the report: plain words for the grower. */
export interface PlainReport {
  readonly title: string;
  readonly about: string;
  readonly parts: readonly PlainPart[];
  /** Waters out of `PLAIN_DOTS` in which the aim is met; null when nothing was drawn. */
  readonly sure: number | null;
  readonly footer: string;
}

/** Dots that show how sure the aim is met. */
export const PLAIN_DOTS = 20;

/** What the page is written from. */
interface Telling {
  readonly plan: Plan;
  readonly job: Job;
  /** The way out the report is for; null: the plan has none. */
  readonly programme: Programme | null;
  readonly language: Language;
}

const line = (said: Said, evidence: Evidence | null): PlainLine => ({ said, evidence });
const own = (text: string): Said => ({ text, isEnglish: false });
const computed = (text: string): PlainLine => line(own(text), "computed");
const repeated = (text: string): PlainLine => line(own(text), null);

/**
 * The first page of the report, in plain words.
 *
 * @param programme the way out the report is for; null: the plan has none
 */
export function plainReport(
  plan: Plan,
  job: Job,
  facts: CardFacts,
  programme: Programme | null,
  language: Language,
): PlainReport {
  const grower = growerWords(language);
  const { dayText } = language.figures;
  const telling: Telling = { plan, job, programme, language };
  const { hardstand, data } = plan.versions;
  const water = plan.water.source;
  const date = dayText(facts.date);
  const { cautions } = programme?.filling ?? plan;
  const parts: readonly PlainPart[] = [
    { key: "asked", heading: grower.asked, lines: asked(telling) },
    { key: "does", heading: grower.does, lines: plan.actives.flatMap((active) => done(active, telling)) },
    { key: "todo", heading: grower.toDo, lines: toDo(telling) },
    { key: "sure", heading: grower.sure, lines: sure(telling) },
    { key: "cost", heading: grower.cost, lines: costs(telling) },
    {
      key: "cautions",
      heading: grower.cautions,
      lines: cautions.map(({ text }) => line(language.phrases.say(text), null)),
    },
  ];
  return {
    title: facts.title ?? fill(grower.title, { water }),
    about:
      facts.sampled === null
        ? fill(grower.about, { date, water })
        : fill(grower.aboutSampled, { date, water, sampled: dayText(facts.sampled) }),
    parts: parts.filter(({ lines }) => lines.length > 0),
    sure: metDots(programme),
    footer: fill(grower.footer, { version: hardstand, data }),
  };
}

function metDots(programme: Programme | null): number | null {
  const confidence = programme?.confidence ?? null;
  return confidence === null ? null : countOutOf(confidence, PLAIN_DOTS);
}

function asked({ plan: { water, actives }, job: { spray, mix, aim }, language }: Telling): PlainLine[] {
  const grower = growerWords(language);
  const { figure, inHundred, measured, pHText } = language.figures;
  return [
    repeated(
      fill(grower.job, {
        area: measured(spray.area_ha, "ha", spray.measures),
        volume: measured(spray.volume_LPerHa, "L/ha", spray.measures),
      }),
    ),
    ...mix.map((item) => {
      const active = actives.find((verdict) => verdict.active === item.active);
      return repeated(productText(item, active?.name ?? item.active, spray.measures, language));
    }),
    repeated(
      fill(grower.aim, {
        share: inHundred(aim.freeShare),
        where: placeText(aim.where, language),
        confidence: inHundred(aim.confidence),
      }),
    ),
    computed(
      fill(grower.water, {
        hardness: figure(water.hardness_mgPerL_asCaCO3),
        alkalinity: figure(water.alkalinity_mgPerL_asCaCO3),
        pH: pHText(water.pH),
      }),
    ),
  ];
}

/** "Glyphosate, 360 g/L, 2 L/ha.": a product as the job has it. */
function productText(
  { name, strength, rate }: MixItem,
  active: string,
  measures: Measures,
  { figures, phrases }: Language,
): string {
  const called = name ?? phrases.name(active);
  const { figure, rateText } = figures;
  return `${capital(called)}, ${figure(strength.value)} g/${strength.per}, ${rateText(rate.value, rate.per, measures)}.`;
}

function done(active: ActiveVerdict, { job: { spray }, language }: Telling): PlainLine[] {
  const { inTank, onLeaf, byClock } = active;
  const grower = growerWords(language);
  const { inHundred, timeText } = language.figures;
  const name = capital(language.phrases.name(active.name));
  const lines: PlainLine[] = [];
  if (inTank.free === null || onLeaf.free === null) {
    const why = inTank.why ?? onLeaf.why;
    lines.push(computed(fill(grower.freeNotKnown, { name })));
    if (why !== null) lines.push(line(language.phrases.say(why), "computed"));
  } else {
    const shares = { tank: inHundred(inTank.free), leaf: inHundred(onLeaf.free) };
    lines.push(computed(fill(grower.free, { name, ...shares })));
    const range = rangeText(onLeaf.low, onLeaf.high, language);
    if (onLeaf.low !== null) lines.push(computed(fill(grower.range, { range })));
    const holders = mainHolders(onLeaf.heldBy, language);
    if (holders !== "") lines.push(computed(fill(grower.held, { holders })));
  }
  if (byClock.stable) lines.push(line(own(fill(grower.stable, { name })), byClock.evidence));
  else if (byClock.intact !== null && spray.holdingTime_h !== null) {
    const kept = { share: inHundred(byClock.intact), time: timeText(spray.holdingTime_h) };
    lines.push(computed(fill(grower.intact, kept)));
  }
  for (const { level, text, evidence } of active.rules)
    if (level !== "note") lines.push(line(language.phrases.say(text), evidence));
  return lines;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A holder of less than this is not named on the first page. */
const LEAST_NAMED = 0.01;

/** "calcium and magnesium": what holds most of what is held. */
function mainHolders(heldBy: Readonly<Record<string, number>>, { words, phrases }: Language): string {
  const named = Object.entries(heldBy).filter(([, share]) => share >= LEAST_NAMED);
  const most = named
    .sort(([, a], [, b]) => b - a)
    .slice(0, 2)
    .map(([holder]) => phrases.name(holder));
  return most.length === 0 ? "" : most.reduce((one, other) => fill(words.answers.and, { one, other }));
}

function toDo(telling: Telling): PlainLine[] {
  const { plan, job, programme, language } = telling;
  const grower = growerWords(language);
  const { inHundred } = language.figures;
  const where = job.aim.where;
  if (programme === null) return [computed(grower.noWay)];
  const lines: PlainLine[] = [];
  if (plan.chosen === null) {
    lines.push(computed(grower.noWay));
    const nearest = plan.programmes.find((one) => !one.blocked);
    const free = nearest === undefined ? null : leastFree(nearest.actives, where);
    if (nearest !== undefined && free !== null)
      lines.push(computed(fill(grower.nearest, { name: wayText(nearest, telling), free: inHundred(free) })));
  } else if (programme.meetsAim !== true) lines.push(computed(grower.otherPick));
  lines.push(...steps(programme, telling));
  const free = leastFree(programme.actives, where);
  if (programme.kind !== "none" && free !== null) {
    const then = programme.actives.length > 1 ? grower.thenLeast : grower.then;
    lines.push(computed(fill(then, { free: inHundred(free), where: placeText(where, language) })));
  }
  return [...lines, repeated(grower.card)];
}

function wayText(programme: Programme, { language }: Telling): string {
  const name = wayName(programme, language);
  return programme.parts.length === 0 ? name : `${name}, ${doseText(programme, language)}`;
}

/** What is done differently from the plan. */
function steps(programme: Programme, { job: { spray }, language }: Telling): PlainLine[] {
  const { kind, parts, waters, waterVolume_LPerHa, filling } = programme;
  const grower = growerWords(language);
  const { figure, measured } = language.figures;
  const lines = parts.map((part) => {
    const of = (load: typeof filling.loads.last): string => {
      const amount = load?.amounts.find(({ product }) => product === part.conditioner);
      return amount === undefined
        ? grower.none
        : measured(amount.amount, amount.unit, filling.loads.measures);
    };
    const { full, last } = filling.loads;
    const added = { name: language.phrases.name(part.name), full: of(full) };
    return last === null ? fill(grower.add, added) : fill(grower.addLast, { ...added, last: of(last) });
  });
  if (waterVolume_LPerHa !== spray.volume_LPerHa)
    lines.push(
      fill(grower.volume, {
        volume: measured(waterVolume_LPerHa, "L/ha", spray.measures),
        planned: measured(spray.volume_LPerHa, "L/ha", spray.measures),
      }),
    );
  if (kind === "other source" || kind === "blend") {
    const shares = waters.map(({ water, share }) =>
      fill(grower.partOfWater, { share: figure(100 * share, 2), water }),
    );
    lines.push(fill(grower.waters, { parts: shares.join(", ") }));
  }
  if (kind === "iron settled") lines.push(grower.settle);
  if (kind === "more active" || kind === "other form")
    lines.push(fill(grower.change, { name: language.phrases.name(programme.name) }));
  if (kind === "none" && programme.meetsAim === true) lines.push(grower.nothing);
  return lines.map(computed);
}

function sure({ plan: { uncertainty }, programme, language }: Telling): PlainLine[] {
  const grower = growerWords(language);
  const dots = metDots(programme);
  const lines = [computed(dots === null ? grower.notDrawn : fill(grower.met, { met: dots, of: PLAIN_DOTS }))];
  const most = uncertainty?.spread[0];
  if (most !== undefined)
    lines.push(computed(fill(grower.spread, { input: plainInput(most.input, language) })));
  const next = uncertainty?.measureNext[0];
  if (next !== undefined) {
    const what = language.phrases.say(next.words).text.replace(/\.$/, "");
    lines.push(computed(fill(grower.measure, { what })));
  }
  return lines;
}

/** An uncertain input without terms of chemistry. */
function plainInput(input: string, language: Language): string {
  return input.startsWith("reading:") || input.startsWith("assumed:")
    ? inputWords(input, language)
    : growerWords(language).constants;
}

function costs({ plan, job: { spray }, programme, language }: Telling): PlainLine[] {
  const grower = growerWords(language);
  const { costText, measured } = language.figures;
  const planned = plan.programmes.find((one) => one.kind === "none");
  const { perHa, perLoad, perSeason } = programme?.cost ?? { perHa: null, perLoad: null, perSeason: null };
  const lines: string[] = [];
  if (perHa === null) lines.push(grower.costNotKnown);
  else if (perHa === 0) lines.push(grower.noCost);
  else {
    lines.push(fill(grower.costs, { perHa: costText(perHa), perLoad: costText(perLoad) }));
    const area = measured(spray.area_ha, "ha", spray.measures);
    lines.push(fill(grower.whole, { cost: costText(perHa * spray.area_ha), area }));
    if (perSeason !== null) lines.push(fill(grower.season, { cost: costText(perSeason) }));
  }
  const worth = planned?.heldValue.perHa ?? null;
  if (worth !== null) lines.push(fill(grower.worth, { cost: costText(worth) }));
  return lines.map(computed);
}
