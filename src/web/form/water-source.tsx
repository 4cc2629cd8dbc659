import { memo } from "react";
import type { ReactElement } from "react";
import type { Draft, WaterTyped } from "../job/draft.ts";
import { SelectField, TextField } from "./fields.tsx";
import { useForm } from "./form-context.ts";

const METHODS = [
  { id: "laboratory", name: "laboratory" },
  { id: "strip", name: "test strip" },
  { id: "drop test", name: "drop test" },
  { id: "meter", name: "meter" },
];

const words = {
  iron: "Iron as reported",
  ironHint: "Needed where the report says iron alone.",
  ironUnsaid: "not said: the form that binds most",
};

const IRON_FORMS = [
  { id: "ferrous", name: "ferrous, iron(II)" },
  { id: "ferric", name: "ferric, iron(III)" },
];

interface Shell {
  readonly path: string;
  readonly onChange: (draft: Draft, change: Partial<WaterTyped>) => Draft;
}

interface WaterSourceProps extends Shell {
  readonly water: WaterTyped;
}

/** Where a water comes from, when it was sampled and how it was tested. */
export function WaterSource({ path, water, onChange }: WaterSourceProps): ReactElement {
  const { source, sampled, method, ironForm } = water;
  const asksIron = ironForm !== "" || measuresIron(water);
  return <SourceFields {...{ path, onChange, source, sampled, method, ironForm, asksIron }} />;
}

interface SourceFieldsProps extends Shell, Pick<WaterTyped, "source" | "sampled" | "method" | "ironForm"> {
  /** True where the form of the iron makes a difference. */
  readonly asksIron: boolean;
}

/** The same by what it shows: drawn anew when that changes, not with every reading. */
const SourceFields = memo(function SourceFields(props: SourceFieldsProps): ReactElement {
  const { path, onChange, source, sampled, method, ironForm, asksIron } = props;
  const { dispatch } = useForm();
  const edit = (change: Partial<WaterTyped>): void => {
    dispatch({ type: "edit", change: (d) => onChange(d, change) });
  };
  return (
    <div className="fields">
      <TextField
        label="Source"
        path={`${path}.source`}
        value={source}
        onChange={(typed) => {
          edit({ source: typed });
        }}
      />
      <TextField
        label="Sampled on"
        path={`${path}.sampled`}
        kind="date"
        value={sampled}
        onChange={(day) => {
          edit({ sampled: day });
        }}
      />
      <SelectField
        label="Method"
        path={`${path}.method`}
        choices={METHODS}
        value={method}
        onChange={(chosen) => {
          edit({ method: chosen });
        }}
      />
      {asksIron && (
        <SelectField
          label={words.iron}
          path={`${path}.iron form`}
          choices={IRON_FORMS}
          none={words.ironUnsaid}
          hint={words.ironHint}
          value={ironForm}
          onChange={(chosen) => {
            edit({ ironForm: chosen });
          }}
        />
      )}
    </div>
  );
});

/** True where an iron without a form was measured. */
function measuresIron({ readings }: WaterTyped): boolean {
  return readings.some(({ parameter, value }) => parameter === "iron" && value.text.trim() !== "");
}
