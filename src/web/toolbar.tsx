import { useRef, useState } from "react";
import type { Dispatch, ReactElement } from "react";
import { blankDraft } from "./job/draft.ts";
import type { Draft } from "./job/draft.ts";
import { draftOf } from "./job/from-document.ts";
import type { JobAction, JobState } from "./job/job-state.ts";
import type { JobDocument } from "./job/to-document.ts";
import { useSay } from "./language/language-context.ts";
import type { Say } from "./language/language-context.ts";
import { LanguageSelect } from "./language/language-select.tsx";
import { BrightLightCheck } from "./light/bright-light-check.tsx";
import { readKeyed } from "./read-document.ts";
import type { DocumentRead, KeyedDocument } from "./read-document.ts";
import { saveText } from "./save-text.ts";
import { SAMPLES } from "./samples.ts";
import { ToolsFold } from "./tools-fold.tsx";

interface ToolbarProps {
  readonly state: JobState;
  /** True while nothing was changed in the open job. */
  readonly untouched: boolean;
  readonly dispatch: Dispatch<JobAction>;
  /** Begins a job beside the others; the flag says that it is a person's own. */
  readonly onBegin: (draft: Draft, isOwn: boolean) => void;
  readonly document: JobDocument;
}

/** Largest file opened [bytes]: the same limit as on the command line. */
const MOST_BYTES = 1_000_000;

/** Name of the sample that is open as it came, from which the arrow keys go on to the next; else nothing. */
function openSample({ origin, title }: Draft, untouched: boolean): string {
  if (origin !== "sample" || !untouched) return "";
  return (
    SAMPLES.find(({ document }) => (document as { readonly title?: unknown }).title === title)?.name ?? ""
  );
}

/** The head of the page: open, save, undo, samples, and the mode for bright light. */
export function Toolbar(props: ToolbarProps): ReactElement {
  const { state, untouched, dispatch, onBegin, document } = props;
  const say = useSay();
  const file = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const last = state.undo.at(-1);
  const open = async (chosen: File): Promise<void> => {
    const read = await readJob(chosen, say);
    setProblem(read.ok ? null : read.problem);
    if (read.ok) onBegin(draftOf(read.document, "file"), true);
  };
  return (
    <header className="toolbar">
      <h1 tabIndex={-1}>Hardstand</h1>
      <p className="about">{say("What the water does to the spray, and the way out.")}</p>
      <div className="tools-bar">
        <ToolsFold>
          <label className="tool-select">
            <span>{say("Sample")}</span>
            <select
              value={openSample(state.draft, untouched)}
              onChange={(event) => {
                const sample = SAMPLES.find((s) => s.name === event.target.value);
                if (sample === undefined) return;
                onBegin(draftOf(sample.document, "sample"), false);
              }}
            >
              <option value="">{say("open a sample")}</option>
              {SAMPLES.map((sample) => (
                <option key={sample.name} value={sample.name}>
                  {say(sample.name)}
                </option>
              ))}
            </select>
          </label>
          <button
            type="button"
            className="quiet"
            onClick={() => {
              onBegin(blankDraft(), false);
            }}
          >
            {say("Blank job")}
          </button>
          <a href="#flasks">{say("Flasks")}</a>
          <a href="#complaint">{say("Complaint")}</a>
          <button type="button" className="quiet" onClick={() => file.current?.click()}>
            {say("Open file")}
          </button>
          <input
            ref={file}
            type="file"
            className="visually-hidden"
            aria-label={say("Job file")}
            tabIndex={-1}
            accept=".json,.yaml,.yml"
            onChange={(event) => {
              const chosen = event.target.files?.[0];
              event.target.value = "";
              if (chosen !== undefined) void open(chosen);
            }}
          />
          <button
            type="button"
            className="quiet"
            onClick={() => {
              saveText("job.json", `${JSON.stringify(document, null, 2)}\n`, "application/json");
            }}
          >
            {say("Save job")}
          </button>
          <LanguageSelect />
        </ToolsFold>
        <BrightLightCheck />
      </div>
      {last !== undefined && (
        <p className="undo" role="status">
          {last.what}.{" "}
          <button
            type="button"
            onClick={() => {
              dispatch({ type: "undo" });
            }}
          >
            {say("Undo")}
          </button>
        </p>
      )}
      {problem !== null && (
        <p className="message message-error" role="alert">
          {problem}
        </p>
      )}
    </header>
  );
}

/** What a file chosen as a job holds; or why it is none, in words. */
async function readJob(chosen: File, say: Say): Promise<DocumentRead<KeyedDocument>> {
  const { name, size } = chosen;
  if (size > MOST_BYTES) {
    const problem = say("{name} is {size} kB; a job is at most 1000 kB.", {
      name,
      size: Math.round(size / 1000),
    });
    return { ok: false, problem };
  }
  const text = await chosen.text();
  if (/^(?:%PDF|PK)/.test(text)) {
    const problem = say("{name} is no job. A laboratory sheet is opened in the water test.", { name });
    return { ok: false, problem };
  }
  const otherwise = say("This file holds no job. A job is a JSON or YAML file with water, spray and mix.");
  return readKeyed(text, say, otherwise);
}
