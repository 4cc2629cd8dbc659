import type { ReactElement } from "react";
import { SelectField } from "../form/fields.tsx";
import { useForm } from "../form/form-context.ts";
import { FieldGroup } from "../form/field-group.tsx";
import type { ComplaintDraft } from "./complaint-draft.ts";
import type { ComplaintAction } from "./use-complaint.ts";

interface SeenProps {
  readonly seen: ComplaintDraft["seen"];
  readonly dispatch: (action: ComplaintAction) => void;
}

/** What was seen in the field. */
export function SeenGroup({ seen, dispatch }: SeenProps): ReactElement {
  const { catalogue } = useForm();
  const { patterns, plants, loads } = catalogue?.complaint ?? { patterns: [], plants: [], loads: [] };
  const questions = [
    { key: "pattern", label: "How the failure lies over the field", choices: patterns },
    { key: "plants", label: "How the plants look", choices: plants },
    { key: "loads", label: "Which loads failed", choices: loads },
  ] as const;
  return (
    <FieldGroup
      id="section-seen"
      title="What was seen"
      lead="It speaks for or against a cause. Leave open what nobody looked at."
    >
      <div className="fields">
        {questions.map(({ key, label, choices }) => (
          <SelectField
            key={key}
            label={label}
            path={`seen.${key}`}
            choices={choices.map((id) => ({ id, name: id }))}
            none="not said"
            value={seen[key]}
            onChange={(value) => {
              dispatch({ type: "edit", change: (d) => ({ ...d, seen: { ...d.seen, [key]: value } }) });
            }}
          />
        ))}
      </div>
    </FieldGroup>
  );
}
