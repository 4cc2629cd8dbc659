import { PARAMETER_RULES, readMeasured } from "../../units/index.ts";
import type { DecimalMark, Issue, Parameter } from "../../units/index.ts";
import { readReading } from "../read-reading.ts";
import { isUnit, unitWithBasis } from "./names.ts";
import type { NameRead } from "./names.ts";
import type { EntryChoice, SheetEntry, SheetOptions } from "./types.ts";

/** What stands on the sheet for one reading. */
export interface Found {
  readonly raw: string;
  readonly line: number;
  readonly name: NameRead;
  readonly value: string;
  /** Unit from a unit cell; "" when there is none. */
  readonly unit: string;
  /** Figures of which any may be the reading, where nothing says which; likeliest first. */
  readonly figures?: readonly string[];
}

/** Units in which concentrations stand when a sheet says nothing, likeliest first. */
const BARE_UNITS = ["mg/L", "meq/L", "mmol/L", "µg/L", "µeq/L"];

/** Understands one reading of a sheet, or says what has to be asked. */
export function entryOf(found: Found, decimal: DecimalMark | null, options: SheetOptions): SheetEntry {
  const { name } = found;
  const unit = unitOf(found, options);
  const { value, unit: usedUnit } = valueAndUnit(found.value, unit);
  const base = {
    raw: found.raw,
    line: found.line,
    parameter: name.parameter,
    value,
    unit: unitWithBasis(usedUnit, name.basis),
    fraction: name.fraction,
    choices: [],
    issues: [],
    why: null,
  };
  const { figures = [] } = found;
  if (figures.length > 0 && name.parameter !== null) {
    const { parameter } = name;
    const choices = figures.map((figure): EntryChoice => {
      const own = valueAndUnit(figure, unit);
      return { parameter, value: own.value, unit: unitWithBasis(own.unit, name.basis) };
    });
    return { ...base, status: "asked", choices, why: SEVERAL };
  }
  if (isBlank(value)) return { ...base, status: "blank", why: "The sheet gives no value." };
  if (name.parameter === null) {
    const choices = name.choices.map((parameter) => ({ parameter, value, unit: base.unit }));
    return { ...base, status: "asked", choices, why: name.why };
  }
  return understood(base, name.parameter, decimal);
}

const SEVERAL = "Several figures stand side by side and nothing says which is the reading.";

function understood(
  base: Omit<SheetEntry, "status">,
  parameter: Parameter,
  decimal: DecimalMark | null,
): SheetEntry {
  const rule = PARAMETER_RULES[parameter];
  if (base.unit === "" && rule.kind !== "pH") {
    const units = rule.kind === "substance" ? BARE_UNITS : rule.units;
    const choices = units.map((unit): EntryChoice => ({ parameter, value: base.value, unit }));
    return { ...base, status: "asked", choices, why: "The sheet gives no unit for this." };
  }
  const read = readReading(
    { parameter, value: base.value, unit: base.unit },
    `line ${String(base.line)}`,
    decimal === null ? {} : { decimal },
  );
  const issues = read.issues.filter((issue) => issue.severity !== "note");
  if (read.ok && !issues.some(asksForBasis)) return { ...base, status: "understood", issues };
  const choices = [...basisChoices(base, parameter, issues), ...numberChoices(base, parameter, issues)];
  return { ...base, status: "asked", issues, choices, why: null };
}

/** A warning that the figure may count one thing or another: on a pasted sheet that is asked, not assumed. */
function asksForBasis(issue: Issue): boolean {
  return issue.code === "unit-basis-assumed" && issue.severity === "warning";
}

function basisChoices(
  base: Omit<SheetEntry, "status">,
  parameter: Parameter,
  issues: readonly Issue[],
): readonly EntryChoice[] {
  if (!issues.some(asksForBasis)) return [];
  // The bases of the units in use for this reading, the usual one first.
  const bases = PARAMETER_RULES[parameter].units.flatMap((unit) => / as (\w+)$/.exec(unit)?.[1] ?? []);
  return bases.map((basis) => ({ parameter, value: base.value, unit: unitWithBasis(base.unit, basis) }));
}

/** The two readings of an ambiguous number. */
function numberChoices(
  base: Omit<SheetEntry, "status">,
  parameter: Parameter,
  issues: readonly Issue[],
): readonly EntryChoice[] {
  const ambiguous = issues.find((issue) => issue.code === "number-ambiguous");
  const readings = ambiguous?.expected?.split(" or ") ?? [];
  return readings.map((value) => ({ parameter, value, unit: base.unit }));
}

function unitOf({ name, unit }: Found, options: SheetOptions): string {
  if (unit !== "") return unit;
  if (name.unit !== "") return name.unit;
  const kind = name.parameter === null ? null : PARAMETER_RULES[name.parameter].kind;
  return kind === "substance" || kind === "alkalinity" ? (options.bareUnit ?? "") : "";
}

/** "92 ± 5", "0.31 +/- 10 %": a figure and its uncertainty, which is not the reading. */
const UNCERTAINTY = /^((?:[<>≤≥]\s*)?\d[\d.,]*)\s*(?:±|\+\/[-–−])\s*\d[\d.,]*(?:\s*%)?/u;

/** Parts "92 mg/L" in one cell; "*" and "H"/"L" flags and an uncertainty behind a number are set aside. */
function valueAndUnit(cell: string, unit: string): { readonly value: string; readonly unit: string } {
  const text = cell.trim().replace(UNCERTAINTY, "$1 ").trim();
  const match = /^((?:[<>≤≥]\s*)?[-+]?[.,]?\d[\d.,'’ –-]*?)\s*([^\d\s.,].*)?$/u.exec(text);
  const tail = match?.[2]?.trim() ?? "";
  if (match === null || tail === "") return { value: text, unit };
  if (isUnit(tail)) return { value: (match[1] ?? "").trim(), unit: unit === "" ? tail : unit };
  if (/^[*#†‡]+$|^[HL]$/.test(tail)) return { value: (match[1] ?? "").trim(), unit };
  return { value: text, unit };
}

function isBlank(value: string): boolean {
  const read = readMeasured(value, "value");
  return read.ok && read.value.kind === "not measured";
}

/** Whether a cell holds what a value column holds: a number, a limit, a range, "ND" or a number with its unit. */
export function looksLikeValue(cell: string): boolean {
  const { value } = valueAndUnit(cell, "");
  if (value === "") return false;
  const read = readMeasured(value, "value");
  if (read.ok) return read.value.kind !== "not measured";
  return read.issues.some((issue) => issue.code !== "number-unreadable");
}
