import { memo } from "react";
import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import { SelectField, TextField } from "./fields.tsx";
import { useDraft, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { FieldGroup } from "./field-group.tsx";

const PLACES = [
  { id: "on the leaf", name: "on the leaf" },
  { id: "in the tank", name: "in the tank" },
];

/** The aim: how much must stay free, where, and how sure. */
export function AimGroup(): ReactElement {
  return <Aim aim={useDraft().aim} />;
}

const Aim = memo(function Aim({ aim }: Pick<Draft, "aim">): ReactElement {
  const { dispatch } = useForm();
  const edit = (change: Partial<Draft["aim"]>): void => {
    dispatch({ type: "edit", change: (d) => ({ ...d, aim: { ...d.aim, ...change } }) });
  };
  return (
    <FieldGroup id="section-aim" title="Aim">
      <div className="fields">
        <TextField
          label="Share that must stay free"
          path="aim.free share"
          decimal
          hint="0.95 is 95 in 100."
          value={aim.freeShare}
          onChange={(freeShare) => {
            edit({ freeShare });
          }}
        />
        <SelectField
          label="Judged"
          path="aim.where"
          choices={PLACES}
          value={aim.where}
          onChange={(where) => {
            edit({ where });
          }}
        />
        <TextField
          label="Confidence"
          path="aim.confidence"
          decimal
          hint="0.9 is 9 waters in 10 that fit the test."
          value={aim.confidence}
          onChange={(confidence) => {
            edit({ confidence });
          }}
        />
      </div>
      <LeftOver rest={aim.rest} onChange={(d, rest) => ({ ...d, aim: { ...d.aim, rest } })} />
    </FieldGroup>
  );
});
