import { nearestName } from "../units/index.ts";
import type {
  ActiveForm,
  ActiveRecord,
  ConditionerForm,
  ConditionerRecord,
  FeedRecord,
} from "./data-types.ts";
import type { AffinityClass, FormulationType, TradeData } from "./trade-data.ts";

/** A record found by what a person wrote, or the likeliest meant. */
export type Found<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly suggestions: readonly string[] };

/** A conditioner and the form bought. */
export interface FoundConditioner {
  readonly record: ConditionerRecord;
  /** Form named by the text; the first form of the record when the text names only the chemistry. */
  readonly formId: string;
}

/** A leaf feed and the form bought. */
export interface FoundFeed {
  readonly record: FeedRecord;
  /** Form named by the text; the first form of the record when the text names only the substance. */
  readonly formId: string;
}

/** A formulation type as a product uses it. */
export interface FoundFormulation {
  readonly type: FormulationType;
  /** Mixing group; that of bags when the code carries the bag suffix. */
  readonly mixingGroup: string;
}

interface Named<T> {
  readonly names: readonly string[];
  readonly value: T;
}

const MOST_SUGGESTIONS = 3;

/** Finds an active by id, name, synonym or CAS number, whatever its spacing, dashes and capitals. */
export function findActive(trade: TradeData, text: string): Found<ActiveRecord> {
  return lookUp(
    text,
    trade.actives.map((a) => ({
      names: [a.name, a.id, ...a.synonyms, ...(a.cas === null ? [] : [a.cas])],
      value: a,
    })),
  );
}

/** Finds an affinity class by name or synonym. */
export function findAffinityClass(trade: TradeData, text: string): Found<AffinityClass> {
  return lookUp(
    text,
    trade.affinityClasses.map((c) => ({ names: [c.name, c.id, ...c.synonyms], value: c })),
  );
}

/** Finds a salt or ester of an active by id, name or synonym; the words "salt" and "of" may be left out. */
export function findActiveForm(active: ActiveRecord, text: string): Found<ActiveForm> {
  return lookUp(
    text.replace(/\b(salt|form)\b/gi, " "),
    active.forms.map((f) => ({
      names: [f.id, f.name, f.name.replace(/\bsalt\b/, ""), ...f.synonyms, `${f.id} ${active.name}`],
      value: f,
    })),
  );
}

/**
 * Finds a conditioner by id, name or synonym, or one of its forms by the form's id or by chemistry and form together,
 * e.g. "ammonium sulfate liquid".
 */
export function findConditioner(trade: TradeData, text: string): Found<FoundConditioner> {
  return lookUp(text, namesOfForms(trade.conditioners));
}

/** Finds a leaf feed by id, name or synonym, or one of its forms, as `findConditioner` does. */
export function findFeed(trade: TradeData, text: string): Found<FoundFeed> {
  return lookUp(text, namesOfForms(trade.feeds));
}

/** Every name of a substance, and of each form it is sold in. */
function namesOfForms<
  T extends {
    readonly id: string;
    readonly name: string;
    readonly synonyms: readonly string[];
    readonly forms: readonly ConditionerForm[];
  },
>(records: readonly T[]): readonly Named<{ readonly record: T; readonly formId: string }>[] {
  const named: Named<{ readonly record: T; readonly formId: string }>[] = [];
  for (const record of records) {
    const first = record.forms[0]?.id ?? record.id;
    named.push({ names: [record.name, record.id, ...record.synonyms], value: { record, formId: first } });
    for (const form of record.forms) {
      named.push({
        names: [
          form.id,
          ...[form.name, ...form.synonyms].flatMap((f) => [`${record.name} ${f}`, `${f} ${record.name}`]),
        ],
        value: { record, formId: form.id },
      });
    }
  }
  return named;
}

/** Finds a formulation type by its code or another code in use for it; "WP-SB" is a WP in water-soluble bags. */
export function findFormulation(trade: TradeData, text: string): Found<FoundFormulation> {
  const { types, bagSuffix } = trade.formulations;
  const parts = text
    .trim()
    .toUpperCase()
    .split(/[\s-]+/);
  const inBags = parts.length === 2 && parts[1] === bagSuffix.code;
  const code = inBags ? (parts[0] ?? "") : parts.join("");
  const type = types.find((t) => t.code === code) ?? types.find((t) => t.also.includes(code));
  if (type === undefined) {
    return {
      ok: false,
      suggestions: nearest(
        normalise(code),
        types.map((t) => ({ names: [t.code, ...t.also], value: t })),
      ),
    };
  }
  return { ok: true, value: { type, mixingGroup: inBags ? bagSuffix.mixingGroup : type.mixingGroup } };
}

function lookUp<T>(text: string, named: readonly Named<T>[]): Found<T> {
  const wanted = normalise(text);
  if (wanted !== "") {
    const found = named.find((n) => n.names.some((name) => normalise(name) === wanted));
    if (found !== undefined) return { ok: true, value: found.value };
  }
  return { ok: false, suggestions: nearest(wanted, named) };
}

/** Lower case letters and digits only; British "sulph" and American "sulf" are one. */
function normalise(text: string): string {
  return text
    .toLowerCase()
    .replace(/ph(?=at|ur|id|it)/g, "f")
    .replace(/[^a-z0-9]/g, "");
}

/** Up to three likely names: first those that hold the text or lie within it, then those a few letters off. */
function nearest<T>(wanted: string, named: readonly Named<T>[]): readonly string[] {
  if (wanted.length < 2) return [];
  const shown = new Map<string, string>();
  for (const n of named) for (const name of n.names) shown.set(normalise(name), n.names[0] ?? name);
  const near: string[] = [];
  const known = [...shown.keys()];
  const slip = nearestName(wanted, known);
  if (slip !== null) near.push(slip);
  if (wanted.length >= 3)
    near.push(...known.filter((k) => k.length >= 3 && (k.includes(wanted) || wanted.includes(k))));
  const second = nearestName(
    wanted,
    known.filter((k) => !near.includes(k)),
  );
  if (second !== null) near.push(second);
  return [...new Set(near.map((k) => shown.get(k) ?? k))].slice(0, MOST_SUGGESTIONS);
}
