import type { ReactElement } from "react";
import { blankHalfLife } from "../job/draft-mix.ts";
import type { HalfLifeRow, OwnActiveTyped } from "../job/draft-mix.ts";
import type { Draft } from "../job/draft.ts";
import { useSay } from "../language/language-context.ts";
import { SelectField, TextField } from "./fields.tsx";
import { fieldId, useForm } from "./form-context.ts";
import { LeftOver } from "./left-over.tsx";
import { IssueList } from "./messages.tsx";
import { withProduct } from "./mix-rows.ts";
import { More } from "./more.tsx";
import { QuantityField } from "./quantity-field.tsx";
import { AddButton, RemoveButton } from "./row-buttons.tsx";
import { UNITS } from "./units.ts";

const words = {
  about: "From its safety data sheet. What is left blank is answered with “not known”.",
  name: "Name of the active",
  molarMass: "Molar mass",
  pKa: "pKa",
  pKaHint: "Several parted by spaces, such as 2.3 5.9. Blank: borrowed from its class.",
  affinity: "Binds metals like",
  affinityNone: "not known",
  halfLives: "Half-lives in water",
  atPh: "pH of the study",
  half: "Half-life",
  temperature: "Temperature of the study",
  temperatureHint: "Blank: 25 °C.",
  addHalfLife: "Add a half-life",
};

interface OwnActiveProps {
  /** Key of the product it belongs to. */
  readonly rowKey: string;
  readonly own: OwnActiveTyped;
  readonly path: string;
}

/** An active that is not in the data, entered by hand. */
export function OwnActiveFields({ rowKey, own, path }: OwnActiveProps): ReactElement {
  const { catalogue, dispatch, issues } = useForm();
  const say = useSay();
  const withOwn = (draft: Draft, change: (before: OwnActiveTyped) => OwnActiveTyped): Draft =>
    withProduct(draft, rowKey, (row) => (row.own === null ? row : { ...row, own: change(row.own) }));
  const edit = (change: Partial<OwnActiveTyped>): void => {
    dispatch({ type: "edit", change: (d) => withOwn(d, (before) => ({ ...before, ...change })) });
  };
  return (
    <div className="row">
      <p className="about">{say(words.about)}</p>
      <div className="fields">
        <TextField
          label={words.name}
          path={`${path}.name`}
          value={own.name}
          onChange={(name) => {
            edit({ name });
          }}
        />
        <QuantityField
          label={words.molarMass}
          path={`${path}.molar mass`}
          value={own.molarMass}
          units={["g/mol"]}
          onChange={(molarMass) => {
            edit({ molarMass });
          }}
        />
        <TextField
          label={words.pKa}
          path={`${path}.pKa`}
          hint={words.pKaHint}
          value={own.pKa}
          onChange={(pKa) => {
            edit({ pKa });
          }}
        />
        <SelectField
          label={words.affinity}
          path={`${path}.affinity class`}
          choices={catalogue?.affinityClasses ?? []}
          none={words.affinityNone}
          value={own.affinityClass}
          onChange={(affinityClass) => {
            edit({ affinityClass });
          }}
        />
      </div>
      <IssueList issues={issues.filter((issue) => issue.path === path && issue.severity !== "error")} />
      <HalfLives own={own} path={`${path}.half-lives`} withOwn={withOwn} />
      <LeftOver rest={own.rest} onChange={(d, rest) => withOwn(d, (before) => ({ ...before, rest }))} />
    </div>
  );
}

interface HalfLivesProps {
  readonly own: OwnActiveTyped;
  readonly path: string;
  readonly withOwn: (draft: Draft, change: (before: OwnActiveTyped) => OwnActiveTyped) => Draft;
}

function HalfLives({ own, path, withOwn }: HalfLivesProps): ReactElement {
  const { issues } = useForm();
  const change = (draft: Draft, rows: (before: readonly HalfLifeRow[]) => readonly HalfLifeRow[]): Draft =>
    withOwn(draft, (before) => ({ ...before, halfLives: rows(before.halfLives) }));
  return (
    <More title={words.halfLives} said={own.halfLives.length} paths={[path]}>
      {own.halfLives.map((row, index) => (
        <HalfLife key={row.key} row={row} index={index} path={`${path}[${String(index)}]`} change={change} />
      ))}
      <IssueList issues={issues.filter((issue) => issue.path === path)} />
      <AddButton
        quiet
        label={words.addHalfLife}
        change={(d) => change(d, (rows) => [...rows, blankHalfLife()])}
        focus={fieldId(`${path}[${String(own.halfLives.length)}].pH`)}
      />
    </More>
  );
}

interface HalfLifeProps {
  readonly row: HalfLifeRow;
  readonly index: number;
  readonly path: string;
  readonly change: (draft: Draft, rows: (before: readonly HalfLifeRow[]) => readonly HalfLifeRow[]) => Draft;
}

function HalfLife({ row, index, path, change }: HalfLifeProps): ReactElement {
  const { dispatch } = useForm();
  const say = useSay();
  const title = say("Half-life {number}", { number: index + 1 });
  const edit = (part: Partial<HalfLifeRow>): void => {
    dispatch({
      type: "edit",
      change: (d) =>
        change(d, (rows) => rows.map((one) => (one.key === row.key ? { ...one, ...part } : one))),
    });
  };
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <div className="fields">
        <TextField
          label={words.atPh}
          path={`${path}.pH`}
          decimal
          value={row.pH}
          onChange={(pH) => {
            edit({ pH });
          }}
        />
        <QuantityField
          label={words.half}
          path={`${path}.half-life`}
          value={row.halfLife}
          units={UNITS.time}
          of={title}
          measure={{ dimension: "time" }}
          onChange={(halfLife) => {
            edit({ halfLife });
          }}
        />
        <QuantityField
          label={words.temperature}
          path={`${path}.temperature`}
          hint={words.temperatureHint}
          value={row.temperature}
          units={UNITS.temperature}
          of={title}
          measure={{ dimension: "temperature" }}
          signed
          onChange={(temperature) => {
            edit({ temperature });
          }}
        />
      </div>
      <RemoveButton
        title={title}
        change={(d) => change(d, (rows) => rows.filter((one) => one.key !== row.key))}
      />
    </fieldset>
  );
}
