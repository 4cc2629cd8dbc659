import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import { blankProduct, ownName } from "../job/draft.ts";
import type { Draft, MixRow } from "../job/draft.ts";
import { AsWritten } from "./as-written.tsx";
import { fieldId, focusSoon, useForm } from "./form-context.ts";
import { SelectField } from "./fields.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { IssueList } from "./messages.tsx";
import { Section } from "./section.tsx";

const STRENGTH_UNITS = ["g/L", "g/kg", "lb/US gal"];
const RATE_UNITS = ["L/ha", "kg/ha", "fl oz/ac", "pt/ac", "qt/ac", "lb/ac"];
const PRICE_UNITS = ["/L", "/kg"];

/** The products of the tank. */
export function MixGroup(): ReactElement {
  const { draft, dispatch, issues } = useForm();
  const general = issues.filter(({ path, missing }) => path === "mix" && !missing);
  return (
    <Section
      id="section-mix"
      title="Tank mix"
      lead="What is on the label. Strength as acid where the label says so."
    >
      {draft.mix.map((row, index) => (
        <Product key={row.key} row={row} index={index} />
      ))}
      {draft.feeds.map((row, i) => (
        <AsWritten key={row.key} row={row} path={`mix[${String(draft.mix.length + i)}]`} kept="feeds" />
      ))}
      <IssueList issues={general} />
      <button
        type="button"
        onClick={() => {
          const index = draft.mix.length;
          dispatch({ type: "edit", change: (d) => ({ ...d, mix: [...d.mix, blankProduct()] }) });
          focusSoon(fieldId(`mix[${String(index)}].active`));
        }}
      >
        Add a product
      </button>
    </Section>
  );
}

function Product({ row, index }: { row: MixRow; index: number }): ReactElement {
  const { catalogue, draft, dispatch, issues } = useForm();
  const path = `mix[${String(index)}]`;
  const active = choiceOf(catalogue?.actives ?? [], row.active);
  const described = ownName(row);
  const title =
    described ?? active?.name ?? (row.active === "" ? `Product ${String(index + 1)}` : row.active);
  const edit = (change: Partial<MixRow>): void => {
    dispatch({ type: "edit", change: (d) => withRow(d, row.key, change) });
  };
  const own = issues.filter((issue) => issue.path === path);
  const formulations = (active?.formulations ?? catalogue?.formulations ?? []).map((id) => ({
    id,
    name: id,
  }));
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <div className="fields">
        <SelectField
          label="Active"
          path={`${path}.active`}
          choices={catalogue?.actives ?? []}
          none={described === null ? "choose" : `${described}, entered by hand in the file`}
          value={row.active}
          onChange={(chosen) => {
            edit({ active: chosen, own: null, form: "", formulation: "" });
          }}
        />
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
        <SelectField
          label="Formulation"
          path={`${path}.formulation`}
          choices={formulations}
          none="choose"
          value={row.formulation}
          onChange={(formulation) => {
            edit({ formulation });
          }}
        />
        <QuantityField
          label="Strength"
          path={`${path}.strength`}
          value={row.strength}
          units={STRENGTH_UNITS}
          measure={{ dimension: "content" }}
          onChange={(strength) => {
            edit({ strength });
          }}
        />
        <QuantityField
          label="Rate"
          path={`${path}.rate`}
          value={row.rate}
          units={RATE_UNITS}
          measure={{ dimension: "rate" }}
          onChange={(rate) => {
            edit({ rate });
          }}
        />
        <QuantityField
          label="Price"
          path={`${path}.price`}
          hint="Blank: not known."
          value={row.price}
          units={PRICE_UNITS}
          onChange={(price) => {
            edit({ price });
          }}
        />
      </div>
      <IssueList issues={own} />
      {draft.mix.length > 1 && (
        <button
          type="button"
          className="quiet"
          onClick={() => {
            dispatch({
              type: "step",
              what: `${title} removed`,
              change: (d) => ({ ...d, mix: d.mix.filter((r) => r.key !== row.key) }),
            });
            focusSoon(fieldId(`mix[${String(Math.max(0, index - 1))}].active`));
          }}
        >
          Remove {title}
        </button>
      )}
    </fieldset>
  );
}

function withRow(draft: Draft, key: string, change: Partial<MixRow>): Draft {
  return { ...draft, mix: draft.mix.map((row) => (row.key === key ? { ...row, ...change } : row)) };
}
