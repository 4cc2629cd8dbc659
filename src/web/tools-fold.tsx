import { useState, useSyncExternalStore } from "react";
import type { ReactElement, ReactNode } from "react";
import { useSay } from "./language/language-context.ts";

/** From this width on all tools stand in one row; the same figure as in the styles. */
const wideWindow = (): MediaQueryList => window.matchMedia("(min-width: 700px)");

function onWidth(changed: () => void): () => void {
  const watched = wideWindow();
  watched.addEventListener("change", changed);
  return () => {
    watched.removeEventListener("change", changed);
  };
}

const isWide = (): boolean => wideWindow().matches;
/** Where no window is: the styles open the fold of a wide one. */
const isWideUnseen = (): boolean => false;

/** Tools that are rarely used: in a row on a wide window, folded away on a phone, where the first field comes first. */
export function ToolsFold({ children }: { readonly children: ReactNode }): ReactElement {
  const say = useSay();
  const wide = useSyncExternalStore(onWidth, isWide, isWideUnseen);
  const [opened, setOpened] = useState(false);
  return (
    <details
      className="tools-fold"
      open={wide || opened}
      onToggle={(event) => {
        if (!wide) setOpened(event.currentTarget.open);
      }}
    >
      <summary>{say("Samples, files, language")}</summary>
      <div className="tools">{children}</div>
    </details>
  );
}
