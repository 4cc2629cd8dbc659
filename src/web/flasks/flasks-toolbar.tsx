import { useRef } from "react";
import type { ReactElement } from "react";
import { useSay } from "../language/language-context.ts";
import { BrightLightCheck } from "../light/bright-light-check.tsx";
import { saveText } from "../save-text.ts";
import { readDocument } from "../read-document.ts";
import { DEMOS } from "./demos.ts";
import type { JobDocument } from "../job/to-document.ts";
import type { Picked } from "./messages.ts";
import type { FlasksView } from "./use-flasks.ts";

/** Largest file opened [bytes]: the same limit as on the command line. */
const MOST_BYTES = 1_000_000;

interface FlasksToolbarProps {
  /** Name of the ready demonstration that is shown; null for a file of one's own. */
  readonly name: string | null;
  readonly onPick: (picked: Omit<Picked, "count">) => void;
  readonly onProblem: (words: string) => void;
  readonly large: boolean;
  readonly onLarge: (large: boolean) => void;
  readonly flasks: FlasksView;
  readonly job: JobDocument;
}

/** The head of the screen: which demonstration, how large, and the script to print. */
export function FlasksToolbar(props: FlasksToolbarProps): ReactElement {
  const { name, onPick, onProblem, large, onLarge, flasks, job } = props;
  const say = useSay();
  const file = useRef<HTMLInputElement>(null);
  const open = async (chosen: File): Promise<void> => {
    if (chosen.size > MOST_BYTES) {
      onProblem(say("{name} is too large for a demonstration.", { name: chosen.name }));
      return;
    }
    const read = await readDocument(await chosen.text(), say);
    if (read.ok) onPick({ name: null, document: read.document });
    else onProblem(read.problem);
  };
  return (
    <header className="toolbar">
      <h1 tabIndex={-1}>{say("Flasks")}</h1>
      <p className="about">{say("A demonstration, computed before it is mixed.")}</p>
      <div className="tools">
        <a href="#plan">{say("Back to the spray plan")}</a>
        <label className="tool-select">
          <span>{say("Demonstration")}</span>
          <select
            value={name ?? ""}
            onChange={(event) => {
              const demo = DEMOS.find((one) => one.name === event.target.value);
              if (demo !== undefined) onPick(demo);
            }}
          >
            {DEMOS.map((demo) => (
              <option key={demo.name} value={demo.name}>
                {say(demo.name)}
              </option>
            ))}
            {name === null && <option value="">{say("own file")}</option>}
          </select>
        </label>
        <button type="button" onClick={() => file.current?.click()}>
          {say("Open file")}
        </button>
        <input
          ref={file}
          type="file"
          hidden
          accept=".yaml,.yml,.json"
          onChange={(event) => {
            const chosen = event.target.files?.[0];
            if (chosen !== undefined) void open(chosen);
            event.target.value = "";
          }}
        />
        <button
          type="button"
          aria-pressed={large}
          onClick={() => {
            onLarge(!large);
          }}
        >
          {say("Large, for a projector")}
        </button>
        <button
          type="button"
          disabled={flasks.view === null}
          onClick={() => {
            flasks.script(job, (page) => {
              if (page !== null) saveText("flasks.html", page, "text/html");
            });
          }}
        >
          {say("Save the script to print")}
        </button>
        <BrightLightCheck />
      </div>
    </header>
  );
}
