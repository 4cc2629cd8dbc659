import { foldUnit, splitNumberAndUnit, readNumberText } from "../../units/index.ts";
import { describe, isMissing, openFields, textOf } from "../job-fields.ts";
import type { Fields, IssueList } from "../job-fields.ts";
import { findSubstance, substanceNames } from "./find-substance.ts";
import type { Addition, Adjustment, FlaskContext, FlaskStep, Strength, Substance } from "./types.ts";

const ADD_KEYS = ["add", "form", "as", "in", "amount", "say"];
const ADJUST_KEYS = ["set pH", "say"];
/** Nothing weaker or stronger than this is made on a bench [mL]. */
const MOST_ML = 10_000;

/** Reads one step; null when it cannot be used (then with issues). */
export function readStep(
  entry: unknown,
  path: string,
  context: FlaskContext,
  issues: IssueList,
): FlaskStep | null {
  const adjusts = typeof entry === "object" && entry !== null && "set pH" in entry;
  const fields = openFields(entry, path, adjusts ? ADJUST_KEYS : ADD_KEYS, issues);
  if (fields === null) return null;
  return adjusts ? readAdjustment(fields, issues) : readAddition(fields, context, issues);
}

function readAdjustment(fields: Fields, issues: IssueList): Adjustment | null {
  const pH = fields.get("set pH");
  const say = textOf(fields, "say", issues);
  if (typeof pH === "number" && pH >= 0 && pH <= 14) {
    return { kind: "adjust", pH, say, path: fields.path };
  }
  issues.add("value-out-of-range", fields.at("set pH"), {
    received: describe(pH),
    expected: "a pH from 0 to 14",
  });
  return null;
}

function readAddition(fields: Fields, context: FlaskContext, issues: IssueList): Addition | null {
  const substance = readSubstance(fields, context, issues);
  const strengthText = textOf(fields, "as", issues);
  const strength =
    strengthText === null
      ? ({ kind: "as bought" } as const)
      : readStrength(strengthText, fields.at("as"), issues);
  const amount = readAmount(fields, context, issues);
  const medium = readMedium(fields, context, issues);
  const say = textOf(fields, "say", issues);
  if (substance === null || strength === null || amount === null || medium === undefined) return null;
  const moles = molesOf(substance, strength, amount, fields, issues);
  if (moles === null) return null;
  const fills = amount.unit === "mL" ? amount.value : volumeOfMass(substance, strength, amount.value);
  return {
    kind: "add",
    substance,
    strength,
    strengthText,
    amount: { value: amount.value, unit: amount.unit },
    amountText: amount.text,
    amount_mol: moles,
    volume_mL: fills,
    medium,
    say,
    path: fields.path,
  };
}

function readSubstance(fields: Fields, context: FlaskContext, issues: IssueList): Substance | null {
  if (isMissing(fields, "add", "the name of what is added, such as sulfosalicylic acid dihydrate", issues))
    return null;
  const text = textOf(fields, "add", issues);
  if (text === null) return null;
  const found = findSubstance(context, text, textOf(fields, "form", issues));
  if (found.ok) return found.value;
  const hint =
    found.suggestions.length === 0
      ? {}
      : { hint: `Did you mean ${found.suggestions.map((one) => `“${one}”`).join(" or ")}?` };
  if (found.unknown === "form") {
    const parts = { received: describe(fields.get("form")), expected: "a form or salt of the data" };
    issues.add("reagent-form-unknown", fields.at("form"), { ...parts, ...hint });
  } else {
    const expected = `a reagent, conditioner or active: ${substanceNames(context).slice(0, 12).join("; ")}; …`;
    issues.add("reagent-unknown", fields.at("add"), { received: text, expected, ...hint });
  }
  return null;
}

/** Strengths: amount counted per unit, by folded unit. */
const STRENGTHS: Readonly<Record<string, (value: number) => Strength>> = {
  "mol/l": (value) => ({ kind: "mol/L", value }),
  m: (value) => ({ kind: "mol/L", value }),
  "mmol/l": (value) => ({ kind: "mol/L", value: value / 1000 }),
  "g/l": (value) => ({ kind: "g/L", value }),
  "mg/l": (value) => ({ kind: "g/L", value: value / 1000 }),
  "g/kg": (value) => ({ kind: "g/kg", value }),
  "% w/v": (value) => ({ kind: "g/L", value: value * 10 }),
  "% w/w": (value) => ({ kind: "g/kg", value: value * 10 }),
};
const STRENGTH_WORDS = "mol/L, mmol/L, g/L, % w/v or % w/w";

/** Reads a strength such as "1 % w/v" or "0.1 mol/L". */
export function readStrength(text: string, path: string, issues: IssueList): Strength | null {
  const parts = splitNumberAndUnit(text);
  const number = parts === null ? null : issues.take(readNumberText(parts.number, path));
  if (parts === null || number === null || number === undefined) {
    if (parts === null) {
      issues.add("strength-unreadable", path, {
        received: text,
        expected: `a number with ${STRENGTH_WORDS}`,
      });
    }
    return null;
  }
  const unit = foldUnit(parts.unit).replace(/^% ?(w\/v|w\/w)$/, "% $1");
  const strength = Object.hasOwn(STRENGTHS, unit) ? STRENGTHS[unit]!(number) : null;
  if (strength !== null && number > 0) return strength;
  const hint = unit === "%" ? { hint: "Say % w/v (g in 100 mL) or % w/w (g in 100 g)." } : {};
  issues.add("strength-unreadable", path, {
    received: text,
    expected: `more than zero in ${STRENGTH_WORDS}`,
    ...hint,
  });
  return null;
}

interface Amount {
  readonly value: number;
  readonly unit: "mL" | "g";
  readonly text: string;
}

const AMOUNTS: Readonly<Record<string, readonly ["mL" | "g", number]>> = {
  ml: ["mL", 1],
  l: ["mL", 1000],
  ul: ["mL", 1e-3],
  cm3: ["mL", 1],
  g: ["g", 1],
  mg: ["g", 1e-3],
  kg: ["g", 1000],
};

function readAmount(fields: Fields, context: FlaskContext, issues: IssueList): Amount | null {
  if (isMissing(fields, "amount", "an amount such as 2 mL or 0.03 g", issues)) return null;
  const value = fields.get("amount");
  const expected = "an amount such as 2 mL, 0.03 g or 5 drops";
  const text = typeof value === "string" ? value.trim() : "";
  const parts = splitNumberAndUnit(text);
  if (parts === null) {
    issues.add("amount-unreadable", fields.at("amount"), { received: describe(value), expected });
    return null;
  }
  const number = issues.take(readNumberText(parts.number, fields.at("amount")));
  if (number === undefined) return null;
  const unit = foldUnit(parts.unit);
  const known: readonly ["mL" | "g", number] | undefined = /^drops?$/.test(unit)
    ? ["mL", context.flasks.drop_mL]
    : Object.hasOwn(AMOUNTS, unit)
      ? AMOUNTS[unit]
      : undefined;
  if (known === undefined || !(number > 0) || number * known[1] > MOST_ML) {
    issues.add("amount-unreadable", fields.at("amount"), { received: text, expected });
    return null;
  }
  return { value: number * known[1], unit: known[0], text };
}

/** What a stock is kept in, such as "0.1 mol/L hydrochloric acid"; null for water, undefined when unusable. */
function readMedium(
  fields: Fields,
  context: FlaskContext,
  issues: IssueList,
): Addition["medium"] | undefined {
  const text = textOf(fields, "in", issues);
  if (text === null) return null;
  const parts = /^(\S+ ?mol\/L) (.+)$/i.exec(text);
  const found = parts === null ? null : findSubstance(context, parts[2] ?? "", null);
  const strength = parts === null ? null : readStrength(parts[1] ?? "", fields.at("in"), issues);
  if (found?.ok === true && strength?.kind === "mol/L") {
    return { substance: found.value, molPerL: strength.value };
  }
  issues.add("medium-unreadable", fields.at("in"), {
    received: text,
    expected: "a text such as “0.1 mol/L hydrochloric acid”",
  });
  return undefined;
}

/** Moles of what is counted in an amount; null (with an issue) when amount and strength do not fit. */
function molesOf(
  substance: Substance,
  strength: Strength,
  amount: Amount,
  fields: Fields,
  issues: IssueList,
): number | null {
  const { molarMass_gPerMol: M, assay, density_gPerMl: density } = substance;
  const doesNotFit = (expected: string): null => {
    issues.add("amount-does-not-fit-strength", fields.at("amount"), { received: amount.text, expected });
    return null;
  };
  if (strength.kind === "as bought") {
    if (amount.unit === "g") return (amount.value * assay) / M;
    if (density === null) return doesNotFit(`a mass, or a strength (“as”): ${substance.name} is a solid`);
    return (amount.value * density * assay) / M;
  }
  // A share by mass of an active is of the active itself; of a reagent, of the thing as bought.
  const counted = substance.kind === "active" ? 1 : assay;
  if (strength.kind === "g/kg") {
    if (amount.unit === "mL") return doesNotFit("a mass: a strength by mass says nothing about a volume");
    return ((amount.value / 1000) * strength.value) / M;
  }
  if (amount.unit === "g") return doesNotFit("a volume, such as 1 mL of the stock");
  const litres = amount.value / 1000;
  if (strength.kind === "mol/L") return litres * strength.value;
  // A liquid concentrate is diluted to a strength of what it contains; a solid is weighed as it is.
  return (litres * strength.value * (density === null ? counted : 1)) / M;
}

/** Volume a weighed liquid brings [mL]; solids and stocks by mass count as water for what is not dissolved. */
function volumeOfMass(substance: Substance, strength: Strength, mass_g: number): number {
  if (strength.kind === "g/kg") return mass_g * (1 - strength.value / 1000);
  return substance.density_gPerMl === null ? 0 : mass_g / substance.density_gPerMl;
}
