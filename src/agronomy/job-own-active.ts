import { readQuantity } from "../units/index.ts";
import { findAffinityClass, findActive } from "./find.ts";
import { describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { addUnknown } from "./job-unknown.ts";
import { ownActiveId } from "./own-active.ts";
import type { OwnActive } from "./own-active.ts";
import type { AffinityClass, TradeData } from "./trade-data.ts";

/** Keys of an active that is entered by hand. */
const KEYS = ["name", "molar mass", "pKa", "affinity class", "half-lives"];
const HALF_LIFE_KEYS = ["pH", "half-life", "temperature"];

/** Molar masses an active can have [g/mol]: from below methyl bromide to above the avermectins; our judgement. */
const MOLAR_MASS_G_PER_MOL = { least: 60, most: 1500 };
/** Acid constants that mean anything in water. */
const PKA = { least: -2, most: 14 };
/** Most acid constants of one active. */
const MOST_ACIDS = 6;
/** Temperature of a half-life that does not say [°C], as studies are run. */
const USUAL_TEMPERATURE_C = 25;

/** True when an active is described rather than named. */
export function isOwnActive(value: unknown): boolean {
  return typeof value === "object" && value !== null;
}

/** Reads an active entered by hand; null when it cannot be used, then with issues. */
export function readOwnActive(
  value: unknown,
  path: string,
  trade: TradeData,
  issues: IssueList,
): OwnActive | null {
  const fields = openFields(value, path, KEYS, issues);
  if (fields === null) return null;
  const name = isMissing(fields, "name", "what the active is called", issues)
    ? null
    : textOf(fields, "name", issues);
  const molarMass_gPerMol = readMolarMass(fields, issues);
  const affinity = readAffinity(fields, trade, issues);
  const pKa = readAcidConstants(fields, affinity, issues);
  const halfLives = readHalfLives(fields, issues);
  if (name === null || molarMass_gPerMol === null || affinity === null || pKa === null || halfLives === null)
    return null;
  const known = findActive(trade, name);
  if (known.ok)
    issues.add("active-in-data", fields.at("name"), {
      received: name,
      expected: `active: ${known.value.name}`,
      severity: "warning",
    });
  sayLimits(fields, affinity, pKa, halfLives.length, issues);
  return { id: ownActiveId(name), name, molarMass_gPerMol, pKa, affinityClass: affinity.id, halfLives };
}

/** Says beforehand what the plan will not be able to answer. */
function sayLimits(
  fields: Fields,
  affinity: AffinityClass,
  pKa: readonly number[],
  halfLives: number,
  issues: IssueList,
): void {
  const open = [
    ...(affinity.ligand === null && affinity.id !== "none" ? ["what holds it"] : []),
    ...(pKa.length === 0 && affinity.ligand === null && affinity.id !== "none"
      ? ["what it does to the pH"]
      : []),
    ...(halfLives === 0 ? ["how long it lasts in the tank"] : []),
    "published restrictions",
  ];
  issues.add("own-active-limits", fields.path, {
    received: describe(fields.get("name")),
    hint: `Not known: ${open.join("; ")}.`,
    severity: "note",
  });
}

function readMolarMass(fields: Fields, issues: IssueList): number | null {
  const key = "molar mass";
  if (isMissing(fields, key, "a quantity such as 312 g/mol", issues)) return null;
  const typed = fields.get(key);
  // No molar mass runs into the thousands: a single mark is the decimal one.
  const decimal = typeof typed === "string" && !typed.includes(".") ? "," : ".";
  const value = issues.take(readQuantity(typed, "molar mass", fields.at(key), { decimal }));
  if (value === undefined) return null;
  const { least, most } = MOLAR_MASS_G_PER_MOL;
  if (value >= least && value <= most) return value;
  issues.add("value-out-of-range", fields.at(key), {
    received: describe(fields.get(key)),
    expected: `${String(least)} to ${String(most)} g/mol`,
  });
  return null;
}

/** The class; "not known" when it is left out. */
function readAffinity(fields: Fields, trade: TradeData, issues: IssueList): AffinityClass | null {
  const unsaid = fields.get("affinity class") === undefined;
  const text = unsaid ? "not known" : textOf(fields, "affinity class", issues);
  if (text === null) return null;
  const found = findAffinityClass(trade, text);
  if (found.ok) return found.value;
  const known = trade.affinityClasses.map((one) => one.name);
  addUnknown("affinity-class-unknown", fields.at("affinity class"), text, found.suggestions, known, issues);
  return null;
}

/** Acid constants, strongest acid first; one may stand without a list. */
function readAcidConstants(
  fields: Fields,
  affinity: AffinityClass | null,
  issues: IssueList,
): readonly number[] | null {
  const value = fields.get("pKa");
  if (value === undefined) return [];
  const list: readonly unknown[] = Array.isArray(value) ? value : [value];
  const good = list.filter(
    (one): one is number => typeof one === "number" && one >= PKA.least && one <= PKA.most,
  );
  if (good.length < list.length || list.length > MOST_ACIDS) {
    issues.add("acid-constant-unusable", fields.at("pKa"), {
      received: list.map(describe).join(", "),
      expected: `up to ${String(MOST_ACIDS)} numbers from ${String(PKA.least)} to ${String(PKA.most)}, such as [2.3, 5.9]`,
    });
    return null;
  }
  const sorted = [...good].sort((a, b) => a - b);
  return affinity === null || fitsStandIn(sorted, affinity, fields, issues) ? sorted : null;
}

/** A stand-in lends its complexes by the number of protons: the acid constants must be as many as its own. */
function fitsStandIn(
  pKa: readonly number[],
  affinity: AffinityClass,
  fields: Fields,
  issues: IssueList,
): boolean {
  const { acids, standIn } = affinity;
  if (acids === null || pKa.length === 0 || (pKa.length >= acids.least && pKa.length <= acids.most))
    return true;
  const count =
    acids.least === acids.most ? String(acids.most) : `${String(acids.least)} to ${String(acids.most)}`;
  issues.add("acid-constants-do-not-fit", fields.at("pKa"), {
    received: String(pKa.length),
    expected: `${count}, as ${standIn ?? affinity.name} has; or leave pKa out to borrow them`,
  });
  return false;
}

function readHalfLives(fields: Fields, issues: IssueList): OwnActive["halfLives"] | null {
  const value = fields.get("half-lives");
  if (value === undefined) return [];
  const path = fields.at("half-lives");
  if (!Array.isArray(value)) {
    const expected = "a list such as - {pH: 7, half-life: 30 h}";
    issues.add("list-expected", path, { received: describe(value), expected });
    return null;
  }
  const read = value.map((entry: unknown, i) => readHalfLife(entry, `${path}[${String(i)}]`, issues));
  const pHs = read.map((half) => half?.pH);
  if (new Set(pHs).size < pHs.length && !pHs.includes(undefined)) {
    const received = pHs.map(String).join(", ");
    issues.add("half-lives-repeat-ph", path, { received, expected: "one half-life at each pH" });
    return null;
  }
  return read.every((half) => half !== null) ? read : null;
}

function readHalfLife(
  entry: unknown,
  path: string,
  issues: IssueList,
): OwnActive["halfLives"][number] | null {
  const fields = openFields(entry, path, HALF_LIFE_KEYS, issues);
  if (fields === null) return null;
  const pH = isMissing(fields, "pH", "a pH such as 7", issues) ? null : readPh(fields, issues);
  const halfLife_h = isMissing(fields, "half-life", "a time such as 30 h", issues)
    ? undefined
    : issues.take(readQuantity(fields.get("half-life"), "time", fields.at("half-life")));
  const temperature_C =
    fields.get("temperature") === undefined
      ? USUAL_TEMPERATURE_C
      : issues.take(readQuantity(fields.get("temperature"), "temperature", fields.at("temperature")));
  if (pH === null || halfLife_h === undefined || temperature_C === undefined) return null;
  return { pH, temperature_C, halfLife_h };
}

function readPh(fields: Fields, issues: IssueList): number | null {
  const value = fields.get("pH");
  if (typeof value === "number" && value >= 0 && value <= 14) return value;
  issues.add("value-out-of-range", fields.at("pH"), {
    received: describe(value),
    expected: "a number from 0 to 14",
  });
  return null;
}
