import { lazy, memo, Suspense, useState } from "react";
import type { ReactElement } from "react";
import type { Draft, ReadingRow, WaterTyped } from "../job/draft.ts";
import { useSay } from "../language/language-context.ts";
import { useDraft, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { OtherWaters } from "./other-waters.tsx";
import { Readings } from "./readings.tsx";
import { FieldGroup } from "./field-group.tsx";
import { WaterSource } from "./water-source.tsx";

/** The water test: where the water comes from and what was measured. */
export function WaterGroup({ others = true }: { readonly others?: boolean }): ReactElement {
  return <Water water={useDraft().water} others={others} />;
}

interface WaterProps {
  readonly water: WaterTyped;
  readonly others: boolean;
}

const Water = memo(function Water({ water, others }: WaterProps): ReactElement {
  const { issues } = useForm();
  const say = useSay();
  const general = issues.filter(({ path }) => path === "water" || path === "water.readings");
  return (
    <FieldGroup
      id="section-water"
      title="Water test"
      lead="As the report gives them. Leave blank what was not measured."
    >
      <WaterSource path="water" water={water} onChange={withWater} />
      <IssueList issues={general} />
      <FromSheet />
      <h4 id="readings-title">{say("Readings")}</h4>
      <p className="about">{say("A limit such as <0.05 or a range such as 250–425 is fine.")}</p>
      <Readings
        path="water.readings"
        rows={water.readings}
        labelledBy="readings-title"
        onChange={withReadings}
      />
      <LeftOver rest={water.rest} onChange={(d, rest) => withWater(d, { rest })} />
      {others && <OtherWaters />}
    </FieldGroup>
  );
});

/** Loaded when it is first opened: most visits type the readings. */
const SheetPanel = lazy(async () => ({ default: (await import("../sheet/sheet-panel.tsx")).SheetPanel }));

/** The way in for a laboratory sheet, folded away until it is asked for. */
const FromSheet = memo(function FromSheet(): ReactElement {
  const [open, setOpen] = useState(false);
  const say = useSay();
  return (
    <details
      open={open}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>{say("Paste or open a lab sheet")}</summary>
      {open && (
        <Suspense fallback={<p className="about">{say("Loading …")}</p>}>
          <SheetPanel
            onTaken={() => {
              setOpen(false);
            }}
          />
        </Suspense>
      )}
    </details>
  );
});

function withReadings(draft: Draft, change: (rows: readonly ReadingRow[]) => readonly ReadingRow[]): Draft {
  return withWater(draft, { readings: change(draft.water.readings) });
}

function withWater(draft: Draft, change: Partial<WaterTyped>): Draft {
  return { ...draft, water: { ...draft.water, ...change } };
}
