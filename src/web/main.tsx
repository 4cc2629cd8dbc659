import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { blankDraft } from "./job/draft.ts";
import { draftOf } from "./job/from-document.ts";
import { restoreState } from "./job/job-state.ts";
import { SAMPLES } from "./samples.ts";
import "./styles.css";

/** The job of the last visit, else the first sample, finished. */
function startState(): NonNullable<ReturnType<typeof restoreState>> {
  const first = SAMPLES[0];
  const draft = first === undefined ? blankDraft() : draftOf(first.document, "sample");
  try {
    return restoreState(window.localStorage) ?? { draft, undo: [] };
  } catch {
    // A browser may refuse even to be asked: the page then starts with the sample.
    return { draft, undo: [] };
  }
}

const place = document.getElementById("root");
if (place !== null) {
  createRoot(place).render(
    <StrictMode>
      <App start={startState()} />
    </StrictMode>,
  );
}
