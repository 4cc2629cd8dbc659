import { useMemo } from "react";
import type { ReactElement, ReactNode } from "react";
import type { Programme } from "../agronomy/index.ts";
import { findJob } from "../records/index.ts";
import { BottomBar } from "./bottom-bar.tsx";
import { stateWord } from "./engine/use-engine.ts";
import type { EngineView } from "./engine/use-engine.ts";
import { DraftContext, FormContext } from "./form/form-context.ts";
import type { JobDocument } from "./job/to-document.ts";
import { JobsBar } from "./jobs/jobs-bar.tsx";
import type { BookView } from "./jobs/use-book.ts";
import { useSay } from "./language/language-context.ts";
import { OfflineBar } from "./offline/offline-bar.tsx";
import { Toolbar } from "./toolbar.tsx";

/** What the frame asks of the engine. */
export type FrameEngine = Pick<
  EngineView,
  "answer" | "first" | "waiting" | "blocked" | "failed" | "catalogue" | "issues" | "readSheet"
>;

interface PageFrameProps {
  readonly jobs: BookView;
  /** The open job as it is saved. */
  readonly document: JobDocument;
  readonly engine: FrameEngine;
  readonly picked: Programme | null;
  /** The groups of the form. */
  readonly groups: ReactNode;
  /** What follows. */
  readonly children?: ReactNode;
}

/** What stands around every job: the head and the foot of the page, and the places for what one knows and what follows. */
export function PageFrame({
  jobs,
  document,
  engine,
  picked,
  groups,
  children,
}: PageFrameProps): ReactElement {
  const { state, dispatch } = jobs;
  const { catalogue, issues, readSheet } = engine;
  const say = useSay();
  const form = useMemo(
    () => ({ dispatch, catalogue, issues, readSheet }),
    [dispatch, catalogue, issues, readSheet],
  );
  return (
    <div className="page">
      <a className="skip" href="#what-follows">
        {say("Skip to what follows")}
      </a>
      <Toolbar
        state={state}
        untouched={findJob(jobs.book, jobs.book.open)?.untouched ?? false}
        dispatch={dispatch}
        onBegin={jobs.begin}
        document={document}
      />
      <JobsBar view={jobs} />
      <OfflineBar />
      <main className="columns">
        <div className="know">
          <h2>{say("What you know")}</h2>
          <FormContext value={form}>
            <DraftContext value={state.draft}>{groups}</DraftContext>
          </FormContext>
        </div>
        <div className="follows" id="what-follows" tabIndex={-1} data-state={stateWord(engine)}>
          <h2>{say("What follows")}</h2>
          {children}
        </div>
      </main>
      <BottomBar planned={engine.answer} first={engine.first} picked={picked} waiting={engine.waiting} />
    </div>
  );
}
