import { readQuantity } from "../units/index.ts";
import type { Content, PerLitreOrKilogram } from "../units/index.ts";
import type { ActiveForm, ActiveRecord } from "./data-types.ts";
import { findActive, findActiveForm, findFormulation } from "./find.ts";
import { describe, isMissing, openFields, textOf } from "./job-fields.ts";
import type { Fields, IssueList } from "./job-fields.ts";
import { isOwnActive, readOwnActive } from "./job-own-active.ts";
import { addUnknown } from "./job-unknown.ts";
import { OWN_SOURCE, recordOfOwn } from "./own-active.ts";
import type { OwnActive } from "./own-active.ts";
import type { TradeData } from "./trade-data.ts";
import type { MixItem } from "./types.ts";

const KEYS = ["active", "form", "strength", "rate", "formulation", "name", "price", "most rate"];

/** Reads the products of the mix; null when there is none that can be used. */
export function readMix(top: Fields, trade: TradeData, issues: IssueList): readonly MixItem[] | null {
  if (isMissing(top, "mix", "a list with at least one product", issues)) return null;
  const list = top.get("mix");
  if (!Array.isArray(list)) {
    issues.add("list-expected", "mix", {
      received: describe(list),
      expected: "a list with at least one product",
    });
    return null;
  }
  if (list.length === 0) {
    issues.add("list-empty", "mix", { received: "an empty list", expected: "at least one product" });
    return null;
  }
  const items = list.flatMap((entry: unknown, index) =>
    isFeed(entry) ? [] : [readItem(entry, `mix[${index}]`, trade, issues)],
  );
  if (items.length === 0) {
    issues.add("list-empty", "mix", { received: "leaf feeds only", expected: "at least one active" });
    return null;
  }
  if (!items.every((item) => item !== null)) return null;
  sayRepeated(items, issues);
  return items;
}

/** One name cannot stand for two actives entered by hand. */
function sayRepeated(items: readonly MixItem[], issues: IssueList): void {
  const first = new Map<string, OwnActive>();
  for (const { own, path } of items) {
    if (own === null) continue;
    const known = first.get(own.id) ?? own;
    first.set(own.id, known);
    if (JSON.stringify(known) !== JSON.stringify(own))
      issues.add("own-active-differs", `${path}.active`, {
        received: own.name,
        expected: "the same figures wherever this name stands",
      });
  }
}

/** True when an entry of the mix is a leaf feed. */
export function isFeed(entry: unknown): boolean {
  return entry !== null && typeof entry === "object" && "feed" in entry;
}

function readItem(entry: unknown, path: string, trade: TradeData, issues: IssueList): MixItem | null {
  const fields = openFields(entry, path, KEYS, issues);
  if (fields === null) return null;
  const named = readActive(fields, trade, issues);
  const active = named?.record ?? null;
  const form = active === null ? null : readForm(fields, active, issues);
  const content = isMissing(fields, "strength", "a quantity such as 360 g/L", issues)
    ? undefined
    : issues.take(readQuantity(fields.get("strength"), "content", fields.at("strength")));
  const rate = isMissing(fields, "rate", "a quantity such as 2 L/ha", issues)
    ? undefined
    : issues.take(readQuantity(fields.get("rate"), "rate", fields.at("rate")));
  const formulation = readFormulation(fields, trade, issues);
  const name = textOf(fields, "name", issues);
  const price =
    fields.get("price") === undefined
      ? undefined
      : issues.take(readQuantity(fields.get("price"), "price", fields.at("price")));
  if (rate !== undefined && price !== undefined && price.per !== rate.per) {
    issues.add("price-does-not-fit-product", fields.at("price"), {
      received: describe(fields.get("price")),
      expected: `a price per ${rate.per}, as the rate`,
    });
  }
  if (content !== undefined && rate !== undefined && content.per !== rate.per) {
    issues.add("rate-does-not-fit-strength", fields.at("rate"), {
      received: `${describe(fields.get("rate"))} with ${describe(fields.get("strength"))}`,
      expected:
        content.per === "L" ? "a rate by volume, such as 2 L/ha" : "a rate by mass, such as 0.5 kg/ha",
    });
  }
  const mostRate = readMostRate(fields, rate, issues);
  if (
    named === null ||
    active === null ||
    content === undefined ||
    rate === undefined ||
    formulation === null
  )
    return null;
  const basis = basisOf(content, active, form, fields, issues);
  return {
    active: active.id,
    own: named.own,
    form: form?.id ?? null,
    strength: { value: content.value, per: content.per, basis },
    rate,
    formulation,
    name,
    price: price?.value ?? null,
    mostRate,
    path,
  };
}

/** Highest rate of the label, in the unit of the planned one; null when left out or not usable. */
function readMostRate(
  fields: Fields,
  rate: PerLitreOrKilogram | undefined,
  issues: IssueList,
): number | null {
  if (fields.get("most rate") === undefined) return null;
  const most = issues.take(readQuantity(fields.get("most rate"), "rate", fields.at("most rate")));
  if (most === undefined || rate === undefined) return null;
  if (most.per === rate.per && most.value >= rate.value) return most.value;
  issues.add(
    most.per === rate.per ? "most-rate-below-rate" : "rate-does-not-fit-strength",
    fields.at("most rate"),
    {
      received: `${describe(fields.get("most rate"))} with a rate of ${describe(fields.get("rate"))}`,
      expected: `at least the planned rate, in ${rate.per}/ha`,
    },
  );
  return null;
}

interface NamedActive {
  readonly record: ActiveRecord;
  /** What the job says of it when it is entered by hand. */
  readonly own: OwnActive | null;
}

function readActive(fields: Fields, trade: TradeData, issues: IssueList): NamedActive | null {
  if (isMissing(fields, "active", "the ISO common name of the active", issues)) return null;
  if (isOwnActive(fields.get("active"))) {
    const own = readOwnActive(fields.get("active"), fields.at("active"), trade, issues);
    return own === null ? null : { record: recordOfOwn(own, trade), own };
  }
  const text = textOf(fields, "active", issues);
  if (text === null) return null;
  const found = findActive(trade, text);
  if (found.ok) return { record: found.value, own: null };
  const known = trade.actives.map((active) => active.name);
  addUnknown("active-unknown", fields.at("active"), text, found.suggestions, known, issues);
  return null;
}

/** The salt or ester; the only one when there is just one. */
function readForm(fields: Fields, active: ActiveRecord, issues: IssueList): ActiveForm | null {
  const only = active.forms.length === 1 ? (active.forms[0] ?? null) : null;
  const text = textOf(fields, "form", issues);
  const known = active.forms.map((form) => form.id);
  if (text === null) {
    if (only === null && active.forms.length > 0 && fields.get("form") === undefined) {
      const parts = { received: "nothing", expected: `one of: ${known.join(", ")}` };
      issues.add("active-form-not-said", fields.at("form"), { ...parts, severity: "warning" });
    }
    return only;
  }
  const found = findActiveForm(active, text);
  if (found.ok) return found.value;
  if (active.source === OWN_SOURCE && active.ligand === null) {
    const parts = { received: text, expected: "no form", hint: "A salt needs the acid constants: add pKa." };
    issues.add("active-form-unknown", fields.at("form"), parts);
    return null;
  }
  addUnknown("active-form-unknown", fields.at("form"), text, found.suggestions, known, issues);
  return null;
}

function readFormulation(fields: Fields, trade: TradeData, issues: IssueList): string | null {
  if (isMissing(fields, "formulation", "the code of the label, such as SL", issues)) return null;
  const text = textOf(fields, "formulation", issues);
  if (text === null) return null;
  const found = findFormulation(trade, text);
  if (!found.ok) {
    const known = trade.formulations.types.map((type) => type.code);
    addUnknown("formulation-unknown", fields.at("formulation"), text, found.suggestions, known, issues);
    return null;
  }
  const { type, mixingGroup } = found.value;
  if (mixingGroup === "not-for-water") {
    const parts = { received: `${text} (${type.name})`, expected: "a type that is mixed with water" };
    issues.add("formulation-not-for-water", fields.at("formulation"), parts);
  }
  const inBags = mixingGroup !== type.mixingGroup;
  return inBags ? `${type.code}-${trade.formulations.bagSuffix.code}` : type.code;
}

/** What the strength counts: what the text says, else what labels of this active usually count. */
function basisOf(
  content: Content,
  active: ActiveRecord,
  form: ActiveForm | null,
  fields: Fields,
  issues: IssueList,
): MixItem["strength"]["basis"] {
  const path = fields.at("strength");
  const received = describe(fields.get("strength"));
  if (content.basis === null) {
    if (active.basis !== "active") {
      const expected = active.basis === "salt" ? `${received} salt` : `${received} ae, or ${received} salt`;
      const hint =
        active.source === OWN_SOURCE
          ? `Taken as ${active.basis}.`
          : `Taken as ${active.basis}, as labels of ${active.name} usually count.`;
      issues.add("strength-basis-assumed", path, { received, expected, hint, severity: "note" });
    }
    return active.basis;
  }
  if (content.basis === "salt") {
    if (form === null && fields.get("form") === undefined) {
      const expected = `form: one of ${active.forms.map((one) => one.id).join(", ")}`;
      issues.add("strength-needs-form", path, { received, expected });
    }
    // An active sold as itself has no salt to count; a cation such as paraquat has.
    return active.basis === "active" && (form?.acidEquivalent ?? 1) === 1 ? "active" : "salt";
  }
  if (content.basis === "active" && active.basis === "acid equivalent") {
    const hint = "“Active” means the acid on some labels and the salt on others.";
    issues.add("strength-basis-differs", path, {
      received,
      expected: "ae or salt behind the strength",
      hint,
    });
  }
  if (content.basis === "acid equivalent" && active.basis === "active") {
    issues.add("strength-basis-differs", path, {
      received,
      expected: `the strength as ${active.name} itself`,
    });
  }
  // A salt named as the active: "active" is then the salt.
  return content.basis === "active" ? active.basis : content.basis;
}
