import type { ReactNode } from "react";
import { useSay } from "./language/language-context.ts";
import { isRefused } from "./saver.ts";
import type { Keeping } from "./saver.ts";

const REFUSED = {
  full: "This device has no room left. What you type now is lost when you leave. Save a copy first.",
  unavailable: "This browser keeps nothing between visits. Save a copy before you leave.",
} as const;

interface RefusedProps {
  readonly keeping: Keeping;
  /** What the button that saves a copy says. */
  readonly saveWords: string;
  readonly onSave: () => void;
}

/** What a person must know when something cannot be kept, with the way to keep it all the same. */
export function Refused({ keeping, saveWords, onSave }: RefusedProps): ReactNode {
  const say = useSay();
  if (!isRefused(keeping)) return null;
  return (
    <div className="message message-warning" role="alert">
      <p>{say(REFUSED[keeping])}</p>
      <button type="button" onClick={onSave}>
        {say(saveWords)}
      </button>
    </div>
  );
}
