import { ATOMIC_WEIGHTS, readQuantity } from "../units/index.ts";
import type { Content } from "../units/index.ts";
import type { ConditionerForm, FeedRecord } from "./data-types.ts";
import type { FeedItem } from "./feed.ts";
import { findFeed } from "./find.ts";
import { describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { isFeed } from "./job-mix.ts";
import { addUnknown } from "./job-unknown.ts";
import type { TradeData } from "./trade-data.ts";

const KEYS = ["feed", "form", "strength", "rate", "name"];

/** Reads the leaf feeds among the entries of a mix; what else stands there is left to its own reader. */
export function readFeeds(mix: unknown, trade: TradeData, issues: IssueList): readonly FeedItem[] {
  if (!Array.isArray(mix)) return [];
  return mix.flatMap((entry: unknown, index) => {
    const item = isFeed(entry) ? readFeed(entry, `mix[${String(index)}]`, trade, issues) : null;
    return item === null ? [] : [item];
  });
}

function readFeed(entry: unknown, path: string, trade: TradeData, issues: IssueList): FeedItem | null {
  const fields = openFields(entry, path, KEYS, issues);
  if (fields === null) return null;
  const found = readSubstance(fields, trade, issues);
  const content = found === null ? null : readContent(fields, found.record, found.form, issues);
  const rate = isMissing(fields, "rate", "a quantity such as 3 kg/ha", issues)
    ? undefined
    : issues.take(readQuantity(fields.get("rate"), "rate", fields.at("rate")));
  const name = textOf(fields, "name", issues);
  if (found === null || content === null || rate === undefined) return null;
  if (content.per !== rate.per) {
    issues.add("rate-does-not-fit-strength", fields.at("rate"), {
      received: describe(fields.get("rate")),
      expected: content.per === "L" ? "a rate by volume, such as 2 L/ha" : "a rate by mass, such as 3 kg/ha",
    });
  }
  return { feed: found.record.id, content, rate, name, path };
}

function readSubstance(
  fields: Fields,
  trade: TradeData,
  issues: IssueList,
): { readonly record: FeedRecord; readonly form: ConditionerForm } | null {
  const text = textOf(fields, "feed", issues);
  if (text === null) return null;
  const found = findFeed(trade, text);
  if (!found.ok) {
    const known = trade.feeds.map((record) => record.name);
    addUnknown("feed-unknown", fields.at("feed"), text, found.suggestions, known, issues);
    return null;
  }
  const { record } = found.value;
  const formText = textOf(fields, "form", issues);
  const named = formText === null ? found : findFeed(trade, `${record.name} ${formText}`);
  const formId = named.ok && named.value.record.id === record.id ? named.value.formId : null;
  const form = record.forms.find((one) => one.id === formId);
  if (form !== undefined) return { record, form };
  const forms = record.forms.map((one) => one.name);
  addUnknown("conditioner-form-unknown", fields.at("form"), formText ?? "", [], forms, issues);
  return null;
}

/**
 * Feed substance in the product [mol per L or kg]: from the strength, which counts the element unless it says salt; else
 * from the usual assay of the form.
 */
function readContent(
  fields: Fields,
  record: FeedRecord,
  form: ConditionerForm,
  issues: IssueList,
): FeedItem["content"] | null {
  if (fields.get("strength") === undefined) {
    const perKg = (form.assay_percent * 10) / record.molarMass_gPerMol;
    if (form.density_gPerMl === null) return { value_mol: perKg, per: "kg" };
    return { value_mol: perKg * form.density_gPerMl, per: "L" };
  }
  const path = fields.at("strength");
  const read = issues.take(readQuantity(fields.get("strength"), "content", path));
  if (read === undefined) return null;
  if (read.basis === "salt")
    return within(read, read.value / record.molarMass_gPerMol, fields, record, issues);
  if (read.basis !== null) {
    const expected = `the strength as ${record.nutrient.symbol}, or as salt`;
    issues.add("strength-basis-differs", path, { received: describe(fields.get("strength")), expected });
    return null;
  }
  const atoms = record.released[record.nutrient.component] ?? 1;
  const value_mol = read.value / (ATOMIC_WEIGHTS[record.nutrient.symbol] * atoms);
  return within(read, value_mol, fields, record, issues);
}

/** A strength with more substance in a kilogram than a kilogram is refused: it counts something else. */
function within(
  read: Content,
  value_mol: number,
  fields: Fields,
  record: FeedRecord,
  issues: IssueList,
): FeedItem["content"] | null {
  const substance_g = value_mol * record.molarMass_gPerMol;
  if (read.per === "L" || substance_g <= 1005) return { value_mol, per: read.per };
  issues.add("composition-above-whole", fields.at("strength"), {
    received: `${describe(fields.get("strength"))} of ${record.nutrient.symbol}`,
    expected: `at most ${String(Math.floor((1000 * read.value) / substance_g))} g/kg in ${record.name}`,
    hint: "A strength counts the element; write salt behind it when it counts the salt.",
  });
  return null;
}
