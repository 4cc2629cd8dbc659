import { useEffect } from "react";

/** What a keyboard types into: a tick or a choice of one may change the size of everything. */
const FIELDS = 'input:not([type="radio"], [type="checkbox"]), select, textarea';

/** Marks the page while the keyboard is in a field, for the style sheet: what is far from the screen can then wait. */
export function useTyping(): void {
  useEffect(() => {
    const { document } = window;
    const mark = (): void => {
      const isField = document.activeElement?.matches(FIELDS) ?? false;
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
