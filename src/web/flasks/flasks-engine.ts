import { parse } from "yaml";
import {
  builtInFlasks,
  checkShow,
  designDemo,
  flaskScript,
  isDesign,
  readDemo,
  runDemo,
} from "../../agronomy/index.ts";
import type { Demo, FlaskContext, FlaskShow, TradeData } from "../../agronomy/index.ts";
import type { ThermoData } from "../../chem/index.ts";
import { flasksHtml, wordIssue } from "../../report/index.ts";
import type { Issue } from "../../units/index.ts";
import type { FlasksReply, FlasksRequest } from "./messages.ts";

/** Draws for the bands on the page: fewer than in a file, so that a phone keeps up. */
const PAGE_DRAWS = 100;

/** What the screen is answered with. */
type Say = (reply: FlasksReply) => void;

/** The demonstration of the latest document that could be computed. */
let latest: { readonly demo: Demo; readonly show: FlaskShow } | null = null;

function worded(issues: readonly Issue[]): { readonly severity: string; readonly words: string }[] {
  return issues.map((issue) => ({ severity: issue.severity, words: wordIssue(issue) }));
}

function blocked(id: number, words: string, say: Say): void {
  say({ type: "show", id, issues: [{ severity: "error", words }], show: null, complete: true });
}

function run(id: number, text: string, context: FlaskContext, say: Say): void {
  let document: unknown;
  try {
    document = parse(text, { maxAliasCount: 50 });
  } catch (error) {
    const line = error instanceof Error ? (error.message.split("\n")[0] ?? "") : "";
    blocked(id, `This file cannot be read as JSON or YAML. ${line}`, say);
    return;
  }
  const found = isDesign(document) ? designDemo(document, context) : null;
  const read =
    found === null
      ? readDemo(document, context)
      : found.ok
        ? { ok: true as const, value: found.value.demo, issues: found.issues }
        : found;
  if (!read.ok) {
    say({ type: "show", id, issues: worded(read.issues), show: null, complete: true });
    return;
  }
  // The central colours come at once, the bands a moment later.
  for (const draws of [0, PAGE_DRAWS]) {
    const done = runDemo(read.value, context, { draws });
    const issues = worded([...read.issues, ...done.issues]);
    if (done.ok) latest = { demo: read.value, show: done.value };
    say({ type: "show", id, issues, show: done.ok ? done.value : null, complete: draws > 0 || !done.ok });
    if (!done.ok) return;
  }
}

/** Answers the flasks' screen; part of the engine, fetched when the flasks are first asked for. */
export function answerFlasks(
  request: FlasksRequest,
  data: { readonly thermo: ThermoData; readonly trade: TradeData },
  say: Say,
): void {
  const context: FlaskContext = { ...data, flasks: builtInFlasks() };
  if (request.type === "run") {
    run(request.id, request.text, context, say);
    return;
  }
  if (latest === null) return;
  const { demo, show } = latest;
  if (request.type === "check") {
    say({ type: "check", id: request.id, check: checkShow(demo, show, request.seen, context) });
    return;
  }
  const script = flaskScript(demo, show, context);
  say({ type: "script", id: request.id, html: script.ok ? flasksHtml(script.value) : null });
}
