import { useRef, useState } from "react";
import type { ReactElement } from "react";
import type { Answered } from "../engine/messages.ts";
import type { Draft } from "../job/draft.ts";
import type { JobDocument } from "../job/to-document.ts";
import { useSay } from "../language/language-context.ts";
import type { Say } from "../language/language-context.ts";
import { BrightLightCheck } from "../light/bright-light-check.tsx";
import { readKeyed } from "../read-document.ts";
import type { DocumentRead, KeyedDocument } from "../read-document.ts";
import { Refused } from "../refused.tsx";
import type { Keeping } from "../saver.ts";
import { saveText } from "../save-text.ts";
import { complaintAbout, complaintOf } from "./complaint-draft.ts";
import type { ComplaintAction, ComplaintState } from "./use-complaint.ts";

/** Largest file opened [bytes]: the same limit as on the command line. */
const MOST_BYTES = 1_000_000;

interface ComplaintToolbarProps {
  readonly state: ComplaintState;
  readonly keeping: Keeping;
  readonly dispatch: (action: ComplaintAction) => void;
  readonly openJob: Draft;
  readonly document: JobDocument;
  readonly answered: Answered | null;
}

/** The head of the screen: begin, open, save, undo. */
export function ComplaintToolbar(props: ComplaintToolbarProps): ReactElement {
  const { state, keeping, dispatch, openJob, document, answered } = props;
  const say = useSay();
  const file = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const last = state.undo.at(-1);
  const save = (): void => {
    saveText("complaint.json", `${JSON.stringify(document, null, 2)}\n`, "application/json");
  };
  const openFile = async (chosen: File): Promise<void> => {
    const read = await readRecord(chosen, say);
    setProblem(read.ok ? null : read.problem);
    if (!read.ok) return;
    const { document: record } = read;
    dispatch({ type: "step", what: say("Record of a file opened"), change: () => complaintOf(record) });
  };
  return (
    <header className="toolbar">
      <h1 tabIndex={-1}>{say("Complaint")}</h1>
      <p className="about">
        {say("An application failed. How much of the dose could the water have taken?")}{" "}
        <strong>{say("It is no proof.")}</strong>
      </p>
      <div className="tools">
        <a href="#plan">{say("Back to the spray plan")}</a>
        <button
          type="button"
          className="quiet"
          onClick={() => {
            dispatch({
              type: "step",
              what: say("Record begun anew from the open job"),
              change: () => complaintAbout(openJob),
            });
          }}
        >
          {say("Begin from the open job")}
        </button>
        <button type="button" className="quiet" onClick={() => file.current?.click()}>
          {say("Open a record")}
        </button>
        <input
          ref={file}
          type="file"
          className="visually-hidden"
          aria-label={say("Record file")}
          tabIndex={-1}
          accept=".json,.yaml,.yml"
          onChange={(event) => {
            const chosen = event.target.files?.[0];
            event.target.value = "";
            if (chosen !== undefined) void openFile(chosen);
          }}
        />
        <button type="button" className="quiet" onClick={save}>
          {say("Save the record")}
        </button>
        <button
          type="button"
          disabled={answered === null}
          onClick={() => {
            if (answered !== null) saveText("complaint.html", answered.html, "text/html");
          }}
        >
          {say("Save the answer to print")}
        </button>
        <BrightLightCheck />
      </div>
      <div className="field">
        <label htmlFor="complaint-title">{say("Title of this record")}</label>
        <input
          id="complaint-title"
          type="text"
          autoComplete="off"
          value={state.draft.job.title}
          onChange={(event) => {
            const title = event.target.value;
            dispatch({ type: "edit", change: (d) => ({ ...d, job: { ...d.job, title } }) });
          }}
        />
        <p className="about" data-keeping={keeping}>
          {say("Kept in this browser only. Save the record to keep a copy.")}
        </p>
      </div>
      <Refused keeping={keeping} saveWords="Save the record" onSave={save} />
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

/** What a file chosen as a record holds; or why it is none, in words. */
async function readRecord(chosen: File, say: Say): Promise<DocumentRead<KeyedDocument>> {
  const otherwise = say("This file holds no record of a complaint.");
  const none = { ok: false, problem: otherwise } as const;
  if (chosen.size > MOST_BYTES) return none;
  const read = await readKeyed(await chosen.text(), say, otherwise);
  return read.ok && !("hardstand-complaint" in read.document) ? none : read;
}
