import { memo, Suspense, useState } from "react";
import type { ReactElement, ReactNode } from "react";
import { bookFile } from "../../records/index.ts";
import { useSay } from "../language/language-context.ts";
import { fieldId } from "../form/form-context.ts";
import { late } from "../late.tsx";
import { Refused } from "../refused.tsx";
import { saveText } from "../save-text.ts";
import { useLinkedJob } from "../share/use-linked-job.ts";
import { newStamp } from "./start-book.ts";
import type { BookView } from "./use-book.ts";
import { usePersistence } from "./use-persistence.ts";
import { agoWords, jobsWords } from "./words.ts";
import "./jobs.css";

/** Fetched when it is first opened. */
const JobsPanel = late(async () => (await import("./jobs-panel.tsx")).JobsPanel);

/** The open job's title, the way to all jobs, and how well they are kept. */
export function JobsBar({ view }: { view: BookView }): ReactElement {
  const [isOpen, setOpen] = useState(false);
  const { book, state, dispatch, keeping } = view;
  const say = useSay();
  const own = book.jobs.filter((job) => !job.untouched);
  const { persistence, ask } = usePersistence(view.isKept && keeping === "kept" && own.length > 0);
  const { outcome, openLink } = useLinkedJob(view);
  const saveCopy = (): void => {
    const { at } = newStamp();
    saveText(
      `hardstand-jobs-${at.slice(0, 10)}.json`,
      `${JSON.stringify(bookFile(book, at), null, 1)}\n`,
      "application/json",
    );
    view.change((before) => ({ ...before, lastCopy: at }));
  };
  return (
    <section className="jobs" aria-label={say("Jobs")}>
      <div className="jobs-head">
        <TitleField title={state.draft.title} dispatch={dispatch} />
        <button
          type="button"
          className="quiet"
          aria-expanded={isOpen}
          aria-controls="jobs-panel"
          onClick={() => {
            setOpen(!isOpen);
          }}
        >
          {say("All jobs ({count})", { count: book.jobs.length })}
        </button>
        <p className="about" data-keeping={keeping}>
          {say(view.isKept ? "On this device only" : "Not kept by this browser")}
          <span aria-hidden="true"> · </span>
          {book.lastCopy === null
            ? say("no copy yet")
            : say("last copy {when}", { when: agoWords(book.lastCopy, new Date(), say) })}
        </p>
      </div>
      {outcome !== null && (
        <p
          className={outcome.ok ? "said" : "message message-error"}
          role={outcome.ok ? "status" : "alert"}
          data-testid="linked"
        >
          {outcome.words}
        </p>
      )}
      <Trouble view={view} onSaveCopy={saveCopy} />
      <div id="jobs-panel" hidden={!isOpen}>
        {isOpen && (
          <Suspense>
            <JobsPanel
              view={view}
              copyCount={jobsWords(own.length, say)}
              persistence={persistence}
              onAsk={ask}
              onSaveCopy={saveCopy}
              onOpenLink={openLink}
            />
          </Suspense>
        )}
      </div>
    </section>
  );
}

type TitleFieldProps = Pick<BookView, "dispatch"> & { readonly title: string };

/** The title alone, so that it is not drawn anew with every key of another field. */
const TitleField = memo(function TitleField({ title, dispatch }: TitleFieldProps): ReactElement {
  const say = useSay();
  return (
    <div className="field">
      <label htmlFor={fieldId("title")}>{say("Title of this job")}</label>
      <input
        id={fieldId("title")}
        type="text"
        autoComplete="off"
        value={title}
        onChange={(event) => {
          const typed = event.target.value;
          dispatch({ type: "edit", change: (draft) => ({ ...draft, title: typed }) });
        }}
      />
    </div>
  );
});

/** What a person must know when something cannot be kept or read. */
function Trouble({ view, onSaveCopy }: { view: BookView; onSaveCopy: () => void }): ReactNode {
  const { keeping, unreadable } = view;
  const say = useSay();
  return (
    <>
      <Refused keeping={keeping} saveWords="Save a copy of all jobs" onSave={onSaveCopy} />
      {unreadable > 0 && (
        <p className="message message-warning">
          {say("{jobs} kept by another version cannot be read here. They are left as they are.", {
            jobs: jobsWords(unreadable, say),
          })}
        </p>
      )}
    </>
  );
}
