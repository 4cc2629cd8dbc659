import type { PricedAmount } from "./cost.ts";
import { draftOf, freeIn } from "./programmes.ts";
import type { Draft, Setting } from "./programmes.ts";
import type { Steps } from "./steps.ts";
import type { MixProduct } from "./tank.ts";
import type { OtherForm, TradeData } from "./trade-data.ts";
import type { Computed } from "./verdict.ts";

/** Relative width to which a rate is narrowed. */
const RATE_WIDTH = 0.01;

/**
 * More of one active, at most what its label allows: the least rate that leaves as much of it free as the aim asks of
 * the planned rate, or the highest rate where none does. null when nothing is known of its binding, the plan meets
 * the aim, or the label leaves no room.
 */
export function* moreActive(setting: Setting, index: number): Steps<Computed<Draft | null>> {
  const product = setting.mix[index];
  const most = product?.item.mostRate ?? null;
  const none = { ok: true, value: null } as const;
  if (product === undefined || most === null || most <= product.item.rate.value) return none;
  const planned = product.item.rate.value;
  const meets = function* (rate: number): Steps<Computed<boolean | null>> {
    const raised = withRate(setting, index, rate);
    const factors = factorsOf(setting, index, rate / planned);
    const free = yield* freeIn(raised, setting.job.spray.volume_LPerHa, [], factors);
    if (!free.ok) return free;
    return { ok: true, value: free.value === null ? null : free.value >= setting.job.aim.freeShare };
  };
  const atPlan = yield* meets(planned);
  if (!atPlan.ok) return atPlan;
  if (atPlan.value !== false) return none;
  const atMost = yield* meets(most);
  if (!atMost.ok) return atMost;
  let rate = most;
  if (atMost.value === true) {
    let low = planned;
    while (rate / low > 1 + RATE_WIDTH) {
      const middle = Math.sqrt(low * rate);
      const met = yield* meets(middle);
      if (!met.ok) return met;
      if (met.value === true) rate = middle;
      else low = middle;
    }
    rate = Math.min(
      most,
      Number(((Math.ceil((rate / planned) * 100 - 1e-9) / 100) * planned).toPrecision(6)),
    );
  }
  return { ok: true, value: atRate(setting, product, index, rate, atMost.value === true) };
}

function atRate(setting: Setting, product: MixProduct, index: number, rate: number, met: boolean): Draft {
  const { item, active } = product;
  const unit = `${item.rate.per}/ha`;
  const shown = Number(rate.toPrecision(3));
  const most = item.mostRate ?? rate;
  const extra: PricedAmount = {
    product: item.path,
    label: active.name,
    perHa: { value: rate - item.rate.value, unit: item.rate.per },
    price: item.price === null ? null : { value: item.price, per: item.rate.per },
  };
  return draftOf(withRate(setting, index, rate), {
    id: `more ${active.id} ${String(index + 1)}`,
    name: `more ${active.name}: ${String(shown)} ${unit} in place of ${String(item.rate.value)} ${unit}`,
    kind: "more active",
    added: [extra],
    rateFactors: factorsOf(setting, index, rate / item.rate.value),
    remarks: [
      {
        code: "more-active-makes-up",
        text: met
          ? "The aim is met in free active per hectare, against the planned rate; a share of it is still held."
          : `Even the label's ${String(most)} ${unit} leaves less free than the aim asks of the planned rate.`,
        evidence: "computed",
        source: null,
      },
      {
        code: "label-rate",
        text: "The highest rate is the label's for this crop, stage and season: check all three.",
        evidence: "common practice",
        source: "common-practice",
      },
    ],
  });
}

function withRate(setting: Setting, index: number, rate: number): Setting {
  const mix = setting.mix.map((product, i) =>
    i === index
      ? { ...product, item: { ...product.item, rate: { ...product.item.rate, value: rate } } }
      : product,
  );
  return { ...setting, mix };
}

function factorsOf(setting: Setting, index: number, factor: number): readonly number[] {
  return setting.mix.map((_, i) => (i === index ? factor : 1));
}

/** Other forms of the actives of a mix that published sources report as less moved by hard water, such as an ester. */
export function otherFormsOf(setting: Setting, trade: TradeData): readonly ((own: Setting) => Draft)[] {
  return setting.mix.flatMap((product, index) => {
    if (product.form?.dissociates === false) return [];
    return trade.otherForms
      .filter((other) => other.active === product.active.id)
      .flatMap((other): ((own: Setting) => Draft)[] => {
        const active = trade.actives.find((record) => record.id === other.insteadActive);
        const form = active?.forms.find((one) => one.id === other.insteadForm);
        if (active === undefined || form === undefined) return [];
        const exchange: Exchange = { product, instead: { active, form }, other };
        return [(own) => withForm(own, index, exchange)];
      });
  });
}

interface Exchange {
  readonly product: MixProduct;
  readonly instead: { readonly active: MixProduct["active"]; readonly form: NonNullable<MixProduct["form"]> };
  readonly other: OtherForm;
}

/** The same acid equivalent per hectare in the other form; its label's strength is not known here. */
function withForm(setting: Setting, index: number, { product, instead, other }: Exchange): Draft {
  const { item, active, form } = product;
  const acidShare = item.strength.basis === "salt" && form !== null ? form.acidEquivalent : 1;
  const acid_kgPerHa = (item.rate.value * item.strength.value * acidShare) / 1000;
  const name = `${active.name} as ${instead.form.name}`;
  const exchanged: MixProduct = {
    ...instead,
    item: {
      ...item,
      active: instead.active.id,
      form: instead.form.id,
      strength: { value: 1000, per: "kg", basis: "acid equivalent" },
      rate: { value: acid_kgPerHa, per: "kg" },
      mostRate: null,
      formulation: other.formulation,
      name: `${name}, as acid equivalent,`,
      price: null,
    },
  };
  const mix = setting.mix.map((one, i) => (i === index ? exchanged : one));
  return draftOf(
    { ...setting, mix },
    {
      id: `form ${instead.active.id} ${instead.form.id} ${String(index + 1)}`,
      name: `other form: ${name}`,
      kind: "other form",
      added: [{ product: item.path, label: name, perHa: { value: acid_kgPerHa, unit: "kg" }, price: null }],
      remarks: [
        { code: "other-form", text: other.text, evidence: other.evidence, source: other.source },
        {
          code: "other-form-amount",
          text:
            `Counted at the same acid equivalent, ${String(Number((acid_kgPerHa * 1000).toPrecision(3)))} g/ha. ` +
            "Rate, crop and stage are those of its own label.",
          evidence: "common practice",
          source: "common-practice",
        },
        {
          code: "ester-vapour",
          text: "Esters can move as vapour in warm weather and injure crops that stand the amine.",
          evidence: "common practice",
          source: "from-memory",
        },
      ],
    },
  );
}
