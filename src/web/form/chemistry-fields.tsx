import type { ReactElement } from "react";
import { choiceOf } from "../engine/messages.ts";
import type { ChemistryRow } from "../job/draft-conditioners.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { withChemistry, withoutConditioner } from "./conditioner-rows.ts";
import { DoseFields } from "./dose-fields.tsx";
import { SelectField } from "./fields.tsx";
import { useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { More } from "./more.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { RemoveButton } from "./row-buttons.tsx";
import { UNITS } from "./units.ts";

const words = {
  doses: "Doses on the label",
};

/** One chemistry that may be used. */
export function ChemistryFields({ row, index }: { row: ChemistryRow; index: number }): ReactElement {
  const { catalogue, dispatch, issues } = useForm();
  const path = `conditioners[${String(index)}]`;
  const record = choiceOf(catalogue?.conditioners ?? [], row.chemistry);
  const { phrases } = useLanguage();
  const say = useSay();
  const title =
    row.chemistry === ""
      ? say("Conditioner {number}", { number: index + 1 })
      : phrases.name(record?.name ?? row.chemistry);
  const edit = (change: Partial<ChemistryRow>): void => {
    dispatch({ type: "edit", change: (d) => withChemistry(d, row.key, (r) => ({ ...r, ...change })) });
  };
  const doses = [row.leastDose, row.mostDose].filter(({ text }) => text.trim() !== "").length;
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
          units={UNITS.price}
          onChange={(price) => {
            edit({ price });
          }}
        />
      </div>
      <More title={words.doses} said={doses} paths={[`${path}.least dose`, `${path}.most dose`]}>
        <div className="fields">
          <DoseFields row={row} path={path} of={title} onChange={edit} />
        </div>
      </More>
      <LeftOver rest={row.rest} onChange={(d, rest) => withChemistry(d, row.key, (r) => ({ ...r, rest }))} />
      <IssueList issues={issues.filter((issue) => issue.path === path)} />
      <RemoveButton title={title} change={(d) => withoutConditioner(d, row.key)} />
    </fieldset>
  );
}
