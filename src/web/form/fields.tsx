import { memo, useState } from "react";
import type { ReactElement, ReactNode } from "react";
import { choiceOf } from "../engine/messages.ts";
import type { Choice, WordedIssue } from "../engine/messages.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { NUMBER_BOX, useNumberMode } from "../light/bright-light-context.ts";
import { fieldId, issuesOf, useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";

/** Messages of a field. While it is being typed into, blocking ones wait; the result side names what it waits for. */
export function Messages({
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

/** What every field has. */
export interface FieldShell {
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
  const { issues } = useForm();
  const [typing, setTyping] = useState(false);
  const say = useSay();
  const mode = useNumberMode(false);
  const id = fieldId(props.path);
  const own = issuesOf(issues, props.path);
  const wrong = !typing && own.some((issue) => issue.severity === "error");
  return (
    <div className="field">
      <label htmlFor={id} className={props.hiddenLabel === true ? "visually-hidden" : undefined}>
        {say(props.label)}
      </label>
      <input
        id={id}
        type={props.kind ?? "text"}
        {...(props.decimal === true ? NUMBER_BOX : {})}
        inputMode={props.decimal === true ? mode : undefined}
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
        {say(props.hint ?? "")}
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
  /** True where what lies under its path has fields of its own: only issues of the path itself belong here. */
  readonly alone?: boolean;
}

/** A yes or a no. */
export const YES_NO: readonly Choice[] = [
  { id: "yes", name: "yes" },
  { id: "no", name: "no" },
];

interface OptionsProps {
  readonly choices: readonly Choice[];
}

function Options({ choices }: OptionsProps): ReactNode {
  const { phrases } = useLanguage();
  return choices.map((choice) => (
    <option key={choice.id} value={choice.id}>
      {phrases.name(choice.name)}
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

/** All choices of a list, which may be long: drawn anew with another list alone. */
const GroupedOptions = memo(function GroupedOptions({ choices }: OptionsProps): ReactNode {
  const say = useSay();
  return grouped(choices).map(([group, those]) =>
    group === "" ? (
      <Options key="" choices={those} />
    ) : (
      <optgroup key={group} label={say(group)}>
        <Options choices={those} />
      </optgroup>
    ),
  );
});

/** A choice from a list. A value the list does not hold stays visible as typed. */
export function SelectField(props: SelectFieldProps): ReactElement {
  const { issues } = useForm();
  const say = useSay();
  const id = fieldId(props.path);
  const own = issuesOf(issues, props.path).filter(
    ({ path, severity }) => props.alone !== true || (path === props.path && severity === "error"),
  );
  const chosen = choiceOf(props.choices, props.value);
  return (
    <div className="field">
      <label htmlFor={id} className={props.hiddenLabel === true ? "visually-hidden" : undefined}>
        {say(props.label)}
      </label>
      <select
        id={id}
        value={chosen?.id ?? props.value}
        aria-describedby={props.hint === undefined ? `${id}-messages` : `${id}-about ${id}-messages`}
        aria-invalid={own.some((issue) => issue.severity === "error") || undefined}
        onChange={(event) => {
          props.onChange(event.target.value);
        }}
      >
        {props.none !== undefined && <option value="">{say(props.none)}</option>}
        {chosen === undefined && props.value !== "" && <option value={props.value}>{props.value}</option>}
        <GroupedOptions choices={props.choices} />
      </select>
      {props.hint !== undefined && (
        <p id={`${id}-about`} className="about">
          {say(props.hint)}
        </p>
      )}
      <Messages id={`${id}-messages`} issues={own} typing={false} />
    </div>
  );
}
