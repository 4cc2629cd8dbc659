import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import type { FeedRow } from "../job/draft-mix.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { SelectField, TextField } from "./fields.tsx";
import { fieldId, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { withFeed, withoutEntry } from "./mix-rows.ts";
import { QuantityField } from "./quantity-field.tsx";
import { RemoveButton } from "./row-buttons.tsx";
import { UNITS } from "./units.ts";

const words = {
  label: "Leaf feed",
  form: "Sold as",
  usual: "usual form",
  strength: "Strength",
  strengthHint: "Of the element. Blank: usual for the form.",
  rate: "Rate",
  name: "Name on the bag",
  nameHint: "For the card. Never needed.",
};

/** One leaf feed of the mix: its metal takes part in the tank. */
export function FeedFields({ row, index }: { row: FeedRow; index: number }): ReactElement {
  const { catalogue, dispatch, issues } = useForm();
  const path = `mix[${String(index)}]`;
  const record = choiceOf(catalogue?.feeds ?? [], row.feed);
  const { phrases } = useLanguage();
  const say = useSay();
  const title =
    row.feed === ""
      ? say("Leaf feed {number}", { number: index + 1 })
      : phrases.name(record?.name ?? row.feed);
  const edit = (change: Partial<FeedRow>): void => {
    dispatch({ type: "edit", change: (d) => withFeed(d, row.key, (r) => ({ ...r, ...change })) });
  };
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <div className="fields">
        <SelectField
          label={words.label}
          path={`${path}.feed`}
          choices={catalogue?.feeds ?? []}
          none="choose"
          value={row.feed}
          onChange={(feed) => {
            edit({ feed, form: "" });
          }}
        />
        <SelectField
          label={words.form}
          path={`${path}.form`}
          choices={record?.forms ?? []}
          none={words.usual}
          value={row.form}
          onChange={(form) => {
            edit({ form });
          }}
        />
        <QuantityField
          label={words.rate}
          path={`${path}.rate`}
          value={row.rate}
          units={UNITS.rate}
          of={title}
          measure={{ dimension: "rate" }}
          onChange={(rate) => {
            edit({ rate });
          }}
        />
        <QuantityField
          label={words.strength}
          path={`${path}.strength`}
          hint={words.strengthHint}
          value={row.strength}
          units={UNITS.strength}
          of={title}
          measure={{ dimension: "content" }}
          onChange={(strength) => {
            edit({ strength });
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
      <LeftOver rest={row.rest} onChange={(d, rest) => withFeed(d, row.key, (r) => ({ ...r, rest }))} />
      <IssueList issues={issues.filter((issue) => issue.path === path)} />
      <RemoveButton
        title={title}
        change={(d) => withoutEntry(d, row.key)}
        focus={fieldId(`mix[${String(Math.max(0, index - 1))}].active`)}
      />
    </fieldset>
  );
}
