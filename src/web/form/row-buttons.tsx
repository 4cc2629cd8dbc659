import type { ReactElement } from "react";
import type { Draft } from "../job/draft.ts";
import { useSay } from "../language/language-context.ts";
import { focusSoon, useForm } from "./form-context.ts";

interface RemoveProps {
  /** What is removed, in the words of the form. */
  readonly title: string;
  readonly change: (draft: Draft) => Draft;
  /** Id of the field the keyboard goes to. */
  readonly focus?: string;
}

/** Takes a row away; undo gives it back. */
export function RemoveButton({ title, change, focus }: RemoveProps): ReactElement {
  const { dispatch } = useForm();
  const say = useSay();
  return (
    <button
      type="button"
      className="quiet"
      onClick={() => {
        dispatch({ type: "step", what: say("{what} removed", { what: title }), change });
        if (focus !== undefined) focusSoon(focus);
      }}
    >
      {say("Remove {what}", { what: title })}
    </button>
  );
}

interface AddProps {
  readonly label: string;
  readonly change: (draft: Draft) => Draft;
  /** Id of the field the keyboard goes to. */
  readonly focus: string;
  readonly quiet?: boolean;
}

/** Adds a row and goes to its first field. */
export function AddButton({ label, change, focus, quiet = false }: AddProps): ReactElement {
  const { dispatch } = useForm();
  const say = useSay();
  return (
    <button
      type="button"
      className={quiet ? "quiet" : undefined}
      onClick={() => {
        dispatch({ type: "edit", change });
        focusSoon(focus);
      }}
    >
      {say(label)}
    </button>
  );
}
