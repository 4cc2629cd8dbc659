import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import { blankConditioner } from "../job/draft.ts";
import type { ConditionerRow } from "../job/draft.ts";
import { AsWritten } from "./as-written.tsx";
import { fieldId, focusSoon, useForm } from "./form-context.ts";
import { SelectField } from "./fields.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { IssueList } from "./messages.tsx";
import { Section } from "./section.tsx";

/** The conditioners that may be used, with their prices. */
export function ConditionersGroup(): ReactElement {
  const { draft, dispatch, issues } = useForm();
  const choose = (listsConditioners: boolean): void => {
    dispatch({
      type: "edit",
      change: (d) => ({
        ...d,
        listsConditioners,
        conditioners:
          listsConditioners && d.conditioners.length === 0 ? [blankConditioner()] : d.conditioners,
      }),
    });
  };
  const general = issues.filter(({ path }) => path === "conditioners");
  return (
    <Section id="section-conditioners" title="Conditioners" lead="What you can get, and what it costs.">
      <fieldset className="choice">
        <legend className="visually-hidden">Which conditioners to try</legend>
        <label>
          <input
            type="radio"
            name="conditioners"
            checked={!draft.listsConditioners}
            onChange={() => {
              choose(false);
            }}
          />
          Try every common one
        </label>
        <label>
          <input
            type="radio"
            name="conditioners"
            checked={draft.listsConditioners}
            onChange={() => {
              choose(true);
            }}
          />
          Only these
        </label>
      </fieldset>
      <IssueList issues={general} />
      {draft.listsConditioners && (
        <>
          {draft.conditioners.map((row, index) => (
            <Conditioner key={row.key} row={row} index={index} />
          ))}
          {draft.ownProducts.map((row, i) => (
            <AsWritten
              key={row.key}
              row={row}
              path={`conditioners[${String(draft.conditioners.length + i)}]`}
              kept="ownProducts"
            />
          ))}
          <button
            type="button"
            onClick={() => {
              const index = draft.conditioners.length;
              dispatch({
                type: "edit",
                change: (d) => ({ ...d, conditioners: [...d.conditioners, blankConditioner()] }),
              });
              focusSoon(fieldId(`conditioners[${String(index)}].chemistry`));
            }}
          >
            Add a conditioner
          </button>
        </>
      )}
    </Section>
  );
}

function Conditioner({ row, index }: { row: ConditionerRow; index: number }): ReactElement {
  const { catalogue, dispatch, issues } = useForm();
  const path = `conditioners[${String(index)}]`;
  const record = choiceOf(catalogue?.conditioners ?? [], row.chemistry);
  const title = record?.name ?? (row.chemistry === "" ? `Conditioner ${String(index + 1)}` : row.chemistry);
  const edit = (change: Partial<ConditionerRow>): void => {
    dispatch({
      type: "edit",
      change: (d) => ({
        ...d,
        conditioners: d.conditioners.map((r) => (r.key === row.key ? { ...r, ...change } : r)),
      }),
    });
  };
  const own = issues.filter((issue) => issue.path === path);
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <div className="fields">
        <SelectField
          label="Chemistry"
          path={`${path}.chemistry`}
          choices={catalogue?.conditioners ?? []}
          none="choose"
          value={row.chemistry}
          onChange={(chemistry) => {
            edit({ chemistry, form: "" });
          }}
        />
        <SelectField
          label="Sold as"
          path={`${path}.form`}
          choices={record?.forms ?? []}
          none="usual form"
          value={row.form}
          onChange={(form) => {
            edit({ form });
          }}
        />
        <QuantityField
          label="Price"
          path={`${path}.price`}
          hint="Blank: cost not known."
          value={row.price}
          units={["/kg", "/L"]}
          onChange={(price) => {
            edit({ price });
          }}
        />
      </div>
      <IssueList issues={own} />
      <button
        type="button"
        className="quiet"
        onClick={() => {
          dispatch({
            type: "step",
            what: `${title} removed`,
            change: (d) => ({ ...d, conditioners: d.conditioners.filter((r) => r.key !== row.key) }),
          });
        }}
      >
        Remove {title}
      </button>
    </fieldset>
  );
}
