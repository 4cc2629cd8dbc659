import { useState } from "react";
import type { ReactElement } from "react";
import type { WordedIssue } from "../engine/messages.ts";
import { splitTyped } from "../job/typed.ts";
import type { Typed } from "../job/typed.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { NUMBER_BOX, useNumberMode } from "../light/bright-light-context.ts";
import { Messages } from "./fields.tsx";
import type { FieldShell } from "./fields.tsx";
import { fieldId, focusSoon, issuesOf, useForm } from "./form-context.ts";
import { unitsFor } from "./units.ts";
import { echoOf, familiarUnits, inUnit } from "./measure.ts";
import type { Measure } from "./measure.ts";
import { settled } from "./two-readings.ts";

/** A unit as it is read: an option of a select can hold no subscript, so the digit itself is low. */
function unitWords(unit: string): string {
  return unit.replace(/CaCO3/, "CaCO₃");
}

interface QuantityFieldProps extends FieldShell {
  readonly value: Typed;
  readonly onChange: (value: Typed) => void;
  readonly units: readonly string[];
  /** What it is, where it can be said in another unit; left out for prices. */
  readonly measure?: Measure;
  /** True where a minus sign may be needed: the number keypad of some phones has none. */
  readonly signed?: boolean;
  /** Further paths whose issues belong here, e.g. a reading's own unit. */
  readonly alsoAt?: readonly string[];
  /** What it is a quantity of, where several fields bear the same label. */
  readonly of?: string;
}

/**
 * A number with its unit beside it. A unit typed into the box wins over the one chosen. Beneath it stands what was
 * understood, in a second unit; a number with two readings and a change of unit are asked about.
 */
export function QuantityField(props: QuantityFieldProps): ReactElement {
  const { value, measure, onChange } = props;
  const language = useLanguage();
  const say = useSay();
  const mode = useNumberMode(props.signed === true);
  const { issues } = useForm();
  const [typing, setTyping] = useState(false);
  const [before, setBefore] = useState<Typed | null>(null);
  const id = fieldId(props.path);
  const own = [props.path, ...(props.alsoAt ?? [])].flatMap((path) => issuesOf(issues, path));
  const wrong = !typing && own.some((issue) => issue.severity === "error");
  const echo =
    measure === undefined
      ? null
      : echoOf(
          measure,
          value,
          familiarUnits(measure, language.tag === "en-US" ? language.tag : navigator.language),
          language,
        );
  return (
    <div className="field">
      <label htmlFor={id}>{say(props.label)}</label>
      <div className="with-unit">
        <input
          id={id}
          type="text"
          {...NUMBER_BOX}
          inputMode={mode}
          autoComplete="off"
          spellCheck={false}
          value={value.text}
          aria-describedby={`${id}-about ${id}-messages`}
          aria-invalid={wrong || undefined}
          onChange={(event) => {
            setTyping(true);
            setBefore(null);
            onChange({ text: event.target.value, unit: value.unit });
          }}
          onBlur={() => {
            setTyping(false);
          }}
        />
        <UnitChoice
          label={
            props.of === undefined
              ? say(props.label)
              : say("{what} of {whole}", { what: say(props.label), whole: props.of })
          }
          value={value}
          units={
            measure !== undefined && "reading" in measure ? props.units : unitsFor(language.tag, props.units)
          }
          onChoose={(unit) => {
            setBefore(before ?? value);
            onChange({ text: value.text, unit });
          }}
        />
      </div>
      <p id={`${id}-about`} className="about">
        {echo ?? say(props.hint ?? "")}
      </p>
      {before !== null && measure !== undefined && (
        <AskUnit
          before={before}
          now={value}
          measure={measure}
          onAnswer={(answer) => {
            setBefore(null);
            onChange(answer);
            focusSoon(id);
          }}
        />
      )}
      <Messages id={`${id}-messages`} issues={own} typing={typing} />
      {!typing && (
        <AskReading
          issues={own}
          onAnswer={(reading) => {
            onChange({ text: settled(value.text, reading), unit: value.unit });
            focusSoon(id);
          }}
        />
      )}
    </div>
  );
}

interface UnitChoiceProps {
  readonly label: string;
  readonly value: Typed;
  readonly units: readonly string[];
  readonly onChoose: (unit: string) => void;
}

function UnitChoice({ label, value, units, onChoose }: UnitChoiceProps): ReactElement {
  const say = useSay();
  if (splitTyped(value).text !== value.text) return <span className="unit">{say("unit as typed")}</span>;
  const offered = units.includes(value.unit) ? units : [value.unit, ...units];
  if (offered.length === 1) return <span className="unit">{unitWords(offered[0] ?? "")}</span>;
  return (
    <select
      aria-label={say("Unit of {label}", { label })}
      value={value.unit}
      onChange={(event) => {
        onChoose(event.target.value);
      }}
    >
      {offered.map((unit) => (
        <option key={unit} value={unit}>
          {unit === "" ? say("no unit") : unitWords(unit)}
        </option>
      ))}
    </select>
  );
}

interface AskUnitProps {
  readonly before: Typed;
  readonly now: Typed;
  readonly measure: Measure;
  readonly onAnswer: (answer: Typed) => void;
}

/** After a change of unit beside a number: was the unit wrong, or is the same amount wanted in the other one? */
function AskUnit({ before, now, measure, onAnswer }: AskUnitProps): ReactElement | null {
  const say = useSay();
  const { decimal } = useLanguage().figures;
  const same = before.unit === now.unit ? null : inUnit(measure, before, now.unit);
  if (same === null) return null;
  const words = ({ text, unit }: Typed): string => `${text} ${unitWords(unit)}`;
  // What goes into the field keeps its point, which every language reads.
  const shown = { ...same, text: same.text.replace(".", decimal) };
  return (
    <div className="message message-warning" role="group" aria-label={say("Unit changed")}>
      {say("Unit changed. Which one is it?")}
      <div className="asks">
        <button
          type="button"
          className="quiet"
          onClick={() => {
            onAnswer(same);
          }}
        >
          {say("The same amount: {amount}", { amount: words(shown) })}
        </button>
        <button
          type="button"
          className="quiet"
          onClick={() => {
            onAnswer({ text: now.text, unit: now.unit });
          }}
        >
          {say("The same number: {amount}", { amount: words(now) })}
        </button>
      </div>
    </div>
  );
}

interface AskReadingProps {
  readonly issues: readonly WordedIssue[];
  readonly onAnswer: (reading: string) => void;
}

/** A number such as 1,250 has two readings: each is a button. */
function AskReading({ issues, onAnswer }: AskReadingProps): ReactElement | null {
  const say = useSay();
  const readings = issues.find((issue) => issue.readings.length > 0)?.readings;
  if (readings === undefined) return null;
  return (
    <div className="asks" role="group" aria-label={say("Which number is meant")}>
      {readings.map((reading) => (
        <button
          key={reading}
          type="button"
          className="quiet"
          onClick={() => {
            onAnswer(reading);
          }}
        >
          {reading}
        </button>
      ))}
    </div>
  );
}
