import { memo } from "react";
import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import { blankConditioner, blankOwnProduct } from "../job/draft-conditioners.ts";
import { useSay } from "../language/language-context.ts";
import { ChemistryFields } from "./chemistry-fields.tsx";
import { fieldId, useDraft, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";
import { OwnProductFields } from "./own-product-fields.tsx";
import { AddButton } from "./row-buttons.tsx";
import { FieldGroup } from "./field-group.tsx";

const words = {
  addChemistry: "Add a conditioner",
  addProduct: "Add a product by its label",
};

// A row is drawn anew when it is typed into, not when another one is.
const ChemistryRow = memo(ChemistryFields);
const OwnProductRow = memo(OwnProductFields);

/** The conditioners that may be used, with their prices. */
export function ConditionersGroup(): ReactElement {
  const { listsConditioners, conditioners } = useDraft();
  return <Conditioners listsConditioners={listsConditioners} conditioners={conditioners} />;
}

type Listed = Pick<Draft, "listsConditioners" | "conditioners">;

const Conditioners = memo(function Conditioners(listed: Listed): ReactElement {
  const { dispatch, issues } = useForm();
  const say = useSay();
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
    <FieldGroup id="section-conditioners" title="Conditioners" lead="What you can get, and what it costs.">
      <fieldset className="choice">
        <legend className="visually-hidden">{say("Which conditioners to try")}</legend>
        <label>
          <input
            type="radio"
            name="conditioners"
            checked={!listed.listsConditioners}
            onChange={() => {
              choose(false);
            }}
          />
          {say("Try every common one")}
        </label>
        <label>
          <input
            type="radio"
            name="conditioners"
            checked={listed.listsConditioners}
            onChange={() => {
              choose(true);
            }}
          />
          {say("Only these")}
        </label>
      </fieldset>
      <IssueList issues={general} />
      {listed.listsConditioners && <ConditionerRows conditioners={listed.conditioners} />}
    </FieldGroup>
  );
});

function ConditionerRows({ conditioners }: Pick<Draft, "conditioners">): ReactElement {
  const next = `conditioners[${String(conditioners.length)}]`;
  return (
    <>
      {conditioners.map((row, index) =>
        row.kind === "chemistry" ? (
          <ChemistryRow key={row.key} row={row} index={index} />
        ) : (
          <OwnProductRow key={row.key} row={row} index={index} />
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
