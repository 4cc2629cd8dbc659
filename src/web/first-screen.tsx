import type { ReactElement } from "react";
import { renderToStaticMarkup } from "react-dom/server";
import { emptyBook } from "../records/index.ts";
import { WaterGroup } from "./form/water-group.tsx";
import { blankDraft } from "./job/draft.ts";
import { documentOf } from "./job/to-document.ts";
import type { BookView } from "./jobs/use-book.ts";
import { PageFrame } from "./page-frame.tsx";
import type { FrameEngine } from "./page-frame.tsx";

const nothing = (): void => undefined;

/**
 * The first screen as it is for every job, in English: what is not known before the jobs are read stays empty. It is
 * the page's own frame and its first group, so that the page takes its place without anything moving.
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
  const engine: FrameEngine = {
    answer: null,
    first: null,
    waiting: true,
    blocked: false,
    failed: false,
    catalogue: null,
    issues: [],
    readSheet: () => Promise.reject(new Error("there is no engine yet")),
  };
  return (
    <PageFrame
      jobs={jobs}
      document={documentOf(draft)}
      engine={engine}
      picked={null}
      groups={<WaterGroup others={false} />}
    />
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
