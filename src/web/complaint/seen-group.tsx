import type { ReactElement } from "react";
import { SelectField } from "../form/fields.tsx";
import { useForm } from "../form/form-context.ts";
import { Section } from "../form/section.tsx";
import type { ComplaintDraft } from "./complaint-draft.ts";
import type { ComplaintAction } from "./use-complaint.ts";

const words = {
  title: "What was seen",
  lead: "It speaks for or against a cause. Leave open what nobody looked at.",
  pattern: "How the failure lies over the field",
  plants: "How the plants look",
  loads: "Which loads failed",
  unsaid: "not said",
};

interface SeenProps {
  readonly seen: ComplaintDraft["seen"];
  readonly dispatch: (action: ComplaintAction) => void;
}

/** What was seen in the field. */
export function SeenGroup({ seen, dispatch }: SeenProps): ReactElement {
  const { catalogue } = useForm();
  const { patterns, plants, loads } = catalogue?.complaint ?? { patterns: [], plants: [], loads: [] };
  const questions = [
    { key: "pattern", label: words.pattern, choices: patterns },
    { key: "plants", label: words.plants, choices: plants },
    { key: "loads", label: words.loads, choices: loads },
  ] as const;
  return (
    <Section id="section-seen" title={words.title} lead={words.lead}>
      <div className="fields">
        {questions.map(({ key, label, choices }) => (
          <SelectField
            key={key}
            label={label}
            path={`seen.${key}`}
            choices={choices.map((id) => ({ id, name: id }))}
            none={words.unsaid}
            value={seen[key]}
            onChange={(value) => {
              dispatch({ type: "edit", change: (d) => ({ ...d, seen: { ...d.seen, [key]: value } }) });
            }}
          />
        ))}
      </div>
    </Section>
  );
}
