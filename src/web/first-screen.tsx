import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { emptyBook } from "../records/index.ts";
import { BottomBar } from "./bottom-bar.tsx";
import { DraftContext, FormContext } from "./form/form-context.ts";
import type { FormView } from "./form/form-context.ts";
import { WaterGroup } from "./form/water-group.tsx";
import { blankDraft } from "./job/draft.ts";
import { documentOf } from "./job/to-document.ts";
import { JobsBar } from "./jobs/jobs-bar.tsx";
import type { BookView } from "./jobs/use-book.ts";
import { ENGLISH } from "../words/index.ts";
import { sayIn } from "./language/language-context.ts";
import { OfflineBar } from "./offline/offline-bar.tsx";
import { Toolbar } from "./toolbar.tsx";

const nothing = (): void => undefined;

/**
 * The first screen as it is for every job, in English: what is not known before the jobs are read stays empty. It is
 * made of the page's own parts, so that the page takes its place without anything moving.
 */
function FirstScreen(): ReactElement {
  const blank = blankDraft();
  const draft = { ...blank, water: { ...blank.water, readings: [] } };
  const state = { draft, undo: [] };
  const jobs: BookView = {
    book: emptyBook(),
    state,
    dispatch: nothing,
    keeping: "kept",
    isKept: true,
    unreadable: 0,
    change: nothing,
    begin: nothing,
  };
  const form: FormView = {
    dispatch: nothing,
    catalogue: null,
    issues: [],
    readSheet: () => Promise.reject(new Error("there is no engine yet")),
  };
  const say = sayIn(ENGLISH);
  return (
    <div className="page">
      <Toolbar state={state} dispatch={nothing} onBegin={nothing} document={documentOf(draft)} />
      <JobsBar view={jobs} />
      <OfflineBar />
      <main className="columns">
        <div className="know">
          <h2>{say("What you know")}</h2>
          <FormContext value={form}>
            <DraftContext value={draft}>
              <WaterGroup others={false} />
            </DraftContext>
          </FormContext>
        </div>
        <div className="follows">
          <h2>{say("What follows")}</h2>
        </div>
      </main>
      <BottomBar planned={null} first={null} picked={null} waiting />
    </div>
  );
}

/**
 * The first screen as marks, for the page to show before any script of it is there. Nothing in it can be reached or
 * read out, and nothing has a name by which the page could take it for its own.
 */
export function firstScreenHtml(): string {
  const marks = renderToStaticMarkup(<FirstScreen />);
  return marks.replaceAll(/ (?:id|for|name|role|tabindex|aria-[a-z]+|data-[a-z-]+)="[^"]*"/gi, "");
}
