import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import { SelectField } from "../form/fields.tsx";
import { fieldId, focusSoon, useForm } from "../form/form-context.ts";
import { IssueList } from "../form/messages.tsx";
import { QuantityField } from "../form/quantity-field.tsx";
import { FieldGroup } from "../form/field-group.tsx";
import { UNITS } from "../form/units.ts";
import { sayIn, useLanguage, useSay } from "../language/language-context.ts";
import { blankUsed } from "./complaint-draft.ts";
import type { ComplaintDraft, UsedRow } from "./complaint-draft.ts";
import type { ComplaintAction } from "./use-complaint.ts";

interface UsedProps {
  readonly used: readonly UsedRow[];
  readonly dispatch: (action: ComplaintAction) => void;
}

/** The conditioners that went in, each with its dose and when. */
export function UsedGroup({ used, dispatch }: UsedProps): ReactElement {
  const { issues } = useForm();
  const say = useSay();
  return (
    <FieldGroup
      id="section-used"
      title="Conditioners used"
      lead="What went into the tank for the water. None: leave it empty."
    >
      {used.map((row, index) => (
        <Used key={row.key} row={row} index={index} dispatch={dispatch} />
      ))}
      <IssueList issues={issues.filter(({ path }) => path === "used")} />
      <button
        type="button"
        onClick={() => {
          dispatch({ type: "edit", change: (d) => ({ ...d, used: [...d.used, blankUsed()] }) });
          focusSoon(fieldId(`used[${String(used.length)}].chemistry`));
        }}
      >
        {say("Add a conditioner used")}
      </button>
    </FieldGroup>
  );
}

interface RowProps {
  readonly row: UsedRow;
  readonly index: number;
  readonly dispatch: (action: ComplaintAction) => void;
}

function Used({ row, index, dispatch }: RowProps): ReactElement {
  const { catalogue, issues } = useForm();
  const language = useLanguage();
  const say = sayIn(language);
  const path = `used[${String(index)}]`;
  const record = choiceOf(catalogue?.conditioners ?? [], row.chemistry);
  const title =
    record === undefined
      ? row.chemistry || say("Conditioner {number}", { number: index + 1 })
      : language.phrases.name(record.name);
  const edit = (change: Partial<UsedRow>): void => {
    dispatch({
      type: "edit",
      change: (d: ComplaintDraft) => ({
        ...d,
        used: d.used.map((one) => (one.key === row.key ? { ...one, ...change } : one)),
      }),
    });
  };
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
          label="Dose"
          path={`${path}.dose`}
          value={row.dose}
          units={UNITS.dose}
          of={title}
          measure={{ dimension: "dose" }}
          onChange={(dose) => {
            edit({ dose });
          }}
        />
        <SelectField
          label="Went in"
          path={`${path}.added`}
          choices={(catalogue?.complaint.added ?? []).map((id) => ({ id, name: id }))}
          none="not said"
          value={row.added}
          onChange={(added) => {
            edit({ added });
          }}
        />
      </div>
      <IssueList issues={issues.filter((issue) => issue.path === path)} />
      <button
        type="button"
        className="quiet"
        onClick={() => {
          dispatch({
            type: "step",
            what: say("{what} removed", { what: title }),
            change: (d) => ({ ...d, used: d.used.filter((one) => one.key !== row.key) }),
          });
        }}
      >
        {say("Remove {product}", { product: title })}
      </button>
    </fieldset>
  );
}
