import { memo } from "react";
import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import { blankFeed, blankProduct } from "../job/draft-mix.ts";
import { FeedFields } from "./feed-fields.tsx";
import { fieldId, useDraft, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";
import { More } from "./more.tsx";
import { ProductFields } from "./product-fields.tsx";
import { AddButton } from "./row-buttons.tsx";
import { FieldGroup } from "./field-group.tsx";
import { Ticks } from "./ticks.tsx";

const words = {
  addProduct: "Add a product",
  addFeed: "Add a leaf feed",
  partners: "Other partners in the tank",
  partnersLabel: "Partners that published rules speak of",
};

// A row is drawn anew when it is typed into, not when another one is.
const FeedRow = memo(FeedFields);
const ProductRow = memo(ProductFields);

/** The products of the tank, its leaf feeds and what else goes in. */
export function MixGroup(): ReactElement {
  const { mix, partners } = useDraft();
  return <Mix mix={mix} partners={partners} />;
}

const Mix = memo(function Mix({ mix, partners }: Pick<Draft, "mix" | "partners">): ReactElement {
  const { issues } = useForm();
  const general = issues.filter(({ path, missing }) => path === "mix" && !missing);
  return (
    <FieldGroup
      id="section-mix"
      title="Tank mix"
      lead="What is on the label. Strength as acid where the label says so."
    >
      {mix.map((row, index) =>
        row.kind === "feed" ? (
          <FeedRow key={row.key} row={row} index={index} />
        ) : (
          <ProductRow key={row.key} row={row} index={index} alone={mix.length === 1} />
        ),
      )}
      <IssueList issues={general} />
      <div className="asks">
        <AddButton
          label={words.addProduct}
          change={(d) => ({ ...d, mix: [...d.mix, blankProduct()] })}
          focus={fieldId(`mix[${String(mix.length)}].active`)}
        />
        <AddButton
          quiet
          label={words.addFeed}
          change={(d) => ({ ...d, mix: [...d.mix, blankFeed()] })}
          focus={fieldId(`mix[${String(mix.length)}].feed`)}
        />
      </div>
      <Partners partners={partners} />
    </FieldGroup>
  );
});

/** Partners without an amount, of which published rules speak. */
const Partners = memo(function Partners({ partners }: Pick<Draft, "partners">): ReactElement {
  const { catalogue, dispatch } = useForm();
  return (
    <More title={words.partners} said={partners?.length ?? 0} paths={["partners"]}>
      <Ticks
        label={words.partnersLabel}
        path="partners"
        choices={catalogue?.partners ?? []}
        value={partners}
        onChange={(ticked) => {
          dispatch({ type: "edit", change: (d) => ({ ...d, partners: ticked }) });
        }}
      />
    </More>
  );
});
