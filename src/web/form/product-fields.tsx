import { useMemo } from "react";
import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import type { ActiveChoice, Choice } from "../engine/messages.ts";
import { blankOwnActive, ownName } from "../job/draft-mix.ts";
import type { ProductRow } from "../job/draft-mix.ts";
import { SelectField, TextField } from "./fields.tsx";
import { useLanguage, useSay } from "../language/language-context.ts";
import { fieldId, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { withoutEntry, withProduct } from "./mix-rows.ts";
import { More } from "./more.tsx";
import { OwnActiveFields } from "./own-active-fields.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { RemoveButton } from "./row-buttons.tsx";
import { UNITS } from "./units.ts";

const words = {
  byHand: "not in the list: enter it by hand",
  saltOrEster: "Salt, if any",
  saltHint: "Such as dimethylammonium. Blank: none.",
  more: "Price, most rate, name",
  mostRate: "Most rate on the label",
  mostRateHint: "Blank: more active is not proposed.",
  name: "Name on the can",
  nameHint: "For the card. Never needed.",
  price: "Price",
  priceHint: "Blank: not known.",
};

/** The choice that stands for an active entered by hand; no active has such an id. */
const BY_HAND = "by hand";

interface ProductProps {
  readonly row: ProductRow;
  readonly index: number;
  /** True for the only one of the mix, which stays. */
  readonly alone: boolean;
}

/** One product of the mix. */
export function ProductFields({ row, index, alone }: ProductProps): ReactElement {
  const { catalogue, issues } = useForm();
  const { phrases } = useLanguage();
  const say = useSay();
  const path = `mix[${String(index)}]`;
  const active = choiceOf(catalogue?.actives ?? [], row.active);
  const named = ownName(row);
  const own = named === null ? undefined : phrases.name(named);
  const title =
    own ??
    (active === undefined ? undefined : phrases.name(active.name)) ??
    (row.active === "" ? say("Product {number}", { number: index + 1 }) : row.active);
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <Substance row={row} path={path} active={active} />
      <Amounts row={row} path={path} />
      <MoreOfProduct row={row} path={path} title={title} />
      <LeftOver rest={row.rest} onChange={(d, rest) => withProduct(d, row.key, (r) => ({ ...r, rest }))} />
      <IssueList issues={issues.filter((issue) => issue.path === path)} />
      {!alone && (
        <RemoveButton
          title={title}
          change={(d) => withoutEntry(d, row.key)}
          focus={fieldId(`mix[${String(Math.max(0, index - 1))}].active`)}
        />
      )}
    </fieldset>
  );
}

interface PartProps {
  readonly row: ProductRow;
  readonly path: string;
}

function useEdit(row: ProductRow): (change: Partial<ProductRow>) => void {
  const { dispatch } = useForm();
  return (change) => {
    dispatch({ type: "edit", change: (d) => withProduct(d, row.key, (r) => ({ ...r, ...change })) });
  };
}

/** Which active, in which form and formulation. */
function Substance({
  row,
  path,
  active,
}: PartProps & { readonly active: ActiveChoice | undefined }): ReactElement {
  const { catalogue } = useForm();
  const edit = useEdit(row);
  const actives = useMemo<readonly Choice[]>(
    () => [...(catalogue?.actives ?? []), { id: BY_HAND, name: words.byHand }],
    [catalogue],
  );
  const formulations = active?.formulations ?? catalogue?.formulations ?? [];
  return (
    <>
      <div className="fields">
        <SelectField
          label="Active"
          path={`${path}.active`}
          alone={row.own !== null}
          choices={actives}
          none="choose"
          value={row.own === null ? row.active : BY_HAND}
          onChange={(chosen) => {
            const byHand = chosen === BY_HAND;
            const own = byHand ? blankOwnActive() : null;
            edit({ active: byHand ? "" : chosen, own, form: "", formulation: "" });
          }}
        />
      </div>
      {row.own !== null && <OwnActiveFields rowKey={row.key} own={row.own} path={`${path}.active`} />}
      <div className="fields">
        {row.own === null ? (
          <SelectField
            label="Form"
            path={`${path}.form`}
            choices={active?.forms ?? (row.form === "" ? [] : [{ id: row.form, name: row.form }])}
            none="not said"
            value={row.form}
            onChange={(form) => {
              edit({ form });
            }}
          />
        ) : (
          <TextField
            label={words.saltOrEster}
            path={`${path}.form`}
            hint={words.saltHint}
            value={row.form}
            onChange={(form) => {
              edit({ form });
            }}
          />
        )}
        <SelectField
          label="Formulation"
          path={`${path}.formulation`}
          choices={formulations.map((id) => ({ id, name: id }))}
          none="choose"
          value={row.formulation}
          onChange={(formulation) => {
            edit({ formulation });
          }}
        />
      </div>
    </>
  );
}

function Amounts({ row, path }: PartProps): ReactElement {
  const edit = useEdit(row);
  return (
    <div className="fields">
      <QuantityField
        label="Strength"
        path={`${path}.strength`}
        value={row.strength}
        units={UNITS.strength}
        measure={{ dimension: "content" }}
        onChange={(strength) => {
          edit({ strength });
        }}
      />
      <QuantityField
        label="Rate"
        path={`${path}.rate`}
        value={row.rate}
        units={UNITS.rate}
        measure={{ dimension: "rate" }}
        onChange={(rate) => {
          edit({ rate });
        }}
      />
    </div>
  );
}

function MoreOfProduct({ row, path, title }: PartProps & { readonly title: string }): ReactElement {
  const edit = useEdit(row);
  const said = [row.price.text, row.mostRate.text, row.name].filter((text) => text.trim() !== "").length;
  return (
    <More title={words.more} said={said} paths={[`${path}.price`, `${path}.most rate`, `${path}.name`]}>
      <div className="fields">
        <QuantityField
          label={words.price}
          path={`${path}.price`}
          hint={words.priceHint}
          value={row.price}
          units={UNITS.price}
          of={title}
          onChange={(price) => {
            edit({ price });
          }}
        />
        <QuantityField
          label={words.mostRate}
          path={`${path}.most rate`}
          hint={words.mostRateHint}
          value={row.mostRate}
          units={UNITS.rate}
          of={title}
          measure={{ dimension: "rate" }}
          onChange={(mostRate) => {
            edit({ mostRate });
          }}
        />
        <TextField
          label={words.name}
          path={`${path}.name`}
          hint={words.nameHint}
          value={row.name}
          onChange={(name) => {
            edit({ name });
          }}
        />
      </div>
    </More>
  );
}
