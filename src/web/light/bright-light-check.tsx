import type { ReactElement } from "react";
import { useSay } from "../language/language-context.ts";
import { useBrightLight } from "./bright-light-context.ts";

/** The switch for bright light, at the head of every screen. */
export function BrightLightCheck(): ReactElement {
  const { on, set } = useBrightLight();
  const say = useSay();
  return (
    <label className="tool-check">
      <input
        type="checkbox"
        checked={on}
        onChange={(event) => {
          set(event.target.checked);
        }}
      />
      {say("Bright light")}
    </label>
  );
}
