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

interface WaterSourceProps {
  readonly path: string;
  readonly water: WaterTyped;
  readonly onChange: (draft: Draft, change: Partial<WaterTyped>) => Draft;
}

/** Where a water comes from, when it was sampled and how it was tested. */
export function WaterSource({ path, water, onChange }: WaterSourceProps): ReactElement {
  const { dispatch } = useForm();
  const edit = (change: Partial<WaterTyped>): void => {
    dispatch({ type: "edit", change: (d) => onChange(d, change) });
  };
  return (
    <div className="fields">
      <TextField
        label="Source"
        path={`${path}.source`}
        value={water.source}
        onChange={(source) => {
          edit({ source });
        }}
      />
      <TextField
        label="Sampled on"
        path={`${path}.sampled`}
        kind="date"
        value={water.sampled}
        onChange={(sampled) => {
          edit({ sampled });
        }}
      />
      <SelectField
        label="Method"
        path={`${path}.method`}
        choices={METHODS}
        value={water.method}
        onChange={(method) => {
          edit({ method });
        }}
      />
      {(water.ironForm !== "" || measuresIron(water)) && (
        <SelectField
          label={words.iron}
          path={`${path}.iron form`}
          choices={IRON_FORMS}
          none={words.ironUnsaid}
          hint={words.ironHint}
          value={water.ironForm}
          onChange={(ironForm) => {
            edit({ ironForm });
          }}
        />
      )}
    </div>
  );
}

/** True where an iron without a form was measured. */
function measuresIron({ readings }: WaterTyped): boolean {
  return readings.some(({ parameter, value }) => parameter === "iron" && value.text.trim() !== "");
}
