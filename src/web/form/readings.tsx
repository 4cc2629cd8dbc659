import { memo, useRef, useState } from "react";
import type { ReactElement } from "react";
import { blankReading } from "../job/draft.ts";
import type { Draft, ReadingRow } from "../job/draft.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { fieldId, focusSoon, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";
import { capital } from "./place-words.ts";
import { QuantityField } from "./quantity-field.tsx";

interface ReadingsProps {
  /** Path of the list in the document. */
  readonly path: string;
  readonly rows: readonly ReadingRow[];
  /** The draft with the readings of this water changed. */
  readonly onChange: (draft: Draft, change: (rows: readonly ReadingRow[]) => readonly ReadingRow[]) => Draft;
  /** Id of the heading above. */
  readonly labelledBy: string;
  /** Name of the water, where there are several. */
  readonly of?: string;
}

/** The readings of a water test, each with its unit, and the way to add one. */
export function Readings(props: ReadingsProps): ReactElement {
  const { rows, labelledBy, path, onChange, of } = props;
  return (
    <>
      <ul className="readings" aria-labelledby={labelledBy}>
        {rows.map((row, index) => (
          <Reading
            key={row.key}
            row={row}
            index={index}
            path={path}
            onChange={onChange}
            {...(of === undefined ? {} : { of })}
          />
        ))}
      </ul>
      <AddReading {...props} />
    </>
  );
}

interface ReadingProps extends Omit<ReadingsProps, "rows" | "labelledBy"> {
  readonly row: ReadingRow;
  readonly index: number;
}

/** One reading; drawn anew when it is typed into, not when another one is. */
const Reading = memo(function Reading(props: ReadingProps): ReactElement {
  const { row, index, onChange, of } = props;
  const { catalogue, dispatch, issues } = useForm();
  const { phrases } = useLanguage();
  const say = useSay();
  const path = `${props.path}[${String(index)}]`;
  const name = row.parameter === "" ? say("Reading without a name") : capital(phrases.name(row.parameter));
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
        {...(of === undefined ? {} : { of })}
        onChange={(value) => {
          dispatch({
            type: "edit",
            change: (d) => onChange(d, (rows) => rows.map((r) => (r.key === row.key ? { ...r, value } : r))),
          });
        }}
      />
      <button
        type="button"
        className="quiet remove"
        onClick={() => {
          dispatch({
            type: "step",
            what: say("{what} removed", { what: name }),
            change: (d) => onChange(d, (rows) => rows.filter((r) => r.key !== row.key)),
          });
          focusSoon(fieldId(`${props.path}[${String(Math.max(0, index - 1))}].value`));
        }}
      >
        <span aria-hidden="true">×</span>
        <span className="visually-hidden">
          {say("Remove {what}", {
            what: of === undefined ? name : say("{what} of {whole}", { what: name, whole: of }),
          })}
        </span>
      </button>
      <IssueList issues={rowIssues} />
    </li>
  );
});

function AddReading({ path, rows, onChange, of }: ReadingsProps): ReactElement {
  const { catalogue, dispatch } = useForm();
  const { phrases } = useLanguage();
  const say = useSay();
  const [chosen, setChosen] = useState("");
  const select = useRef<HTMLSelectElement>(null);
  const present = new Set(rows.map((row) => row.parameter));
  const left = (catalogue?.parameters ?? []).filter((p) => !present.has(p.name));
  const id = path === "water.readings" ? "add-reading" : `${fieldId(path)}-add`;
  const add = (): void => {
    const parameter = left.find((p) => p.name === chosen);
    if (parameter === undefined) {
      select.current?.focus();
      return;
    }
    const row = blankReading(parameter.name, parameter.units[0] ?? "");
    dispatch({ type: "edit", change: (d) => onChange(d, (before) => [...before, row]) });
    setChosen("");
    focusSoon(fieldId(`${path}[${String(rows.length)}].value`));
  };
  return (
    <div className="add-row">
      <div className="field">
        <label htmlFor={id}>
          {of === undefined
            ? say("Another reading")
            : say("{what} of {whole}", { what: say("Another reading"), whole: of })}
        </label>
        <select
          id={id}
          ref={select}
          value={chosen}
          onChange={(event) => {
            setChosen(event.target.value);
          }}
        >
          <option value="">{say("choose")}</option>
          {left.map((p) => (
            <option key={p.name} value={p.name}>
              {capital(phrases.name(p.name))}
            </option>
          ))}
        </select>
      </div>
      <button type="button" onClick={add}>
        {say("Add reading")}
        {of !== undefined && <span className="visually-hidden"> {of}</span>}
      </button>
    </div>
  );
}
