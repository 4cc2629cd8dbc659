import { StrictMode, Suspense, lazy, useEffect, useState } from "react";
import type { ComponentProps, ReactElement } from "react";
import { createRoot } from "react-dom/client";
import { App } from "./app.tsx";
import { startBook } from "./jobs/start-book.ts";
import "./styles.css";

/** Fetched only when it is wanted: the demonstration brings indicators and drawings of its own. */
const FlasksScreen = lazy(async () => ({
  default: (await import("./flasks/flasks-screen.tsx")).FlasksScreen,
}));

const atFlasks = (): boolean => window.location.hash === "#flasks";

/**
 * The screen that the address asks for: the spray plan, or the flasks at #flasks. Once opened, the plan stays behind
 * the flasks, so that nothing typed is lost on the way back.
 */
function Screens({ start }: Pick<ComponentProps<typeof App>, "start">): ReactElement {
  const [flasks, setFlasks] = useState(atFlasks);
  const [planOpened, setPlanOpened] = useState(!flasks);
  useEffect(() => {
    const look = (): void => {
      setFlasks(atFlasks());
      if (!atFlasks()) setPlanOpened(true);
    };
    window.addEventListener("hashchange", look);
    return () => window.removeEventListener("hashchange", look);
  }, []);
  return (
    <>
      {planOpened && (
        <div hidden={flasks}>
          <App start={start} />
        </div>
      )}
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
