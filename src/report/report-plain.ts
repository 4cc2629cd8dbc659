import type { ActiveVerdict, Evidence, Job, MixItem, Plan, Programme } from "../agronomy/index.ts";
import { countOutOf } from "../units/index.ts";
import type { CardFacts } from "./card.ts";
import { costText, figure, inHundred, measured, pHText, timeText } from "./figures.ts";
import { doseText, leastFree, rangeText } from "./sentences.ts";
import { inputWords } from "./uncertainty-words.ts";

/** One sentence of the first page, with how it is known; null where it only repeats what was asked. */
export interface PlainLine {
  readonly text: string;
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

const words = {
  title: (water: string) => `Spray water: ${water}`,
  about: (date: string, water: string, sampled: string | null) =>
    `${date}. Water from ${water}${sampled === null ? "" : `, sampled ${sampled}`}.`,
  asked: "What was asked",
  job: (area: string, volume: string) => `Spray ${area} with ${volume}, in this mix:`,
  aim: (share: string, where: string, confidence: string) =>
    `Aim: at least ${share} free ${where}, in ${confidence} cases.`,
  water: (hardness: string, alkalinity: string, pH: string) =>
    `The water: hardness ${hardness} and alkalinity ${alkalinity} mg/L as CaCO3, pH ${pH}.`,
  does: "What this water does, with nothing added",
  free: (name: string, tank: string, leaf: string) =>
    `${name}: in the tank ${tank} stays free, on the leaf ${leaf}.`,
  range: (range: string) => `On the leaf it may be ${range} in 100.`,
  held: (holders: string) => `Most of the rest is held by ${holders}, and cannot work.`,
  notKnown: (name: string) => `${name}: how much stays free is not known.`,
  intact: (share: string, time: string) => `${share} is still intact ${time} after mixing.`,
  stable: (name: string) => `${name} keeps in the tank, say the sources.`,
  todo: "What to do",
  nothing: "Nothing has to be added: as planned, the mix meets the aim.",
  noWay: "No way out that was tried meets the aim.",
  nearest: (name: string, free: string) => `The nearest is ${name}: ${free} free.`,
  otherPick: "This report is for a way out that does not meet the aim.",
  add: (name: string, full: string) => `Add ${name}: ${full} in a full load.`,
  addLast: (name: string, full: string, last: string) =>
    `Add ${name}: ${full} in a full load, ${last} in the last one.`,
  volume: (volume: string, planned: string) => `Spray ${volume} in place of ${planned}.`,
  waters: (parts: string) => `Fill with this water: ${parts}.`,
  settle: "Let the iron settle before filling. The fill card says how.",
  change: (name: string) => `Change the product: ${name}.`,
  then: (free: string, where: string) => `Then ${free} is free ${where}.`,
  thenLeast: (free: string, where: string) => `Then at least ${free} of each active is free ${where}.`,
  card: "The fill card gives the order, the amounts and the jar test.",
  sure: "How sure",
  met: (met: string, of: string) => `The aim is met in ${met} of ${of} waters that fit this test.`,
  notDrawn: "No ranges were worked out.",
  spread: (input: string) => `What leaves it most unsure: ${input}.`,
  constants: "how strongly metals bind this active in a drying drop",
  measure: (what: string) => `To be surer, find out: ${what}.`,
  cost: "What it costs",
  costs: (perHa: string, perLoad: string) => `${perHa} per ha, ${perLoad} per full load.`,
  whole: (cost: string, area: string) => `${cost} for these ${area}.`,
  season: (cost: string) => `${cost} for the season.`,
  free0: "Nothing beyond the plan.",
  noCost: "Not known: a price is missing.",
  worth: (cost: string) => `The active held as planned is worth ${cost} per ha.`,
  cautions: "Cautions",
  footer: (versions: string) => `${versions}. The label and local law come before anything said here.`,
} as const;

const computed = (text: string): PlainLine => ({ text, evidence: "computed" });
const said = (text: string): PlainLine => ({ text, evidence: null });

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
): PlainReport {
  const { hardstand, data } = plan.versions;
  const parts: readonly PlainPart[] = [
    { key: "asked", heading: words.asked, lines: asked(plan, job) },
    { key: "does", heading: words.does, lines: plan.actives.flatMap((active) => done(active, job)) },
    { key: "todo", heading: words.todo, lines: toDo(plan, job, programme) },
    { key: "sure", heading: words.sure, lines: sure(plan, programme) },
    { key: "cost", heading: words.cost, lines: costs(plan, job, programme) },
    {
      key: "cautions",
      heading: words.cautions,
      lines: (programme?.filling ?? plan).cautions.map(({ text }) => said(text)),
    },
  ];
  return {
    title: facts.title ?? words.title(plan.water.source),
    about: words.about(facts.date, plan.water.source, facts.sampled),
    parts: parts.filter(({ lines }) => lines.length > 0),
    sure: metDots(programme),
    footer: words.footer(`Hardstand ${hardstand}, data ${data}`),
  };
}

function metDots(programme: Programme | null): number | null {
  const confidence = programme?.confidence ?? null;
  return confidence === null ? null : countOutOf(confidence, PLAIN_DOTS);
}

function asked({ water }: Plan, { spray, mix, aim }: Job): PlainLine[] {
  return [
    said(
      words.job(
        measured(spray.area_ha, "ha", spray.measures),
        measured(spray.volume_LPerHa, "L/ha", spray.measures),
      ),
    ),
    ...mix.map((item) => said(productText(item))),
    said(words.aim(inHundred(aim.freeShare), aim.where, inHundred(aim.confidence))),
    computed(
      words.water(
        figure(water.hardness_mgPerL_asCaCO3),
        figure(water.alkalinity_mgPerL_asCaCO3),
        pHText(water.pH),
      ),
    ),
  ];
}

/** "glyphosate, 360 g/L, 2 L/ha": a product as the job has it. */
function productText({ own, active, name, strength, rate }: MixItem): string {
  const called = name ?? own?.name ?? active.replaceAll("-", " ");
  return `${capital(called)}, ${figure(strength.value)} g/${strength.per}, ${figure(rate.value)} ${rate.per}/ha.`;
}

function done(active: ActiveVerdict, { spray }: Job): PlainLine[] {
  const { name, inTank, onLeaf, byClock } = active;
  const lines: PlainLine[] = [];
  if (inTank.free === null || onLeaf.free === null) {
    const why = inTank.why ?? onLeaf.why;
    lines.push(computed(words.notKnown(capital(name))), ...(why === null ? [] : [computed(why)]));
  } else {
    lines.push(computed(words.free(capital(name), inHundred(inTank.free), inHundred(onLeaf.free))));
    if (onLeaf.low !== null) lines.push(computed(words.range(rangeText(onLeaf.low, onLeaf.high))));
    const holders = mainHolders(onLeaf.heldBy);
    if (holders !== "") lines.push(computed(words.held(holders)));
  }
  if (byClock.stable) lines.push({ text: words.stable(capital(name)), evidence: byClock.evidence });
  else if (byClock.intact !== null && spray.holdingTime_h !== null)
    lines.push(computed(words.intact(inHundred(byClock.intact), timeText(spray.holdingTime_h))));
  for (const rule of active.rules.filter(({ level }) => level !== "note"))
    lines.push({ text: rule.text, evidence: rule.evidence });
  return lines;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A holder of less than this is not named on the first page. */
const LEAST_NAMED = 0.01;

/** "calcium and magnesium": what holds most of what is held. */
function mainHolders(heldBy: Readonly<Record<string, number>>): string {
  const named = Object.entries(heldBy).filter(([, share]) => share >= LEAST_NAMED);
  return named
    .sort(([, a], [, b]) => b - a)
    .slice(0, 2)
    .map(([holder]) => holder)
    .join(" and ");
}

function toDo(plan: Plan, job: Job, programme: Programme | null): PlainLine[] {
  if (programme === null) return [computed(words.noWay)];
  const lines: PlainLine[] = [];
  if (plan.chosen === null) {
    lines.push(computed(words.noWay));
    const nearest = plan.programmes.find((one) => !one.blocked);
    const free = nearest === undefined ? null : leastFree(nearest.actives, job.aim.where);
    if (nearest !== undefined && free !== null)
      lines.push(computed(words.nearest(wayText(nearest), inHundred(free))));
  } else if (programme.meetsAim !== true) lines.push(computed(words.otherPick));
  lines.push(...steps(programme, job));
  const free = leastFree(programme.actives, job.aim.where);
  if (programme.kind !== "none" && free !== null) {
    const then = programme.actives.length > 1 ? words.thenLeast : words.then;
    lines.push(computed(then(inHundred(free), job.aim.where)));
  }
  return [...lines, said(words.card)];
}

function wayText(programme: Programme): string {
  return programme.parts.length === 0 ? programme.name : `${programme.name}, ${doseText(programme)}`;
}

/** What is done differently from the plan. */
function steps(programme: Programme, { spray }: Job): PlainLine[] {
  const { kind, name, parts, waters, waterVolume_LPerHa, filling } = programme;
  const lines = parts.map((part) => {
    const of = (load: typeof filling.loads.last): string => {
      const amount = load?.amounts.find(({ product }) => product === part.conditioner);
      return amount === undefined ? "none" : measured(amount.amount, amount.unit, filling.loads.measures);
    };
    const { full, last } = filling.loads;
    return last === null ? words.add(part.name, of(full)) : words.addLast(part.name, of(full), of(last));
  });
  if (waterVolume_LPerHa !== spray.volume_LPerHa)
    lines.push(
      words.volume(
        measured(waterVolume_LPerHa, "L/ha", spray.measures),
        measured(spray.volume_LPerHa, "L/ha", spray.measures),
      ),
    );
  if (kind === "other source" || kind === "blend")
    lines.push(
      words.waters(waters.map(({ water, share }) => `${figure(100 * share, 2)} in 100 ${water}`).join(", ")),
    );
  if (kind === "iron settled") lines.push(words.settle);
  if (kind === "more active" || kind === "other form") lines.push(words.change(name));
  if (kind === "none" && programme.meetsAim === true) lines.push(words.nothing);
  return lines.map(computed);
}

function sure({ uncertainty }: Plan, programme: Programme | null): PlainLine[] {
  const dots = metDots(programme);
  const lines = [computed(dots === null ? words.notDrawn : words.met(String(dots), String(PLAIN_DOTS)))];
  const most = uncertainty?.spread[0];
  if (most !== undefined) lines.push(computed(words.spread(plainInput(most.input))));
  const next = uncertainty?.measureNext[0];
  if (next !== undefined) lines.push(computed(words.measure(next.words.replace(/\.$/, ""))));
  return lines;
}

/** An uncertain input without terms of chemistry. */
function plainInput(input: string): string {
  return input.startsWith("reading:") || input.startsWith("assumed:") ? inputWords(input) : words.constants;
}

function costs(plan: Plan, { spray }: Job, programme: Programme | null): PlainLine[] {
  const planned = plan.programmes.find((one) => one.kind === "none");
  const { perHa, perLoad, perSeason } = programme?.cost ?? { perHa: null, perLoad: null, perSeason: null };
  const lines: string[] = [];
  if (perHa === null) lines.push(words.noCost);
  else if (perHa === 0) lines.push(words.free0);
  else {
    lines.push(words.costs(costText(perHa), costText(perLoad)));
    lines.push(words.whole(costText(perHa * spray.area_ha), measured(spray.area_ha, "ha", spray.measures)));
    if (perSeason !== null) lines.push(words.season(costText(perSeason)));
  }
  const worth = planned?.heldValue.perHa ?? null;
  if (worth !== null) lines.push(words.worth(costText(worth)));
  return lines.map(computed);
}
