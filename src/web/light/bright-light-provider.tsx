import { useEffect, useMemo, useState } from "react";
import type { ComponentType, ReactElement, ReactNode } from "react";
import { BrightLightContext } from "./bright-light-context.ts";

const KEPT = "hardstand bright light";

function wasOn(): boolean {
  try {
    return window.localStorage.getItem(KEPT) === "yes";
  } catch {
    return false;
  }
}

/** A browser that keeps nothing between visits asks anew; that is no reason to stop. */
function keep(on: boolean): void {
  try {
    if (on) window.localStorage.setItem(KEPT, "yes");
    else window.localStorage.removeItem(KEPT);
  } catch {
    return;
  }
}

/** Whether the device is touched: who has a mouse has a keyboard too. */
function isTouched(): boolean {
  return window.matchMedia("(pointer: coarse)").matches;
}

/** Carries the choice of bright light to every screen, keeps it on this device, and brings the number keys with it. */
export function BrightLightProvider({ children }: { readonly children: ReactNode }): ReactElement {
  const [on, setOn] = useState(wasOn);
  const [keys, setKeys] = useState<{ readonly Keypad: ComponentType } | null>(null);
  useEffect(() => {
    window.document.documentElement.classList.toggle("outdoor", on);
  }, [on]);
  useEffect(() => {
    if (!on || !isTouched()) return;
    // Where the keys cannot be had, the device's own keyboard stays.
    import("./keypad.tsx").then(setKeys, () => undefined);
  }, [on]);
  const ownKeys = on && keys !== null;
  const view = useMemo(
    () => ({
      on,
      set: (next: boolean) => {
        keep(next);
        setOn(next);
      },
      ownKeys,
    }),
    [on, ownKeys],
  );
  return (
    <BrightLightContext value={view}>
      {children}
      {ownKeys && <keys.Keypad />}
    </BrightLightContext>
  );
}
