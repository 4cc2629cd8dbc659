import { startTransition, StrictMode, Suspense, useEffect, useMemo, useState } from "react";
import type { ReactElement } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { firstAnswered, prepareEngine } from "./engine/start-engine.ts";
import { keepFocusInSight } from "./focus-in-sight.ts";
import { documentOf } from "./job/to-document.ts";
import { useSay } from "./language/language-context.ts";
import { LanguageProvider, startingLanguage } from "./language/language-provider.tsx";
import { BrightLightProvider } from "./light/bright-light-provider.tsx";
import { late } from "./late.tsx";
import { startBook } from "./jobs/start-book.ts";
import type { StartedBook } from "./jobs/start-book.ts";
import { useBook } from "./jobs/use-book.ts";
import { followServiceWorker } from "./offline/service-worker.ts";
import "./styles.css";

/** Fetched only when it is wanted: the demonstration brings drawings of its own. */
const FlasksScreen = late(async () => (await import("./flasks/flasks-screen.tsx")).flasksScreen());
const ComplaintScreen = late(async () =>
  (await import("./complaint/complaint-screen.tsx")).complaintScreen(),
);

type Screen = "plan" | "flasks" | "complaint";

function screenAsked(): Screen {
  const { hash } = window.location;
  if (hash === "#flasks") return "flasks";
  return hash === "#complaint" ? "complaint" : "plan";
}

/**
 * The screen that the address asks for: the spray plan, the flasks or a complaint. Once opened, the plan stays behind the
 * others, so that nothing typed is lost on the way back.
 */
function Screens({ start }: { readonly start: StartedBook }): ReactElement {
  const jobs = useBook(start);
  const say = useSay();
  const [screen, setScreen] = useState(screenAsked);
  const [planOpened, setPlanOpened] = useState(screen === "plan");
  useEffect(() => {
    const look = (): void => {
      const asked = screenAsked();
      setScreen(asked);
      if (asked === "plan") setPlanOpened(true);
    };
    window.addEventListener("hashchange", look);
    return () => window.removeEventListener("hashchange", look);
  }, []);
  const { draft } = jobs.state;
  const document = useMemo(() => documentOf(draft), [draft]);
  return (
    <>
      {planOpened && (
        <div hidden={screen !== "plan"}>
          <App jobs={jobs} />
        </div>
      )}
      <Suspense fallback={<p>{say("One moment …")}</p>}>
        {screen === "flasks" && <FlasksScreen job={document} />}
        {screen === "complaint" && <ComplaintScreen openJob={draft} />}
      </Suspense>
    </>
  );
}

const place = window.document.getElementById("root");
if (place !== null) {
  prepareEngine();
  keepFocusInSight();
  void followServiceWorker(firstAnswered);
  const [start, language] = await Promise.all([startBook(), startingLanguage()]);
  const root = createRoot(place);
  // In small steps: what the browser has to do meanwhile need not wait for all of it.
  startTransition(() => {
    root.render(
      <StrictMode>
        <LanguageProvider start={language}>
          <BrightLightProvider>
            <Screens start={start} />
          </BrightLightProvider>
        </LanguageProvider>
      </StrictMode>,
    );
  });
}
