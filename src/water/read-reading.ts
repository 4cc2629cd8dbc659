import {
  PARAMETER_NAMES,
  PARAMETER_RULES,
  convertReading,
  nearestName,
  parameterNamed,
  readMeasured,
  readReadingUnit,
  readingScale,
  shownValue,
} from "../units/index.ts";
import type { Issue, MeasuredText, Parameter, Read } from "../units/index.ts";
import { WATER_CHECKS } from "./check-data.ts";
import { unknownKeys } from "./document-keys.ts";
import type { WaterTestOptions } from "./document-keys.ts";
import { waterIssue } from "./ledger.ts";
import type { Reading } from "./types.ts";

const KEYS = ["parameter", "value", "unit"] as const;

/** Reads one reading of a water test: its name, its value and its unit, in the internal unit of its parameter. */
export function readReading(entry: unknown, path: string, options: WaterTestOptions): Read<Reading> {
  if (typeof entry !== "object" || entry === null || Array.isArray(entry)) {
    const parts = { received: shownValue(entry), expected: "a block with parameter, value and unit" };
    return { ok: false, issues: [waterIssue("block-expected", "error", path, parts)] };
  }
  const block = entry as Readonly<Record<string, unknown>>;
  const issues: Issue[] = unknownKeys(block, KEYS, path);
  const parameter = readParameter(block["parameter"], path, issues);
  const unit = readUnitText(block["unit"], path, issues);
  const valueRead = readValue(block["value"], unit, parameter, path, options);
  issues.push(...valueRead.issues);
  if (parameter === null || !valueRead.ok || unit === null) return { ok: false, issues };
  const { measured, unit: unitUsed } = valueRead.value;
  const converted = convertReading(parameter, measured, unitUsed, `${path}.unit`);
  issues.push(...converted.issues);
  if (!converted.ok) return { ok: false, issues };
  issues.push(...physicalIssues(parameter, converted.value, shownTyped(block["value"], unitUsed), path));
  if (issues.some((issue) => issue.severity === "error")) return { ok: false, issues };
  const typed = { value: shownFull(block["value"]), unit: unitUsed ?? "" };
  return { ok: true, value: { parameter, typed, measured: converted.value, path }, issues };
}

function shownFull(value: unknown): string {
  return value === null || value === undefined ? "" : typeof value === "string" ? value : shownValue(value);
}

function shownTyped(value: unknown, unit: string | undefined): string {
  return [shownFull(value), unit ?? ""].join(" ").trim();
}

function readParameter(value: unknown, path: string, issues: Issue[]): Parameter | null {
  const where = `${path}.parameter`;
  if (typeof value !== "string" || value.trim() === "") {
    const parts = { received: shownValue(value), expected: "the name of a reading, such as calcium" };
    issues.push(waterIssue("parameter-missing", "error", where, parts));
    return null;
  }
  const parameter = parameterNamed(value);
  if (parameter !== null) return parameter;
  const near = nearestName(value, PARAMETER_NAMES);
  const hint = near === null ? "Leave the reading out if it is not in the list." : `Did you mean ${near}?`;
  const parts = { received: value, expected: Object.keys(PARAMETER_RULES).join(", "), hint };
  issues.push({ code: "parameter-unknown", path: where, severity: "error", ...parts });
  return null;
}

/** The unit as typed; undefined when there is none, null when it is not a text. */
function readUnitText(value: unknown, path: string, issues: Issue[]): string | undefined | null {
  if (value === undefined || value === null) return undefined;
  if (typeof value === "string") return value.trim() === "" ? undefined : value;
  issues.push(
    waterIssue("text-expected", "error", `${path}.unit`, { received: shownValue(value), expected: "a unit" }),
  );
  return null;
}

interface ValueAndUnit {
  readonly measured: MeasuredText;
  readonly unit: string | undefined;
}

/** The value, and the unit that may stand behind it in the same text ("92 mg/L"). */
function readValue(
  value: unknown,
  unit: string | undefined | null,
  parameter: Parameter | null,
  path: string,
  options: WaterTestOptions,
): Read<ValueAndUnit> {
  const where = `${path}.value`;
  const plain = readMeasured(value, where, options);
  const given = unit ?? undefined;
  if (plain.ok) return { ok: true, value: { measured: plain.value, unit: given }, issues: plain.issues };
  const match = typeof value === "string" ? /^(.*?\d)\s*([^\d\s.,'’].*)$/s.exec(value.trim()) : null;
  const [, numberText = "", unitText = ""] = match ?? [];
  if (match === null || readReadingUnit(unitText).kind === "unknown") return plain;
  const measured = readMeasured(numberText, where, options);
  if (!measured.ok) return measured;
  if (given !== undefined && parameter !== null && !sameUnit(parameter, given, unitText)) {
    const parts = { received: shownValue(value), expected: `the unit once: ${given} or ${unitText}` };
    return { ok: false, issues: [waterIssue("unit-given-twice", "error", where, parts)] };
  }
  return { ok: true, value: { measured: measured.value, unit: given ?? unitText }, issues: measured.issues };
}

function sameUnit(parameter: Parameter, a: string, b: string): boolean {
  const one = readingScale(parameter, a, "");
  const other = readingScale(parameter, b, "");
  return !one.ok || !other.ok || one.value.factor === other.value.factor;
}

/** Every number in a measured value. */
export function numbersIn(measured: MeasuredText): readonly number[] {
  switch (measured.kind) {
    case "value":
      return [measured.value];
    case "below":
    case "above":
      return [measured.limit];
    case "range":
      return [measured.low, measured.high];
    case "not measured":
      return [];
  }
}

/** Lowest and highest temperature of a liquid water [°C]. */
const LIQUID_C = { low: -5, high: 100 } as const;

/** Errors for what no water can have: less than nothing, a pH outside the scale, a temperature of ice or steam. */
export function physicalIssues(
  parameter: Parameter,
  measured: MeasuredText,
  received: string,
  path: string,
): readonly Issue[] {
  const numbers = numbersIn(measured);
  const outside = (low: number, high: number): boolean =>
    numbers.some((value) => value < low || value > high);
  const where = `${path}.value`;
  if (parameter === "pH") {
    const { low, high } = WATER_CHECKS.criteria.pHPossible;
    if (!outside(low, high)) return [];
    return [
      waterIssue("reading-impossible", "error", where, { received, expected: `a pH from ${low} to ${high}` }),
    ];
  }
  if (parameter === "temperature") {
    if (!outside(LIQUID_C.low, LIQUID_C.high)) return [];
    const hint = "Fahrenheit typed as Celsius?";
    return [waterIssue("reading-impossible", "error", where, { received, expected: "0 to 100 °C", hint })];
  }
  // Acid lakes have a negative alkalinity (acid-neutralising capacity), and it is reported as such.
  if (parameter === "alkalinity" || !numbers.some((value) => value < 0)) return [];
  const hint = "Write <0.05 for a value below the detection limit.";
  return [waterIssue("reading-negative", "error", where, { received, expected: "zero or more", hint })];
}
