import { cautionsFor } from "./cautions.ts";
import { feedAmounts, feedId, feedLabel } from "./feed.ts";
import type { MixFeed } from "./feed.ts";
import { jarTest } from "./jar-test.ts";
import { loads } from "./loads.ts";
import type { MixAmount } from "./loads.ts";
import { groupsInOrder, mixingOrder } from "./mixing-order.ts";
import type { OrderItem } from "./mixing-order.ts";
import { orderDifferences } from "./order-differences.ts";
import type { Draft, Preparation } from "./programmes.ts";
import { sprayerFacts } from "./sprayer.ts";
import type { DosedConditioner, MixProduct } from "./tank.ts";
import type { TradeData } from "./trade-data.ts";
import type { Filling } from "./types.ts";

/** What goes into the tank besides water, in the order of the job: conditioners first. */
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
  return [...draft.conditioners.map(conditionerAmount), ...products, ...feedAmounts(feeds)];
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
export function fillingOf(draft: Draft, trade: TradeData): Filling {
  const { job, mix, feeds } = draft.setting;
  const amounts = amountsOf(draft, mix, feeds);
  const items: readonly OrderItem[] = [
    ...draft.conditioners.map((conditioner) => ({
      product: conditioner.record.id,
      label: conditionerLabel(conditioner),
      kind: "conditioner" as const,
      mixingGroup: conditioner.record.mixingGroup,
    })),
    ...mix.map((product, i) => ({
      product: productId(product, i),
      label: productLabel(product),
      kind: "product" as const,
      formulation: product.item.formulation,
    })),
    ...feedOrder(feeds),
  ];
  const order: readonly Preparation[] = [...draft.preparation, ...mixingOrder(items, trade)];
  const { tank_L, area_ha, measures } = job.spray;
  const spray = { volume_LPerHa: draft.volume_LPerHa, tank_L, area_ha, measures };
  const split = loads(spray, amounts);
  return {
    order: order.map((step, i) => ({ ...step, step: i + 1 })),
    loads: split,
    jar: jarTest(job.spray.jar_L, inOrder(amounts, order), draft.volume_LPerHa),
    jarVolume_L: job.spray.jar_L,
    cautions: cautionsFor(trade, {
      actives: mix.map((product) => product.active),
      conditioners: draft.conditioners,
      feeds: feeds.map((feed) => feed.record),
    }),
    differences: orderDifferences(groupsInOrder(items, trade), trade),
    sprayer: sprayerFacts(job.spray, draft.volume_LPerHa, split),
  };
}

/** Amounts as the products go in; what no step names comes last. */
function inOrder<T extends { readonly product: string }>(
  amounts: readonly T[],
  order: readonly Preparation[],
): readonly T[] {
  const place = ({ product }: T): number => {
    const found = order.findIndex((step) => step.adds === product);
    return found < 0 ? order.length : found;
  };
  return [...amounts].sort((a, b) => place(a) - place(b));
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
