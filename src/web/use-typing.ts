import { useEffect } from "react";

/** Marks the page while the keyboard is in a field, for the style sheet: what is far from the screen can then wait. */
export function useTyping(): void {
  useEffect(() => {
    const { document } = window;
    const mark = (): void => {
      // Not a tick or a choice of one: that may change the size of everything.
      const isField =
        document.activeElement?.matches('input:not([type="radio"], [type="checkbox"]), select, textarea') ??
        false;
      document.documentElement.classList.toggle("typing", isField);
    };
    document.addEventListener("focusin", mark);
    document.addEventListener("focusout", mark);
    return () => {
      document.removeEventListener("focusin", mark);
      document.removeEventListener("focusout", mark);
    };
  }, []);
}
