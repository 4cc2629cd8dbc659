import { cautionsFor } from "./cautions.ts";
import { feedAmounts, feedId, feedLabel } from "./feed.ts";
import type { MixFeed } from "./feed.ts";
import { jarTest } from "./jar-test.ts";
import { loads } from "./loads.ts";
import type { MixAmount } from "./loads.ts";
import { mixingOrder } from "./mixing-order.ts";
import type { OrderItem } from "./mixing-order.ts";
import type { Draft, Setting } from "./programmes.ts";
import type { DosedConditioner, MixProduct } from "./tank.ts";
import type { TradeData } from "./trade-data.ts";
import type { Filling } from "./types.ts";

/** What goes into the tank besides water, in the order of the job: conditioner first. */
export function amountsOf(
  draft: Draft,
  mix: readonly MixProduct[],
  feeds: readonly MixFeed[],
): readonly MixAmount[] {
  const products = mix.map((product, i): MixAmount => {
    const { rate } = product.item;
    return {
      product: productId(product, i),
      label: productLabel(product),
      perHa: { value: rate.value, unit: rate.per },
    };
  });
  const rest = [...products, ...feedAmounts(feeds)];
  return draft.conditioner === null ? rest : [conditionerAmount(draft.conditioner), ...rest];
}

/** A conditioner's dose as an amount per litre of spray. */
export function conditionerAmount(conditioner: DosedConditioner): MixAmount {
  const { record, formId, dose_gPerL } = conditioner;
  const form = record.forms.find((f) => f.id === formId);
  return {
    product: record.id,
    label: conditionerLabel(conditioner),
    perL: { value_g: dose_gPerL, density_gPerMl: form?.density_gPerMl ?? null },
  };
}

/** Name of a conditioner with the form bought. */
export function conditionerLabel({ record, formId }: DosedConditioner): string {
  const form = record.forms.find((f) => f.id === formId);
  return form === undefined || record.forms.length < 2 ? record.name : `${record.name}, ${form.name}`;
}

/** Order, loads, jar test and cautions of one programme. */
export function fillingOf(draft: Draft, setting: Setting, trade: TradeData): Filling {
  const { job, mix, feeds } = setting;
  const amounts = amountsOf(draft, mix, feeds);
  const items: OrderItem[] = mix.map((product, i) => ({
    product: productId(product, i),
    label: productLabel(product),
    kind: "product",
    formulation: product.item.formulation,
  }));
  items.push(...feedOrder(feeds));
  if (draft.conditioner !== null) {
    items.unshift({
      product: draft.conditioner.record.id,
      label: conditionerLabel(draft.conditioner),
      kind: "conditioner",
      mixingGroup: draft.conditioner.record.mixingGroup,
    });
  }
  const spray = { volume_LPerHa: draft.volume_LPerHa, tank_L: job.spray.tank_L, area_ha: job.spray.area_ha };
  return {
    order: mixingOrder(items, trade),
    loads: loads(spray, amounts),
    jar: jarTest(job.spray.jar_L, amounts, draft.volume_LPerHa),
    cautions: cautionsFor(trade, {
      actives: mix.map((product) => product.active),
      conditioners: draft.conditioner === null ? [] : [draft.conditioner],
      feeds: feeds.map((feed) => feed.record),
    }),
  };
}

function feedOrder(feeds: readonly MixFeed[]): readonly OrderItem[] {
  return feeds.map((feed, i) => ({
    product: feedId(feed, i),
    label: feedLabel(feed),
    kind: "product",
    mixingGroup: feed.record.mixingGroup,
  }));
}

/** Products of one active may be two; the place in the mix tells them apart. */
function productId(product: MixProduct, index: number): string {
  return `${product.active.id}-${String(index + 1)}`;
}

function productLabel({ item, active, form }: MixProduct): string {
  const name =
    item.name ?? (form === null || active.forms.length < 2 ? active.name : `${active.name} (${form.name})`);
  return `${name} ${item.formulation}`;
}
