import { useRef, useState } from "react";
import type { ReactElement } from "react";
import {
  DAYS_KEPT,
  deleteJobs,
  duplicateJob,
  editJob,
  importJobs,
  listJobs,
  openJob,
  readBookFile,
  undoStep,
} from "../../records/index.ts";
import type { Book, BookStep, JobRecord, Stamp } from "../../records/index.ts";
import { wordIssue } from "../../report/index.ts";
import { blankDraft } from "../job/draft.ts";
import { sayIn, useLanguage, useSay } from "../language/language-context.ts";
import { SendJob } from "../share/send-job.tsx";
import { contentOf, jobName, openState } from "./job-content.ts";
import { newId, newStamp } from "./start-book.ts";
import type { Language } from "../../words/index.ts";
import type { BookView } from "./use-book.ts";
import type { Persistence } from "./use-persistence.ts";
import { instantWords, jobsWords, stepWords } from "./words.ts";

/** Largest file of jobs taken in [bytes]. */
const MOST_BYTES = 20_000_000;

interface PanelProps {
  readonly view: BookView;
  /** How many jobs a copy holds, in words. */
  readonly copyCount: string;
  readonly persistence: Persistence;
  readonly onAsk: () => void;
  readonly onSaveCopy: () => void;
  readonly onOpenLink: (text: string) => Promise<void>;
}

/** All jobs: open, begin, duplicate, delete, bring back; copy to a file and take in from one. */
export function JobsPanel(props: PanelProps): ReactElement {
  const { view } = props;
  const [said, setSaid] = useState("");
  return (
    <>
      <p role="status" className="said">
        {said}
      </p>
      <JobList view={view} onSaid={setSaid} />
      <Steps view={view} onSaid={setSaid} />
      <SendJob view={view} onSaid={setSaid} onOpenLink={props.onOpenLink} />
      <Copies {...props} onSaid={setSaid} />
    </>
  );
}

interface PartProps {
  readonly view: BookView;
  readonly onSaid: (words: string) => void;
}

function JobList({ view, onSaid }: PartProps): ReactElement {
  const { book, change, begin } = view;
  const say = useSay();
  return (
    <>
      <h2>{say("Jobs on this device")}</h2>
      <ul className="job-list">
        {listJobs(book).map((job) => (
          <JobRow
            key={job.id}
            job={job}
            isOpen={job.id === book.open}
            onOpen={() => {
              change((before) => openJob(before, job.id));
              onSaid(say("“{name}” opened.", { name: jobName(job, say) }));
            }}
            onDuplicate={() => {
              const stamp = newStamp();
              change((before) => duplicateWithTitle(before, job, stamp));
              onSaid(say("“{name}” duplicated; the copy is open.", { name: jobName(job, say) }));
            }}
            onDelete={() => {
              const stamp = newStamp();
              change((before) => deleteJobs(before, [job.id], stamp));
              onSaid(
                say("“{name}” deleted. It can be brought back for {days} days.", {
                  name: jobName(job, say),
                  days: DAYS_KEPT,
                }),
              );
            }}
          />
        ))}
      </ul>
      <button
        type="button"
        className="quiet"
        onClick={() => {
          begin(blankDraft(), false);
          onSaid(say("Blank job begun."));
        }}
      >
        {say("New job")}
      </button>
    </>
  );
}

/** A copy that a list can tell from its original. */
function duplicateWithTitle(book: Book, job: JobRecord, stamp: Stamp): Book {
  const copied = duplicateJob(book, job.id, stamp);
  if (copied === book) return book;
  const { draft, undo } = openState(copied);
  const titled = contentOf({ draft: { ...draft, title: `${jobName(job)} (copy)` }, undo });
  return editJob(copied, stamp.id, titled, stamp.at);
}

interface RowProps {
  readonly job: JobRecord;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
  readonly onDuplicate: () => void;
  readonly onDelete: () => void;
}

function JobRow({ job, isOpen, onOpen, onDuplicate, onDelete }: RowProps): ReactElement {
  const language = useLanguage();
  const say = sayIn(language);
  const name = jobName(job, say);
  return (
    <li>
      <div>
        <button type="button" className="quiet job-name" aria-current={isOpen || undefined} onClick={onOpen}>
          {isOpen && <span className="job-mark">{say("Open:")} </span>}
          {name}
        </button>
        <p className="about">
          {job.untouched
            ? say("Nothing typed yet.")
            : say("Changed {when}.", { when: instantWords(job.changed, language.tag) })}{" "}
          {job.result !== null && job.result.computed >= job.changed && job.result.words}
        </p>
      </div>
      <div className="job-tools">
        <button
          type="button"
          className="quiet"
          aria-label={say("Duplicate {name}", { name })}
          onClick={onDuplicate}
        >
          {say("Duplicate")}
        </button>
        <button
          type="button"
          className="quiet"
          aria-label={say("Delete {name}", { name })}
          onClick={onDelete}
        >
          {say("Delete")}
        </button>
      </div>
    </li>
  );
}

function Steps({ view, onSaid }: PartProps): ReactElement | null {
  const { book, change } = view;
  const language = useLanguage();
  const say = sayIn(language);
  if (book.steps.length === 0) return null;
  const undo = (step: BookStep): void => {
    const { at } = newStamp();
    // Drawn twice, a change must give the same both times.
    const spare = step.jobs.map(newId);
    change((before) => {
      const ids = [...spare];
      return undoStep(before, step.id, at, () => ids.pop() ?? newId());
    });
    onSaid(say("Undone: {step}.", { step: stepWords(step, say) }));
  };
  return (
    <>
      <h3>{say("Can be undone")}</h3>
      <ul className="job-list">
        {[...book.steps].reverse().map((step) => (
          <li key={`${step.kind} ${step.id}`}>
            <p>
              {stepWords(step, say)}, <span className="about">{instantWords(step.at, language.tag)}</span>
            </p>
            <button
              type="button"
              aria-label={say("Undo: {step}", { step: stepWords(step, say) })}
              onClick={() => {
                undo(step);
              }}
            >
              {say("Undo")}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function Copies(props: PanelProps & PartProps): ReactElement {
  const { view, copyCount, persistence, onAsk, onSaveCopy, onSaid } = props;
  const promise = view.isKept ? persistence : "unknown";
  const file = useRef<HTMLInputElement>(null);
  const language = useLanguage();
  const say = sayIn(language);
  const [problems, setProblems] = useState<readonly string[]>([]);
  const take = async (chosen: File): Promise<void> => {
    const taken = await takeIn(chosen, view, language);
    setProblems(taken.problems);
    onSaid(taken.said);
  };
  return (
    <>
      <h3>{say("Copies")}</h3>
      <p className="about">{say(PERSISTENCE[promise])}</p>
      <div className="tools">
        <button
          type="button"
          onClick={() => {
            onSaveCopy();
            onSaid(say("A copy of {jobs} was saved. Samples are left out.", { jobs: copyCount }));
          }}
        >
          {say("Save a copy ({jobs})", { jobs: copyCount })}
        </button>
        <button type="button" className="quiet" onClick={() => file.current?.click()}>
          {say("Take in a copy")}
        </button>
        <input
          ref={file}
          type="file"
          className="visually-hidden"
          aria-label={say("Copy of all jobs")}
          tabIndex={-1}
          accept=".json"
          onChange={(event) => {
            const chosen = event.target.files?.[0];
            event.target.value = "";
            if (chosen !== undefined) void take(chosen);
          }}
        />
        {view.isKept && persistence === "not promised" && (
          <button type="button" className="quiet" onClick={onAsk}>
            {say("Ask the browser to keep them")}
          </button>
        )}
      </div>
      {problems.length > 0 && (
        <ul className="message message-error" role="alert">
          {problems.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Takes in a file of all jobs. @returns what came of it, and what could not be taken in, in words */
async function takeIn(
  file: File,
  view: BookView,
  language: Language,
): Promise<{ readonly said: string; readonly problems: readonly string[] }> {
  const say = sayIn(language);
  if (file.size > MOST_BYTES)
    return {
      said: "",
      problems: [say("{name} is too large; a copy has at most 20 MB.", { name: file.name })],
    };
  const read = readBookFile(await file.text());
  const problems = read.issues.map((issue) => wordIssue(issue, language));
  if (!read.ok) return { said: say("Nothing was taken in."), problems };
  const stamp = newStamp();
  const spare = read.value.map(newId);
  const put = (book: Book): ReturnType<typeof importJobs> => {
    const ids = [...spare];
    return importJobs(book, read.value, stamp, () => ids.pop() ?? newId());
  };
  const { added, same, keptApart } = put(view.book);
  view.change((book) => put(book).book);
  const parts = [
    say("{jobs} taken in.", { jobs: jobsWords(added, say) }),
    same > 0 ? say("{jobs} there already.", { jobs: jobsWords(same, say) }) : "",
    keptApart > 0
      ? say("{jobs} differed from yours; both are kept.", { jobs: jobsWords(keptApart, say) })
      : "",
  ];
  return { said: parts.filter((part) => part !== "").join(" "), problems };
}

const PERSISTENCE: Readonly<Record<Persistence, string>> = {
  promised:
    "The browser has promised to keep the jobs until you remove them. A lost device takes them along.",
  "not promised": "The browser may clear the jobs when space runs short. A copy is safe.",
  unknown: "This browser makes no promise to keep the jobs. A copy is safe.",
};
