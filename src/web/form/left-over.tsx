import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import type { Rest } from "../job/typed.ts";
import { useForm } from "./form-context.ts";

const words = {
  title: "Kept as the file has it",
  about: "There is no box for this here.",
  remove: (key: string): string => `Remove ${key}`,
  removed: (key: string): string => `${key} removed`,
};

interface LeftOverProps {
  readonly rest: Rest;
  /** The draft with another rest in this place. */
  readonly onChange: (draft: Draft, rest: Rest) => Draft;
}

/** What a file says here that the form has no box for: shown as written, and removable. */
export function LeftOver({ rest, onChange }: LeftOverProps): ReactElement | null {
  const { dispatch } = useForm();
  const entries = Object.entries(rest);
  if (entries.length === 0) return null;
  return (
    <div className="left-over">
      <p>
        <strong>{words.title}.</strong> <span className="about">{words.about}</span>
      </p>
      <dl className="facts">
        {entries.map(([key, value]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{inWords(value)}</dd>
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
            dispatch({ type: "step", what: words.removed(key), change: (d) => onChange(d, left) });
          }}
        >
          {words.remove(key)}
        </button>
      ))}
    </div>
  );
}

/** A value of the document in one line. */
function inWords(value: unknown): string {
  if (Array.isArray(value)) return value.map(inWords).join("; ");
  if (typeof value === "object" && value !== null) return Object.values(value).map(inWords).join(" ");
  if (value === true) return "yes";
  return value === false ? "no" : String(value as string | number);
}
