import type { ConditionerForm } from "./data-types.ts";
import { findConditioner } from "./find.ts";
import type { FoundConditioner } from "./find.ts";
import { describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { readDoseRange, readPriceOf } from "./job-doses.ts";
import { isOwnProduct, readOwnProduct } from "./job-own-product.ts";
import { addUnknown } from "./job-unknown.ts";
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
    const path = `conditioners[${index}]`;
    const choice = isOwnProduct(entry)
      ? readOwnProduct(entry, path, trade, issues)
      : readChoice(entry, path, trade, issues);
    if (choice === null) return [];
    const key = `${choice.chemistry} ${choice.form ?? ""}`;
    if (seen.has(key)) {
      const received = `${choice.own?.name ?? choice.chemistry} again`;
      const parts = { received, expected: "each form of a chemistry once" };
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
  const price = readPriceOf(fields, form, issues);
  const doses = readDoseRange(fields, form, issues);
  if (found === null || form === null) return null;
  return { chemistry: found.record.id, form: form.id, price, ...doses, own: null, path };
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
