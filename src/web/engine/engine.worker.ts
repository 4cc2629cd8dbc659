import {
  ADDED,
  builtInTrade,
  checkComplaint,
  FEEDS,
  findFormulation,
  knownOfActives,
  LOADS,
  OTHER_PARTNERS,
  PATTERNS,
  planInSteps,
  planJob,
  PLANTS,
  readComplaint,
  readJob,
  SPRAYER_METALS,
  WATER_TREATMENTS,
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
  uncertaintySentences,
  wordIssue,
} from "../../report/index.ts";
import { PARAMETER_RULES, PARAMETERS } from "../../units/index.ts";
import type { Issue } from "../../units/index.ts";
import { readSheet, readSheetCells } from "../../water/index.ts";
import type { FlasksRequest } from "../flasks/messages.ts";
import type { JobDocument } from "../job/to-document.ts";
import { sheetView } from "./sheet-view.ts";
import type {
  Answered,
  Catalogue,
  ConditionerOption,
  EngineReply,
  EngineRequest,
  Planned,
  WordedIssue,
} from "./messages.ts";

const thermo = builtInThermo();
const trade = builtInTrade();

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
    words: isMissing(issue) ? neededWords(issue) : wordIssue({ ...issue, path: "" }),
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
  if (expected === undefined || code === "text-empty") return "needed.";
  return /^\d/.test(expected) ? `needed, such as ${expected}.` : `needed: ${expected}.`;
}

/** The newest job asked about: work on an older one is given up. */
let newest = 0;
/** How long [ms] the engine works before it looks whether something else was asked. */
const TURN_MS = 40;

const turns = new MessageChannel();
/** Lets what has been asked meanwhile be taken in. */
function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    turns.port1.onmessage = () => {
      resolve();
    };
    turns.port2.postMessage(null);
  });
}

/** Answers a job: first the tank as planned, at once, then every way out with its ranges. */
async function answer(id: number, document: JobDocument): Promise<void> {
  newest = id;
  const started = performance.now();
  const since = (): number => performance.now() - started;
  const job = readJob(document, { trade });
  if (!job.ok) {
    say({ type: "plan", id, issues: worded(job.issues), planned: null, elapsed_ms: since() });
    return;
  }
  const first = planJob(job.value, { thermo, trade }, { draws: 0, waysOut: false });
  if (first.ok) say({ type: "first", id, plan: first.value, job: job.value, elapsed_ms: since() });
  const steps = planInSteps(job.value, { thermo, trade });
  let turn = performance.now();
  for (;;) {
    if (performance.now() - turn > TURN_MS) {
      await nextTurn();
      turn = performance.now();
      if (newest !== id) return;
    }
    const step = steps.next();
    if (step.done !== true) continue;
    const issues = worded([...job.issues, ...step.value.issues]);
    const planned = step.value.ok ? plannedOf(job.value, step.value.value) : null;
    say({ type: "plan", id, issues, planned, elapsed_ms: since() });
    return;
  }
}

function plannedOf(job: TitledJob, plan: Plan): Planned {
  const facts = { date: today(), title: job.title, sampled: job.water.sampled };
  const cards = plan.programmes.map(
    (p) => [p.id, cardHtml(fillCard(plan, { ...facts, programme: p.id }))] as const,
  );
  return {
    plan,
    job,
    certainty: certaintyOf(plan),
    known: knownOfActives(job, trade),
    cards: Object.fromEntries(cards),
  };
}

function certaintyOf({ uncertainty, programmes }: Plan): readonly string[] {
  if (uncertainty === null) return [];
  const about = programmes.find(({ id }) => id === uncertainty.about.programme);
  return uncertaintySentences(uncertainty, about?.name ?? "");
}

/** The day here and now, as an ISO date. */
function today(): string {
  const now = new Date();
  const two = (part: number): string => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function complaint(id: number, document: JobDocument): EngineReply {
  const record = readComplaint(document, { trade });
  const read = record.ok ? checkComplaint(record.value, { thermo, trade }) : record;
  const issues = worded(record.ok ? [...record.issues, ...read.issues] : record.issues);
  return { type: "complaint", id, issues, answered: read.ok ? answeredOf(read.value) : null };
}

function answeredOf(answer: ComplaintAnswer): Answered {
  return {
    answer,
    headline: complaintHeadline(answer),
    limits: limitsText(answer),
    actives: answer.actives.map(activeComplaintLines),
    causes: answer.causes.map(causeText),
    html: complaintHtml(answer, { date: today() }),
  };
}

function sheet({ id, input, options }: Extract<EngineRequest, { type: "sheet" }>): EngineReply {
  const read = "cells" in input ? readSheetCells(input.cells, options) : readSheet(input.text, options);
  return { type: "sheet", id, view: sheetView(read) };
}

/** The flasks' part of the engine, fetched when it is first asked for. */
async function flasks(request: FlasksRequest): Promise<void> {
  const { answerFlasks } = await import("../flasks/flasks-engine.ts");
  answerFlasks(request, { thermo, trade }, (reply) => {
    say({ type: "flasks", reply });
  });
}

self.onmessage = (event: MessageEvent<EngineRequest>) => {
  const request = event.data;
  switch (request.type) {
    case "plan":
      void answer(request.id, request.document);
      return;
    case "complaint":
      say(complaint(request.id, request.document));
      return;
    case "sheet":
      say(sheet(request));
      return;
    case "flasks":
      void flasks(request.request);
  }
};

say({ type: "catalogue", catalogue: catalogueOf(trade) });
