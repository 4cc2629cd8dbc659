import type { ReactElement } from "react";
import { blankIngredient } from "../job/draft-conditioners.ts";
import type { IngredientRow, OwnProductRow } from "../job/draft-conditioners.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { withOwnProduct, withoutConditioner } from "./conditioner-rows.ts";
import { DoseFields } from "./dose-fields.tsx";
import { SelectField, TextField } from "./fields.tsx";
import { fieldId, issuesOf, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { AddButton, RemoveButton } from "./row-buttons.tsx";
import { UNITS } from "./units.ts";

const words = {
  name: "Name on the label",
  composition: "What the label says is in it",
  chemistry: "Chemistry",
  amount: "How much of it",
  add: "Add an ingredient",
  density: "Density",
  densityHint: "For a liquid. Blank: it is weighed.",
  price: "Price",
  priceHint: "Blank: cost not known.",
  undisclosed: "What the label gives no amount for",
  undisclosedHint: "Such as wetting agent. It is not computed.",
  leavesOpen: "The label does not say all that is in it",
};

const AMOUNT_UNITS = ["% w/w", "g/L", "g/kg", "% w/v"];

interface OwnProductProps {
  readonly row: OwnProductRow;
  readonly index: number;
}

/** A conditioner as its label describes it. */
export function OwnProductFields({ row, index }: OwnProductProps): ReactElement {
  const { issues } = useForm();
  const path = `conditioners[${String(index)}]`;
  const say = useSay();
  const title = row.product === "" ? say("Own product {number}", { number: index + 1 }) : row.product;
  const edit = useEdit(row);
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <div className="fields">
        <TextField
          label={words.name}
          path={`${path}.product`}
          value={row.product}
          onChange={(product) => {
            edit({ product });
          }}
        />
        <QuantityField
          label={words.price}
          path={`${path}.price`}
          hint={words.priceHint}
          value={row.price}
          units={UNITS.price}
          of={title}
          onChange={(price) => {
            edit({ price });
          }}
        />
        <QuantityField
          label={words.density}
          path={`${path}.density`}
          hint={words.densityHint}
          value={row.density}
          units={UNITS.density}
          of={title}
          onChange={(density) => {
            edit({ density });
          }}
        />
        <DoseFields row={row} path={path} of={title} onChange={edit} />
      </div>
      <h4>{say(words.composition)}</h4>
      <Composition row={row} path={`${path}.composition`} />
      <Undisclosed row={row} path={`${path}.undisclosed`} />
      <LeftOver rest={row.rest} onChange={(d, rest) => withOwnProduct(d, row.key, (r) => ({ ...r, rest }))} />
      <IssueList issues={issues.filter((issue) => issue.path === path)} />
      <RemoveButton title={title} change={(d) => withoutConditioner(d, row.key)} />
    </fieldset>
  );
}

interface PartProps {
  readonly row: OwnProductRow;
  readonly path: string;
}

function useEdit(row: OwnProductRow): (change: Partial<OwnProductRow>) => void {
  const { dispatch } = useForm();
  return (change) => {
    dispatch({ type: "edit", change: (d) => withOwnProduct(d, row.key, (r) => ({ ...r, ...change })) });
  };
}

function Composition({ row, path }: PartProps): ReactElement {
  const { issues } = useForm();
  const general = issuesOf(issues, path).filter((issue) => issue.path === path);
  return (
    <>
      {row.composition.map((ingredient, i) => (
        <Ingredient
          key={ingredient.key}
          row={row}
          ingredient={ingredient}
          index={i}
          path={`${path}[${String(i)}]`}
        />
      ))}
      <IssueList issues={general} />
      <AddButton
        quiet
        label={words.add}
        change={(d) =>
          withOwnProduct(d, row.key, (r) => ({ ...r, composition: [...r.composition, blankIngredient()] }))
        }
        focus={fieldId(`${path}[${String(row.composition.length)}].chemistry`)}
      />
    </>
  );
}

interface IngredientProps extends PartProps {
  readonly ingredient: IngredientRow;
  readonly index: number;
}

function Ingredient({ row, ingredient, index, path }: IngredientProps): ReactElement {
  const { catalogue } = useForm();
  const editProduct = useEdit(row);
  const { phrases } = useLanguage();
  const say = useSay();
  const title =
    ingredient.chemistry === ""
      ? say("Ingredient {number}", { number: index + 1 })
      : phrases.name(ingredient.chemistry.replaceAll("-", " "));
  const edit = (change: Partial<IngredientRow>): void => {
    const composition = row.composition.map((one) =>
      one.key === ingredient.key ? { ...one, ...change } : one,
    );
    editProduct({ composition });
  };
  const without = (r: OwnProductRow): OwnProductRow => ({
    ...r,
    composition: r.composition.filter((one) => one.key !== ingredient.key),
  });
  return (
    <div className="ingredient">
      <div className="fields">
        <SelectField
          label={words.chemistry}
          path={`${path}.chemistry`}
          choices={catalogue?.conditioners ?? []}
          none="choose"
          value={ingredient.chemistry}
          onChange={(chemistry) => {
            edit({ chemistry });
          }}
        />
        <QuantityField
          label={words.amount}
          path={`${path}.amount`}
          value={ingredient.amount}
          units={AMOUNT_UNITS}
          of={title}
          onChange={(amount) => {
            edit({ amount });
          }}
        />
      </div>
      <RemoveButton title={title} change={(d) => withOwnProduct(d, row.key, without)} />
    </div>
  );
}

/** What the label leaves open: said in words, or only that something is. */
function Undisclosed({ row, path }: PartProps): ReactElement {
  const edit = useEdit(row);
  const say = useSay();
  return (
    <>
      <TextField
        label={words.undisclosed}
        path={path}
        hint={words.undisclosedHint}
        value={row.undisclosed}
        onChange={(undisclosed) => {
          edit({ undisclosed });
        }}
      />
      <label className="tool-check">
        <input
          type="checkbox"
          checked={row.leavesOpen}
          onChange={(event) => {
            edit({ leavesOpen: event.target.checked });
          }}
        />
        {say(words.leavesOpen)}
      </label>
    </>
  );
}
