import type { ReactElement } from "react";
import { blankFeed, blankProduct } from "../job/draft-mix.ts";
import { FeedFields } from "./feed-fields.tsx";
import { fieldId, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";
import { More } from "./more.tsx";
import { ProductFields } from "./product-fields.tsx";
import { AddButton } from "./row-buttons.tsx";
import { Section } from "./section.tsx";
import { Ticks } from "./ticks.tsx";

const words = {
  addProduct: "Add a product",
  addFeed: "Add a leaf feed",
  partners: "Other partners in the tank",
  partnersLabel: "Partners that published rules speak of",
};

/** The products of the tank, its leaf feeds and what else goes in. */
export function MixGroup(): ReactElement {
  const { draft, issues } = useForm();
  const general = issues.filter(({ path, missing }) => path === "mix" && !missing);
  const { mix } = draft;
  return (
    <Section
      id="section-mix"
      title="Tank mix"
      lead="What is on the label. Strength as acid where the label says so."
    >
      {mix.map((row, index) =>
        row.kind === "feed" ? (
          <FeedFields key={row.key} row={row} index={index} />
        ) : (
          <ProductFields key={row.key} row={row} index={index} />
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
      <Partners />
    </Section>
  );
}

/** Partners without an amount, of which published rules speak. */
function Partners(): ReactElement {
  const { draft, catalogue, dispatch } = useForm();
  return (
    <More title={words.partners} said={draft.partners?.length ?? 0} paths={["partners"]}>
      <Ticks
        label={words.partnersLabel}
        path="partners"
        choices={catalogue?.partners ?? []}
        value={draft.partners}
        onChange={(partners) => {
          dispatch({ type: "edit", change: (d) => ({ ...d, partners }) });
        }}
      />
    </More>
  );
}
