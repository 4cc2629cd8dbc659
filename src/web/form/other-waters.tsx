import { memo, useCallback } from "react";
import type { ReactElement } from "react";
import { blankOtherWater } from "../job/draft.ts";
import type { Draft, OtherWaterRow, ReadingRow } from "../job/draft.ts";
import { useSay } from "../language/language-context.ts";
import { fieldId, useDraft, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { More } from "./more.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { Readings } from "./readings.tsx";
import { AddButton, RemoveButton } from "./row-buttons.tsx";
import { UNITS } from "./units.ts";
import { WaterSource } from "./water-source.tsx";

const words = {
  more: "Other waters you could use",
  about: "Alone, or blended with the water above.",
  price: "Price with carting",
  priceHint: "Blank: cost not known. Nothing to pay: 0.",
  add: "Add another water",
};

const PATH = "other waters";

/** Further sources, each with its readings and its price. */
export function OtherWaters(): ReactElement {
  return <OtherRows otherWaters={useDraft().otherWaters} />;
}

const OtherRows = memo(function OtherRows({ otherWaters }: Pick<Draft, "otherWaters">): ReactElement {
  const say = useSay();
  return (
    <More title={words.more} said={otherWaters.length} paths={[PATH]}>
      <p className="about">{say(words.about)}</p>
      {otherWaters.map((row, index) => (
        <OtherWater key={row.key} row={row} index={index} />
      ))}
      <AddButton
        label={words.add}
        change={(d) => ({ ...d, otherWaters: [...d.otherWaters, blankOtherWater()] })}
        focus={fieldId(`${PATH}[${String(otherWaters.length)}].source`)}
      />
    </More>
  );
});

interface OtherWaterProps {
  readonly row: OtherWaterRow;
  readonly index: number;
}

const OtherWater = memo(function OtherWater({ row, index }: OtherWaterProps): ReactElement {
  const { dispatch, issues } = useForm();
  const path = `${PATH}[${String(index)}]`;
  const say = useSay();
  const title = row.source === "" ? say("Other water {number}", { number: index + 1 }) : row.source;
  const { key } = row;
  const withRow = useCallback(
    (draft: Draft, change: Partial<OtherWaterRow>): Draft => ({
      ...draft,
      otherWaters: draft.otherWaters.map((one) => (one.key === key ? { ...one, ...change } : one)),
    }),
    [key],
  );
  const withReadings = useCallback(
    (d: Draft, change: (rows: readonly ReadingRow[]) => readonly ReadingRow[]): Draft => ({
      ...d,
      otherWaters: d.otherWaters.map((one) =>
        one.key === key ? { ...one, readings: change(one.readings) } : one,
      ),
    }),
    [key],
  );
  const heading = `${fieldId(path)}-readings`;
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <WaterSource path={path} water={row} onChange={withRow} />
      <div className="fields">
        <QuantityField
          label={words.price}
          path={`${path}.price`}
          value={row.price}
          units={UNITS.waterPrice}
          hint={words.priceHint}
          of={title}
          onChange={(price) => {
            dispatch({ type: "edit", change: (d) => withRow(d, { price }) });
          }}
        />
      </div>
      <IssueList issues={issues.filter((one) => one.path === path || one.path === `${path}.readings`)} />
      <h4 id={heading}>{say("Readings of {name}", { name: title })}</h4>
      <Readings
        path={`${path}.readings`}
        rows={row.readings}
        labelledBy={heading}
        of={title}
        onChange={withReadings}
      />
      <LeftOver rest={row.rest} onChange={(d, rest) => withRow(d, { rest })} />
      <RemoveButton
        title={title}
        change={(d) => ({ ...d, otherWaters: d.otherWaters.filter((one) => one.key !== row.key) })}
      />
    </fieldset>
  );
});
