import {
  ADDED,
  builtInTrade,
  checkComplaint,
  complaintInSteps,
  FEEDS,
  findFormulation,
  inTurns,
  knownOfActives,
  LOADS,
  OTHER_PARTNERS,
  PATTERNS,
  planJob,
  planTogether,
  PLANTS,
  readComplaint,
  readJob,
  SPRAYER_METALS,
  WATER_TREATMENTS,
  workingsOf,
} from "../../agronomy/index.ts";
import type {
  ComplaintAnswer,
  ConditionerRecord,
  FeedRecord,
  Plan,
  TitledJob,
  TradeData,
} from "../../agronomy/index.ts";
import { builtInThermo } from "../../chem/index.ts";
import {
  activeComplaintLines,
  cardHtml,
  causeText,
  complaintHeadline,
  complaintHtml,
  fillCard,
  limitsText,
  planHtml,
  uncertaintySentences,
  wordIssue,
} from "../../report/index.ts";
import type { CardFacts } from "../../report/index.ts";
import { PARAMETER_RULES, PARAMETERS } from "../../units/index.ts";
import type { Issue, Read } from "../../units/index.ts";
import { readSheet, readSheetCells } from "../../water/index.ts";
import { ENGLISH, fill, languageOf } from "../../words/index.ts";
import { helpIfAsked, lineToHelper, planThread, callForHelp, rest } from "./plan-helper.ts";
import { sheetView } from "./sheet-view.ts";
import type { FlasksRequest } from "../flasks/messages.ts";
import type { JobDocument } from "../job/to-document.ts";
import type {
  Answered,
  AnswerRequest,
  Catalogue,
  ConditionerOption,
  EngineReply,
  EngineRequest,
  FirstRequest,
  Planned,
  WordedIssue,
} from "./messages.ts";

const data = { thermo: builtInThermo(), trade: builtInTrade() };
const { trade } = data;
/** The language of all that is said from here; the page hands it over before it asks. */
let language = ENGLISH;

function say(reply: EngineReply): void {
  self.postMessage(reply);
}

/** What the selects of the form offer. */
function catalogueOf(data: TradeData): Catalogue {
  const codes = new Set(data.actives.flatMap((active) => active.formulations));
  return {
    formulations: [...codes].filter((code) => findFormulation(data, code).ok).sort(),
    parameters: PARAMETERS.map((name) => ({ name, units: PARAMETER_RULES[name].units })),
    actives: data.actives.map((active) => ({
      id: active.id,
      name: active.name,
      also: [...active.synonyms, ...(active.cas === null ? [] : [active.cas])],
      group: active.type,
      forms: active.forms.map((form) => ({ id: form.id, name: form.name, also: form.synonyms })),
      formulations: active.formulations,
    })),
    conditioners: data.conditioners.map(optionOf),
    feeds: data.feeds.map(optionOf),
    affinityClasses: data.affinityClasses
      .filter(({ id }) => id !== NOT_KNOWN)
      .map(({ id, name, synonyms }) => ({ id, name, also: synonyms })),
    partners: [...FEEDS, ...OTHER_PARTNERS],
    waterTreatments: WATER_TREATMENTS,
    sprayerMetals: SPRAYER_METALS,
    complaint: {
      added: ADDED,
      patterns: PATTERNS,
      plants: PLANTS,
      loads: LOADS,
      causes: data.complaintCauses.map(({ id, name, check }) => ({ id, name, check })),
    },
  };
}

/** The class of an affinity nobody knows: the same as nothing chosen. */
const NOT_KNOWN = "not-known";

function optionOf({ id, name, synonyms, forms }: ConditionerRecord | FeedRecord): ConditionerOption {
  return { id, name, also: synonyms, forms: forms.map((form) => ({ id: form.id, name: form.name })) };
}

function worded(issues: readonly Issue[]): readonly WordedIssue[] {
  // The page says where by putting the words beside the field, so they need not name the place again.
  return issues.map((issue) => ({
    path: issue.path,
    severity: issue.severity,
    words: isMissing(issue) ? neededWords(issue) : wordIssue({ ...issue, path: "" }, language),
    missing: isMissing(issue),
    readings: issue.code === "number-ambiguous" ? (issue.expected?.split(" or ") ?? []) : [],
  }));
}

/** On a form an empty text is one that nobody has filled in yet. */
function isMissing({ code }: Issue): boolean {
  return code === "key-missing" || code === "text-empty";
}

/** What a form asks for in words of its own: a person fills in fields, not keys of a file. */
function neededWords({ code, expected }: Issue): string {
  const { issues } = language.words;
  if (expected === undefined || code === "text-empty") return issues.needed;
  if (/^\d/.test(expected)) return fill(issues.neededSuchAs, { example: expected });
  return fill(issues.neededThis, { what: language.phrases.say(expected).text });
}

/** The newest document asked about: work on an older job is given up. */
let newest = 0;
async function answer({ type, id, document, isFirstElsewhere }: AnswerRequest): Promise<void> {
  newest = id;
  if (type === "plan") await answerPlan(id, document, isFirstElsewhere !== true);
  else await answerComplaint(id, document);
}

/** The tank as planned, which takes no time; nothing where it cannot be computed, of which the whole answer tells. */
function sayFirst(id: number, job: TitledJob): void {
  const first = planJob(job, data, { draws: 0, waysOut: false });
  if (first.ok) say({ type: "first", id, plan: first.value, job });
}

/** Gives the first answer alone, or says what stands in the way of any. */
function answerFirst({ id, document }: FirstRequest): void {
  const started = performance.now();
  const job = readJob(document, { trade });
  if (job.ok) sayFirst(id, job.value);
  else {
    const elapsed_ms = performance.now() - started;
    say({ type: "plan", id, issues: worded(job.issues), answer: null, isWhole: true, elapsed_ms });
  }
}

/** Answers a job: first the tank as planned, at once, then every way out with its ranges. */
async function answerPlan(id: number, document: JobDocument, withFirst: boolean): Promise<void> {
  const started = performance.now();
  const done = (read: readonly Issue[], planned: Planned | null): void => {
    const elapsed_ms = performance.now() - started;
    say({ type: "plan", id, issues: worded(read), answer: planned, isWhole: true, elapsed_ms });
  };
  const job = readJob(document, { trade });
  if (!job.ok) {
    done(job.issues, null);
    return;
  }
  if (withFirst) sayFirst(id, job.value);
  const read = await planTogether(job.value, data, planThread, lineToHelper(), {}, () => newest !== id);
  if (read === null) return;
  done([...job.issues, ...read.issues], read.ok ? plannedOf(id, job.value, read.value) : null);
  callForHelp(job.value);
}

/** The plan given last, to be asked about. */
let given: { readonly id: number; readonly plan: Plan; readonly job: TitledJob } | null = null;

function about({ id, about: asked }: Extract<EngineRequest, { type: "about" }>): EngineReply {
  const programme =
    given?.id === asked.plan ? given.plan.programmes.find((one) => one.id === asked.programme) : undefined;
  if (given === null || programme === undefined) return { type: "about", id, reply: null };
  const { plan, job } = given;
  const reply =
    asked.what === "workings"
      ? { workings: workingsOf(programme), report: "" }
      : {
          workings: null,
          report: planHtml(
            plan,
            job,
            { ...factsOf(job), programme: programme.id },
            { part: "report", language },
          ),
        };
  return { type: "about", id, reply };
}

function factsOf(job: TitledJob): CardFacts {
  return { date: today(), title: job.title, sampled: job.water.sampled };
}

function plannedOf(id: number, job: TitledJob, plan: Plan): Planned {
  given = { id, plan, job };
  const facts = factsOf(job);
  const cards = plan.programmes.map(
    (p) => [p.id, cardHtml(fillCard(plan, { ...facts, programme: p.id }, language), language)] as const,
  );
  return {
    id,
    plan,
    job,
    certainty: certaintyOf(plan),
    known: knownOfActives(job, trade),
    cards: Object.fromEntries(cards),
  };
}

/** Answers a complaint: first without ranges, at once, then with them. */
async function answerComplaint(id: number, document: JobDocument): Promise<void> {
  const started = performance.now();
  const record = readComplaint(document, { trade });
  const done = (read: Read<ComplaintAnswer>, isWhole: boolean): void => {
    const issues = worded(record.ok ? [...record.issues, ...read.issues] : record.issues);
    const answer = read.ok ? answeredOf(read.value) : null;
    const elapsed_ms = performance.now() - started;
    say({ type: "complaint", id, issues, answer, isWhole, elapsed_ms });
  };
  if (!record.ok) {
    done(record, true);
    return;
  }
  const first = checkComplaint(record.value, data, { draws: 0 });
  done(first, !first.ok);
  if (!first.ok) return;
  const whole = await inTurns(complaintInSteps(record.value, data), planThread, () => newest !== id);
  if (whole !== null) done(whole, true);
}

function answeredOf(answer: ComplaintAnswer): Answered {
  return {
    answer,
    headline: complaintHeadline(answer, language),
    limits: limitsText(answer, language),
    actives: answer.actives.map((one) => activeComplaintLines(one, language)),
    causes: answer.causes.map((cause) => causeText(cause, language)),
    html: complaintHtml(answer, { date: today() }, language),
  };
}

function certaintyOf({ uncertainty, programmes }: Plan): readonly string[] {
  if (uncertainty === null) return [];
  const about = programmes.find(({ id }) => id === uncertainty.about.programme);
  return uncertaintySentences(uncertainty, about ?? null, language);
}

/** The day here and now, as an ISO date. */
function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function sheet({ id, input, options }: Extract<EngineRequest, { type: "sheet" }>): EngineReply {
  const read = "cells" in input ? readSheetCells(input.cells, options) : readSheet(input.text, options);
  return { type: "sheet", id, view: sheetView(read, language) };
}

/** The demonstration brings indicators and drawings of its own: they are fetched when they are asked for. */
async function flasks(request: FlasksRequest): Promise<void> {
  const { answerFlasks } = await import("../flasks/flasks-engine.ts");
  answerFlasks(request, data, language, (reply) => {
    say({ type: "flasks", reply });
  });
}

if (!helpIfAsked(data)) {
  self.onmessage = (event: MessageEvent<EngineRequest>) => {
    const request = event.data;
    if (request.type === "language") language = languageOf(request.tag, request.pack);
    else if (request.type === "first") answerFirst(request);
    else if (request.type === "over") newest = request.id;
    else if (request.type === "rest") rest();
    else if ("document" in request) void answer(request);
    else if (request.type === "sheet") say(sheet(request));
    else if (request.type === "about") say(about(request));
    else void flasks(request.request);
  };
  say({ type: "catalogue", catalogue: catalogueOf(trade) });
}
