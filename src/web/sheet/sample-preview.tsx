import { useState } from "react";
import type { ReactElement } from "react";
import type { SheetEntryView, SheetSampleView } from "../engine/messages.ts";
import { focusSoon, useForm } from "../form/form-context.ts";
import { useLanguage, useSay } from "../language/language-context.ts";
import { capital } from "../form/place-words.ts";
import { openQuestions, readingsTaken, withSheet } from "./take-over.ts";
import type { Answer, Answers } from "./take-over.ts";

/** Headings of the groups of entries, in the order they are shown. */
const words = {
  asked: "To ask",
  understood: "Understood",
  second: "Given twice, the other one is taken",
  blank: "No value, so not measured",
  "not used": "Not used, takes no part in the answer",
} as const;

/** One sample of a sheet: what stands there beside what was understood, and the button that takes it over. */
export function SamplePreview(props: { sample: SheetSampleView; onTaken: () => void }): ReactElement {
  const { sample, onTaken } = props;
  const { dispatch } = useForm();
  const say = useSay();
  const [answers, setAnswers] = useState<Answers>({});
  const taken = readingsTaken(sample, answers).length;
  const open = openQuestions(sample, answers);
  return (
    <div className="sample-preview" data-testid="sheet-preview">
      {Object.entries(words).map(([status, heading]) => {
        const entries = [...sample.entries.entries()].filter(([, entry]) => entry.status === status);
        if (entries.length === 0) return null;
        return (
          <div key={status} data-status={status}>
            <h4>
              {say(heading)}: {entries.length}
            </h4>
            <ul className="sheet-entries">
              {entries.map(([index, entry]) => (
                <Entry
                  key={index}
                  entry={entry}
                  name={`sheet-entry-${String(index)}`}
                  answer={answers[index]}
                  onAnswer={(answer) => {
                    setAnswers({ ...answers, [index]: answer });
                  }}
                />
              ))}
            </ul>
          </div>
        );
      })}
      <button
        type="button"
        disabled={taken === 0}
        onClick={() => {
          dispatch({
            type: "step",
            what: say("Water test taken from the sheet"),
            change: (draft) => withSheet(draft, sample, answers),
          });
          onTaken();
          focusSoon("field-water-source");
        }}
      >
        {taken === 1 ? say("Take over 1 reading") : say("Take over {count} readings", { count: taken })}
      </button>
      <p className="about">
        {say("They take the place of the water test on the form; undo brings it back.")}{" "}
        {open === 1 && say("1 still open: it is left out.")}
        {open > 1 && say("{count} still open: they are left out.", { count: open })}
      </p>
    </div>
  );
}

interface EntryProps {
  readonly entry: SheetEntryView;
  readonly name: string;
  readonly answer: Answer | undefined;
  readonly onAnswer: (answer: Answer) => void;
}

function Entry({ entry, name, answer, onAnswer }: EntryProps): ReactElement {
  const say = useSay();
  const { phrases } = useLanguage();
  const nameOf = (parameter: string): string => capital(phrases.name(parameter));
  const shown = `${entry.parameter === null ? "?" : nameOf(entry.parameter)} ${entry.value} ${entry.unit}`;
  return (
    <li>
      <p>
        <span className="visually-hidden">{say("On the sheet,")} </span>
        <span className="about">{say("Line {number}:", { number: entry.line })}</span>{" "}
        <code>{entry.raw}</code>
      </p>
      {(entry.status === "understood" || entry.status === "second") && (
        <p>
          <span aria-hidden="true">→ </span>
          <strong>{shown.trim()}</strong>
        </p>
      )}
      {entry.words !== "" && <p className="about">{entry.words}</p>}
      {entry.status === "asked" && (
        <fieldset className="choice">
          <legend className="visually-hidden">
            {say("What line {number} means", { number: entry.line })}
          </legend>
          {entry.choices.map((choice, index) => (
            <label key={`${choice.parameter} ${choice.value} ${choice.unit}`}>
              <input
                type="radio"
                name={name}
                checked={answer === index}
                onChange={() => {
                  onAnswer(index);
                }}
              />
              {`${nameOf(choice.parameter)} ${choice.value} ${choice.unit}`.trim()}
            </label>
          ))}
          {entry.parameter !== null && (
            <label>
              <input
                type="radio"
                name={name}
                checked={answer === "as it stands"}
                onChange={() => {
                  onAnswer("as it stands");
                }}
              />
              {say("As it stands, to mend on the form")}
            </label>
          )}
        </fieldset>
      )}
    </li>
  );
}
