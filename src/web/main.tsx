import { StrictMode, Suspense, lazy, useEffect, useState } from "react";
import type { ReactElement } from "react";
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

/** Fetched only when it is wanted: the demonstration brings indicators and drawings of its own. */
const FlasksScreen = lazy(async () => ({
  default: (await import("./flasks/flasks-screen.tsx")).FlasksScreen,
}));

/** The screen that the address asks for: the spray plan, or the flasks at #flasks. */
function Screens(): ReactElement {
  const [flasks, setFlasks] = useState(window.location.hash === "#flasks");
  useEffect(() => {
    const look = (): void => setFlasks(window.location.hash === "#flasks");
    window.addEventListener("hashchange", look);
    return () => window.removeEventListener("hashchange", look);
  }, []);
  if (!flasks) return <App start={startState()} />;
  return (
    <Suspense fallback={<p>Getting the flasks …</p>}>
      <FlasksScreen />
    </Suspense>
  );
}

const place = document.getElementById("root");
if (place !== null) {
  createRoot(place).render(
    <StrictMode>
      <Screens />
    </StrictMode>,
  );
}
