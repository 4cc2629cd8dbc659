import type { ReactElement } from "react";
import type { Draft, WrittenRow } from "../job/draft.ts";
import { useForm } from "./form-context.ts";
import { IssueList } from "./messages.tsx";

interface AsWrittenProps {
  readonly row: WrittenRow;
  /** Path of the entry in the document. */
  readonly path: string;
  /** Where the draft keeps it. */
  readonly kept: "feeds" | "ownProducts";
}

/** An entry that came with a file and has no boxes here: shown as written, and removable. */
export function AsWritten({ row, path, kept }: AsWrittenProps): ReactElement {
  const { dispatch, issues } = useForm();
  const title = nameOf(row);
  const own = issues.filter(({ path: at }) => at === path || at.startsWith(`${path}.`));
  return (
    <fieldset className="row">
      <legend>{title}</legend>
      <dl className="facts">
        {Object.entries(row.document).map(([key, value]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{inWords(value)}</dd>
          </div>
        ))}
      </dl>
      <IssueList issues={own} />
      <button
        type="button"
        className="quiet"
        onClick={() => {
          dispatch({ type: "step", what: `${title} removed`, change: (d) => without(d, kept, row.key) });
        }}
      >
        Remove {title}
      </button>
    </fieldset>
  );
}

function without(draft: Draft, kept: AsWrittenProps["kept"], key: string): Draft {
  return { ...draft, [kept]: draft[kept].filter((row) => row.key !== key) };
}

function nameOf({ document }: WrittenRow): string {
  const name = document["name"] ?? document["feed"] ?? document["product"];
  return typeof name === "string" && name.trim() !== "" ? name : "Entry of the file";
}

/** A value of the document in one line: "citric acid 30 % w/w; ammonium sulfate 40 g/L". */
function inWords(value: unknown): string {
  if (Array.isArray(value)) return value.map(inWords).join("; ");
  if (typeof value === "object" && value !== null) return Object.values(value).map(inWords).join(" ");
  if (value === true) return "yes";
  return value === false ? "no" : String(value as string | number);
}
