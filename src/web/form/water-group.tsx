import { lazy, Suspense, useRef, useState } from "react";
import type { ReactElement } from "react";
import { blankReading } from "../job/draft.ts";
import type { Draft, ReadingRow } from "../job/draft.ts";
import { fieldId, focusSoon, useForm } from "./form-context.ts";
import { SelectField, TextField } from "./fields.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { IssueList } from "./messages.tsx";
import { capital } from "./place-words.ts";
import { Section } from "./section.tsx";

const METHODS = [
  { id: "laboratory", name: "laboratory" },
  { id: "strip", name: "test strip" },
  { id: "drop test", name: "drop test" },
  { id: "meter", name: "meter" },
];

type Water = Draft["water"];

/** The water test: where the water comes from and what was measured. */
export function WaterGroup(): ReactElement {
  const { draft, dispatch, issues } = useForm();
  const { water } = draft;
  const edit = (change: Partial<Water>): void => {
    dispatch({ type: "edit", change: (d) => ({ ...d, water: { ...d.water, ...change } }) });
  };
  const general = issues.filter(({ path }) => path === "water" || path === "water.readings");
  return (
    <Section
      id="section-water"
      title="Water test"
      lead="As the report gives them. Leave blank what was not measured."
    >
      <div className="fields">
        <TextField
          label="Source"
          path="water.source"
          value={water.source}
          onChange={(source) => {
            edit({ source });
          }}
        />
        <TextField
          label="Sampled on"
          path="water.sampled"
          kind="date"
          value={water.sampled}
          onChange={(sampled) => {
            edit({ sampled });
          }}
        />
        <SelectField
          label="Method"
          path="water.method"
          choices={METHODS}
          value={water.method}
          onChange={(method) => {
            edit({ method });
          }}
        />
      </div>
      <IssueList issues={general} />
      <FromSheet />
      <h4 id="readings-title">Readings</h4>
      <p className="about">A limit such as &lt;0.05 or a range such as 250–425 is fine.</p>
      <ul className="readings" aria-labelledby="readings-title">
        {water.readings.map((row, index) => (
          <Reading key={row.key} row={row} index={index} />
        ))}
      </ul>
      <AddReading />
    </Section>
  );
}

/** Loaded when it is first opened: most visits type the readings. */
const SheetPanel = lazy(async () => ({ default: (await import("../sheet/sheet-panel.tsx")).SheetPanel }));

/** The way in for a laboratory sheet, folded away until it is asked for. */
function FromSheet(): ReactElement {
  const [open, setOpen] = useState(false);
  return (
    <details
      open={open}
      onToggle={(event) => {
        setOpen(event.currentTarget.open);
      }}
    >
      <summary>Paste or open a lab sheet</summary>
      {open && (
        <Suspense fallback={<p className="about">Loading …</p>}>
          <SheetPanel
            onTaken={() => {
              setOpen(false);
            }}
          />
        </Suspense>
      )}
    </details>
  );
}

function Reading({ row, index }: { row: ReadingRow; index: number }): ReactElement {
  const { catalogue, dispatch, issues } = useForm();
  const path = `water.readings[${String(index)}]`;
  const name = row.parameter === "" ? "Reading without a name" : capital(row.parameter);
  const units = catalogue?.parameters.find((p) => p.name === row.parameter)?.units ?? [row.value.unit];
  const rowIssues = issues.filter((issue) => issue.path === path || issue.path === `${path}.parameter`);
  return (
    <li className="reading">
      <QuantityField
        label={name}
        path={`${path}.value`}
        alsoAt={[`${path}.unit`]}
        value={row.value}
        units={units}
        measure={{ reading: row.parameter }}
        hint="Blank: not measured."
        signed={row.parameter === "temperature"}
        onChange={(value) => {
          dispatch({
            type: "edit",
            change: (d) =>
              withReadings(
                d,
                d.water.readings.map((r) => (r.key === row.key ? { ...r, value } : r)),
              ),
          });
        }}
      />
      <button
        type="button"
        className="quiet remove"
        onClick={() => {
          dispatch({
            type: "step",
            what: `${name} removed`,
            change: (d) =>
              withReadings(
                d,
                d.water.readings.filter((r) => r.key !== row.key),
              ),
          });
          focusSoon(fieldId(`water.readings[${String(Math.max(0, index - 1))}].value`));
        }}
      >
        <span aria-hidden="true">×</span>
        <span className="visually-hidden">Remove {name}</span>
      </button>
      <IssueList issues={rowIssues} />
    </li>
  );
}

function AddReading(): ReactElement {
  const { draft, catalogue, dispatch } = useForm();
  const [chosen, setChosen] = useState("");
  const select = useRef<HTMLSelectElement>(null);
  const present = new Set(draft.water.readings.map((row) => row.parameter));
  const left = (catalogue?.parameters ?? []).filter((p) => !present.has(p.name));
  const add = (): void => {
    const parameter = left.find((p) => p.name === chosen);
    if (parameter === undefined) {
      select.current?.focus();
      return;
    }
    const row = blankReading(parameter.name, parameter.units[0] ?? "");
    const index = draft.water.readings.length;
    dispatch({ type: "edit", change: (d) => withReadings(d, [...d.water.readings, row]) });
    setChosen("");
    focusSoon(fieldId(`water.readings[${String(index)}].value`));
  };
  return (
    <div className="add-row">
      <div className="field">
        <label htmlFor="add-reading">Another reading</label>
        <select
          id="add-reading"
          ref={select}
          value={chosen}
          onChange={(event) => {
            setChosen(event.target.value);
          }}
        >
          <option value="">choose</option>
          {left.map((p) => (
            <option key={p.name} value={p.name}>
              {capital(p.name)}
            </option>
          ))}
        </select>
      </div>
      <button type="button" onClick={add}>
        Add reading
      </button>
    </div>
  );
}

function withReadings(draft: Draft, readings: readonly ReadingRow[]): Draft {
  return { ...draft, water: { ...draft.water, readings } };
}
