import type { ReactElement } from "react";
import type { Ticked } from "../job/typed.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { fieldId, issuesOf, useForm } from "./form-context.ts";
import { Messages } from "./fields.tsx";

const words = {
  none: "None of these",
  unsaid: "Nothing ticked: not said.",
};

interface TicksProps {
  readonly label: string;
  readonly path: string;
  readonly choices: readonly string[];
  readonly value: Ticked;
  readonly onChange: (value: Ticked) => void;
}

/** Words to tick. Nothing ticked is "not said"; "none of these" is a tick of its own. */
export function Ticks({ label, path, choices, value, onChange }: TicksProps): ReactElement {
  const { issues } = useForm();
  const { phrases } = useLanguage();
  const say = useSay();
  const id = fieldId(path);
  const ticked = value ?? [];
  const offered = [...choices, ...ticked.filter((word) => !choices.includes(word))];
  const toggle = (word: string): void => {
    const next = ticked.includes(word) ? ticked.filter((one) => one !== word) : [...ticked, word];
    onChange(next.length === 0 ? null : next);
  };
  return (
    <fieldset className="choice ticks" aria-describedby={`${id}-about`}>
      <legend>{say(label)}</legend>
      <p id={`${id}-about`} className="about">
        {say(words.unsaid)}
      </p>
      {offered.map((word, i) => (
        <label key={word}>
          <input
            id={i === 0 ? id : undefined}
            type="checkbox"
            checked={ticked.includes(word)}
            onChange={() => {
              toggle(word);
            }}
          />
          {phrases.name(word)}
        </label>
      ))}
      <label>
        <input
          type="checkbox"
          checked={value !== null && value.length === 0}
          onChange={(event) => {
            onChange(event.target.checked ? [] : null);
          }}
        />
        {say(words.none)}
      </label>
      <Messages id={`${id}-messages`} issues={issuesOf(issues, path)} typing={false} />
    </fieldset>
  );
}
