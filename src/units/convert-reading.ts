import { done, failed, unitsIssue } from "./issue-helpers.ts";
import type { Issue, Read } from "./issue.ts";
import { MOLAR_MASSES } from "./masses.ts";
import type { Basis } from "./masses.ts";
import { mapMeasured } from "./measured-text.ts";
import type { MeasuredText } from "./measured-text.ts";
import { PARAMETER_RULES } from "./parameters.ts";
import type { Parameter, ParameterKind, ParameterRule } from "./parameters.ts";
import { KNOWN_UNITS, readReadingUnit } from "./reading-units.ts";
import type { ReadingUnit } from "./reading-units.ts";
import { nearestName } from "./text.ts";

/** Internal value = (typed − offset) · factor, exact up to rounding. */
export interface UnitScale {
  readonly factor: number;
  readonly offset: number;
}

type Slip = Pick<Issue, "expected" | "hint">;

/**
 * How a unit of a water test turns into the internal unit of its parameter: mol/L for ions, boron, silica and hardness
 * (Ca + Mg), eq/L for alkalinity, bare pH, µS/cm, °C, mg/L for solids, NTU.
 *
 * Parts per million are read as mg/L, as every water laboratory means them. A mass unit that does not say what it
 * counts is taken on the basis usual for the parameter, with a note or a warning where two are in use.
 *
 * @param unit as typed; undefined or blank only fits pH
 * @param path where the unit stands, for the issues
 */
export function readingScale(parameter: Parameter, unit: string | undefined, path: string): Read<UnitScale> {
  const rule = PARAMETER_RULES[parameter];
  const expected = rule.units.map((known) => (known === "" ? "no unit" : known)).join(", ");
  if (unit === undefined || unit.trim() === "") {
    if (rule.kind === "pH") return done({ factor: 1, offset: 0 });
    return failed("unit-missing", path, { received: "", expected, hint: "Copy the unit from the report." });
  }
  const read = readReadingUnit(unit);
  if (read.kind === "other method" && rule.kind === "turbidity") {
    return failed("unit-not-comparable", path, { received: unit, expected, hint: read.why });
  }
  if (read.kind !== "meanings") {
    const near = nearestName(unit, [...rule.units, ...KNOWN_UNITS]);
    const hint = near === null ? "Copy the unit from the report." : `Did you mean ${near}?`;
    return failed("unit-unknown", path, { received: unit, expected, hint });
  }
  const fitting = read.meanings.find((meaning) => fits(meaning, rule.kind));
  if (fitting === undefined) {
    return failed("unit-wrong-kind", path, {
      received: unit,
      ...wrongKind(parameter, read.meanings, expected),
    });
  }
  return scaleOf(rule, fitting, unit, path);
}

/**
 * Brings a reading into the internal unit of its parameter (see `readingScale`).
 *
 * @param measured in the typed unit
 */
export function convertReading(
  parameter: Parameter,
  measured: MeasuredText,
  unit: string | undefined,
  path: string,
): Read<MeasuredText> {
  if (measured.kind === "not measured") return done(measured);
  const scale = readingScale(parameter, unit, path);
  if (!scale.ok) return scale;
  const { factor, offset } = scale.value;
  return done(
    mapMeasured(measured, (value) => (value - offset) * factor),
    scale.issues,
  );
}

/** A value in the internal unit of its parameter, in another unit of the table; issues as from `readingScale`. */
export function fromInternal(parameter: Parameter, value: number, unit: string, path = "unit"): Read<number> {
  const scale = readingScale(parameter, unit, path);
  return scale.ok ? done(value / scale.value.factor + scale.value.offset, scale.issues) : scale;
}

function fits(unit: ReadingUnit, kind: ParameterKind): boolean {
  switch (unit.kind) {
    case "mass":
      return kind === "substance" || kind === "hardness" || kind === "alkalinity" || kind === "solids";
    case "amount":
    case "equivalents":
    case "degree":
      return kind === "substance" || kind === "hardness" || kind === "alkalinity";
    default:
      return unit.kind === kind;
  }
}

function scaleOf(rule: ParameterRule, unit: ReadingUnit, typed: string, path: string): Read<UnitScale> {
  const scale = (factor: number, issues: readonly Issue[] = []): Read<UnitScale> =>
    done({ factor, offset: 0 }, issues);
  switch (unit.kind) {
    case "temperature":
      return done({ factor: unit.toBase, offset: unit.offset });
    case "pH":
      return scale(1);
    case "conductivity":
    case "turbidity":
      return scale(unit.toBase);
    case "equivalents":
      if (rule.charge === null) return needsCharge(typed, path);
      return scale(unit.toBase / rule.charge);
    case "degree":
      if (rule.charge === null) return needsCharge(typed, path);
      return scale((unit.toBase * 2) / rule.charge);
    case "mass":
    case "amount":
      if (rule.kind === "solids") return solidsScale(unit, typed, path);
      return countedScale(rule, unit, typed, path);
  }
}

function solidsScale(
  unit: ReadingUnit & { readonly basis: Basis | null },
  typed: string,
  path: string,
): Read<UnitScale> {
  if (unit.kind === "mass" && unit.basis === null) return done({ factor: unit.toBase, offset: 0 });
  return failed("unit-wrong-kind", path, { received: typed, expected: "mg/L, g/L" });
}

/** A mass or an amount of substance, on the basis the unit names or the one usual for the parameter. */
function countedScale(
  rule: ParameterRule,
  unit: Extract<ReadingUnit, { readonly kind: "mass" | "amount" }>,
  typed: string,
  path: string,
): Read<UnitScale> {
  const { basis } = unit;
  if (unit.kind === "amount" && basis === null) return done({ factor: unit.toBase, offset: 0 });
  const counted = basis ?? rule.bareBasis;
  const perMole = counted === null ? undefined : rule.bases[counted];
  if (counted === null || perMole === undefined) {
    const expected = Object.keys(rule.bases)
      .map((known) => `as ${known}`)
      .join(", ");
    return failed("unit-basis-unknown", path, { received: typed, expected });
  }
  const moles = unit.kind === "amount" ? unit.toBase : unit.toBase / 1000 / MOLAR_MASSES[counted];
  const issues: Issue[] = [];
  if (basis === null && rule.bare !== "certain") {
    const others = Object.keys(rule.bases).filter((known) => known !== counted);
    const likely = others.find((known) => known !== "CaCO3" && known !== "CaO") ?? others[0] ?? counted;
    const hint = `Taken as ${typed} as ${counted}. Write "as ${likely}" if the report counts it so.`;
    const parts = { received: typed, expected: `${typed} as ${counted}`, hint };
    issues.push(unitsIssue("unit-basis-assumed", path, parts, rule.bare));
  }
  return done({ factor: moles * perMole, offset: 0 }, issues);
}

function needsCharge(received: string, path: string): Read<UnitScale> {
  const hint = "Its charge depends on pH or on its form, so equivalents cannot be turned into moles.";
  return failed("unit-needs-charge", path, { received, expected: "mg/L or mmol/L", hint });
}

/** The likeliest slip behind a unit of another kind. */
function wrongKind(parameter: Parameter, meanings: readonly ReadingUnit[], expected: string): Slip {
  const kind = meanings[0]?.kind;
  if (parameter === "conductivity" && kind === "mass") {
    return {
      expected,
      hint: "A pen that shows ppm has turned conductivity into dissolved solids: give it as those.",
    };
  }
  if (parameter === "dissolved solids" && kind === "conductivity") {
    return { expected, hint: "That is a unit of conductivity: give the reading as conductivity." };
  }
  if (kind === "conductivity")
    return { expected, hint: "That is a unit of conductivity: was the line mistaken?" };
  if (kind === "degree")
    return { expected, hint: "That is a unit of hardness or alkalinity: was the line mistaken?" };
  if (kind === "temperature")
    return { expected, hint: "That is a unit of temperature: was the line mistaken?" };
  return { expected, hint: "That is a unit of another kind of reading: was the line mistaken?" };
}
