import type { ThermoData } from "../../chem/index.ts";
import { foldUnit, readNumberText, readQuantity, splitNumberAndUnit } from "../../units/index.ts";
import type { Read } from "../../units/index.ts";
import { completeWater, readWaterTest } from "../../water/index.ts";
import type { Water } from "../../water/index.ts";
import { IssueList, describe, isMissing, openFields, textOf } from "../job-fields.ts";
import type { Fields } from "../job-fields.ts";
import { readJob } from "../job.ts";
import { readSeen } from "./check-show.ts";
import { readIndicator } from "./read-indicator.ts";
import type { OwnIndicator } from "./read-indicator.ts";
import { readStep } from "./read-step.ts";
import type { Demo, Flask, FlaskContext, FlaskStart } from "./types.ts";

/** Version of the demonstration format that is read. */
export const DEMO_VERSION = 1;
/** Way of the light through a flask when the document does not say [cm]; a 100 mL flask. Common practice. */
export const USUAL_PATH_CM = 6;
/** Temperature when the document does not say [°C]: that of the constants. */
export const USUAL_ROOM_C = 25;

const KEYS = [
  "hardstand-flasks",
  "title",
  "about",
  "path",
  "temperature",
  "indicators",
  "flasks",
  "farm",
  "seen",
];
const FLASK_KEYS = ["name", "shows", "start", "steps"];
const START_KEYS = ["water", "volume"];
const MOST_FLASKS = 12;
const MOST_STEPS = 20;

/**
 * Reads a demonstration from a document, such as parsed JSON or YAML.
 *
 * @param document plain data of unknown shape
 * @returns the demonstration in internal units, or every problem at once, each with its path
 */
export function readDemo(document: unknown, context: FlaskContext): Read<Demo> {
  const issues = new IssueList();
  const top = openFields(document, "", KEYS, issues);
  if (top === null) return { ok: false, issues: issues.all };
  readVersion(top, issues);
  const title = textOf(top, "title", issues);
  const about = textOf(top, "about", issues);
  const path_cm = readPath(top, issues);
  const temperature_C = readTemperature(top, issues);
  const own = readIndicators(top, issues);
  const extended: FlaskContext = {
    ...context,
    flasks: {
      ...context.flasks,
      reagents: [...own.map((one) => one.reagent), ...context.flasks.reagents],
    },
  };
  const flasks = readFlasks(top, extended, temperature_C, issues);
  const farm =
    top.get("farm") === undefined ? null : takeNested(readJob(top.get("farm"), context), "farm", issues);
  const names = flasks?.map(({ name }) => name) ?? [];
  const seen =
    top.get("seen") === undefined || flasks === null
      ? null
      : readSeen(top.get("seen"), "seen", names, issues);
  if (issues.blocks || flasks === null) return { ok: false, issues: issues.all };
  const ownIndicators = own.map((one) => one.indicator);
  return {
    ok: true,
    value: { title, about, path_cm, temperature_C, flasks, ownIndicators, farm, seen },
    issues: issues.all,
  };
}

/** Takes a reading whose paths begin at a nested document. */
function takeNested<T>(read: Read<T>, path: string, issues: IssueList): T | null {
  const moved = read.issues.map((issue) => ({
    ...issue,
    path: issue.path === "" ? path : `${path}.${issue.path}`,
  }));
  return issues.take(read.ok ? { ...read, issues: moved } : { ok: false, issues: moved }) ?? null;
}

function readVersion(top: Fields, issues: IssueList): void {
  if (isMissing(top, "hardstand-flasks", `hardstand-flasks: ${DEMO_VERSION}`, issues)) return;
  const version = top.get("hardstand-flasks");
  if (version === DEMO_VERSION) return;
  issues.add("version-unknown", top.at("hardstand-flasks"), {
    received: describe(version),
    expected: String(DEMO_VERSION),
    hint: "Write “hardstand-flasks: 1” at the top.",
  });
}

const LENGTHS_CM: Readonly<Record<string, number>> = { cm: 1, mm: 0.1, in: 2.54, inch: 2.54 };

function readPath(top: Fields, issues: IssueList): number {
  const value = top.get("path");
  if (value === undefined) return USUAL_PATH_CM;
  const parts = typeof value === "string" ? splitNumberAndUnit(value) : null;
  const number = parts === null ? undefined : issues.take(readNumberText(parts.number, "path"));
  const factor = parts === null ? undefined : LENGTHS_CM[foldUnit(parts.unit)];
  if (number !== undefined && factor !== undefined && number * factor >= 0.1 && number * factor <= 50) {
    return number * factor;
  }
  issues.add("length-unreadable", "path", {
    received: describe(value),
    expected: "a length from 1 mm to 50 cm, such as 6 cm",
  });
  return USUAL_PATH_CM;
}

function readTemperature(top: Fields, issues: IssueList): number {
  if (top.get("temperature") === undefined) return USUAL_ROOM_C;
  const value = issues.take(readQuantity(top.get("temperature"), "temperature", "temperature"));
  if (value === undefined) return USUAL_ROOM_C;
  if (value >= 0 && value <= 45) return value;
  issues.add("value-out-of-range", "temperature", {
    received: describe(top.get("temperature")),
    expected: "0 to 45 °C",
  });
  return USUAL_ROOM_C;
}

function readIndicators(top: Fields, issues: IssueList): readonly OwnIndicator[] {
  const list = top.get("indicators");
  if (list === undefined) return [];
  if (!Array.isArray(list)) {
    issues.add("list-expected", "indicators", { received: describe(list), expected: "a list of indicators" });
    return [];
  }
  return (list as readonly unknown[]).flatMap((entry, index) => {
    const read = readIndicator(entry, `indicators[${index}]`, index + 1, issues);
    return read === null ? [] : [read];
  });
}

function readFlasks(
  top: Fields,
  context: FlaskContext,
  temperature_C: number,
  issues: IssueList,
): readonly Flask[] | null {
  if (isMissing(top, "flasks", "a list with at least one flask", issues)) return null;
  const list = top.get("flasks");
  const expected = `a list of 1 to ${MOST_FLASKS} flasks`;
  if (!Array.isArray(list) || list.length > MOST_FLASKS) {
    issues.add("list-expected", "flasks", { received: describe(list), expected });
    return null;
  }
  if (list.length === 0) {
    issues.add("list-empty", "flasks", { received: "an empty list", expected });
    return null;
  }
  const flasks = (list as readonly unknown[]).map((entry, index) =>
    readFlask(entry, `flasks[${index}]`, context, temperature_C, issues),
  );
  const seen = new Set<string>();
  for (const flask of flasks) {
    if (flask === null) continue;
    if (seen.has(flask.name)) {
      issues.add("name-repeated", `${flask.path}.name`, {
        received: flask.name,
        expected: "each flask with a name of its own",
      });
    }
    seen.add(flask.name);
  }
  return flasks.every((flask) => flask !== null) ? flasks : null;
}

function readFlask(
  entry: unknown,
  path: string,
  context: FlaskContext,
  temperature_C: number,
  issues: IssueList,
): Flask | null {
  const fields = openFields(entry, path, FLASK_KEYS, issues);
  if (fields === null) return null;
  const name = isMissing(fields, "name", "a name to call the flask by", issues)
    ? null
    : textOf(fields, "name", issues);
  const shows = textOf(fields, "shows", issues);
  const start = readStart(fields, context.thermo, temperature_C, issues);
  const list = fields.get("steps");
  if (!Array.isArray(list) || list.length === 0 || list.length > MOST_STEPS) {
    issues.add(list === undefined ? "key-missing" : "list-expected", fields.at("steps"), {
      received: describe(list),
      expected: `a list of 1 to ${MOST_STEPS} steps`,
    });
    return null;
  }
  const steps = (list as readonly unknown[]).map((step, index) =>
    readStep(step, `${path}.steps[${index}]`, context, issues),
  );
  if (name === null || start === null || !steps.every((step) => step !== null)) return null;
  return { name, shows, start, steps, path };
}

function readStart(
  flask: Fields,
  thermo: ThermoData,
  temperature_C: number,
  issues: IssueList,
): FlaskStart | null {
  if (isMissing(flask, "start", "water and volume, such as {water: deionised, volume: 100 mL}", issues))
    return null;
  const fields = openFields(flask.get("start"), flask.at("start"), START_KEYS, issues);
  if (fields === null) return null;
  const volume = isMissing(fields, "volume", "a volume such as 100 mL", issues)
    ? undefined
    : issues.take(readQuantity(fields.get("volume"), "volume", fields.at("volume")));
  const water = readStartWater(fields, thermo, temperature_C, issues);
  if (volume === undefined || water === null) return null;
  if (!(volume >= 0.001 && volume <= 10)) {
    issues.add("value-out-of-range", fields.at("volume"), {
      received: describe(fields.get("volume")),
      expected: "1 mL to 10 L",
    });
    return null;
  }
  return { ...water, volume_mL: volume * 1000 };
}

function readStartWater(
  fields: Fields,
  thermo: ThermoData,
  temperature_C: number,
  issues: IssueList,
): { readonly water: Water | null; readonly waterName: string } | null {
  const value = fields.get("water");
  const path = fields.at("water");
  if (value === undefined) return { water: null, waterName: "deionised water" };
  if (typeof value === "string") {
    if (/^(deioni[sz]ed|distilled|deminerali[sz]ed)( water)?$/i.test(value.trim())) {
      return { water: null, waterName: "deionised water" };
    }
    issues.add("water-unknown", path, {
      received: value,
      expected: "deionised, or a water test as in a job",
    });
    return null;
  }
  const test = issues.take(readWaterTest(value, path));
  if (test === undefined) return null;
  const water = issues.take(completeWater(test, { thermo, temperature_C }));
  return water === undefined ? null : { water, waterName: water.source };
}
