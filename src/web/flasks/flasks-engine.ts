import {
  benchList,
  builtInFlasks,
  checkShow,
  designDemo,
  farmBeside,
  farmJob,
  flaskCautions,
  flaskScript,
  isDesign,
  readDemo,
  readJob,
  runDemo,
  slipEffects,
  visibleSlips,
} from "../../agronomy/index.ts";
import type { Demo, FlaskContext, FlaskShow } from "../../agronomy/index.ts";
import { flasksHtml, wordIssue } from "../../report/index.ts";
import type { Issue } from "../../units/index.ts";
import type { Language } from "../../words/index.ts";
import type { JobDocument } from "../job/to-document.ts";
import type { FlasksReply, FlasksRequest } from "./messages.ts";
import { showView } from "./show-view.ts";

const flasks = builtInFlasks();

/** Draws for the bands on the page: fewer than in a file, so that a phone keeps up. */
const PAGE_DRAWS = 100;

/** The demonstration of the latest document that could be computed. */
let latest: { readonly demo: Demo; readonly show: FlaskShow } | null = null;

type Say = (reply: FlasksReply) => void;

/** Answers what the screen of the flasks asks. */
export function answerFlasks(
  request: FlasksRequest,
  data: Pick<FlaskContext, "thermo" | "trade">,
  language: Language,
  say: Say,
): void {
  const context: FlaskContext = { ...data, flasks };
  const { id } = request;
  if (request.type === "run") {
    run(id, request.document, context, language, say);
    return;
  }
  if (latest === null) return;
  const { demo, show } = latest;
  switch (request.type) {
    case "check":
      say({ type: "check", id, check: checkShow(demo, show, request.seen, context) });
      return;
    case "bench": {
      const slips = visibleSlips(slipEffects(demo, show, context));
      const bench = { bench: benchList(demo), cautions: flaskCautions(demo, context), slips };
      say({ type: "bench", id, bench });
      return;
    }
    case "farm": {
      const beside = withFarm(demo, request.job, context);
      const farm = farmBeside(beside, context);
      const of = beside.farm === demo.farm ? "the demonstration" : "the open job";
      say({ type: "farm", id, farm: { farm: farm.ok ? farm.value : null, of } });
      return;
    }
    case "script": {
      const script = flaskScript(withFarm(demo, request.job, context), show, context);
      say({ type: "script", id, html: script.ok ? flasksHtml(script.value, language) : null });
    }
  }
}

/** The demonstration beside the open job, as the audience's; beside its own where that one cannot be read. */
function withFarm(demo: Demo, job: JobDocument, context: FlaskContext): Demo {
  const read = readJob(job, context);
  return read.ok ? { ...demo, farm: farmJob(demo, read.value, context.trade) } : demo;
}

function worded(
  issues: readonly Issue[],
  language: Language,
): { readonly severity: string; readonly words: string }[] {
  return issues.map((issue) => ({ severity: issue.severity, words: wordIssue(issue, language) }));
}

function run(id: number, document: unknown, context: FlaskContext, language: Language, say: Say): void {
  const blocked = (issues: FlasksIssues): void => {
    say({ type: "show", id, issues, view: null, complete: true });
  };
  const found = isDesign(document) ? designDemo(document, context) : null;
  const read =
    found === null
      ? readDemo(document, context)
      : found.ok
        ? { ok: true as const, value: found.value.demo, issues: found.issues }
        : found;
  if (!read.ok) {
    blocked(worded(read.issues, language));
    return;
  }
  // The central colours come at once, the bands a moment later.
  for (const draws of [0, PAGE_DRAWS]) {
    const done = runDemo(read.value, context, { draws });
    const issues = worded([...read.issues, ...done.issues], language);
    if (!done.ok) {
      blocked(issues);
      return;
    }
    latest = { demo: read.value, show: done.value };
    say({ type: "show", id, issues, view: showView(done.value, language), complete: draws > 0 });
  }
}

type FlasksIssues = Extract<FlasksReply, { type: "show" }>["issues"];
