import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import type { Rest } from "../job/typed.ts";
import { useSay } from "../language/language-context.ts";
import type { Say } from "../language/language-context.ts";
import { useForm } from "./form-context.ts";

const words = {
  title: "Kept as the file has it",
  about: "There is no box for this here.",
};

interface LeftOverProps {
  readonly rest: Rest;
  /** The draft with another rest in this place. */
  readonly onChange: (draft: Draft, rest: Rest) => Draft;
}

/** What a file says here that the form has no box for: shown as written, and removable. */
export function LeftOver({ rest, onChange }: LeftOverProps): ReactElement | null {
  const { dispatch } = useForm();
  const say = useSay();
  const entries = Object.entries(rest);
  if (entries.length === 0) return null;
  return (
    <div className="left-over">
      <p>
        <strong>{say(words.title)}.</strong> <span className="about">{say(words.about)}</span>
      </p>
      <dl className="facts">
        {entries.map(([key, value]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{inWords(value, say)}</dd>
          </div>
        ))}
      </dl>
      {entries.map(([key]) => (
        <button
          key={key}
          type="button"
          className="quiet"
          onClick={() => {
            const { [key]: _gone, ...left } = rest;
            dispatch({
              type: "step",
              what: say("{what} removed", { what: key }),
              change: (d) => onChange(d, left),
            });
          }}
        >
          {say("Remove {what}", { what: key })}
        </button>
      ))}
    </div>
  );
}

/** A value of the document in one line. */
function inWords(value: unknown, say: Say): string {
  const inside = (one: unknown): string => inWords(one, say);
  if (Array.isArray(value)) return value.map(inside).join("; ");
  if (typeof value === "object" && value !== null) return Object.values(value).map(inside).join(" ");
  if (value === true) return say("yes");
  return value === false ? say("no") : String(value as string | number);
}
