import { useRef, useState } from "react";
import type { ReactElement } from "react";
import type { Answered } from "../engine/messages.ts";
import type { Draft } from "../job/draft.ts";
import type { JobDocument } from "../job/to-document.ts";
import { readDocument } from "../read-document.ts";
import { saveText } from "../save-text.ts";
import { complaintAbout, complaintOf } from "./complaint-draft.ts";
import type { ComplaintAction, ComplaintState } from "./use-complaint.ts";

const words = {
  title: "Complaint",
  about: "An application failed. How much of the dose could the water have taken?",
  noProof: "It is no proof.",
  back: "Back to the spray plan",
  fromJob: "Begin from the open job",
  begun: "Record begun anew from the open job",
  openFile: "Open a record",
  opened: "Record of a file opened",
  file: "Record file",
  save: "Save the record",
  saveAnswer: "Save the answer to print",
  undo: "Undo",
  recordTitle: "Title of this record",
  kept: "Kept in this browser only. Save the record to keep a copy.",
  noRecord: "This file holds no record of a complaint.",
};

/** Largest file opened [bytes]: the same limit as on the command line. */
const MOST_BYTES = 1_000_000;

interface ComplaintToolbarProps {
  readonly state: ComplaintState;
  readonly dispatch: (action: ComplaintAction) => void;
  readonly openJob: Draft;
  readonly document: JobDocument;
  readonly answered: Answered | null;
}

/** The head of the screen: begin, open, save, undo. */
export function ComplaintToolbar(props: ComplaintToolbarProps): ReactElement {
  const { state, dispatch, openJob, document, answered } = props;
  const file = useRef<HTMLInputElement>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const last = state.undo.at(-1);
  const openFile = async (chosen: File): Promise<void> => {
    if (chosen.size > MOST_BYTES) {
      setProblem(words.noRecord);
      return;
    }
    const read = await readDocument(await chosen.text());
    const isRecord = read.ok && "hardstand-complaint" in read.document;
    setProblem(isRecord ? null : read.ok ? words.noRecord : read.problem);
    if (isRecord) dispatch({ type: "step", what: words.opened, change: () => complaintOf(read.document) });
  };
  return (
    <header className="toolbar">
      <h1 tabIndex={-1}>{words.title}</h1>
      <p className="about">
        {words.about} <strong>{words.noProof}</strong>
      </p>
      <div className="tools">
        <a href="#plan">{words.back}</a>
        <button
          type="button"
          className="quiet"
          onClick={() => {
            dispatch({ type: "step", what: words.begun, change: () => complaintAbout(openJob) });
          }}
        >
          {words.fromJob}
        </button>
        <button type="button" className="quiet" onClick={() => file.current?.click()}>
          {words.openFile}
        </button>
        <input
          ref={file}
          type="file"
          className="visually-hidden"
          aria-label={words.file}
          tabIndex={-1}
          accept=".json,.yaml,.yml"
          onChange={(event) => {
            const chosen = event.target.files?.[0];
            event.target.value = "";
            if (chosen !== undefined) void openFile(chosen);
          }}
        />
        <button
          type="button"
          className="quiet"
          onClick={() => {
            saveText("complaint.json", `${JSON.stringify(document, null, 2)}\n`, "application/json");
          }}
        >
          {words.save}
        </button>
        <button
          type="button"
          disabled={answered === null}
          onClick={() => {
            if (answered !== null) saveText("complaint.html", answered.html, "text/html");
          }}
        >
          {words.saveAnswer}
        </button>
      </div>
      <div className="field">
        <label htmlFor="complaint-title">{words.recordTitle}</label>
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
        <p className="about">{words.kept}</p>
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
            {words.undo}
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
