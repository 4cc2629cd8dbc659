import { useState } from "react";
import type { ReactElement, ReactNode } from "react";
import { choiceOf } from "../engine/messages.ts";
import type { Choice, WordedIssue } from "../engine/messages.ts";
import { splitTyped } from "../job/to-document.ts";
import type { Typed } from "../job/draft.ts";
import { fieldId, issuesOf, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";

/** Messages of a field. While it is being typed into, blocking ones wait; the result side names what it waits for. */
function Messages({
  id,
  issues,
  typing,
}: {
  id: string;
  issues: readonly WordedIssue[];
  typing: boolean;
}): ReactNode {
  const shown = issues.filter((issue) => !typing || issue.severity !== "error");
  return (
    <div id={id} className="messages">
      <IssueList issues={shown} />
    </div>
  );
}

interface FieldShell {
  readonly label: string;
  /** Path of the value in the document. */
  readonly path: string;
  readonly hint?: string;
}

interface TextFieldProps extends FieldShell {
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** A number keypad on phones; left out for names and for numbers that may be negative. */
  readonly decimal?: boolean;
  readonly kind?: "text" | "date";
  readonly hiddenLabel?: boolean;
}

/** One text box with its label above, the value understood and its messages below. */
export function TextField(props: TextFieldProps): ReactElement {
  const { issues, echoes } = useForm();
  const [typing, setTyping] = useState(false);
  const id = fieldId(props.path);
  const own = issuesOf(issues, props.path);
  const echo = echoes[props.path];
  const wrong = !typing && own.some((issue) => issue.severity === "error");
  return (
    <div className="field">
      <label htmlFor={id} className={props.hiddenLabel === true ? "visually-hidden" : undefined}>
        {props.label}
      </label>
      <input
        id={id}
        type={props.kind ?? "text"}
        inputMode={props.decimal === true ? "decimal" : undefined}
        autoComplete="off"
        spellCheck={false}
        value={props.value}
        aria-describedby={`${id}-about ${id}-messages`}
        aria-invalid={wrong || undefined}
        onChange={(event) => {
          setTyping(true);
          props.onChange(event.target.value);
        }}
        onBlur={() => {
          setTyping(false);
        }}
      />
      <p id={`${id}-about`} className="about">
        {echo ?? props.hint ?? ""}
      </p>
      <Messages id={`${id}-messages`} issues={own} typing={typing} />
    </div>
  );
}

/** A unit as it is read: an option of a select can hold no subscript, so the digit itself is low. */
function unitWords(unit: string): string {
  return unit.replace(/CaCO3/, "CaCO₃");
}

interface QuantityFieldProps extends FieldShell {
  readonly value: Typed;
  readonly onChange: (value: Typed) => void;
  readonly units: readonly string[];
  /** True where a minus sign may be needed: the number keypad of some phones has none. */
  readonly signed?: boolean;
  readonly hiddenLabel?: boolean;
  /** Further paths whose issues belong here, e.g. a reading's own unit. */
  readonly alsoAt?: readonly string[];
}

/** A number with its unit beside it. A unit typed into the box wins over the one chosen. */
export function QuantityField(props: QuantityFieldProps): ReactElement {
  const { issues, echoes } = useForm();
  const [typing, setTyping] = useState(false);
  const id = fieldId(props.path);
  const own = [props.path, ...(props.alsoAt ?? [])].flatMap((path) => issuesOf(issues, path));
  const wrong = !typing && own.some((issue) => issue.severity === "error");
  const typedUnit = splitTyped(props.value).text !== props.value.text;
  const echo = echoes[props.path];
  const units = props.units.includes(props.value.unit) ? props.units : [props.value.unit, ...props.units];
  return (
    <div className="field">
      <label htmlFor={id} className={props.hiddenLabel === true ? "visually-hidden" : undefined}>
        {props.label}
      </label>
      <div className="with-unit">
        <input
          id={id}
          type="text"
          inputMode={props.signed === true ? undefined : "decimal"}
          autoComplete="off"
          spellCheck={false}
          value={props.value.text}
          aria-describedby={`${id}-about ${id}-messages`}
          aria-invalid={wrong || undefined}
          onChange={(event) => {
            setTyping(true);
            props.onChange({ ...props.value, text: event.target.value });
          }}
          onBlur={() => {
            setTyping(false);
          }}
        />
        {typedUnit ? (
          <span className="unit">unit as typed</span>
        ) : units.length === 1 ? (
          <span className="unit">{unitWords(units[0] ?? "")}</span>
        ) : (
          <select
            aria-label={`Unit of ${props.label}`}
            value={props.value.unit}
            onChange={(event) => {
              props.onChange({ ...props.value, unit: event.target.value });
            }}
          >
            {units.map((unit) => (
              <option key={unit} value={unit}>
                {unit === "" ? "no unit" : unitWords(unit)}
              </option>
            ))}
          </select>
        )}
      </div>
      <p id={`${id}-about`} className="about">
        {echo ?? props.hint ?? ""}
      </p>
      <Messages id={`${id}-messages`} issues={own} typing={typing} />
    </div>
  );
}

interface SelectFieldProps extends FieldShell {
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onChange: (value: string) => void;
  /** Words for "nothing chosen"; left out where a choice is needed. */
  readonly none?: string;
  readonly hiddenLabel?: boolean;
}

function Options({ choices }: { choices: readonly Choice[] }): ReactNode {
  return choices.map((choice) => (
    <option key={choice.id} value={choice.id}>
      {choice.name}
    </option>
  ));
}

/** Choices under their headings, in the order the headings first come. */
function grouped(choices: readonly Choice[]): readonly (readonly [string, readonly Choice[]])[] {
  const groups = new Map<string, Choice[]>();
  for (const choice of choices) {
    const group = choice.group ?? "";
    groups.set(group, [...(groups.get(group) ?? []), choice]);
  }
  return [...groups];
}

/** A choice from a list. A value the list does not hold stays visible as typed. */
export function SelectField(props: SelectFieldProps): ReactElement {
  const { issues } = useForm();
  const id = fieldId(props.path);
  const own = issuesOf(issues, props.path);
  const chosen = choiceOf(props.choices, props.value);
  return (
    <div className="field">
      <label htmlFor={id} className={props.hiddenLabel === true ? "visually-hidden" : undefined}>
        {props.label}
      </label>
      <select
        id={id}
        value={chosen?.id ?? props.value}
        aria-describedby={`${id}-messages`}
        aria-invalid={own.some((issue) => issue.severity === "error") || undefined}
        onChange={(event) => {
          props.onChange(event.target.value);
        }}
      >
        {props.none !== undefined && <option value="">{props.none}</option>}
        {chosen === undefined && props.value !== "" && <option value={props.value}>{props.value}</option>}
        {grouped(props.choices).map(([group, choices]) =>
          group === "" ? (
            <Options key="" choices={choices} />
          ) : (
            <optgroup key={group} label={group}>
              <Options choices={choices} />
            </optgroup>
          ),
        )}
      </select>
      <Messages id={`${id}-messages`} issues={own} typing={false} />
    </div>
  );
}
