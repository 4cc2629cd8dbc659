import type { ReactElement } from "react";
import { SelectField } from "../form/fields.tsx";
import { useForm } from "../form/form-context.ts";
import { FieldGroup } from "../form/field-group.tsx";
import { useLanguage } from "../language/language-context.ts";
import { Text } from "../language/text.tsx";
import type { ComplaintDraft } from "./complaint-draft.ts";
import type { ComplaintAction } from "./use-complaint.ts";

const STANDINGS = [
  { id: "excluded", name: "excluded" },
  { id: "found", name: "found" },
];

interface CausesProps {
  readonly causes: ComplaintDraft["causes"];
  readonly dispatch: (action: ComplaintAction) => void;
}

/** Where each of the usual causes stands: open, excluded or found. */
export function CausesGroup({ causes, dispatch }: CausesProps): ReactElement {
  const { catalogue } = useForm();
  const { phrases } = useLanguage();
  return (
    <FieldGroup id="section-causes" title="Other causes, checked" lead="Exclude these first, in this order.">
      {(catalogue?.complaint.causes ?? []).map(({ id, name, check }) => (
        <div key={id} className="cause">
          <SelectField
            label={capitalised(phrases.name(name))}
            path={`checked.${id}`}
            choices={STANDINGS}
            none="open"
            value={causes[id] ?? ""}
            onChange={(value) => {
              dispatch({
                type: "edit",
                change: (d) => ({ ...d, causes: withStanding(d.causes, id, value) }),
              });
            }}
          />
          <p className="about">
            <Text of={check} />
          </p>
        </div>
      ))}
    </FieldGroup>
  );
}

function withStanding(causes: ComplaintDraft["causes"], id: string, value: string): ComplaintDraft["causes"] {
  const { [id]: _before, ...others } = causes;
  return value === "excluded" || value === "found" ? { ...others, [id]: value } : others;
}

function capitalised(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}
