import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import { SelectField } from "../form/fields.tsx";
import { fieldId, focusSoon, useForm } from "../form/form-context.ts";
import { IssueList } from "../form/messages.tsx";
import { QuantityField } from "../form/quantity-field.tsx";
import { Section } from "../form/section.tsx";
import { UNITS } from "../form/units.ts";
import { blankUsed } from "./complaint-draft.ts";
import type { ComplaintDraft, UsedRow } from "./complaint-draft.ts";
import type { ComplaintAction } from "./use-complaint.ts";

const words = {
  title: "Conditioners used",
  lead: "What went into the tank for the water. None: leave it empty.",
  row: (number: number): string => `Conditioner ${String(number)}`,
  chemistry: "Chemistry",
  soldAs: "Sold as",
  usual: "usual form",
  choose: "choose",
  dose: "Dose",
  added: "Went in",
  unsaid: "not said",
  add: "Add a conditioner used",
  remove: (title: string): string => `Remove ${title}`,
  removed: (title: string): string => `${title} removed`,
};

interface UsedProps {
  readonly used: readonly UsedRow[];
  readonly dispatch: (action: ComplaintAction) => void;
}

/** The conditioners that went in, each with its dose and when. */
export function UsedGroup({ used, dispatch }: UsedProps): ReactElement {
  const { issues } = useForm();
  return (
    <Section id="section-used" title={words.title} lead={words.lead}>
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
        {words.add}
      </button>
    </Section>
  );
}

interface RowProps {
  readonly row: UsedRow;
  readonly index: number;
  readonly dispatch: (action: ComplaintAction) => void;
}

function Used({ row, index, dispatch }: RowProps): ReactElement {
  const { catalogue, issues } = useForm();
  const path = `used[${String(index)}]`;
  const record = choiceOf(catalogue?.conditioners ?? [], row.chemistry);
  const title = record?.name ?? (row.chemistry === "" ? words.row(index + 1) : row.chemistry);
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
          label={words.chemistry}
          path={`${path}.chemistry`}
          choices={catalogue?.conditioners ?? []}
          none={words.choose}
          value={row.chemistry}
          onChange={(chemistry) => {
            edit({ chemistry, form: "" });
          }}
        />
        <SelectField
          label={words.soldAs}
          path={`${path}.form`}
          choices={record?.forms ?? []}
          none={words.usual}
          value={row.form}
          onChange={(form) => {
            edit({ form });
          }}
        />
        <QuantityField
          label={words.dose}
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
          label={words.added}
          path={`${path}.added`}
          choices={(catalogue?.complaint.added ?? []).map((id) => ({ id, name: id }))}
          none={words.unsaid}
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
            what: words.removed(title),
            change: (d) => ({ ...d, used: d.used.filter((one) => one.key !== row.key) }),
          });
        }}
      >
        {words.remove(title)}
      </button>
    </fieldset>
  );
}
