import type { ReactElement } from "react";
import { blankConditioner, blankOwnProduct } from "../job/draft-conditioners.ts";
import { ChemistryFields } from "./chemistry-fields.tsx";
import { fieldId, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";
import { OwnProductFields } from "./own-product-fields.tsx";
import { AddButton } from "./row-buttons.tsx";
import { Section } from "./section.tsx";

const words = {
  addChemistry: "Add a conditioner",
  addProduct: "Add a product by its label",
};

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
      {draft.listsConditioners && <ConditionerRows />}
    </Section>
  );
}

function ConditionerRows(): ReactElement {
  const { draft } = useForm();
  const { conditioners } = draft;
  const next = `conditioners[${String(conditioners.length)}]`;
  return (
    <>
      {conditioners.map((row, index) =>
        row.kind === "chemistry" ? (
          <ChemistryFields key={row.key} row={row} index={index} />
        ) : (
          <OwnProductFields key={row.key} row={row} index={index} />
        ),
      )}
      <div className="asks">
        <AddButton
          label={words.addChemistry}
          change={(d) => ({ ...d, conditioners: [...d.conditioners, blankConditioner()] })}
          focus={fieldId(`${next}.chemistry`)}
        />
        <AddButton
          quiet
          label={words.addProduct}
          change={(d) => ({ ...d, conditioners: [...d.conditioners, blankOwnProduct()] })}
          focus={fieldId(`${next}.product`)}
        />
      </div>
    </>
  );
}
