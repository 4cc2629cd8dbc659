import type { ActiveRecord, ConditionerRecord, FeedRecord } from "./data-types.ts";
import type { RuleFacts } from "./fact-list.ts";
import { truthOf } from "./rules.ts";
import type { CautionRecord, TradeData } from "./trade-data.ts";
import type { Caution } from "./types.ts";

/** What is handled: products, conditioners in the form bought, and the reagents of a demonstration. */
export interface CautionsAsked {
  readonly actives: readonly ActiveRecord[];
  readonly conditioners: readonly { readonly record: ConditionerRecord; readonly formId: string }[];
  /** Leaf feeds; left out for none. */
  readonly feeds?: readonly FeedRecord[];
  /** Names of reagents on the table; left out when no demonstration is meant. */
  readonly reagents?: readonly string[];
}

/** Cautions that apply, the label first, then those about conditioners, products and the demonstration. */
export function cautionsFor(trade: TradeData, asked: CautionsAsked): readonly Caution[] {
  const found: Caution[] = [];
  for (const record of trade.cautions) {
    if (record.scope === "always") found.push(said(record, []));
    else if (record.scope === "conditioner") {
      const about = asked.conditioners.filter((c) => appliesTo(record, c)).map((c) => c.record.id);
      if (about.length > 0) found.push(said(record, about));
    } else if (record.scope === "demonstration") {
      if (asked.reagents !== undefined) found.push(said(record, []));
    } else {
      const about = (asked.reagents ?? []).filter((r) =>
        record.reagents.some((known) => known.toLowerCase() === r.toLowerCase()),
      );
      if (about.length > 0) found.push(said(record, about));
    }
  }
  for (const { record } of asked.conditioners) found.push(...ownCautions(record));
  for (const record of asked.feeds ?? []) found.push(...ownCautions(record));
  for (const record of asked.actives) found.push(...ownCautions(record));
  return merged(found);
}

/** Facts of one conditioner as rules and cautions ask for them. */
export function conditionerFacts(record: ConditionerRecord, formId: string): RuleFacts {
  const form = record.forms.find((f) => f.id === formId) ?? record.forms[0];
  return {
    // A rule on a chemistry holds for a product it is in.
    "conditioner.id": record.madeOf?.map(({ chemistry }) => chemistry) ?? record.id,
    "conditioner.modes": record.modes,
    "conditioner.releases": Object.keys(record.released),
    "conditioner.isDry": form === undefined ? null : form.density_gPerMl === null,
  };
}

function appliesTo(
  record: CautionRecord,
  c: { readonly record: ConditionerRecord; readonly formId: string },
): boolean {
  return record.if === null || truthOf(record.if, conditionerFacts(c.record, c.formId)) === true;
}

function said(record: CautionRecord, about: readonly string[]): Caution {
  return { id: record.id, text: record.text, source: record.source, about: [...new Set(about)] };
}

function ownCautions(record: ActiveRecord | ConditionerRecord | FeedRecord): readonly Caution[] {
  return record.cautions.map((c, i) => ({
    id: `${record.id}-${String(i + 1)}`,
    text: c.text,
    source: c.source,
    about: [record.id],
  }));
}

/** The same words are said once, about all they concern. */
function merged(cautions: readonly Caution[]): readonly Caution[] {
  const byText = new Map<string, Caution>();
  for (const caution of cautions) {
    const known = byText.get(caution.text);
    byText.set(
      caution.text,
      known === undefined ? caution : { ...known, about: [...new Set([...known.about, ...caution.about])] },
    );
  }
  return [...byText.values()];
}
