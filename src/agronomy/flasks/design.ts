import { deltaE00, labOfXyz } from "../../colour/index.ts";
import { readQuantity } from "../../units/index.ts";
import type { Read } from "../../units/index.ts";
import { IssueList, describe, isMissing, openFields } from "../job-fields.ts";
import type { Fields } from "../job-fields.ts";
import { PLAIN_FROM, SAME_BELOW } from "./compare.ts";
import { contentsOf } from "./contents.ts";
import { candidatesOf, flasksOf } from "./design-candidates.ts";
import type { Bottles, Candidate } from "./design-candidates.ts";
import { flaskChemistry } from "./flask-chemistry.ts";
import type { FlaskChemistry } from "./flask-chemistry.ts";
import { cloudsOf } from "./holders.ts";
import { opticsOf, paletteOf, xyzOf } from "./optics.ts";
import type { Palette } from "./optics.ts";
import { USUAL_PATH_CM, USUAL_ROOM_C, readDemo } from "./read-demo.ts";
import { runDemo } from "./run-demo.ts";
import type { Addition, Demo, FlaskContext } from "./types.ts";

/** What is asked of a design: the bottles at hand and how different the flasks are to be. */
export interface DesignRequest {
  readonly bottles: Bottles;
  readonly volume_mL: number;
  /** Least colour difference between two flasks, for nine in ten draws of the constants. */
  readonly leastDeltaE00: number;
  readonly path_cm: number;
  readonly temperature_C: number;
}

/** Amounts that were found, as a demonstration. */
export interface Designed {
  readonly demo: Demo;
  /** The least difference between two flasks that nine in ten draws keep [ΔE00]. */
  readonly deltaE00Low: number;
  /** True when that is as much as was asked for. */
  readonly reached: boolean;
  /** Sets of amounts looked at. */
  readonly tried: number;
}

/** Draws with which the best candidates are compared. */
const DESIGN_DRAWS = 40;
/** Candidates whose spread is looked at. */
const SHORT_LIST = 6;

const KEYS = ["hardstand-flasks", "title", "about", "path", "temperature", "design", "farm"];
const DESIGN_KEYS = ["volume", "least difference", "bottles"];
const BOTTLES = ["metal", "indicator", "sequestrant", "competitor", "acid"] as const;

/** True for a document that asks for amounts to be found. */
export function isDesign(document: unknown): boolean {
  return typeof document === "object" && document !== null && "design" in document;
}

/**
 * Finds amounts for a dark, a half and a clear flask from the bottles at hand: measurable with a pipette and a kitchen
 * balance, without anything falling out, and as different as they can be over the spread of the constants.
 */
export function designDemo(document: unknown, context: FlaskContext): Read<Designed> {
  const issues = new IssueList();
  const request = readRequest(document, context, issues);
  if (request === null || issues.blocks) return { ok: false, issues: issues.all };
  const all = candidatesOf(request.bottles);
  const ranked = rank(all, request, context).slice(0, SHORT_LIST);
  let best: { demo: Demo; low: number } | null = null;
  for (const candidate of ranked) {
    const demo = demoOf(candidate, request, document);
    const run = runDemo(demo, context, { draws: DESIGN_DRAWS });
    if (!run.ok) continue;
    const low = Math.min(...run.value.pairs.map((pair) => pair.low));
    if (best === null || low > best.low) best = { demo, low };
  }
  if (best === null) {
    issues.add("design-without-answer", "design.bottles", {
      expected: "an indicator that shows this metal, clear in every flask",
    });
    return { ok: false, issues: issues.all };
  }
  const reached = best.low >= request.leastDeltaE00;
  return {
    ok: true,
    value: { demo: best.demo, deltaE00Low: best.low, reached, tried: all.length },
    issues: issues.all,
  };
}

function readRequest(document: unknown, context: FlaskContext, issues: IssueList): DesignRequest | null {
  const top = openFields(document, "", KEYS, issues);
  const fields = top === null ? null : openFields(top.get("design"), "design", DESIGN_KEYS, issues);
  if (top === null || fields === null) return null;
  const volume =
    fields.get("volume") === undefined
      ? 0.1
      : issues.take(readQuantity(fields.get("volume"), "volume", fields.at("volume")));
  const least = fields.get("least difference") ?? PLAIN_FROM;
  if (typeof least !== "number" || !(least >= 1 && least <= 60)) {
    issues.add("number-unusable", fields.at("least difference"), {
      received: describe(least),
      expected: "a colour difference ΔE00 from 1 to 60",
    });
    return null;
  }
  const bottles = readBottles(fields, top, context, issues);
  if (bottles === null || volume === undefined) return null;
  // Path and temperature are read with the same care as in any demonstration.
  const shell = readDemo(shellOf(top, {}), context);
  if (!shell.ok) {
    for (const issue of shell.issues) issues.take({ ok: false, issues: [issue] });
    return null;
  }
  return {
    bottles,
    volume_mL: volume * 1000,
    leastDeltaE00: least,
    path_cm: shell.value.path_cm,
    temperature_C: shell.value.temperature_C,
  };
}

/** A document with one flask, to read additions the way any document is read. */
function shellOf(top: Fields, step: Record<string, unknown>): unknown {
  return {
    "hardstand-flasks": top.get("hardstand-flasks"),
    path: top.get("path") ?? `${USUAL_PATH_CM} cm`,
    temperature: top.get("temperature") ?? `${USUAL_ROOM_C} °C`,
    flasks: [{ name: "shell", start: { volume: "100 mL" }, steps: [{ ...SOME_STEP, ...step }] }],
  };
}
const SOME_STEP = { add: "deionised water", amount: "1 mL" };

function readBottles(fields: Fields, top: Fields, context: FlaskContext, issues: IssueList): Bottles | null {
  const list = openFields(fields.get("bottles"), fields.at("bottles"), BOTTLES, issues);
  if (list === null) return null;
  const found: Partial<Record<(typeof BOTTLES)[number], Addition>> = {};
  for (const name of BOTTLES) {
    const value = list.get(name);
    if (value === undefined) {
      if (name === "metal" || name === "indicator" || name === "sequestrant") {
        isMissing(list, name, "a bottle such as {add: …, as: 1 % w/v}", issues);
      }
      continue;
    }
    const bottle = openFields(value, list.at(name), ["add", "form", "as", "in"], issues);
    if (bottle === null) continue;
    const unit = bottle.get("as") === undefined && name !== "acid" ? "1 g" : "1 mL";
    const step = Object.fromEntries(
      ["add", "form", "as", "in"].flatMap((key) =>
        bottle.get(key) === undefined ? [] : [[key, bottle.get(key)]],
      ),
    );
    const read = readDemo(shellOf(top, { ...step, amount: unit }), context);
    const first = read.ok ? read.value.flasks[0]?.steps[0] : undefined;
    if (first?.kind === "add") found[name] = first;
    else {
      const moved = read.issues.map((issue) => ({
        ...issue,
        path: issue.path.replace("flasks[0].steps[0]", list.at(name)),
      }));
      issues.take({ ok: false, issues: moved });
    }
  }
  const { metal, indicator, sequestrant, competitor = null, acid = null } = found;
  if (metal === undefined || indicator === undefined || sequestrant === undefined) return null;
  return { metal, indicator, sequestrant, competitor, acid };
}

function demoOf(candidate: Candidate, request: DesignRequest, document: unknown): Demo {
  const title =
    typeof document === "object" && document !== null && "title" in document ? document.title : null;
  return {
    title: typeof title === "string" ? title : "Flasks with amounts found for these bottles",
    about: null,
    path_cm: request.path_cm,
    temperature_C: request.temperature_C,
    flasks: flasksOf(candidate, request.bottles, request.volume_mL),
    ownIndicators: [],
    farm: null,
    seen: null,
  };
}

/** Candidates by the least difference between two flasks, greatest first; those that cloud or look alike are left out. */
function rank(
  all: readonly Candidate[],
  request: DesignRequest,
  context: FlaskContext,
): readonly Candidate[] {
  const first = all[0];
  if (first === undefined) return [];
  const chemistry = flaskChemistry(demoOf(first, request, null), context);
  const palette = paletteOf(chemistry, opticsOf(chemistry, context.flasks));
  return all
    .map((candidate) => ({ candidate, least: leastDifference(candidate, request, chemistry, palette) }))
    .filter(({ least }) => least >= SAME_BELOW)
    .sort((one, other) => other.least - one.least)
    .map(({ candidate }) => candidate);
}

function leastDifference(
  candidate: Candidate,
  request: DesignRequest,
  chemistry: FlaskChemistry,
  palette: Palette,
): number {
  const labs = flasksOf(candidate, request.bottles, request.volume_mL).map((flask) => {
    const filled = contentsOf(flask, (contents) => chemistry.solve(contents));
    const last = filled.ok ? filled.contents.at(-1) : undefined;
    const solved = last === undefined ? null : chemistry.solve(last);
    if (solved === null || cloudsOf(solved, chemistry).length > 0) return null;
    return labOfXyz(xyzOf(solved, palette, request.path_cm));
  });
  let least = Infinity;
  for (const [i, one] of labs.entries()) {
    for (const other of labs.slice(i + 1)) {
      if (one === null || other === null) return 0;
      least = Math.min(least, deltaE00(one, other));
    }
  }
  return least;
}
