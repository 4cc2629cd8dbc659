import { readQuantity } from "../units/index.ts";
import type { ConditionerForm } from "./data-types.ts";
import { findConditioner } from "./find.ts";
import type { FoundConditioner } from "./find.ts";
import { describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { addUnknown } from "./job-mix.ts";
import type { TradeData } from "./trade-data.ts";
import type { ConditionerChoice } from "./types.ts";

const KEYS = ["chemistry", "form", "price", "least dose", "most dose"];

/** Reads the conditioners; null when the key is left out, which means those offered by default. */
export function readConditioners(
  top: Fields,
  trade: TradeData,
  issues: IssueList,
): readonly ConditionerChoice[] | null {
  const list = top.get("conditioners");
  if (list === undefined) return null;
  if (!Array.isArray(list)) {
    const expected = "a list, or nothing for the usual built-in chemistries";
    issues.add("list-expected", "conditioners", { received: describe(list), expected });
    return null;
  }
  const seen = new Set<string>();
  return list.flatMap((entry: unknown, index): ConditionerChoice[] => {
    const choice = readChoice(entry, `conditioners[${index}]`, trade, issues);
    if (choice === null) return [];
    const key = `${choice.chemistry} ${choice.form ?? ""}`;
    if (seen.has(key)) {
      const parts = { received: `${choice.chemistry} again`, expected: "each form of a chemistry once" };
      issues.add("conditioner-repeated", choice.path, parts);
    }
    seen.add(key);
    return [choice];
  });
}

function readChoice(
  entry: unknown,
  path: string,
  trade: TradeData,
  issues: IssueList,
): ConditionerChoice | null {
  const fields = openFields(entry, path, KEYS, issues);
  if (fields === null) return null;
  const found = readChemistry(fields, trade, issues);
  const form = found === null ? null : readForm(fields, found, trade, issues);
  const price =
    fields.get("price") === undefined
      ? null
      : (issues.take(readQuantity(fields.get("price"), "price", fields.at("price"))) ?? null);
  const least = readDose(fields, "least dose", form, issues);
  const most = readDose(fields, "most dose", form, issues);
  if (least !== null && most !== null && least > most) {
    const received = `${describe(fields.get("least dose"))} and ${describe(fields.get("most dose"))}`;
    issues.add("least-above-most", fields.at("least dose"), {
      received,
      expected: "the least dose at most the most",
    });
  }
  if (found === null || form === null) return null;
  if (price?.per === "L" && form.density_gPerMl === null) {
    const parts = {
      received: describe(fields.get("price")),
      expected: `a price per kg: ${form.name} are sold by mass`,
    };
    issues.add("price-does-not-fit-product", fields.at("price"), parts);
  }
  return {
    chemistry: found.record.id,
    form: form.id,
    price,
    leastDose_gPerL: least,
    mostDose_gPerL: most,
    path,
  };
}

function readChemistry(fields: Fields, trade: TradeData, issues: IssueList): FoundConditioner | null {
  if (isMissing(fields, "chemistry", "the name of a chemistry, such as ammonium sulfate", issues))
    return null;
  const text = textOf(fields, "chemistry", issues);
  if (text === null) return null;
  const found = findConditioner(trade, text);
  if (found.ok) return found.value;
  const known = trade.conditioners.map((record) => record.name);
  addUnknown("conditioner-unknown", fields.at("chemistry"), text, found.suggestions, known, issues);
  return null;
}

function readForm(
  fields: Fields,
  found: FoundConditioner,
  trade: TradeData,
  issues: IssueList,
): ConditionerForm | null {
  const { record } = found;
  const text = textOf(fields, "form", issues);
  if (text === null) return record.forms.find((form) => form.id === found.formId) ?? null;
  for (const wording of [text, `${record.name} ${text}`, `${record.id} ${text}`]) {
    const match = findConditioner(trade, wording);
    if (match.ok && match.value.record.id === record.id) {
      const form = record.forms.find((one) => one.id === match.value.formId);
      if (form !== undefined) return form;
    }
  }
  const known = record.forms.map((form) => form.name);
  addUnknown("conditioner-form-unknown", fields.at("form"), text, [], known, issues);
  return null;
}

/** A dose limit [g of the form sold per L of spray]; null when left out or not usable. */
function readDose(
  fields: Fields,
  key: string,
  form: ConditionerForm | null,
  issues: IssueList,
): number | null {
  if (fields.get(key) === undefined) return null;
  const dose = issues.take(readQuantity(fields.get(key), "dose", fields.at(key)));
  if (dose === undefined) return null;
  if (dose.unit === "g/L") return dose.value;
  if (form === null) return null;
  if (form.density_gPerMl === null) {
    const parts = { received: describe(fields.get(key)), expected: "a dose by mass, such as 1 kg/100 L" };
    issues.add("dose-does-not-fit-form", fields.at(key), parts);
    return null;
  }
  return dose.value * form.density_gPerMl * 1000;
}
