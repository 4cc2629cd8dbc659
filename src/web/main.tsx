import { StrictMode, Suspense, lazy, useEffect, useState } from "react";
import type { ReactElement } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { startBook } from "./jobs/start-book.ts";
import "./styles.css";

type Start = Awaited<ReturnType<typeof startBook>>;

/** Fetched only when it is wanted: the demonstration brings indicators and drawings of its own. */
const FlasksScreen = lazy(async () => ({
  default: (await import("./flasks/flasks-screen.tsx")).FlasksScreen,
}));

/**
 * The screen that the address asks for: the spray plan, or the flasks at #flasks. The plan stays in place behind the
 * flasks, so that nothing typed is lost on the way there and back.
 */
function Screens({ start }: { readonly start: Start }): ReactElement {
  const [flasks, setFlasks] = useState(window.location.hash === "#flasks");
  useEffect(() => {
    const look = (): void => setFlasks(window.location.hash === "#flasks");
    window.addEventListener("hashchange", look);
    return () => window.removeEventListener("hashchange", look);
  }, []);
  return (
    <>
      <div hidden={flasks}>
        <App start={start} />
      </div>
      {flasks && (
        <Suspense fallback={<p>Getting the flasks …</p>}>
          <FlasksScreen />
        </Suspense>
      )}
    </>
  );
}

const place = document.getElementById("root");
if (place !== null) {
  const start = await startBook();
  createRoot(place).render(
    <StrictMode>
      <Screens start={start} />
    </StrictMode>,
  );
}
